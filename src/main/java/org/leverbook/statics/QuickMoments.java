package org.leverbook.statics;

import java.util.Arrays;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.SegmentTree;
import org.leverbook.load.Gravity;
import org.leverbook.pose.ForceSums;
import org.leverbook.pose.Kinematics;
import org.leverbook.pose.Pose;

/**
 * The moments of pose after pose of one tree, in the same arrays: for grids of many poses. The same
 * sums as {@link NetLoads}, by the same kernel ({@link Kinematics}), without telling the sources
 * apart; nothing is allocated after the constructor.
 *
 * <p>Use: {@code at(pose)}, then {@code push(...)} for every force, then {@code gather()}, then
 * read. Not for two threads at once.
 */
public final class QuickMoments {

  private final Kinematics kinematics;
  private final double[] sums;
  private final double[] moments;

  /**
   * Room for one pose at a time.
   *
   * @param tree whose moments
   */
  public QuickMoments(SegmentTree tree) {
    kinematics = new Kinematics(tree);
    sums = new double[6 * tree.size()];
    moments = new double[3 * tree.size()];
  }

  /**
   * Takes a pose and weighs its segments under standard gravity; earlier forces are forgotten.
   *
   * @param pose of this tree
   */
  public void at(Pose pose) {
    at(pose, Gravity.VECTOR);
  }

  /**
   * Takes a pose and weighs its segments; earlier forces are forgotten.
   *
   * @param pose of this tree
   * @param gravity acceleration in the world, m/s2
   */
  public void at(Pose pose, Vector3D gravity) {
    Arrays.fill(sums, 0);
    kinematics.place(pose);
    kinematics.addWeights(gravity.getX(), gravity.getY(), gravity.getZ(), sums);
  }

  /**
   * Adds a force.
   *
   * @param segment which one it acts on
   * @param x where, forward, metres
   * @param y where, upward, metres
   * @param z where, to the right, metres
   * @param forceX newtons forward
   * @param forceY newtons upward
   * @param forceZ newtons to the right
   */
  public void push(
      int segment, double x, double y, double z, double forceX, double forceY, double forceZ) {
    ForceSums.add(sums, segment, x, y, z, forceX, forceY, forceZ);
  }

  /**
   * Adds a free moment.
   *
   * @param segment which one it acts on
   * @param x newton metres about the forward axis
   * @param y newton metres about the upward axis
   * @param z newton metres about the axis to the right
   */
  public void twist(int segment, double x, double y, double z) {
    sums[6 * segment + 3] += x;
    sums[6 * segment + 4] += y;
    sums[6 * segment + 5] += z;
  }

  /** Sums up over everything distal to each joint. Call once, after the last force. */
  public void gather() {
    ForceSums.gather(kinematics.tree().flat(), sums);
    kinematics.aboutCentres(sums, moments);
  }

  /**
   * The moment about the axis of one joint angle.
   *
   * @param distal index of the segment that hangs on the joint
   * @param angle which of its angles, by its place in the tree's order
   * @return newton metres, positive where what acts tends to turn the joint in the motion's
   *     positive direction
   */
  public double about(int distal, int angle) {
    return kinematics.along(moments, distal, angle);
  }

  /**
   * One part of the moment about a joint's centre.
   *
   * @param distal index of the segment that hangs on the joint
   * @param coordinate 0, 1 or 2 for x, y or z
   * @return in the world, newton metres
   */
  public double moment(int distal, int coordinate) {
    return moments[3 * distal + coordinate];
  }

  /**
   * One part of the force on everything distal to a joint.
   *
   * @param distal index of the segment that hangs on the joint
   * @param coordinate 0, 1 or 2 for x, y or z
   * @return in the world, newtons
   */
  public double force(int distal, int coordinate) {
    return sums[6 * distal + coordinate];
  }

  /**
   * Where everything is.
   *
   * @return the kernel, placed in the last pose
   */
  public Kinematics where() {
    return kinematics;
  }
}
