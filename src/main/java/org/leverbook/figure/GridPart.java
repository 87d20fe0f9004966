package org.leverbook.figure;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Pictures in rows and columns: a whole page, or a page within another.
 *
 * <p>So many stand beside each other as were wished, or as many fewer as letters of readable size
 * ask for.
 */
final class GridPart extends PagePart {

  private static final double BETWEEN = 22;
  private static final double BETWEEN_ROWS = 26;

  private final PicturePage page;
  private final double most;
  private final List<PagePart> parts;
  private List<Double> columns = List.of();

  /**
   * A grid.
   *
   * @param page what it shows
   * @param name above it; empty for none
   * @param style colours and sizes
   * @param most the width of the whole page inside its margins, which no part can ask more than
   */
  GridPart(PicturePage page, String name, FigureStyle style, double most) {
    super(name, style, 0);
    this.page = page;
    this.most = most;
    this.parts = page.items().stream().map(item -> part(item, style, most)).toList();
  }

  private static PagePart part(PicturePage.Item item, FigureStyle style, double most) {
    if (item.picture() instanceof PicturePage inner) {
      return new GridPart(inner, item.name(), style, most);
    }
    if (item.picture() instanceof PositionPicture position && position.scene().isPresent()) {
      return new PositionPart(position.scene().get(), item.name(), style);
    }
    if (item.picture() instanceof ChartPicture chart && chart.charts().size() == 1) {
      return new ChartPart(chart, item.name(), style);
    }
    if (item.picture() instanceof NoPicture none) {
      return new NoPicturePart(none.reason(), item.name(), style);
    }
    return InsetPart.of(item.picture(), item.name(), style);
  }

  private int wished() {
    return (parts.size() + page.rows() - 1) / page.rows();
  }

  /** How narrow each column may be when so many stand beside each other. */
  private List<Double> leasts(int across) {
    List<Double> leasts = new ArrayList<>();
    for (int column = 0; column < across; column++) {
      double least = 0;
      for (int i = column; i < parts.size(); i += across) {
        least = Math.max(least, parts.get(i).least());
      }
      leasts.add(least);
    }
    return leasts;
  }

  private static double sum(List<Double> leasts) {
    return leasts.stream().mapToDouble(Double::doubleValue).sum() + BETWEEN * (leasts.size() - 1);
  }

  @Override
  double least() {
    return Math.min(most, sum(leasts(wished())));
  }

  /** Whether fewer stand beside each other than were wished. */
  boolean narrower() {
    return columns.size() < wished();
  }

  int across() {
    return columns.size();
  }

  private int fitting(double room) {
    int across = wished();
    while (across > 1 && sum(leasts(across)) > room) {
      across--;
    }
    // Rows of like length rather than a last one of one picture.
    int lines = (parts.size() + across - 1) / across;
    int even = (parts.size() + lines - 1) / lines;
    return sum(leasts(even)) <= room ? even : across;
  }

  @Override
  void place(double given) {
    width = given;
    List<Double> leasts = leasts(fitting(given));
    double spare = (given - sum(leasts)) / leasts.size();
    // One column that is narrower than its picture would like takes what there is.
    columns = leasts.stream().map(least -> least + spare).toList();
    for (int i = 0; i < parts.size(); i++) {
      parts.get(i).place(columns.get(i % columns.size()));
    }
    if (page.oneWindow()) {
      Rectangle2D all = new Rectangle2D.Double();
      all.setRect(positions().findFirst().map(PositionPart::window).orElse(all));
      positions().forEach(part -> all.add(part.window()));
      positions().forEach(part -> part.show(all));
      positions().forEach(PositionPart::rescale);
    }
    if (page.oneScale()) {
      double scale = positions().mapToDouble(PositionPart::perMetre).min().orElse(1);
      positions().forEach(part -> part.share(scale));
    }
  }

  @Override
  Stream<PositionPart> positions() {
    return parts.stream().flatMap(PagePart::positions);
  }

  private TextBlock heading() {
    return new TextBlock(width)
        .add(name, style.label(), true, style.ink())
        .add(page.title(), style.label(), true, style.ink());
  }

  private TextBlock caption() {
    return new TextBlock(width).add(page.caption(), style.caption(), false, style.ink());
  }

  @Override
  double height(PageKey key) {
    double below = caption().height();
    return heading().height()
        + (heading().height() == 0 ? 0 : 10)
        + content(key)
        + ruler()
        + (below == 0 ? 0 : below + 8);
  }

  /** Of a page within another: its own scale, where it has one. */
  private double ruler() {
    return page.oneScale() && positions().findAny().isPresent() ? 24 : 0;
  }

  /** The height of its rows. */
  double content(PageKey key) {
    double height = -BETWEEN_ROWS;
    for (int from = 0; from < parts.size(); from += columns.size()) {
      height += BETWEEN_ROWS + rowHeight(from, key);
    }
    return height;
  }

  private List<PagePart> row(int from) {
    return parts.subList(from, Math.min(parts.size(), from + columns.size()));
  }

  private double rowHeight(int from, PageKey key) {
    return row(from).stream().mapToDouble(part -> part.height(key)).max().orElse(0);
  }

  @Override
  void draw(List<Ink> ink, double left, double top, double height, PageKey key) {
    ink.addAll(heading().at(left, top));
    double y = top + heading().height() + (heading().height() == 0 ? 0 : 10);
    y = rows(ink, left, y, key);
    if (ruler() > 0) {
      y += ruler();
      ink.add(ruler(left, y - 10));
    }
    ink.addAll(caption().at(left, y + 8));
  }

  /** The scale that all positions of this page share. */
  Ink ruler(double left, double y) {
    double scale = positions().findFirst().orElseThrow().perMetre();
    return PositionPart.ruler(style, scale, left, y, "20 cm, the same in all", false);
  }

  /**
   * The rows alone.
   *
   * @return where they end
   */
  double rows(List<Ink> ink, double left, double top, PageKey key) {
    double y = top;
    for (int from = 0; from < parts.size(); from += columns.size()) {
      double high = rowHeight(from, key);
      double x = left;
      List<PagePart> row = row(from);
      for (int i = 0; i < row.size(); i++) {
        row.get(i).draw(ink, x, y, high, key);
        x += columns.get(i) + BETWEEN;
      }
      y += high + BETWEEN_ROWS;
    }
    return y - BETWEEN_ROWS;
  }

  @Override
  List<String> notes() {
    boolean several = parts.stream().filter(part -> !part.notes().isEmpty()).count() > 1;
    List<String> notes = new ArrayList<>();
    for (PagePart part : parts) {
      String whose = several && !part.called().isEmpty() ? part.shortly() + ": " : "";
      part.notes().stream()
          .filter(note -> !note.isBlank())
          .map(note -> note.startsWith(PageFoot.SOURCES) ? note : whose + note)
          .forEach(notes::add);
    }
    return notes;
  }

  @Override
  String called() {
    return name.isEmpty() ? page.title() : name;
  }

  @Override
  String told() {
    String head =
        Stream.of(name, page.title()).filter(t -> !t.isEmpty()).collect(Collectors.joining(". "));
    List<String> all = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      String which = parts.size() == 1 ? "" : (i + 1) + " of " + parts.size() + ": ";
      all.add(which + parts.get(i).told());
    }
    return (head.isEmpty() ? "" : head + ". ") + String.join(" ", all);
  }
}
