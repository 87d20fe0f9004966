package org.leverbook.statics;

import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.quantity.Refused;

/**
 * A straight line along which something pulls or pushes on one segment, its size not yet known.
 *
 * <p>Sign by a worked case: a level forearm reaches forward from the elbow at the origin, and a
 * line points straight up at 4 cm from it. The arm about +Z (flexion) is +0.04 m; against a weight
 * that extends the elbow with 10 N·m the line must carry 250 N.
 *
 * @param segment index of the segment it acts on
 * @param point a point of it, in the world, metres
 * @param direction unit vector in the world, as it acts on that segment
 */
public record LineOfForce(int segment, Vector3D point, Vector3D direction) {

  /** A line nearer to the joint's axis than this has no arm to speak of, metres. */
  private static final double NO_ARM = 1e-6;

  /**
   * Makes the direction a unit vector.
   *
   * @throws Refused if the direction has no length
   */
  public LineOfForce {
    double length = direction.getNorm();
    if (!(length > 0) || Double.isInfinite(length)) {
      throw new Refused(
          "A line of force needs a direction: its two ends are at the same place. Move one of"
              + " them.");
    }
    direction = direction.scalarMultiply(1 / length);
  }

  /**
   * The effective arm about an axis.
   *
   * @param centre a point of the axis, in the world, metres
   * @param axis unit vector in the world
   * @return metres; positive where a force along this line turns right-handedly about the axis
   */
  public double arm(Vector3D centre, Vector3D axis) {
    return point.subtract(centre).crossProduct(direction).dotProduct(axis);
  }

  /**
   * How large a force along this line cancels the moment about a joint's main axis. The line must
   * act on the joint's distal side.
   *
   * @param moment what the resistance asks of the joint
   * @return newtons; negative where the force would have to point the other way
   * @throws Refused if the line passes through the axis
   */
  public double sizeAgainst(JointMoment moment) {
    double arm = arm(moment.centre(), moment.axes().get(moment.main()).direction());
    if (Math.abs(arm) < NO_ARM) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "This line passes %.4f mm from the axis of the %s, so no force along it can hold"
                  + " %.1f N·m. Choose a line at least a millimetre away.",
              1000 * Math.abs(arm),
              moment.joint().fullName(),
              moment.size()));
    }
    return -moment.signed() / arm;
  }
}
