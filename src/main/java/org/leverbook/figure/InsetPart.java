package org.leverbook.figure;

import java.util.List;
import org.leverbook.display.Picture;
import org.leverbook.figure.Ink.Inset;

/**
 * Any other picture on a page of pictures: shown whole, shrunk where it must be, never enlarged.
 */
final class InsetPart extends PagePart {

  /** Letters of a shrunk picture are not smaller, page units. */
  private static final double SMALLEST = 10;

  private final Picture picture;
  private final List<String> notes;
  private final String told;
  private final InsetSize size;

  private InsetPart(
      Picture picture, List<String> notes, String told, String name, FigureStyle style) {
    super(name, style, InsetSize.of(picture).width());
    this.picture = picture;
    this.notes = notes;
    this.told = told;
    this.size = InsetSize.of(picture);
  }

  static InsetPart of(Picture picture, String name, FigureStyle style) {
    if (picture instanceof Drawn drawn) {
      FootCut cut = FootCut.of(drawn);
      String told = drawn.drawing().title() + ". " + drawn.drawing().description();
      return new InsetPart(cut.picture(), List.of(cut.sentence()), told, name, style);
    }
    if (picture instanceof ChartPicture chart) {
      ChartPicture bare =
          new ChartPicture(chart.title(), chart.charts(), chart.across(), List.of(), chart.style());
      String told = chart.told() + ". " + chart.description();
      return new InsetPart(bare, chart.notes(), told, name, style);
    }
    String told =
        InsetSvg.root(picture)
            .map(svg -> (InsetSvg.told(svg, "title") + ". " + InsetSvg.told(svg, "desc")))
            .orElse(picture.text());
    return new InsetPart(picture, List.of(), told, name, style);
  }

  @Override
  double least() {
    return size.width() * Math.min(1, SMALLEST / InsetSize.letters(picture));
  }

  private TextBlock heading() {
    return new TextBlock(width).add(name, style.label(), true, style.ink());
  }

  private double scale() {
    return Math.min(1, width / size.width());
  }

  private double head() {
    double head = heading().height();
    return head == 0 ? 0 : head + AIR;
  }

  @Override
  double height(PageKey key) {
    return head() + scale() * size.height();
  }

  @Override
  void draw(List<Ink> page, double left, double top, double height, PageKey key) {
    page.addAll(heading().at(left, top));
    double wide = scale() * size.width();
    // Under its name, or else in the middle of its place.
    double x = name.isEmpty() ? left + (width - wide) / 2 : left;
    page.add(new Inset(picture, x, top + head(), wide, scale() * size.height()));
  }

  @Override
  List<String> notes() {
    return notes;
  }

  @Override
  String told() {
    return named(told);
  }
}
