package org.leverbook.muscle;

import org.leverbook.pose.Pose;

/**
 * An angle by which arms are listed: one joint angle, or the sum over several joints as in the
 * flexion of the lumbar spine.
 *
 * @param angles places in the tree's order
 * @param sign 1, or -1 where the table counts the other way
 */
record Coordinate(int[] angles, int sign) {

  /** Its value in a pose, radians. */
  double in(Pose pose) {
    double sum = 0;
    for (int angle : angles) {
      sum += pose.angle(angle);
    }
    return sign * sum;
  }
}
