package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.pose.Placement;

/**
 * Where a muscle runs, for pictures: it passes each joint that it crosses at the arm it has there
 * in this pose.
 *
 * <p>A pull along the unit vector u (from the distal to the proximal side) turns about an axis a as
 * {@code (r × u) · a}, which is the arm where {@code r = arm · (u × a)}, for u square to a. So the
 * point that the path passes is the joint's centre plus the sum of these over the joint's axes. Of
 * u only the bones are known: half-way between both (assumption). Ends are drawn by eye (no source)
 * and carry no number.
 */
public final class MusclePath {

  /** Beyond the first and the last joint a path goes on along the bone, drawn by eye, metres. */
  private static final double VERTEBRA = 0.02;

  private static final Map<String, Double> BEFORE =
      Map.of("knee", 0.25, "ankle", 0.25, "elbow", 0.17, "wrist", 0.17);

  private static final Map<String, Double> AFTER =
      Map.of("hip", 0.12, "shoulder", 0.12, "knee", 0.07, "elbow", 0.05);

  /** On the trunk: of one joint from the pelvis' crest, of two from close to the hip. */
  private static final double CREST = 0.08;

  private static final double CLOSE = 0.02;

  private MusclePath() {}

  /**
   * The path of one muscle.
   *
   * @param effort of this pose
   * @param where the pose, placed
   * @param strand its place among {@link Musculature#strands()}
   * @return points in the world from the trunk outward; empty for muscles of shoulder girdle and
   *     neck, whose paths wrap too much to be told by arms, and for the diaphragm's like, which
   *     turn nothing
   */
  public static List<Vector3D> of(Effort effort, Placement where, int strand) {
    Musculature muscles = effort.muscles();
    SegmentTree tree = where.tree();
    TreeMap<Integer, Vector3D> passes = new TreeMap<>();
    for (Crossing crossing : muscles.strands().get(strand).crossings()) {
      int segment = Held.segment(tree, crossing.axis());
      Vector3D axis = Musculature.axis(crossing.axis(), where);
      Vector3D along = pull(where, segment);
      double arm = crossing.arm(where.pose());
      Vector3D aside = along.crossProduct(axis).scalarMultiply(arm);
      passes.merge(segment, aside, Vector3D::add);
    }
    if (passes.isEmpty() || !drawable(tree, passes)) {
      return List.of();
    }
    List<Vector3D> path = new ArrayList<>();
    passes.forEach((segment, aside) -> path.add(where.origin(segment).add(aside)));
    int first = passes.firstKey();
    int last = passes.lastKey();
    int parent = tree.segment(first).parent();
    path.add(
        0,
        path.get(0).add(outward(where, parent, first).scalarMultiply(-before(tree, first, last))));
    path.add(
        path.get(path.size() - 1)
            .add(outward(where, last, last).scalarMultiply(after(tree, last))));
    return path;
  }

  private static boolean drawable(SegmentTree tree, TreeMap<Integer, Vector3D> passes) {
    return passes.keySet().stream()
        .map(segment -> tree.segment(segment).joint().name())
        .noneMatch(
            joint ->
                joint.equals(JointId.SHOULDER_GIRDLE.word()) || joint.matches("C\\d.*|head.*"));
  }

  /** The way muscles pull at a joint: towards the trunk, half-way between both bones. */
  private static Vector3D pull(Placement where, int segment) {
    int parent = where.tree().segment(segment).parent();
    Vector3D both = outward(where, segment, segment).add(outward(where, parent, segment));
    return both.getNorm() < 0.2
        ? outward(where, segment, segment).negate()
        : both.normalize().negate();
  }

  /** Along a bone away from the trunk: limbs hang down from their joints, vertebrae stack up. */
  private static Vector3D outward(Placement where, int bone, int joint) {
    Vector3D up = where.frame(bone).y();
    return spine(where.tree(), joint) ? up : up.negate();
  }

  private static boolean spine(SegmentTree tree, int segment) {
    return tree.segment(segment).joint().name().matches("[LTC]\\d.*");
  }

  private static double before(SegmentTree tree, int first, int last) {
    if (spine(tree, first)) {
      return VERTEBRA;
    }
    double trunk = first == last ? CREST : CLOSE;
    return BEFORE.getOrDefault(tree.segment(first).joint().name(), trunk);
  }

  private static double after(SegmentTree tree, int last) {
    return spine(tree, last)
        ? VERTEBRA
        : AFTER.getOrDefault(tree.segment(last).joint().name(), 2 * VERTEBRA);
  }
}
