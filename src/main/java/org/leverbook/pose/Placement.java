package org.leverbook.pose;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Place;
import org.leverbook.body.SegmentTree;

/**
 * Where every segment and joint of a pose is in the world.
 *
 * <p>A {@link Kinematics} of its own, placed once and never again.
 */
public final class Placement {

  private final Pose pose;
  private final SegmentTree tree;
  private final Kinematics kinematics;
  private final double[] origins;
  private final double[] frames;
  private final double[] axes;

  private Placement(Pose pose) {
    this.pose = pose;
    this.tree = pose.tree();
    kinematics = new Kinematics(tree);
    kinematics.place(pose);
    origins = kinematics.origins;
    frames = kinematics.frames;
    axes = kinematics.axes;
  }

  static Placement of(Pose pose) {
    return new Placement(pose);
  }

  /**
   * Adds the weight of every segment to sums of force and of moment about the world's origin.
   *
   * @param gravity acceleration in the world, m/s2
   * @param sums six a segment: force in newtons, moment in newton metres; added to
   */
  public void addWeights(Vector3D gravity, double[] sums) {
    kinematics.addWeights(gravity.getX(), gravity.getY(), gravity.getZ(), sums);
  }

  /**
   * The pose this follows from.
   *
   * @return the pose
   */
  public Pose pose() {
    return pose;
  }

  /**
   * The tree that is placed.
   *
   * @return the tree
   */
  public SegmentTree tree() {
    return tree;
  }

  /**
   * The origin of a segment: the centre of the joint that holds it.
   *
   * @param segment its index
   * @return in the world, metres
   */
  public Vector3D origin(int segment) {
    return new Vector3D(origins[3 * segment], origins[3 * segment + 1], origins[3 * segment + 2]);
  }

  /**
   * The centre of a joint.
   *
   * @param joint its full name, as in "right hip"
   * @return in the world, metres
   */
  public Vector3D centre(String joint) {
    return origin(tree.distalOf(joint));
  }

  /**
   * A point of a segment.
   *
   * @param segment its index
   * @param local in the segment's frame, metres
   * @return in the world, metres
   */
  public Vector3D toWorld(int segment, Vector3D local) {
    return origin(segment).add(Matrices.apply(frames, 9 * segment, local));
  }

  /**
   * A named place of the body.
   *
   * @param place which, of this tree
   * @return in the world, metres
   */
  public Vector3D at(Place place) {
    return toWorld(place.segment(), place.local());
  }

  /**
   * A point of the world as its segment sees it.
   *
   * @param segment its index
   * @param world in the world, metres
   * @return in the segment's frame, metres
   */
  public Vector3D toLocal(int segment, Vector3D world) {
    return frame(segment).toLocal(world.subtract(origin(segment)));
  }

  /**
   * The orientation of a segment.
   *
   * @param segment its index
   * @return its frame
   */
  public Frame frame(int segment) {
    int i = 9 * segment;
    return new Frame(
        new Vector3D(frames[i], frames[i + 3], frames[i + 6]),
        new Vector3D(frames[i + 1], frames[i + 4], frames[i + 7]),
        new Vector3D(frames[i + 2], frames[i + 5], frames[i + 8]));
  }

  /**
   * The axis of one joint angle, as its joint carries it.
   *
   * @param angle its place in the tree's order
   * @return unit vector in the world
   */
  public Vector3D axis(int angle) {
    return new Vector3D(axes[3 * angle], axes[3 * angle + 1], axes[3 * angle + 2]);
  }

  /**
   * The centre of mass of a segment.
   *
   * @param segment its index
   * @return in the world, metres
   */
  public Vector3D centreOfMass(int segment) {
    return toWorld(segment, tree.segment(segment).centreOfMass());
  }

  /**
   * The centre of mass of all segments.
   *
   * @return in the world, metres
   */
  public Vector3D centreOfMass() {
    Vector3D sum = Vector3D.ZERO;
    for (int i = 0; i < tree.size(); i++) {
      sum = sum.add(centreOfMass(i).scalarMultiply(tree.segment(i).mass()));
    }
    return sum.scalarMultiply(1 / tree.mass());
  }
}
