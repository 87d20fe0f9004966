package org.leverbook.load;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A point fixed to the room: a pulley, a hook, a pivot.
 *
 * @param point in the world, metres: x ahead of the middle of the feet, y above the floor, z to the
 *     person's right
 */
public record Anchor(Vector3D point) {

  /**
   * A point of the midline.
   *
   * @param ahead of the middle of the feet; negative behind; up to 10 m
   * @param up above the floor, 0 to 5 m
   * @return the point
   * @throws Refused if a value is missing or outside
   */
  public static Anchor of(Quantity<Length> ahead, Quantity<Length> up) {
    return new Anchor(
        new Vector3D(
            Ask.length("anchor's distance ahead", ahead, -10, 10),
            Ask.length("anchor's height", up, 0, 5),
            0));
  }

  /**
   * This point moved sideways.
   *
   * @param right to the person's right; negative to the left; up to 10 m
   * @return the point
   * @throws Refused if the value is missing or outside
   */
  public Anchor toTheRight(Quantity<Length> right) {
    return new Anchor(
        new Vector3D(
            point.getX(),
            point.getY(),
            Ask.length("anchor's distance to the right", right, -10, 10)));
  }
}
