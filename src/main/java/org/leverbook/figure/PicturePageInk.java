package org.leverbook.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.leverbook.quantity.Refused;

/** Lays a page of pictures out: title, rows of pictures, scale and legend, caption, foot. */
final class PicturePageInk {

  private static final double WIDTH = 900;
  private static final double MARGIN = 28;

  /** Twice as large letters, by the width, as on the usual page. */
  private static final double PHONE = 480;

  private static final double PHONE_MARGIN = 14;

  private final PicturePage page;
  private final FigureStyle style;
  private final double width;
  private final double margin;
  private final double room;
  private final GridPart grid;
  private final PageKey key;
  private final List<Ink> ink = new ArrayList<>();

  PicturePageInk(PicturePage page) {
    this.page = page;
    this.style = page.style();
    this.width = page.narrow() ? PHONE : WIDTH;
    this.margin = page.narrow() ? PHONE_MARGIN : MARGIN;
    this.room = width - 2 * margin;
    this.grid = new GridPart(page, "", style, room);
    grid.place(room);
    this.key = PageKey.of(grid.positions().toList(), style);
  }

  /** How it came out, as in "4 pictures in 2 rows". */
  String arranged() {
    int pictures = page.items().size();
    int rows = (pictures + grid.across() - 1) / grid.across();
    String all = counted();
    return grid.narrower()
        ? all + " in " + rows + " rows, as letters of more in a row would be too small to read"
        : pictures == 1 ? all : all + (rows == 1 ? " in a row" : " in " + rows + " rows");
  }

  private String counted() {
    int pictures = page.items().size();
    return pictures + (pictures == 1 ? " picture" : " pictures");
  }

  Drawing drawing() {
    double y = heading();
    y = grid.rows(ink, margin, y, key) + 14;
    if (page.oneScale() && !key.joints().isEmpty()) {
      y += 18;
      ink.add(grid.ruler(margin, y - 6));
    }
    ink.add(key.names(margin, y, room));
    y += key.height(room);
    TextBlock foot = new TextBlock(room);
    foot.add(page.caption(), style.label(), false, style.ink());
    PageFoot.sentences(grid)
        .forEach(sentence -> foot.add(sentence, style.caption(), false, style.quiet()));
    ink.addAll(foot.at(margin, y + 4));
    double height = Math.ceil(y + 4 + foot.height() + 0.7 * margin);
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("data-pictures", Integer.toString(page.items().size()));
    attributes.put("data-across", Integer.toString(grid.across()));
    if (page.oneScale() && !key.joints().isEmpty()) {
      double scale = grid.positions().findFirst().orElseThrow().perMetre();
      attributes.put("data-scale", String.format(Locale.ROOT, "%.6f", scale));
    }
    return new Drawing(width, height, title(), grid.told(), attributes, ink);
  }

  /** For readers who listen there is always one. */
  String title() {
    if (!page.title().isEmpty()) {
      return page.title();
    }
    String names =
        page.items().stream()
            .map(PicturePage.Item::name)
            .filter(name -> !name.isEmpty())
            .collect(Collectors.joining(", "));
    return names.isEmpty() ? counted() : names;
  }

  private double heading() {
    TextBlock head = new TextBlock(room).add(page.title(), style.title(), true, style.ink());
    String alike =
        Stream.of(key.lifter(), key.load())
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining(". "));
    head.add(alike, style.caption(), false, style.quiet());
    ink.addAll(head.at(margin, margin));
    return margin + head.height() + (head.height() == 0 ? 0 : 14);
  }

  /** Pixels that a PNG may have without filling the memory of a small machine. */
  static void paintable(Drawing drawing) {
    double most = 12e6;
    if (drawing.width() * drawing.height() > most) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "This page is %.0f units high, too high for a PNG, which may be %.0f: save it as"
                  + " .svg, or make several pages of fewer pictures.",
              drawing.height(),
              most / drawing.width()));
    }
  }
}
