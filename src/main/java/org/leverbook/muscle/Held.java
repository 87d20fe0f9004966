package org.leverbook.muscle;

import java.util.Locale;
import org.leverbook.body.Freedom;
import org.leverbook.body.Joint;
import org.leverbook.body.JointId;
import org.leverbook.body.Motion;
import org.leverbook.body.SegmentTree;

/**
 * How one axis of one joint is held. All moments are in newton metres, positive in the axis'
 * positive direction, and add up to nothing: asked + tissue + muscles + uncovered = 0.
 *
 * @param joint which joint
 * @param freedom which of its axes
 * @param axis the place of its angle in the tree's order
 * @param asked what loads, weight and supports do
 * @param tissue what stretched tissue gives against it
 * @param muscles what muscles give
 * @param uncovered what would have to be given besides
 */
public record Held(
    Joint joint,
    Freedom freedom,
    int axis,
    double asked,
    double tissue,
    double muscles,
    double uncovered) {

  /** Less than this is no news: newton metres. */
  private static final double LITTLE = 1;

  /** Less than this share of what is asked is no news. */
  private static final double SHARE = 0.01;

  static Held of(
      SegmentTree tree, int axis, double asked, double tissue, double muscles, double uncovered) {
    int segment = segment(tree, axis);
    Joint joint = tree.segment(segment).joint();
    Freedom freedom = joint.freedoms().get(axis - tree.firstAngle(segment));
    return new Held(joint, freedom, axis, asked, tissue, muscles, uncovered);
  }

  /** The segment whose joint has this angle. */
  static int segment(SegmentTree tree, int axis) {
    int segment = 1;
    while (tree.firstAngle(segment + 1) <= axis) {
      segment++;
    }
    return segment;
  }

  /**
   * Whether something worth telling stays uncovered.
   *
   * @return true from a newton metre and a hundredth of what is asked on
   */
  public boolean lacks() {
    return Math.abs(uncovered) >= LITTLE && Math.abs(uncovered) >= SHARE * Math.abs(asked);
  }

  /**
   * Why what muscles of the tables give about an axis is not all: there it is no condition that
   * they hold it, and what they leave is no weakness.
   *
   * @return the reason; empty where muscles must hold it
   */
  static String besides(Joint joint, Freedom freedom) {
    String name = joint.name();
    if (between(name, JointId.T11_T12, JointId.T1_T2)) {
      return "sternum and ribs hold a part";
    }
    if (between(name, JointId.C6_C7, JointId.HEAD)) {
      return "arms are known at three levels of the neck only";
    }
    if (name.equals(JointId.HIP.word()) && freedom.motion() == Motion.ROTATION) {
      return "the deep rotators of the hip are not in the data, and arms of the others only for"
          + " standing";
    }
    return "";
  }

  static String besides(SegmentTree tree, int axis) {
    int segment = segment(tree, axis);
    Joint joint = tree.segment(segment).joint();
    return besides(joint, joint.freedoms().get(axis - tree.firstAngle(segment)));
  }

  /**
   * Why what is uncovered is no weakness but something that the data do not know.
   *
   * @return the reason; empty where it is a weakness
   */
  public String notKnown() {
    String besides = besides(joint, freedom);
    boolean forward = uncovered > 0 && between(joint.name(), JointId.T12_L1, JointId.HEAD);
    return besides.isEmpty() && forward ? "no muscle of the data bends it forward" : besides;
  }

  private static boolean between(String joint, JointId low, JointId high) {
    for (JointId id : JointId.values()) {
      if (id.word().equals(joint)) {
        return id.compareTo(low) >= 0 && id.compareTo(high) <= 0;
      }
    }
    return false;
  }

  /**
   * What stays uncovered, in words.
   *
   * @return as in "38 N·m of right hip extension uncovered"
   */
  public String sentence() {
    String what =
        String.format(
            Locale.ROOT,
            "%.0f N·m of %s %s uncovered",
            Math.abs(uncovered),
            joint.fullName(),
            freedom.motion().noun(uncovered));
    return notKnown().isEmpty() ? what : what + ", not known: " + notKnown();
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%s %s: asked %.1f, tissue %.1f, muscles %.1f, uncovered %.1f N·m",
        joint.fullName(),
        freedom.motion().axis(),
        asked,
        tissue,
        muscles,
        uncovered);
  }
}
