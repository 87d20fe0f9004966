package org.leverbook.body;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A {@link SegmentTree} as plain arrays, for loops that run millions of times: no object is
 * followed or made in them.
 *
 * <p>Segment i occupies places 3i to 3i+2 of an array of vectors. The arrays are shared by all who
 * ask and must only be read.
 */
public final class FlatTree {

  /** A freedom about any axis; 0, 1 and 2 are x, y and z. */
  public static final byte OBLIQUE = 3;

  private final int[] parents;
  private final int[] firstAngles;
  private final double[] centres;
  private final double[] masses;
  private final double[] centresOfMass;
  private final double[] squaredRadii;
  private final double[] axes;
  private final byte[] kinds;
  private final double[] signs;

  FlatTree(SegmentTree tree) {
    int size = tree.size();
    parents = new int[size];
    firstAngles = new int[size + 1];
    centres = new double[3 * size];
    masses = new double[size];
    centresOfMass = new double[3 * size];
    squaredRadii = new double[3 * size];
    axes = new double[3 * tree.angles()];
    kinds = new byte[tree.angles()];
    signs = new double[tree.angles()];
    for (int i = 0; i < size; i++) {
      Segment segment = tree.segment(i);
      parents[i] = segment.parent();
      firstAngles[i + 1] = tree.firstAngle(i + 1);
      masses[i] = segment.mass();
      store(segment.centreOfMass(), centresOfMass, i);
      Vector3D r = segment.radii();
      store(
          new Vector3D(r.getX() * r.getX(), r.getY() * r.getY(), r.getZ() * r.getZ()),
          squaredRadii,
          i);
      if (segment.joint() != null) {
        store(segment.joint().centre(), centres, i);
        List<Freedom> freedoms = segment.joint().freedoms();
        for (int k = 0; k < freedoms.size(); k++) {
          freedom(tree.firstAngle(i) + k, freedoms.get(k).axis());
        }
      }
    }
  }

  private void freedom(int angle, Vector3D axis) {
    store(axis, axes, angle);
    double[] parts = axis.toArray();
    kinds[angle] = OBLIQUE;
    for (byte k = 0; k < 3; k++) {
      if (Math.abs(parts[k]) == 1 && parts[(k + 1) % 3] == 0 && parts[(k + 2) % 3] == 0) {
        kinds[angle] = k;
        signs[angle] = parts[k];
      }
    }
  }

  private static void store(Vector3D vector, double[] into, int index) {
    into[3 * index] = vector.getX();
    into[3 * index + 1] = vector.getY();
    into[3 * index + 2] = vector.getZ();
  }

  /**
   * The index of each segment's parent.
   *
   * @return -1 for the root
   */
  public int[] parents() {
    return parents;
  }

  /**
   * Where each segment's angles begin in the array of a pose.
   *
   * @return one more than there are segments; the last is the number of angles
   */
  public int[] firstAngles() {
    return firstAngles;
  }

  /**
   * The centre of each segment's joint in its parent's frame.
   *
   * @return metres, three a segment
   */
  public double[] centres() {
    return centres;
  }

  /**
   * The mass of each segment.
   *
   * @return kilograms
   */
  public double[] masses() {
    return masses;
  }

  /**
   * The centre of mass of each segment in its own frame.
   *
   * @return metres, three a segment
   */
  public double[] centresOfMass() {
    return centresOfMass;
  }

  /**
   * The squared radii of gyration of each segment about its own x, y and z.
   *
   * @return square metres, three a segment
   */
  public double[] squaredRadii() {
    return squaredRadii;
  }

  /**
   * The axis of each angle in the frame that its joint carries it in.
   *
   * @return unit vectors, three an angle
   */
  public double[] axes() {
    return axes;
  }

  /**
   * Which coordinate axis each angle turns about.
   *
   * @return 0, 1 or 2 for x, y or z, either way round; {@link #OBLIQUE} for any other
   */
  public byte[] kinds() {
    return kinds;
  }

  /**
   * Which way round each angle turns about its coordinate axis.
   *
   * @return 1 or -1; 0 where the axis is oblique
   */
  public double[] signs() {
    return signs;
  }
}
