package org.leverbook.strength;

import java.util.List;
import java.util.Map;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;

/**
 * Hip, knee and ankle.
 *
 * <p>Which angles were tested is not in the abstract of the model's paper. Beyond 90° of hip
 * flexion and 100° of knee bend the value there is kept (assumption): the bare formula falls to a
 * half and to nothing at angles in which lifters do rise from a squat.
 */
final class LegStrengths {

  private static final DataTable MEASURED =
      DataTable.read("strength/torque_angle_lower_isometric.csv");

  private static final String MODEL = "Anderson, Madigan and Nussbaum 2007";

  private static final double STILL_OVER_TURNING =
      DataTable.read("strength/force_velocity_effort.csv")
          .only(
              "holding still over turning",
              r -> r.is("source", "STOTZ2022") && r.is("name", "isometric to concentric 60 deg/s"))
          .number("coef_a");

  private LegStrengths() {}

  static void into(Map<String, Strength> strengths, Who who) {
    model(strengths, who, "hip", "extend", "hip_extension", -20, 90, hips(who));
    model(
        strengths,
        who,
        "hip",
        "flex",
        "hip_flexion",
        -20,
        90,
        "falls with flexion here; a later study found the opposite (Ito et al. 2024)");
    model(strengths, who, "knee", "extend", "knee_extension", 20, 100, "");
    model(strengths, who, "knee", "flex", "knee_flexion", 0, 100, "");
    model(
        strengths,
        who,
        "ankle",
        "plantarflex",
        "ankle_plantarflexion",
        -40,
        25,
        "low: ten untrained men were measured at 208 N·m (Solianik et al.), where this gives a man"
            + " of 80 kg 134");
    model(strengths, who, "ankle", "dorsiflex", "ankle_dorsiflexion", -40, 25, "");
    abduction(strengths, who);
  }

  private static String hips(Who who) {
    return who.letter().equals("F") && who.condition().years() < 40
        ? "doubtful: young women come out stronger than men here"
        : "";
  }

  private static void model(
      Map<String, Strength> strengths,
      Who who,
      String joint,
      String action,
      String row,
      double from,
      double to,
      String note) {
    LowerLimb limb = new LowerLimb(row, who);
    double factor = who.trained(joint, action, 0);
    double low = Math.toRadians(from);
    double high = Math.toRadians(to);
    strengths.put(
        joint + " " + action,
        new Strength(
            (angle, speed) -> factor * limb.at(Math.max(low, Math.min(high, angle)), speed),
            true,
            low,
            high,
            new Evidence(MODEL + who.trainedBy(joint, action), "from memory", note)));
  }

  /** Per kilogram (Sugimoto et al. 2014), over the shape of Neumann et al. 1988. */
  private static void abduction(Map<String, Strength> strengths, Who who) {
    DataRow row =
        MEASURED.only(
            "hip abduction", r -> r.is("source", "SUGIMOTO2014") && r.is("sex", who.letter()));
    List<DataRow> points =
        MEASURED.rows().stream().filter(r -> r.is("source", "NEUMANN1988")).toList();
    Shape shape = Shape.of(points, "angle_deg", "mean");
    double peak = row.number("mean") * who.mass() * who.aged() * who.trained("hip", "abduct", 0);
    strengths.put(
        "hip abduct",
        new Strength(
            (angle, speed) -> peak * shape.at(Math.toDegrees(angle)),
            false,
            Math.toRadians(shape.low()),
            Math.toRadians(shape.high()),
            new Evidence(
                "Sugimoto et al. 2014" + who.trainedBy("hip", "abduct"),
                "found, shape from memory",
                "college athletes turning at 60° a second, times 1.294 for holding still (Stotz et al. 2022, uncertain); shape Neumann et al. 1988")));
  }
}
