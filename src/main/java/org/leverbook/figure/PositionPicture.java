package org.leverbook.figure;

/**
 * The picture of a position.
 *
 * @param drawing what is on the page
 * @param style with which it was laid out
 */
record PositionPicture(Drawing drawing, FigureStyle style) implements Drawn {

  static PositionPicture of(Scene view, FigureStyle style) {
    return new PositionPicture(PositionPage.drawing(view, style), style);
  }

  @Override
  public String text() {
    return "picture: " + drawing.title() + "; save it with .save(\"start\")";
  }

  @Override
  public String toString() {
    return text();
  }
}
