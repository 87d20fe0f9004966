package org.leverbook.figure;

import org.leverbook.display.Picture;

/**
 * The picture of a position.
 *
 * @param drawing what is on the page
 * @param style with which it was laid out
 */
record PositionPicture(Drawing drawing, FigureStyle style) implements Picture {

  static PositionPicture of(Scene view, FigureStyle style) {
    return of(view, style, Extras.NONE);
  }

  static PositionPicture of(Scene view, FigureStyle style, Extras extras) {
    return new PositionPicture(PositionPage.drawing(view, style, extras), style);
  }

  @Override
  public String svgDocument() {
    return SvgWriter.write(drawing, style);
  }

  @Override
  public byte[] pngFile() {
    return RasterPainter.png(drawing, style);
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
