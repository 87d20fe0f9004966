package org.leverbook.marks;

import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.Side;

/**
 * A landmark marked in a picture.
 *
 * @param landmark which place of the body
 * @param side left or right; the midline for a landmark of the midline, and until it is known which
 *     side the picture shows
 * @param pixel to the right and down from the upper left corner
 */
public record Mark(Landmark landmark, Side side, Vector2D pixel) {

  /**
   * Its name with its side.
   *
   * @return as in "left knee"
   */
  public String name() {
    return side.of(landmark.word());
  }

  /** The same on the side that the picture shows, where no side was said. */
  Mark near(Side shown) {
    return landmark.paired() && side == Side.MIDLINE ? new Mark(landmark, shown, pixel) : this;
  }

  /** Reads the side from a name. */
  static Side sideOf(String name) {
    String tidy = name.strip();
    return tidy.startsWith("left ")
        ? Side.LEFT
        : tidy.startsWith("right ") ? Side.RIGHT : Side.MIDLINE;
  }
}
