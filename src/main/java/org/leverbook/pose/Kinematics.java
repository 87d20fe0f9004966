package org.leverbook.pose;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.FlatTree;
import org.leverbook.body.SegmentTree;

/**
 * Places a tree in the world, pose after pose, in the same arrays: the inner loop under every
 * {@link Placement} and every grid of poses. Nothing is allocated after the constructor.
 *
 * <p>Parents come before children, so one pass from the root composes all frames: a joint's centre
 * is a point of the parent; its frame is the parent's, turned about each of its axes in order.
 * Turning about the frame's own x, y or z mixes two of its columns and leaves the third.
 *
 * <p>Not for use by two threads at once.
 */
public final class Kinematics {

  private final SegmentTree tree;
  private final FlatTree flat;
  private final int[] parents;
  private final int[] firstAngles;
  private final double[] centres;
  private final double[] signs;
  private final byte[] kinds;
  private final boolean[] oblique;
  private final double[] sines;
  private final double[] cosines;
  private final double[] angles;

  /** The segments that are placed, and the angles that turn them, in order. */
  private final int[] placed;

  private final int[] turning;

  /** For each segment the place of its first turning angle among them. */
  private final int[] firstTurning;

  /** The values of the turning angles; the angles themselves where all turn. */
  private final double[] turned;

  private final double[] rest;
  private final double[] halfTurns;
  private final double[] scratch = new double[27];

  final double[] origins;
  final double[] frames;
  final double[] axes;

  /**
   * Room for one pose at a time.
   *
   * @param tree whose poses
   */
  public Kinematics(SegmentTree tree) {
    this(tree, all(tree.size()), all(tree.angles()));
  }

  /**
   * For some of a tree's segments, and as if the other angles were zero: their sines need not be
   * known then. What is left out keeps frames and axes of zeros.
   *
   * @param tree the tree
   * @param segments which are asked for, with all that carry them
   * @param turns which angles turn; others count as zero
   */
  public Kinematics(SegmentTree tree, boolean[] segments, boolean[] turns) {
    this.tree = tree;
    flat = tree.flat();
    parents = flat.parents();
    firstAngles = flat.firstAngles();
    centres = flat.centres();
    signs = flat.signs();
    kinds = flat.kinds();
    oblique = new boolean[tree.size()];
    firstTurning = new int[tree.size() + 1];
    int[] found = new int[tree.angles()];
    int count = 0;
    for (int i = 0; i < oblique.length; i++) {
      for (int angle = firstAngles[i]; angle < firstAngles[i + 1]; angle++) {
        if (segments[i] && turns[angle]) {
          found[count++] = angle;
          oblique[i] |= kinds[angle] == FlatTree.OBLIQUE;
        }
      }
      firstTurning[i + 1] = count;
    }
    turning = Arrays.copyOf(found, count);
    placed = IntStream.range(1, tree.size()).filter(i -> segments[i]).toArray();
    origins = new double[3 * tree.size()];
    frames = new double[9 * tree.size()];
    axes = new double[3 * tree.angles()];
    angles = new double[tree.angles()];
    turned = count == angles.length ? angles : new double[count];
    sines = new double[count];
    cosines = new double[count];
    rest = new double[count];
    halfTurns = new double[count];
  }

  private static boolean[] all(int size) {
    boolean[] all = new boolean[size];
    Arrays.fill(all, true);
    return all;
  }

  /**
   * Takes a pose; what was there before is overwritten.
   *
   * @param pose of this tree
   */
  public void place(Pose pose) {
    pose.copyAngles(angles);
    Vector3D root = pose.rootPlace();
    origins[0] = root.getX();
    origins[1] = root.getY();
    origins[2] = root.getZ();
    pose.rootFrame().writeTo(frames);
    compose();
  }

  /**
   * Takes a pose as plain numbers; what was there before is overwritten.
   *
   * @param radians joint angles in the tree's order
   * @param place the root's origin in the world, metres, three
   * @param rows the root's frame: the matrix whose columns are its axes in the world, row by row
   */
  public void place(double[] radians, double[] place, double[] rows) {
    System.arraycopy(radians, 0, angles, 0, angles.length);
    System.arraycopy(place, 0, origins, 0, 3);
    System.arraycopy(rows, 0, frames, 0, 9);
    compose();
  }

  /** From angles, and the root's origin and frame, to everything else. */
  private void compose() {
    if (turned != angles) {
      for (int k = 0; k < turned.length; k++) {
        turned[k] = angles[turning[k]];
      }
    }
    Sines.of(turned, sines, cosines, rest, halfTurns);
    for (int i : placed) {
      int from = 9 * parents[i];
      locate(i, from, 3 * parents[i]);
      if (oblique[i]) {
        turnObliquely(i, from);
      } else {
        turn(i, from);
      }
    }
  }

  /** Puts a segment's origin on its parent. */
  private void locate(int segment, int from, int parent) {
    double[] f = frames;
    int at = 3 * segment;
    double x = centres[at];
    double y = centres[at + 1];
    double z = centres[at + 2];
    origins[at] = origins[parent] + f[from] * x + f[from + 1] * y + f[from + 2] * z;
    origins[at + 1] = origins[parent + 1] + f[from + 3] * x + f[from + 4] * y + f[from + 5] * z;
    origins[at + 2] = origins[parent + 2] + f[from + 6] * x + f[from + 7] * y + f[from + 8] * z;
  }

  /**
   * Turns a segment on its parent about its freedoms, each one of the frame's own axes. The nine
   * entries stay in local variables meanwhile: in arrays the same work takes half as long again.
   */
  private void turn(int segment, int from) {
    double[] f = frames;
    double[] out = axes;
    double x0 = f[from];
    double y0 = f[from + 1];
    double z0 = f[from + 2];
    double x1 = f[from + 3];
    double y1 = f[from + 4];
    double z1 = f[from + 5];
    double x2 = f[from + 6];
    double y2 = f[from + 7];
    double z2 = f[from + 8];
    int last = firstTurning[segment + 1];
    for (int k = firstTurning[segment]; k < last; k++) {
      int angle = turning[k];
      double sign = signs[angle];
      double s = sign * sines[k];
      double c = cosines[k];
      int a = 3 * angle;
      double t0;
      double t1;
      double t2;
      switch (kinds[angle]) {
        case 0 -> {
          note(out, a, sign * x0, sign * x1, sign * x2);
          t0 = c * y0 + s * z0;
          t1 = c * y1 + s * z1;
          t2 = c * y2 + s * z2;
          z0 = c * z0 - s * y0;
          z1 = c * z1 - s * y1;
          z2 = c * z2 - s * y2;
          y0 = t0;
          y1 = t1;
          y2 = t2;
        }
        case 1 -> {
          note(out, a, sign * y0, sign * y1, sign * y2);
          t0 = c * z0 + s * x0;
          t1 = c * z1 + s * x1;
          t2 = c * z2 + s * x2;
          x0 = c * x0 - s * z0;
          x1 = c * x1 - s * z1;
          x2 = c * x2 - s * z2;
          z0 = t0;
          z1 = t1;
          z2 = t2;
        }
        case 2 -> {
          note(out, a, sign * z0, sign * z1, sign * z2);
          t0 = c * x0 + s * y0;
          t1 = c * x1 + s * y1;
          t2 = c * x2 + s * y2;
          y0 = c * y0 - s * x0;
          y1 = c * y1 - s * x1;
          y2 = c * y2 - s * x2;
          x0 = t0;
          x1 = t1;
          x2 = t2;
        }
        default -> throw new IllegalStateException("An oblique axis.");
      }
    }
    int to = 9 * segment;
    note(f, to, x0, y0, z0);
    note(f, to + 3, x1, y1, z1);
    note(f, to + 6, x2, y2, z2);
  }

  private static void note(double[] into, int at, double a, double b, double c) {
    into[at] = a;
    into[at + 1] = b;
    into[at + 2] = c;
  }

  /** Turns a segment on its parent about freedoms of any direction. */
  private void turnObliquely(int segment, int from) {
    double[] local = flat.axes();
    double[] m = scratch;
    System.arraycopy(frames, from, m, 0, 9);
    for (int k = firstTurning[segment]; k < firstTurning[segment + 1]; k++) {
      int a = 3 * turning[k];
      double x = local[a];
      double y = local[a + 1];
      double z = local[a + 2];
      for (int row = 0; row < 3; row++) {
        axes[a + row] = m[3 * row] * x + m[3 * row + 1] * y + m[3 * row + 2] * z;
      }
      Matrices.about(x, y, z, sines[k], cosines[k], m, 9);
      Matrices.multiply(m, 0, m, 9, m, 18);
      System.arraycopy(m, 18, m, 0, 9);
    }
    System.arraycopy(m, 0, frames, 9 * segment, 9);
  }

  /**
   * Adds the weight of every segment to sums of force and of moment about the world's origin.
   *
   * @param gravityX forward part of the acceleration of gravity, m/s2
   * @param gravityY its upward part
   * @param gravityZ its part to the right
   * @param sums six a segment: force in newtons, moment in newton metres; added to
   */
  public void addWeights(double gravityX, double gravityY, double gravityZ, double[] sums) {
    double[] masses = flat.masses();
    double[] local = flat.centresOfMass();
    double[] f = frames;
    for (int i = 0; i < masses.length; i++) {
      double mass = masses[i];
      if (mass == 0) {
        continue;
      }
      int m = 9 * i;
      double cx = local[3 * i];
      double cy = local[3 * i + 1];
      double cz = local[3 * i + 2];
      double x = origins[3 * i] + (f[m] * cx + f[m + 1] * cy + f[m + 2] * cz);
      double y = origins[3 * i + 1] + (f[m + 3] * cx + f[m + 4] * cy + f[m + 5] * cz);
      double z = origins[3 * i + 2] + (f[m + 6] * cx + f[m + 7] * cy + f[m + 8] * cz);
      ForceSums.add(sums, i, x, y, z, mass * gravityX, mass * gravityY, mass * gravityZ);
    }
  }

  /**
   * Moves the moments of gathered sums from the world's origin to each joint's centre c: M - c x F.
   *
   * @param sums gathered, six a segment
   * @param moments three a segment, newton metres; written
   */
  public void aboutCentres(double[] sums, double[] moments) {
    for (int i = 0; i < parents.length; i++) {
      int at = 3 * i;
      int s = 6 * i;
      double x = origins[at];
      double y = origins[at + 1];
      double z = origins[at + 2];
      moments[at] = sums[s + 3] - (y * sums[s + 2] - z * sums[s + 1]);
      moments[at + 1] = sums[s + 4] - (z * sums[s] - x * sums[s + 2]);
      moments[at + 2] = sums[s + 5] - (x * sums[s + 1] - y * sums[s]);
    }
  }

  /**
   * The part of a vector of one segment along the axis of an angle.
   *
   * @param vectors three a segment
   * @param segment whose vector
   * @param angle whose axis
   * @return the component, in the unit of the vectors
   */
  public double along(double[] vectors, int segment, int angle) {
    return vectors[3 * segment] * axes[3 * angle]
        + vectors[3 * segment + 1] * axes[3 * angle + 1]
        + vectors[3 * segment + 2] * axes[3 * angle + 2];
  }

  /**
   * One coordinate of a segment's origin, the centre of the joint that holds it.
   *
   * @param segment its index
   * @param coordinate 0, 1 or 2 for x, y or z
   * @return in the world, metres
   */
  public double origin(int segment, int coordinate) {
    return origins[3 * segment + coordinate];
  }

  /**
   * One coordinate of a point that goes with a segment.
   *
   * @param segment its index
   * @param coordinate 0, 1 or 2 for x, y or z of the world
   * @param x of the point in the segment's frame, metres
   * @param y of the point in the segment's frame, metres
   * @param z of the point in the segment's frame, metres
   * @return in the world, metres
   */
  public double coordinate(int segment, int coordinate, double x, double y, double z) {
    int row = 9 * segment + 3 * coordinate;
    return origins[3 * segment + coordinate]
        + (frames[row] * x + frames[row + 1] * y + frames[row + 2] * z);
  }

  /**
   * One component of the axis that an angle turns about.
   *
   * @param angle its place in the tree's order
   * @param coordinate 0, 1 or 2 for x, y or z of the world
   * @return of a unit vector
   */
  public double axis(int angle, int coordinate) {
    return axes[3 * angle + coordinate];
  }

  /**
   * One coordinate of a direction that goes with a segment.
   *
   * @param segment its index
   * @param coordinate 0, 1 or 2 for x, y or z of the world
   * @param x of the direction in the segment's frame
   * @param y of the direction in the segment's frame
   * @param z of the direction in the segment's frame
   * @return in the world
   */
  public double direction(int segment, int coordinate, double x, double y, double z) {
    int row = 9 * segment + 3 * coordinate;
    return frames[row] * x + frames[row + 1] * y + frames[row + 2] * z;
  }

  /**
   * Whose poses it takes.
   *
   * @return the tree
   */
  public SegmentTree tree() {
    return tree;
  }
}
