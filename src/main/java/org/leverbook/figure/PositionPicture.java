package org.leverbook.figure;

import java.util.List;
import java.util.Optional;
import org.leverbook.display.Picture;

/**
 * The picture of a position.
 *
 * @param drawing what is on the page
 * @param style with which it was laid out
 * @param scene the one position that it shows, to be laid out anew beside other pictures; empty
 *     where it shows several or a photo
 * @param again how to draw it in another style
 */
record PositionPicture(Drawing drawing, FigureStyle style, Optional<Scene> scene, Way again)
    implements Again, Drawn {

  /** What cannot be laid out anew beside others. */
  PositionPicture(Drawing drawing, FigureStyle style) {
    this(drawing, style, Optional.empty(), null);
  }

  static PositionPicture of(Scene view, FigureStyle style) {
    return of(view, style, Extras.NONE);
  }

  static PositionPicture of(Scene view, FigureStyle style, Extras extras) {
    return new PositionPicture(
        PositionPage.drawing(view, style, extras), style, Optional.of(view), null);
  }

  @Override
  public Picture drawnBy(Way way) {
    return new PositionPicture(drawing, style, scene, way);
  }

  @Override
  public List<Object> subjects() {
    return again == null && scene.isPresent()
        ? List.of(scene.get().position())
        : Again.super.subjects();
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
