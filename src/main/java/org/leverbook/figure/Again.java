package org.leverbook.figure;

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

  /** From a style to the same picture; null where nobody told. */
  Function<FigureStyle, Picture> again();

  /** The same picture, able to be drawn anew. */
  Picture drawnBy(Function<FigureStyle, Picture> how);

  @Override
  default Picture styled(Look look) {
    if (again() == null) {
      return Picture.super.styled(look);
    }
    if (look instanceof FigureStyle style) {
      Picture drawn = again().apply(style);
      return drawn instanceof Again picture ? picture.drawnBy(again()) : drawn;
    }
    throw new Refused("A picture's look is a style such as slide(), article().withLetters(1.2).");
  }
}
