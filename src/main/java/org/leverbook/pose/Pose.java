package org.leverbook.pose;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Joint;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/** Joint angles of one tree, and where its root is. A value: every change gives a new pose. */
public final class Pose {

  /** Beyond this sums over the body would lose the body itself, metres. */
  private static final double FARTHEST = 1e6;

  private final SegmentTree tree;
  private final double[] angles;
  private final Vector3D rootPlace;
  private final Frame rootFrame;

  /** Made when first asked for. Several threads may make it at once; all make the same. */
  private Placement placed;

  private Pose(SegmentTree tree, double[] angles, Vector3D rootPlace, Frame rootFrame) {
    this.tree = tree;
    this.angles = angles;
    this.rootPlace = Ask.vector("place of the pelvis", rootPlace, FARTHEST, "m");
    this.rootFrame = Ask.present("frame of the pelvis", rootFrame, "Frame.WORLD");
  }

  /**
   * All angles zero, the root's frame that of the world.
   *
   * @param tree whose pose
   * @return the anatomical position, the root at the world's origin
   */
  public static Pose neutral(SegmentTree tree) {
    return new Pose(tree, new double[tree.angles()], Vector3D.ZERO, Frame.WORLD);
  }

  /**
   * A pose from all its angles.
   *
   * @param tree whose pose
   * @param angles radians, in the tree's order; copied
   * @param rootPlace the root's origin in the world, metres
   * @param rootFrame the root's orientation
   * @return the pose
   * @throws Refused if the number of angles is wrong or one is not finite
   */
  public static Pose of(SegmentTree tree, double[] angles, Vector3D rootPlace, Frame rootFrame) {
    if (angles.length != tree.angles()) {
      throw new Refused(
          "This body has "
              + tree.angles()
              + " joint angles, but "
              + angles.length
              + " were given.");
    }
    for (double angle : angles) {
      if (!Double.isFinite(angle)) {
        throw new Refused("A joint angle is " + angle + ": give a finite number.");
      }
    }
    return new Pose(tree, angles.clone(), rootPlace, rootFrame);
  }

  /**
   * The same angles with the root elsewhere.
   *
   * @param place the root's origin in the world, metres
   * @param frame the root's orientation
   * @return the changed pose
   * @throws Refused if one is missing, or the place is beyond sense
   */
  public Pose rootAt(Vector3D place, Frame frame) {
    return new Pose(tree, angles, place, frame);
  }

  /**
   * The same pose with all angles of one joint given.
   *
   * @param joint the joint's full name, as in "right hip"
   * @param radians one angle for each of its freedoms
   * @return the changed pose
   */
  public Pose with(String joint, double... radians) {
    double[] changed = angles.clone();
    int distal = tree.distalOf(joint);
    Joint bent = tree.segment(distal).joint();
    if (radians.length != bent.freedoms().size()) {
      throw new Refused(
          String.format(
              "The %s turns in %d ways, but %d angles were given.",
              joint, bent.freedoms().size(), radians.length));
    }
    System.arraycopy(radians, 0, changed, tree.firstAngle(distal), radians.length);
    return of(tree, changed, rootPlace, rootFrame);
  }

  /**
   * One angle.
   *
   * @param joint which joint
   * @param side which side; ignored for a joint of the midline
   * @param axis flexion, abduction or rotation
   * @return radians
   */
  public double angle(JointId joint, Side side, String axis) {
    return angles[tree.angleOf(joint.on(side), axis)];
  }

  /**
   * One angle by its place.
   *
   * @param index its place in the tree's order
   * @return radians
   */
  public double angle(int index) {
    return angles[index];
  }

  /** Writes all angles, radians, in the tree's order. */
  void copyAngles(double[] into) {
    System.arraycopy(angles, 0, into, 0, angles.length);
  }

  /**
   * Whose pose it is.
   *
   * @return the tree
   */
  public SegmentTree tree() {
    return tree;
  }

  /**
   * The root's origin.
   *
   * @return in the world, metres
   */
  public Vector3D rootPlace() {
    return rootPlace;
  }

  /**
   * The root's orientation.
   *
   * @return its frame
   */
  public Frame rootFrame() {
    return rootFrame;
  }

  /**
   * Where everything is in this pose.
   *
   * @return frames and joint centres in the world
   */
  public Placement placed() {
    Placement known = placed;
    if (known == null) {
      known = Placement.of(this);
      placed = known;
    }
    return known;
  }
}
