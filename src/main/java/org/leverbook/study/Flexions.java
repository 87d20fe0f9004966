package org.leverbook.study;

import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/** How far each joint of a position is bent, on the right side where there are two. */
final class Flexions {

  private static final JointId[] JOINTS = JointId.values();
  private static final String FLEXION = "flexion";

  private final double[] degrees = new double[JOINTS.length];

  /** A bit for each joint that can flex; there are fewer than 64. */
  private final long flexing;

  private Flexions(Position position) {
    SegmentTree tree = position.body().tree();
    long found = 0;
    for (JointId joint : JOINTS) {
      Side side = joint.paired() ? Side.RIGHT : Side.MIDLINE;
      if (tree.segment(tree.distalOf(joint.on(side))).joint().freedom(FLEXION).isPresent()) {
        found |= 1L << joint.ordinal();
        degrees[joint.ordinal()] =
            Math.toDegrees(position.placement().pose().angle(joint, side, FLEXION));
      }
    }
    flexing = found;
  }

  static Flexions of(Position position) {
    return new Flexions(position);
  }

  /**
   * One of them.
   *
   * @param joint which
   * @return degrees
   * @throws Refused if that joint does not flex
   */
  double degrees(JointId joint) {
    if ((flexing & 1L << joint.ordinal()) == 0) {
      throw new Refused(
          "The " + joint.word() + " does not flex: take another joint, such as KNEE.");
    }
    return degrees[joint.ordinal()];
  }
}
