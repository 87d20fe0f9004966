package org.leverbook.figure;

import java.util.function.Function;
import org.leverbook.display.Picture;

/**
 * The picture of a position.
 *
 * @param drawing what is on the page
 * @param style with which it was laid out
 * @param again how to draw it in another style
 */
record PositionPicture(Drawing drawing, FigureStyle style, Function<FigureStyle, Picture> again)
    implements Again {

  PositionPicture(Drawing drawing, FigureStyle style) {
    this(drawing, style, null);
  }

  static PositionPicture of(Scene view, FigureStyle style) {
    return new PositionPicture(PositionPage.drawing(view, style), style);
  }

  @Override
  public Picture drawnBy(Function<FigureStyle, Picture> how) {
    return new PositionPicture(drawing, style, how);
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
