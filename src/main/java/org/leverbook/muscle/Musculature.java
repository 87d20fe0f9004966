package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.body.Variation;
import org.leverbook.data.Recent;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;

/**
 * All muscles of both sides of a person, on the axes of that person's joints.
 *
 * <p>The arms in one pose are a table: a row for each axis that any muscle turns ({@link #axes()}),
 * a column for each muscle ({@link #strands()}). A muscle that pulls with F newtons turns the joint
 * of a row by F times the number there, in newton metres.
 *
 * <p>What is not in it: the turning of the shoulder blade on the ribs (the body's shoulder girdle
 * is one piece), rotation of the forearm (no pronator's arm is known), fingers and toes, deep hip
 * rotators, neck flexors, muscles between ribs. Axes that only bone and ligament hold have no row.
 */
public final class Musculature {

  /** How many are kept, as many as bodies. */
  private static final int KEPT = 64;

  private static final Recent<Body, Musculature> KNOWN =
      new Recent<>(
          KEPT,
          body -> new Musculature(body, Scaling.of(body.person()), body.person().variation()));

  private final SegmentTree tree;
  private final List<Strand> strands;
  private final int[] axes;
  private final int[] rowOf;
  private final double[] held;
  private final PlainCrossing[] moving;
  private final int[] movingCell;
  private final Map<Side, List<Shoulder>> shoulders;

  /** A muscle of a shoulder and the column in which it stands. */
  private record Shoulder(int column, ShoulderArms arms) {}

  private Musculature(Body body, Scaling scaling, Variation varied) {
    tree = body.tree();
    strands = new StrandBuilder(tree, scaling, varied).strands();
    TreeSet<Integer> turned = new TreeSet<>();
    strands.forEach(s -> s.crossings().forEach(c -> turned.add(c.axis())));
    axes = turned.stream().mapToInt(Integer::intValue).toArray();
    rowOf = new int[tree.angles()];
    Arrays.fill(rowOf, -1);
    for (int row = 0; row < axes.length; row++) {
      rowOf[axes[row]] = row;
    }
    shoulders = Map.of(Side.RIGHT, new ArrayList<>(), Side.LEFT, new ArrayList<>());
    held = new double[axes.length * strands.size()];
    List<PlainCrossing> found = new ArrayList<>();
    List<Integer> cells = new ArrayList<>();
    for (int column = 0; column < strands.size(); column++) {
      for (Crossing crossing : strands.get(column).crossings()) {
        int cell = rowOf[crossing.axis()] * strands.size() + column;
        if (crossing instanceof ShoulderCrossing one) {
          if (one.which() == 0) {
            shoulders.get(one.side()).add(new Shoulder(column, one.arms()));
          }
        } else if (crossing instanceof PlainCrossing one && one.moves()) {
          found.add(one);
          cells.add(cell);
        } else {
          held[cell] = crossing.share() * crossing.arm(Pose.neutral(tree));
        }
      }
    }
    moving = found.toArray(PlainCrossing[]::new);
    movingCell = cells.stream().mapToInt(Integer::intValue).toArray();
  }

  /**
   * The muscles of a body.
   *
   * @param body whose
   * @return its muscles, scaled to the person
   */
  public static Musculature of(Body body) {
    return KNOWN.get(body);
  }

  /**
   * The muscles of the reference man, unscaled, on a body of any size.
   *
   * @param body whose joints
   * @return the muscles as the tables list them
   */
  static Musculature unscaled(Body body) {
    return new Musculature(body, Scaling.NONE, Variation.NONE);
  }

  /**
   * All muscles, those of the right side first, each side in the order of the table.
   *
   * @return an unmodifiable list; its order is that of the columns of {@link #arms}
   */
  public List<Strand> strands() {
    return strands;
  }

  /**
   * The axes that any muscle turns.
   *
   * @return places in the tree's order of angles, rising; the order of the rows of {@link #arms}
   */
  public int[] axes() {
    return axes.clone();
  }

  /**
   * The row of an axis.
   *
   * @param axis a place in the tree's order of angles
   * @return the row, or -1 where no muscle turns it
   */
  public int row(int axis) {
    return rowOf[axis];
  }

  /**
   * Whose angles they are.
   *
   * @return the tree
   */
  public SegmentTree tree() {
    return tree;
  }

  /**
   * The arms of all muscles in one pose.
   *
   * @param pose of this body
   * @param into takes rows times columns numbers, row after row, metres; the part of the pull that
   *     crosses is multiplied in; positive where the pull turns the joint in the axis' positive
   *     direction
   */
  public void arms(Pose pose, double[] into) {
    int columns = strands.size();
    if (into.length != axes.length * columns) {
      throw new Refused(
          "The arms need "
              + axes.length * columns
              + " places to be written to, not "
              + into.length
              + ".");
    }
    // Most arms are known at one angle only and never change.
    System.arraycopy(held, 0, into, 0, held.length);
    for (int i = 0; i < moving.length; i++) {
      into[movingCell[i]] = moving[i].share() * moving[i].arm(pose);
    }
    shoulder(pose, Side.RIGHT, into);
    shoulder(pose, Side.LEFT, into);
  }

  private void shoulder(Pose pose, Side side, double[] into) {
    ShoulderFrame frame = new ShoulderFrame(tree, side);
    frame.take(pose);
    int[] angles = frame.shoulder();
    double[] about = new double[3];
    for (Shoulder one : shoulders.get(side)) {
      one.arms().in(frame, about);
      for (int k = 0; k < 3; k++) {
        into[rowOf[angles[k]] * strands.size() + one.column()] = about[k];
      }
    }
  }

  /**
   * The line about which the arms of an axis are taken. It is the axis of the joint's angle, except
   * for the flexion of a shoulder: there it is square to the axes of abduction and rotation. The
   * two are the same where abduction is zero; at 90 degrees the flexion axis would lie along the
   * arm and say the same as that of rotation, while no axis would tell of a push forward or back.
   *
   * @param axis a place in the tree's order of angles
   * @param where where the joints are
   * @return unit vector in the world
   */
  public static Vector3D axis(int axis, Placement where) {
    SegmentTree tree = where.tree();
    for (Side side : JointId.SHOULDER.sides()) {
      String shoulder = JointId.SHOULDER.on(side);
      if (tree.hasJoint(shoulder) && axis == tree.angleOf(shoulder, "flexion")) {
        Vector3D rotation = where.axis(tree.angleOf(shoulder, "rotation"));
        return rotation.crossProduct(where.axis(tree.angleOf(shoulder, "abduction")));
      }
    }
    return where.axis(axis);
  }
}
