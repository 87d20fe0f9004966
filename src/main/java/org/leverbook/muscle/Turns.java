package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.pose.Pose;

/** Each single way in which a muscle of the right side turns a joint, in words. */
final class Turns {

  /**
   * Joint, and the verbs of a positive and of a negative arm, by the words of the tables.
   *
   * @param joint as in "hip"
   * @param positive what a positive arm does
   * @param negative what a negative arm does
   */
  private record Verbs(String joint, String positive, String negative) {}

  private static final Map<String, Verbs> VERBS =
      Map.ofEntries(
          verbs("hip, flexion_extension", "hip", "extend", "flex"),
          verbs("hip, abduction_adduction", "hip", "abduct", "adduct"),
          verbs("hip, internal_external_rotation", "hip", "rotate outward", "rotate inward"),
          verbs("knee, flexion_extension", "knee", "extend", "flex"),
          verbs("ankle, flexion_extension", "ankle", "plantarflex", "dorsiflex"),
          verbs("elbow, flexion_extension", "elbow", "flex", "extend"),
          verbs("forearm, pronation_supination", "forearm", "supinate", "pronate"),
          verbs("wrist, flexion_extension", "wrist", "flex", "extend"),
          verbs("shoulder, flexion_extension", "shoulder", "flex", "extend"),
          verbs("shoulder, abduction_adduction", "shoulder", "abduct", "adduct"),
          verbs(
              "shoulder, internal_external_rotation",
              "shoulder",
              "rotate inward",
              "rotate outward"),
          verbs(
              "shoulder, horizontal_adduction_abduction",
              "shoulder, arm level",
              "adduct",
              "abduct"),
          verbs("sternoclavicular, elevation_depression", "shoulder girdle", "elevate", "depress"),
          verbs(
              "sternoclavicular, protraction_retraction", "shoulder girdle", "retract", "protract"),
          verbs(
              "scapulothoracic, upward_downward_rotation",
              "shoulder blade",
              "rotate upward",
              "rotate downward"),
          // The spine's own axes: flexion, side bending to the right, front to the left.
          verbs("spine, flexion", "", "flex", "extend"),
          verbs("spine, abduction", "", "bend to its side", "bend to the other side"),
          verbs("spine, rotation", "", "turn to the other side", "turn to its side"));

  /**
   * One way in which one muscle turns one joint.
   *
   * @param part the muscle
   * @param joint the joint or the region of the spine, as in "hip"
   * @param level the level of the spine, or nothing
   * @param action what it does there, as in "extend"
   * @param force the greatest pull of what crosses there, newtons
   * @param arm metres over the angle; above zero where it does this
   * @param series the values behind it
   */
  record Turn(
      String part,
      String joint,
      String level,
      String action,
      double force,
      ArmCurve arm,
      ArmSeries series) {}

  private Turns() {}

  private static Map.Entry<String, Verbs> verbs(
      String words, String joint, String positive, String negative) {
    return Map.entry(words, new Verbs(joint, positive, negative));
  }

  /**
   * Every way in which a muscle turns a joint, both directions of each axis.
   *
   * @param muscle which
   * @param body whose
   * @return one for each axis and direction, also where the arm is never above zero
   */
  static List<Turn> of(MuscleRow muscle, Body body) {
    Scaling scaling = Scaling.of(body.person());
    double force = scaling.maxForce(muscle);
    List<Turn> turns = new ArrayList<>();
    for (ArmSeries series : ArmTable.SHIPPED.of(muscle.key())) {
      if (!series.joint().startsWith("spine_")) {
        ArmCurve arm = series.curve().times(scaling.arm());
        both(
            turns,
            muscle,
            VERBS.get(series.joint() + ", " + series.axis()),
            "",
            force,
            arm,
            series);
      }
    }
    Musculature.of(body).strands().stream()
        .filter(s -> s.side() == Side.RIGHT && s.muscle().key().equals(muscle.key()))
        .forEach(strand -> spine(turns, strand, body));
    return turns;
  }

  private static void spine(List<Turn> turns, Strand strand, Body body) {
    Pose standing = Pose.neutral(body.tree());
    for (Crossing crossing : strand.crossings()) {
      for (JointId level : JointId.values()) {
        for (String axis : List.of("flexion", "abduction", "rotation")) {
          if (!level.paired() && crossing.axis() == body.tree().angleOf(level.word(), axis)) {
            Verbs verbs = VERBS.get("spine, " + axis);
            Verbs here = new Verbs(region(level), verbs.positive(), verbs.negative());
            double[] arm = {crossing.arm(standing)};
            both(
                turns,
                strand.muscle(),
                here,
                level.word(),
                crossing.share() * strand.maxForce(),
                ArmCurve.through(new double[1], arm),
                crossing.series());
          }
        }
      }
    }
  }

  private static void both(
      List<Turn> turns,
      MuscleRow muscle,
      Verbs verbs,
      String level,
      double force,
      ArmCurve arm,
      ArmSeries series) {
    turns.add(new Turn(muscle.name(), verbs.joint(), level, verbs.positive(), force, arm, series));
    turns.add(
        new Turn(
            muscle.name(), verbs.joint(), level, verbs.negative(), force, arm.times(-1), series));
  }

  private static String region(JointId level) {
    if (level.compareTo(JointId.L1_L2) <= 0) {
      return "lumbar spine";
    }
    return level.compareTo(JointId.T1_T2) <= 0 ? "thoracic spine" : "neck";
  }
}
