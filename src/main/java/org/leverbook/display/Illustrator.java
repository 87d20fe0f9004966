package org.leverbook.display;

import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;
import org.leverbook.quantity.Refused;

/**
 * A service that draws values of the rooms above it. A position can offer {@code picture()}
 * although the drawing lives in a room that knows positions, not the other way round. Registered in
 * {@code META-INF/services}.
 */
public interface Illustrator {

  /**
   * Draws a value, if this illustrator knows how.
   *
   * @param subject what to draw
   * @param wishes what to show of it, such as the joints of a plot; may be empty
   * @return the picture, or empty where the subject is not known here
   */
  Optional<Picture> draw(Object subject, List<?> wishes);

  /**
   * Draws a value as a moving picture, if this illustrator knows how.
   *
   * @param subject what to draw
   * @param wishes what to show of it, such as the joints; may be empty
   * @return the moving picture, or empty where the subject is not known here, or does not move
   */
  default Optional<MovingPicture> move(Object subject, List<?> wishes) {
    return Optional.empty();
  }

  /**
   * Draws a value as a moving picture by the first illustrator that knows how.
   *
   * @param subject what to draw
   * @param wishes what to show of it
   * @return the moving picture
   * @throws Refused if nothing can move it
   */
  static MovingPicture movingPictureOf(Object subject, List<?> wishes) {
    for (Illustrator illustrator :
        ServiceLoader.load(Illustrator.class, Illustrator.class.getClassLoader())) {
      var picture = illustrator.move(subject, wishes);
      if (picture.isPresent()) {
        return picture.get();
      }
    }
    throw new Refused(
        "There is no moving picture of "
            + Kind.of(subject)
            + ": lifts, movements and sweeps have one.");
  }

  /**
   * Draws a value by the first illustrator that knows how.
   *
   * @param subject what to draw
   * @param wishes what to show of it
   * @return the picture
   * @throws Refused if nothing can draw it
   */
  static Picture pictureOf(Object subject, List<?> wishes) {
    for (Illustrator illustrator :
        ServiceLoader.load(Illustrator.class, Illustrator.class.getClassLoader())) {
      var picture = illustrator.draw(subject, wishes);
      if (picture.isPresent()) {
        return picture.get();
      }
    }
    throw new Refused(
        "There is no picture of "
            + Kind.of(subject)
            + ": positions, sweeps, comparisons and their like have one, as pull.start().");
  }
}
