package org.leverbook.figure;

import java.util.List;
import org.leverbook.display.Picture;
import org.leverbook.study.ClaimAnswer;

/**
 * The picture of a claim's answer.
 *
 * @param drawing what is on the page
 * @param style with which it was laid out
 * @param again how to draw it in another style
 */
record ClaimPicture(Drawing drawing, FigureStyle style, Way again) implements Again, Drawn {

  ClaimPicture(Drawing drawing, FigureStyle style) {
    this(drawing, style, null);
  }

  static ClaimPicture of(ClaimAnswer answer, List<?> wishes, FigureStyle style) {
    return new ClaimPicture(
        new ClaimPage(answer, !wishes.contains("shares"), style).drawing(), style);
  }

  @Override
  public Picture drawnBy(Way way) {
    return new ClaimPicture(drawing, style, way);
  }

  @Override
  public String text() {
    return "picture: " + drawing.title() + "; save it with .save(\"claim\")";
  }

  @Override
  public String toString() {
    return text();
  }
}
