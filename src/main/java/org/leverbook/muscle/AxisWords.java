package org.leverbook.muscle;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.quantity.Refused;

/**
 * From the words of the tables of arms to the axes of the body's joints.
 *
 * <p>Sign by a worked case: the table lists arms of hip extension as positive, our hip counts
 * flexion as positive, so the sign of ("hip", "flexion_extension") is -1.
 */
final class AxisWords {

  /**
   * An axis of ours.
   *
   * @param joint which joint
   * @param axis flexion, abduction or rotation
   * @param sign 1 where the table's positive action is the axis' positive direction, else -1
   */
  record Axis(JointId joint, String axis, int sign) {}

  private static final String BEND = "flexion_extension";

  private static final Map<List<String>, Axis> AXES =
      Map.ofEntries(
          axis("hip", BEND, "extension", JointId.HIP, "flexion", -1),
          axis("hip", "abduction_adduction", "abduction", JointId.HIP, "abduction", 1),
          axis(
              "hip",
              "internal_external_rotation",
              "external_rotation",
              JointId.HIP,
              "rotation",
              -1),
          axis("knee", BEND, "extension", JointId.KNEE, "flexion", -1),
          axis("ankle", BEND, "plantarflexion", JointId.ANKLE, "flexion", -1),
          axis("elbow", BEND, "flexion", JointId.ELBOW, "flexion", 1),
          axis("wrist", BEND, "flexion", JointId.WRIST, "flexion", 1),
          axis(
              "sternoclavicular",
              "elevation_depression",
              "elevation",
              JointId.SHOULDER_GIRDLE,
              "abduction",
              1),
          axis(
              "sternoclavicular",
              "protraction_retraction",
              "retraction",
              JointId.SHOULDER_GIRDLE,
              "rotation",
              -1));

  private static final Map<String, Axis> ANGLES =
      Map.of(
          "hip_flexion", new Axis(JointId.HIP, "flexion", 1),
          "hip_abduction", new Axis(JointId.HIP, "abduction", 1),
          "hip_rotation", new Axis(JointId.HIP, "rotation", -1),
          "knee_flexion", new Axis(JointId.KNEE, "flexion", 1),
          "ankle_plantarflexion", new Axis(JointId.ANKLE, "flexion", -1),
          "elbow_flexion", new Axis(JointId.ELBOW, "flexion", 1),
          "wrist_flexion", new Axis(JointId.WRIST, "flexion", 1),
          "clavicle_rest", new Axis(JointId.SHOULDER_GIRDLE, "abduction", 1));

  /**
   * Joints whose arms are told but not counted. The shoulder blade has no joint of its own in the
   * body. Of the forearm's rotation the tables know the biceps alone: counted, a curl that asks no
   * supination would forbid the biceps any pull, for want of a listed pronator.
   */
  private static final Set<String> NOT_COUNTED = Set.of("scapulothoracic", "forearm");

  private AxisWords() {}

  private static Map.Entry<List<String>, Axis> axis(
      String joint, String axis, String action, JointId id, String ours, int sign) {
    return Map.entry(List.of(joint, axis, action), new Axis(id, ours, sign));
  }

  /**
   * The axis that a series of arms turns.
   *
   * @param series a series of a limb or the shoulder girdle
   * @return the axis; empty where it is not counted
   * @throws Refused if the words are unknown
   */
  static Optional<Axis> of(ArmSeries series) {
    if (!counted(series)) {
      return Optional.empty();
    }
    Axis axis = AXES.get(List.of(series.joint(), series.axis(), series.action()));
    if (axis == null) {
      throw new Refused(
          "The arm of the "
              + series.muscle()
              + " about "
              + series.joint()
              + ", "
              + series.axis()
              + " ("
              + series.action()
              + " positive) belongs to no axis of the body.");
    }
    return Optional.of(axis);
  }

  /**
   * Whether a series counts in sums.
   *
   * @param series any series
   * @return false for the shoulder blade and the forearm's rotation
   */
  static boolean counted(ArmSeries series) {
    return !NOT_COUNTED.contains(series.joint());
  }

  /**
   * The coordinate that a series of arms follows.
   *
   * @param series a series of a limb or the shoulder girdle
   * @param tree whose angles
   * @param side left or right
   * @return the coordinate
   * @throws Refused if the words are unknown
   */
  static Coordinate coordinate(ArmSeries series, SegmentTree tree, Side side) {
    Axis angle = ANGLES.get(series.angleOf());
    if (angle == null) {
      throw new Refused(
          "The arm of the "
              + series.muscle()
              + " is listed over \""
              + series.angleOf()
              + "\", which is no angle of the body.");
    }
    int[] index = {tree.angleOf(angle.joint().on(side), angle.axis())};
    return new Coordinate(index, angle.sign());
  }
}
