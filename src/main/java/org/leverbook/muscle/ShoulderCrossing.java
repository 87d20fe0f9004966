package org.leverbook.muscle;

import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.pose.Pose;

/**
 * One of the three ways in which a muscle turns the shoulder.
 *
 * @param tree whose angles
 * @param side left or right
 * @param axis the axis it turns
 * @param which 0 flexion, 1 abduction, 2 rotation
 * @param arms its arms in any posture
 */
record ShoulderCrossing(SegmentTree tree, Side side, int axis, int which, ShoulderArms arms)
    implements Crossing {

  @Override
  public double share() {
    return 1;
  }

  @Override
  public double arm(Pose pose) {
    ShoulderFrame frame = new ShoulderFrame(tree, side);
    frame.take(pose);
    double[] about = new double[3];
    arms.in(frame, about);
    return about[which];
  }

  @Override
  public ArmSeries series() {
    return arms.series(which);
  }
}
