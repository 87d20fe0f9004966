package org.leverbook.load;

import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A direction of the gym as the standing lifter sees it: x forward, y up, z to the right.
 *
 * <p>{@code Direction.FORWARD.raisedBy(deg(30))} points 30 degrees above forward; {@code
 * Direction.UPWARD.raisedBy(deg(30))} is refused: there is nothing above up.
 *
 * @param word as in "forward"
 * @param line unit vector in the world
 */
public record Direction(String word, Vector3D line) {

  /** Against gravity. */
  public static final Direction UPWARD = new Direction("upward", Vector3D.PLUS_J);

  /** With gravity. */
  public static final Direction DOWNWARD = new Direction("downward", Vector3D.MINUS_J);

  /** Where the lifter looks when standing. */
  public static final Direction FORWARD = new Direction("forward", Vector3D.PLUS_I);

  /** Behind the lifter. */
  public static final Direction BACKWARD = new Direction("backward", Vector3D.MINUS_I);

  /** To the lifter's own left. */
  public static final Direction LEFTWARD = new Direction("leftward", Vector3D.MINUS_K);

  /** To the lifter's own right. */
  public static final Direction RIGHTWARD = new Direction("rightward", Vector3D.PLUS_K);

  /** Nearer to the vertical than this there is nothing to raise. */
  private static final double LEVEL = 1e-9;

  /** Keeps the line as a unit vector. */
  public Direction {
    line = line.normalize();
  }

  /**
   * The same direction turned upwards.
   *
   * @param angle -180 to 180 degrees; negative turns downwards
   * @return the changed direction
   * @throws Refused if the angle is missing or outside, or the direction is vertical
   */
  public Direction raisedBy(Quantity<Angle> angle) {
    double turn = Ask.angle("angle to raise by", angle, -Math.PI, Math.PI);
    Vector3D level = new Vector3D(line.getX(), 0, line.getZ());
    if (level.getNorm() < LEVEL) {
      throw new Refused(
          "The direction "
              + word
              + " is vertical and cannot be raised: begin with FORWARD,"
              + " BACKWARD, LEFTWARD or RIGHTWARD.");
    }
    double slope = Math.atan2(line.getY(), level.getNorm()) + turn;
    Vector3D turned =
        level.normalize().scalarMultiply(Math.cos(slope)).add(new Vector3D(0, Math.sin(slope), 0));
    String told =
        String.format(
            Locale.ROOT,
            "%s, %s by %.0f°",
            word,
            turn < 0 ? "lowered" : "raised",
            Math.toDegrees(Math.abs(turn)));
    return new Direction(told, turned);
  }

  @Override
  public String toString() {
    return word;
  }
}
