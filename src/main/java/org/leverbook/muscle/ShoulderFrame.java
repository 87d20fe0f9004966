package org.leverbook.muscle;

import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.pose.Pose;

/**
 * How an upper arm stands to the trunk: how far it is raised, and in which plane.
 *
 * <p>Everything as of a right arm, in the frame of the first thoracic vertebra (x forward, y up, z
 * outward); a left arm with the same angles is its mirror image.
 *
 * <p>Symbols: u the upper arm's direction, downward at rest; theta the angle between u and the
 * hanging arm; phi the plane in which it is raised, 0 forward, 90 degrees to the side; e the axis
 * about which it rises; w = e x u, which about the hanging arm points into the plane and about the
 * level arm points up; Q the upper arm's frame before it is turned about its own axis.
 */
final class ShoulderFrame {

  /** Below this sine the plane is not defined; nothing depends on it there. */
  private static final double POLE = 1e-12;

  private final int[] girdle;
  private final int[] shoulder;
  private final double[] q = new double[9];

  double theta;
  double cosTheta;
  double sinTheta;
  double cosPhi;
  double sinPhi;
  double phi;

  ShoulderFrame(SegmentTree tree, Side side) {
    String held = JointId.SHOULDER_GIRDLE.on(side);
    girdle =
        new int[] {
          tree.angleOf(held, "rotation"),
          tree.angleOf(held, "abduction"),
          tree.angleOf(held, "flexion")
        };
    String joint = JointId.SHOULDER.on(side);
    shoulder =
        new int[] {
          tree.angleOf(joint, "flexion"),
          tree.angleOf(joint, "abduction"),
          tree.angleOf(joint, "rotation")
        };
  }

  /** The places of flexion, abduction and rotation in the tree's order. */
  int[] shoulder() {
    return shoulder;
  }

  /** Takes the angles of a pose. */
  void take(Pose pose) {
    java.util.Arrays.fill(q, 0);
    q[0] = 1;
    q[4] = 1;
    q[8] = 1;
    turnY(pose.angle(girdle[0]));
    turnX(-pose.angle(girdle[1]));
    turnZ(pose.angle(girdle[2]) + pose.angle(shoulder[0]));
    turnX(-pose.angle(shoulder[1]));
    cosTheta = q[4];
    double ux = -q[1];
    double uz = -q[7];
    sinTheta = Math.hypot(ux, uz);
    cosPhi = sinTheta < POLE ? 1 : ux / sinTheta;
    sinPhi = sinTheta < POLE ? 0 : uz / sinTheta;
    theta = Math.atan2(sinTheta, cosTheta);
    phi = Math.atan2(sinPhi, cosPhi);
  }

  /**
   * A vector given along e, w and the upper arm's own axis (towards the shoulder), seen along the
   * three axes of the joint that stand square to each other.
   *
   * @param aboutE its part along e
   * @param aboutW its part along w
   * @param aboutArm its part along the upper arm, towards the shoulder
   * @param into its parts about flexion (square to the other two), abduction and inward rotation
   */
  void project(double aboutE, double aboutW, double aboutArm, double[] into) {
    double x = -sinPhi * aboutE + cosTheta * cosPhi * aboutW;
    double y = sinTheta * aboutW;
    double z = cosPhi * aboutE + cosTheta * sinPhi * aboutW;
    into[0] = q[2] * x + q[5] * y + q[8] * z;
    into[1] = -(q[0] * x + q[3] * y + q[6] * z);
    // e and w stand square to the arm: nothing of them turns it about itself.
    into[2] = aboutArm;
  }

  private void turnX(double angle) {
    turn(angle, 1, 2);
  }

  private void turnY(double angle) {
    turn(angle, 2, 0);
  }

  private void turnZ(double angle) {
    turn(angle, 0, 1);
  }

  /** Q times a turn that carries axis {@code from} towards axis {@code to}. */
  private void turn(double angle, int from, int to) {
    double cosine = Math.cos(angle);
    double sine = Math.sin(angle);
    for (int row = 0; row < 9; row += 3) {
      double a = q[row + from];
      double b = q[row + to];
      q[row + from] = cosine * a + sine * b;
      q[row + to] = cosine * b - sine * a;
    }
  }
}
