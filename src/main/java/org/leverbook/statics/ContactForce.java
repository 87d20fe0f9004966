package org.leverbook.statics;

import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;
import org.leverbook.display.Shown;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;

/**
 * The net force that passes through a joint, in the frame of its distal bone, before any muscle
 * pulls: gravity, loads and supports on everything distal must be answered by it. Muscles press the
 * bones together far harder, so this is the least the joint carries along its axis, not what it
 * feels.
 *
 * <p>Signs by worked cases: standing on both legs, half of what is above the knee presses it
 * together: compression positive. A bar in a hanging hand draws the elbow apart: compression
 * negative. A trunk leaned forward level: its weight pushes each vertebra's upper neighbour towards
 * the belly: forward shear positive.
 *
 * <p>For the ankle and the ball of the foot the axis is the sole's normal, as the foot's length
 * lies across the push; for the shoulder girdle it is the collar bone, and its "lateral" shear is
 * upward.
 *
 * @param joint full name, as in "right knee"
 * @param compression along the distal bone, or normal to the disc, newtons; negative where the
 *     joint is drawn apart
 * @param forward shear: how hard the resistance pushes the distal bone (of the spine: the upper
 *     one) forward, newtons
 * @param outward shear towards the bone's outer side (of the midline: to the right; of the shoulder
 *     girdle: upward), newtons
 */
public record ContactForce(String joint, double compression, double forward, double outward)
    implements Shown {

  /**
   * The net force of one joint.
   *
   * @param moment what the resistance asks of it
   * @param where where the body is
   * @return the force in the bone's frame
   */
  static ContactForce of(JointMoment moment, Placement where) {
    int distal = where.tree().distalOf(moment.joint().fullName());
    Frame bone = where.frame(distal);
    Side side = moment.joint().side();
    Vector3D force = moment.force();
    double sideways = side == Side.MIDLINE ? 1 : side.sign();
    Vector3D outward = bone.z().scalarMultiply(sideways);
    if (moment.joint().name().equals("shoulder girdle")) {
      return new ContactForce(
          moment.joint().fullName(),
          -force.dotProduct(outward),
          force.dotProduct(bone.x()),
          force.dotProduct(bone.y()));
    }
    // Limbs hang down from their joint, the spine and the head stand up from theirs.
    double up = side == Side.MIDLINE ? -1 : 1;
    return new ContactForce(
        moment.joint().fullName(),
        up * force.dotProduct(bone.y()),
        force.dotProduct(bone.x()),
        force.dotProduct(outward));
  }

  /**
   * The whole of it.
   *
   * @return newtons, zero or more
   */
  public double size() {
    return Math.sqrt(compression * compression + forward * forward + outward * outward);
  }

  @Override
  public String text() {
    return String.format(
        Locale.ROOT,
        "%s: %.0f N %s, shear %.0f N %s, %.0f N %s, before muscles",
        joint,
        Math.abs(compression),
        compression < 0 ? "apart" : "together",
        Math.abs(forward),
        forward < 0 ? "backward" : "forward",
        Math.abs(outward),
        outward < 0 ? "inward" : "outward");
  }

  @Override
  public String toString() {
    return text();
  }
}
