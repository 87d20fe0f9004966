package org.leverbook.muscle;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * What gravity, loads and supports ask of every joint of one tree in one pose: their sums over all
 * that is distal to the joint. Muscles, bone and ligament must give the opposite.
 */
public interface JointLoads {

  /**
   * The moment about one joint axis.
   *
   * @param treeAngle which axis, by its joint angle's place in the tree's order
   * @return newton metres, positive where what acts tends to turn the joint in the motion's
   *     positive direction
   */
  double about(int treeAngle);

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
