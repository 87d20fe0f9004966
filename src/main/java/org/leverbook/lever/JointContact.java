package org.leverbook.lever;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.pose.Placement;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.LineOfForce;

/**
 * With what force the proximal bone presses on the distal one, muscles included.
 *
 * <p>Everything distal to the joint is held still: contact = -(gravity, loads and supports there +
 * the muscles' pulls there). What the pulls leave of the moment must be held by ligament, bone or
 * other muscles and is told, not hidden.
 *
 * @param force on the distal bone at the joint's centre, in the world, newtons
 * @param leftOver moment that loads and pulls together still have about the centre, in the world,
 *     newton metres; zero where the pulls hold the joint
 */
public record JointContact(Vector3D force, Vector3D leftOver) {

  /**
   * The contact of one joint.
   *
   * @param moment what the resistance asks of it
   * @param where where the segments are
   * @param pulls the muscles that pull; those that do not cross this joint give nothing
   * @return the contact
   */
  public static JointContact of(JointMoment moment, Placement where, List<MusclePull> pulls) {
    int distal = where.tree().distalOf(moment.joint().fullName());
    Vector3D force = moment.force();
    Vector3D turning = moment.moment();
    for (MusclePull pull : pulls) {
      if (pull.line().crosses(where.tree(), distal)) {
        LineOfForce line = pull.line().on(where, distal);
        Vector3D own = line.direction().scalarMultiply(pull.force());
        force = force.add(own);
        turning = turning.add(line.point().subtract(moment.centre()).crossProduct(own));
      }
    }
    return new JointContact(force.negate(), turning);
  }

  /**
   * How large it is.
   *
   * @return newtons
   */
  public double size() {
    return force.getNorm();
  }

  /**
   * Its component along a direction.
   *
   * @param direction in the world, any length but zero; along the distal bone, away from the joint,
   *     a positive answer is compression
   * @return newtons
   */
  public double along(Vector3D direction) {
    return force.dotProduct(direction.normalize());
  }

  /**
   * Its size across a direction: the shear, where the direction is the bone's.
   *
   * @param direction in the world, any length but zero
   * @return newtons, zero or more
   */
  public double across(Vector3D direction) {
    return force.crossProduct(direction.normalize()).getNorm();
  }
}
