package org.leverbook.lever;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Freedom;
import org.leverbook.body.SegmentTree;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.LineOfForce;

/**
 * A straight muscle or tendon between two segments. It pulls its two ends towards each other with
 * equal and opposite forces.
 *
 * <p>The arm about a joint axis with angle q obeys arm = -dL/dq, L being the length (the principle
 * of virtual work); {@code LineOfPullTest} compares the two.
 *
 * @param name as in "biceps"
 * @param originSegment index of the segment of one end
 * @param origin that end, in the segment's frame, metres
 * @param insertionSegment index of the segment of the other end
 * @param insertion that end, in the segment's frame, metres
 */
public record LineOfPull(
    String name, int originSegment, Vector3D origin, int insertionSegment, Vector3D insertion) {

  /**
   * A line between two points that are known.
   *
   * @param tree whose segments
   * @param name as in "biceps"
   * @param originSegment full name of one segment
   * @param origin in its frame, metres
   * @param insertionSegment full name of the other
   * @param insertion in its frame, metres
   * @return the line
   * @throws Refused if a segment is unknown, or both are the same
   */
  public static LineOfPull between(
      SegmentTree tree,
      String name,
      String originSegment,
      Vector3D origin,
      String insertionSegment,
      Vector3D insertion) {
    if (originSegment.equals(insertionSegment)) {
      throw new Refused(
          "The "
              + name
              + " has both ends on the "
              + originSegment
              + " and moves no joint. Put one end on another segment.");
    }
    return new LineOfPull(
        name, tree.indexOf(originSegment), origin, tree.indexOf(insertionSegment), insertion);
  }

  /**
   * A line known by one end and its direction, as drawings give it; the other end is put one metre
   * on, which changes no force.
   *
   * @param where where the segments are
   * @param name as in "biceps"
   * @param insertionSegment full name of the segment with the known end
   * @param insertion that end, in its frame, metres
   * @param originSegment full name of the segment towards which it pulls
   * @param direction in the world, away from the known end, any length but zero
   * @return the line
   * @throws Refused if a segment is unknown, or the direction has no length
   */
  public static LineOfPull towards(
      Placement where,
      String name,
      String insertionSegment,
      Vector3D insertion,
      String originSegment,
      Vector3D direction) {
    SegmentTree tree = where.tree();
    int inner = tree.indexOf(originSegment);
    int outer = tree.indexOf(insertionSegment);
    Vector3D end = where.toWorld(outer, insertion);
    Vector3D unit = new LineOfForce(outer, end, direction).direction();
    Vector3D origin = where.toLocal(inner, end.add(unit));
    return between(tree, name, originSegment, origin, insertionSegment, insertion);
  }

  /**
   * How long it is.
   *
   * @param where where the segments are
   * @return metres
   */
  public double length(Placement where) {
    return where
        .toWorld(originSegment, origin)
        .distance(where.toWorld(insertionSegment, insertion));
  }

  /**
   * Whether it crosses a joint: one end on each side of it.
   *
   * @param tree whose joints
   * @param distal index of the segment that hangs on the joint
   * @return true if pulling can turn the joint
   */
  public boolean crosses(SegmentTree tree, int distal) {
    return tree.hangsOn(originSegment, distal) != tree.hangsOn(insertionSegment, distal);
  }

  /**
   * How it pulls on what is distal to a joint.
   *
   * @param where where the segments are
   * @param distal index of the segment that hangs on the joint
   * @return the line, from its distal end towards its other one
   * @throws Refused if it does not cross the joint
   */
  public LineOfForce on(Placement where, int distal) {
    if (!crosses(where.tree(), distal)) {
      throw new Refused(
          "The "
              + name
              + " does not cross the "
              + where.tree().segment(distal).joint().fullName()
              + ", so it cannot hold it. Name a muscle with one end on each side of the joint.");
    }
    Vector3D from = where.toWorld(originSegment, origin);
    Vector3D to = where.toWorld(insertionSegment, insertion);
    return where.tree().hangsOn(insertionSegment, distal)
        ? new LineOfForce(insertionSegment, to, from.subtract(to))
        : new LineOfForce(originSegment, from, to.subtract(from));
  }

  /**
   * Its arm about one anatomical axis.
   *
   * @param where where the segments are
   * @param joint the joint's full name
   * @param axis flexion, abduction or rotation
   * @return metres; positive where pulling turns the joint in the motion's positive direction
   * @throws Refused if it does not cross the joint, or the joint has no such axis
   */
  public double arm(Placement where, String joint, String axis) {
    SegmentTree tree = where.tree();
    int distal = tree.distalOf(joint);
    Vector3D about = where.axis(tree.angleOf(joint, axis));
    return on(where, distal).arm(where.origin(distal), about);
  }

  /**
   * Which way the joint turns when it pulls.
   *
   * @param where where the segments are
   * @param joint the joint's full name
   * @param axis flexion, abduction or rotation
   * @return a verb, as in "flex"
   */
  public String action(Placement where, String joint, String axis) {
    // Refuses, with the axes there are, where the joint does not turn about this one.
    where.tree().angleOf(joint, axis);
    Freedom freedom =
        where.tree().segment(where.tree().distalOf(joint)).joint().freedom(axis).orElseThrow();
    return freedom.motion().verb(arm(where, joint, axis));
  }
}
