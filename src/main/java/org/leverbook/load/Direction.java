package org.leverbook.load;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A direction in the room.
 *
 * @param unit unit vector in the world
 */
public record Direction(Vector3D unit) {

  /** Against gravity. */
  public static final Direction UP = new Direction(Vector3D.PLUS_J);

  /** With gravity. */
  public static final Direction DOWN = new Direction(Vector3D.MINUS_J);

  /** Where the person faces, level. */
  public static final Direction FORWARD = new Direction(Vector3D.PLUS_I);

  /** Behind the person, level. */
  public static final Direction BACKWARD = new Direction(Vector3D.MINUS_I);

  /**
   * This direction raised: {@code FORWARD.raised(deg(30))} points ahead and up.
   *
   * @param by -90 to 90 degrees; a direction that is not level cannot be raised
   * @return the direction
   * @throws Refused if the angle is missing or outside, or this direction is not level
   */
  public Direction raised(Quantity<Angle> by) {
    double angle = Ask.angle("raise", by, -Math.PI / 2, Math.PI / 2);
    if (unit.getY() != 0) {
      throw new Refused("Only a level direction can be raised: begin with FORWARD or BACKWARD.");
    }
    return new Direction(
        unit.scalarMultiply(Math.cos(angle)).add(Math.sin(angle), Vector3D.PLUS_J));
  }
}
