package org.leverbook.figure;

import java.util.List;
import java.util.function.Function;
import org.leverbook.display.Look;
import org.leverbook.display.Picture;
import org.leverbook.quantity.Refused;

/**
 * A picture that knows how to be drawn anew in another style.
 *
 * <p>It stays of its own kind, so that what it is drawn with can still be asked of it.
 */
interface Again extends Picture {

  /**
   * How a picture is drawn anew.
   *
   * @param subject what it shows
   * @param how from a style to the picture
   */
  record Way(Object subject, Function<FigureStyle, Picture> how) {}

  /** From a style to the same picture; null where nobody told. */
  Way again();

  /** The same picture, able to be drawn anew. */
  Picture drawnBy(Way way);

  @Override
  default List<Object> subjects() {
    return again() == null ? List.of() : List.of(again().subject());
  }

  @Override
  default Picture styled(Look look) {
    if (again() == null) {
      return Picture.super.styled(look);
    }
    if (look instanceof FigureStyle style) {
      Picture drawn = again().how().apply(style);
      return drawn instanceof Again picture ? picture.drawnBy(again()) : drawn;
    }
    throw new Refused("A picture's look is a style such as slide(), article().withLetters(1.2).");
  }
}
