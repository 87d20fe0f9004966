package org.leverbook.muscle;

import org.leverbook.pose.Pose;

/** How one muscle turns one joint about one of its axes. */
public sealed interface Crossing permits PlainCrossing, ShoulderCrossing {

  /**
   * The axis it turns, as the place of its angle in the tree's order. For the flexion of a shoulder
   * see {@link Musculature#axis}.
   *
   * @return the index
   */
  int axis();

  /**
   * The part of the muscle's pull that crosses this joint: of a long muscle of the back, only the
   * fibres that run past the level.
   *
   * @return more than 0, at most 1
   */
  double share();

  /**
   * The arm of the fibres that cross.
   *
   * @param pose of the body this belongs to
   * @return metres; positive where the pull turns the joint in the axis' positive direction
   */
  double arm(Pose pose);

  /**
   * The values behind it: where they come from, how sure they are.
   *
   * @return one series; for a shoulder that of the table that matters most about this axis
   */
  ArmSeries series();
}
