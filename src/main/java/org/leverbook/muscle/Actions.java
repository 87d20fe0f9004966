package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.pose.Pose;

/** What one muscle of a person can do at each joint, direction by direction. */
final class Actions {

  /** An arm below half a millimetre is none. */
  private static final double NOTHING = 0.0005;

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

  private Actions() {}

  private static Map.Entry<String, Verbs> verbs(
      String words, String joint, String positive, String negative) {
    return Map.entry(words, new Verbs(joint, positive, negative));
  }

  /**
   * Everything one muscle can do.
   *
   * @param muscle which
   * @param body whose
   * @return one action for each joint and direction; empty if it turns no joint
   */
  static List<Action> of(MuscleRow muscle, Body body) {
    Scaling scaling = Scaling.of(body.person());
    double force = scaling.maxForce(muscle);
    List<Action> actions = new ArrayList<>();
    for (ArmSeries series : ArmTable.SHIPPED.of(muscle.key())) {
      if (!series.joint().startsWith("spine_")) {
        Verbs verbs = VERBS.get(series.joint() + ", " + series.axis());
        for (int sign : new int[] {1, -1}) {
          limb(muscle, series, verbs, sign, scaling.arm(), force).ifPresent(actions::add);
        }
      }
    }
    actions.addAll(spine(muscle, body));
    return actions;
  }

  private static Optional<Action> limb(
      MuscleRow muscle, ArmSeries series, Verbs verbs, int sign, double scale, double force) {
    ArmCurve curve = series.curve().times(sign * scale);
    double most = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    double at = 0;
    // The curve turns at listed angles only.
    for (double angle : curve.angles()) {
      double arm = curve.at(angle);
      if (arm > most) {
        most = arm;
        at = angle;
      }
      least = Math.min(least, arm);
    }
    if (most < NOTHING) {
      return Optional.empty();
    }
    boolean joint = !series.joint().equals("scapulothoracic");
    return Optional.of(
        new Action(
            muscle.name(),
            verbs.joint(),
            sign > 0 ? verbs.positive() : verbs.negative(),
            curve.at(0),
            Math.max(0, least),
            most,
            curve.single() ? OptionalDouble.empty() : OptionalDouble.of(Math.toDegrees(at)),
            joint ? OptionalDouble.of(force * most) : OptionalDouble.empty(),
            series.status(),
            series.sources()));
  }

  /** What the levels of one region of the spine have in common. */
  private static final class Region {
    double least = Double.POSITIVE_INFINITY;
    double most;
    double moment;
    String status = "found";
    final Set<String> sources = new LinkedHashSet<>();

    void add(double arm, double newtonMetres, ArmSeries series) {
      least = Math.min(least, arm);
      most = Math.max(most, arm);
      moment = Math.max(moment, newtonMetres);
      sources.addAll(series.sources());
      if (!series.status().equals("found")) {
        status = series.status();
      }
    }
  }

  /** Levels of one region together; the greatest moment is that of its strongest level. */
  private static List<Action> spine(MuscleRow muscle, Body body) {
    Pose standing = Pose.neutral(body.tree());
    Map<List<String>, Region> regions = new LinkedHashMap<>();
    Musculature.of(body).strands().stream()
        .filter(s -> s.side() == Side.RIGHT && s.muscle().key().equals(muscle.key()))
        .forEach(
            strand -> {
              for (Crossing crossing : strand.crossings()) {
                for (JointId level : JointId.values()) {
                  for (String axis : List.of("flexion", "abduction", "rotation")) {
                    boolean here =
                        !level.paired()
                            && crossing.axis() == body.tree().angleOf(level.word(), axis);
                    double arm = here ? crossing.arm(standing) : 0;
                    if (Math.abs(arm) >= NOTHING) {
                      Verbs verbs = VERBS.get("spine, " + axis);
                      String verb = arm > 0 ? verbs.positive() : verbs.negative();
                      double size = Math.abs(arm);
                      regions
                          .computeIfAbsent(List.of(region(level), verb), k -> new Region())
                          .add(
                              size, size * crossing.share() * strand.maxForce(), crossing.series());
                    }
                  }
                }
              }
            });
    List<Action> actions = new ArrayList<>();
    regions.forEach(
        (key, region) ->
            actions.add(
                new Action(
                    muscle.name(),
                    key.get(0),
                    key.get(1),
                    region.most,
                    region.least,
                    region.most,
                    OptionalDouble.empty(),
                    OptionalDouble.of(region.moment),
                    region.status,
                    List.copyOf(region.sources))));
    return actions;
  }

  private static String region(JointId level) {
    if (level.compareTo(JointId.L1_L2) <= 0) {
      return "lumbar spine";
    }
    return level.compareTo(JointId.T1_T2) <= 0 ? "thoracic spine" : "neck";
  }
}
