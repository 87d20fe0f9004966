package org.leverbook.solve;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.FlatTree;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;

/**
 * Where left and right go alike and the pelvis stands square, the left limbs are the mirror image
 * of the right ones and need not be placed: what is said of them is said of their twins.
 */
final class Halves {

  /** For each segment of a left limb its twin on the right; for any other itself. */
  private final int[] twins;

  /** Whether a segment belongs to a right limb. */
  private final boolean[] right;

  private Halves(int[] twins, boolean[] right) {
    this.twins = twins;
    this.right = right;
  }

  /**
   * The halves of a tree.
   *
   * @param tree whose
   * @return null where the sides differ
   */
  static Halves of(SegmentTree tree) {
    int[] twins = new int[tree.size()];
    boolean[] right = new boolean[twins.length];
    for (int i = 0; i < twins.length; i++) {
      twins[i] = i;
    }
    for (JointId joint : JointId.values()) {
      if (joint.paired() && tree.hasJoint(joint.on(Side.LEFT))) {
        int twin = tree.distalOf(joint.on(Side.RIGHT));
        twins[tree.distalOf(joint.on(Side.LEFT))] = twin;
        right[twin] = true;
      }
    }
    Halves halves = new Halves(twins, right);
    for (int i = 0; i < twins.length; i++) {
      if (!right[i] && !halves.mirrors(tree.flat(), i)) {
        return null;
      }
    }
    return halves;
  }

  private boolean mirrors(FlatTree flat, int segment) {
    int twin = twins[segment];
    int[] first = flat.firstAngles();
    int count = first[segment + 1] - first[segment];
    boolean same =
        flat.masses()[segment] == flat.masses()[twin]
            && first[twin + 1] - first[twin] == count
            && (segment == 0 || twins[flat.parents()[segment]] == flat.parents()[twin])
            && opposite(flat.centres(), segment, twin)
            && opposite(flat.centresOfMass(), segment, twin);
    for (int k = 0; same && twin != segment && k < count; k++) {
      int one = 3 * (first[segment] + k);
      int other = 3 * (first[twin] + k);
      double[] axes = flat.axes();
      same =
          axes[one] == -axes[other]
              && axes[one + 1] == -axes[other + 1]
              && axes[one + 2] == axes[other + 2];
    }
    return same;
  }

  private static boolean opposite(double[] places, int one, int other) {
    return places[3 * one] == places[3 * other]
        && places[3 * one + 1] == places[3 * other + 1]
        && places[3 * one + 2] == -places[3 * other + 2];
  }

  /** Whether a segment belongs to a left limb. */
  boolean left(int segment) {
    return twins[segment] != segment;
  }

  /** How many segments one stands for: none on the left, two on the right. */
  int counts(int segment) {
    return left(segment) ? 0 : right[segment] ? 2 : 1;
  }

  /** Whether a feature is of a left limb, or between two of which one is. */
  boolean left(Feature feature) {
    if (feature instanceof Feature.Point point) {
      return left(point.segment());
    }
    if (feature instanceof Feature.Direction direction) {
      return left(direction.segment());
    }
    return feature instanceof Feature.Way way && (left(way.from()) || left(way.to()));
  }

  /** Whether no statement needs a left limb beside the right one. */
  boolean suffice(Statements said) {
    return said.said().stream()
        .flatMap(statement -> statement.rows().stream())
        .noneMatch(
            row ->
                row.products.stream().anyMatch(p -> left(p.one()) || left(p.other()))
                    || row.along.stream()
                        .anyMatch(a -> a.feature() instanceof Feature.Way && left(a.feature())));
  }

  /** What is said of a left limb, said of the right one. */
  Row.Along twin(Row.Along said) {
    if (said.feature() instanceof Feature.Point point && left(point.segment())) {
      return new Row.Along(
          new Feature.Point(twins[point.segment()], across(point.local())),
          across(said.direction()));
    }
    if (said.feature() instanceof Feature.Direction direction && left(direction.segment())) {
      return new Row.Along(
          new Feature.Direction(twins[direction.segment()], across(direction.local())),
          across(said.direction()));
    }
    return said;
  }

  private static Vector3D across(Vector3D v) {
    return new Vector3D(v.getX(), v.getY(), -v.getZ());
  }
}
