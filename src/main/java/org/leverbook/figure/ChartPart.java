package org.leverbook.figure;

import java.util.List;
import org.leverbook.figure.Ink.Inset;

/** One chart on a page of pictures, painted anew for its place with letters of full size. */
final class ChartPart extends PagePart {

  private static final double LEAST = 400;
  private static final double SLENDER = 0.72;

  private final ChartPicture picture;

  ChartPart(ChartPicture picture, String name, FigureStyle style) {
    super(name, style, LEAST);
    this.picture = picture;
  }

  @Override
  double least() {
    return LEAST;
  }

  private TextBlock heading() {
    TextBlock heading = new TextBlock(width);
    heading.add(name, style.label(), true, style.ink());
    boolean second = !name.isEmpty();
    return heading.add(
        picture.told(),
        second ? style.caption() : style.label(),
        !second,
        second ? style.quiet() : style.ink());
  }

  @Override
  double height(PageKey key) {
    double own = picture.charts().get(0).getHeight();
    double lowest = FittedChart.lowest(picture.charts().get(0), width);
    return heading().height() + AIR + Math.max(lowest, Math.min(own, SLENDER * width));
  }

  @Override
  void draw(List<Ink> page, double left, double top, double height, PageKey key) {
    TextBlock heading = heading();
    page.addAll(heading.at(left, top));
    int wide = (int) Math.floor(width);
    int high = (int) Math.floor(height - heading.height() - AIR);
    FittedChart chart = new FittedChart(picture.charts().get(0), wide, high, style);
    page.add(new Inset(chart, left, top + heading.height() + AIR, wide, high));
  }

  @Override
  List<String> notes() {
    return picture.notes();
  }

  @Override
  String told() {
    return named(picture.told() + ". " + picture.description());
  }
}
