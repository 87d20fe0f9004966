package org.leverbook.muscle;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * What gravity, loads and supports ask of the joints in one pose, all of it together: what they do
 * to everything distal to a joint. Muscles, ligaments and bones must give the opposite.
 */
public interface JointLoads {

  /**
   * The moment about the axis of one joint angle.
   *
   * @param angle its place in the tree's order
   * @return newton metres, positive where it tends to turn the joint in the axis' positive
   *     direction
   */
  double about(int angle);

  /**
   * The force on everything distal to a joint.
   *
   * @param segment index of the segment that hangs on the joint
   * @return in the world, newtons
   */
  Vector3D force(int segment);

  /**
   * The moment on everything distal to a joint, about the joint's centre.
   *
   * @param segment index of the segment that hangs on the joint
   * @return in the world, newton metres
   */
  Vector3D moment(int segment);
}
