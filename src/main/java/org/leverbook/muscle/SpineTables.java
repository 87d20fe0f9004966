package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.leverbook.body.JointId;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.quantity.Refused;

/** What the tables know of the spine level by level, read once. */
final class SpineTables {

  private static final double FULL_FLEXION = Math.toRadians(50);

  /**
   * Where a long back muscle crosses a level.
   *
   * @param area cross-section of the fibres that cross, one side, m²
   * @param arm of extension, metres
   */
  record Level(double area, double arm) {}

  /** By muscle: the levels that the long back muscles cross. */
  static final Map<String, Map<JointId, Level>> BY_LEVEL =
      levels(DataTable.read("muscle/spine_extensors_by_level.csv"));

  /** By muscle: side bending and turning. */
  static final Map<String, List<ArmSeries>> SIDEWAYS =
      sideways(DataTable.read("muscle/trunk_side_arms.csv"));

  /** By lumbar level: what is left of an erector's arm while the spine bends. */
  static final Map<JointId, ArmCurve> BENT = bent(DataTable.read("muscle/moment_arms.csv"));

  private SpineTables() {}

  /** The level that a table names, as in "L5/S1" or "head_neck". */
  static JointId joint(String word) {
    if (word.equals("head_neck")) {
      return JointId.HEAD;
    }
    for (JointId id : JointId.values()) {
      if (id.word().equals(word)) {
        return id;
      }
    }
    throw new Refused(
        "The tables of muscles name a level \"" + word + "\", which the spine does not have.");
  }

  private static Map<String, Map<JointId, Level>> levels(DataTable table) {
    Map<String, Map<JointId, Level>> levels = new TreeMap<>();
    for (DataRow row : table.rows()) {
      Level level = new Level(row.number("pcsa_crossing_cm2") / 1e4, row.number("arm_m"));
      levels
          .computeIfAbsent(MuscleTable.SHIPPED.keys(row, "muscle").get(0), k -> new TreeMap<>())
          .put(joint(row.text("level")), level);
    }
    return levels;
  }

  /** Side bending and turning, in the words of the body's own axes; arms of zero are left out. */
  private static Map<String, List<ArmSeries>> sideways(DataTable table) {
    Map<String, List<ArmSeries>> arms = new TreeMap<>();
    for (DataRow row : table.rows()) {
      String key = MuscleTable.SHIPPED.keys(row, "muscle").get(0);
      List<ArmSeries> both = new ArrayList<>();
      for (String axis : List.of("abduction", "rotation")) {
        double arm = row.number(axis.equals("abduction") ? "bend_m" : "turn_m");
        if (arm != 0) {
          both.add(
              new ArmSeries(
                  key,
                  "spine_lumbar",
                  axis,
                  axis.equals("abduction") ? "to its own side" : "to the other side",
                  "lumbar_flexion",
                  ArmCurve.through(new double[1], new double[] {arm}),
                  List.of(MuscleRow.filled(row, "source")),
                  MuscleRow.status(row),
                  MuscleRow.filled(row, "confidence")));
        }
      }
      arms.put(key, both);
    }
    return arms;
  }

  /** For each lumbar level, what is left of an erector's arm while the spine bends. */
  private static Map<JointId, ArmCurve> bent(DataTable arms) {
    Map<JointId, ArmCurve> curves = new TreeMap<>();
    Map<String, Double> upright = new TreeMap<>();
    for (DataRow row : arms.rows()) {
      if (row.is("muscle", "erector_spinae_mass") && row.is("angle_deg", "0")) {
        upright.put(row.text("joint"), row.number("moment_arm_m"));
      }
    }
    for (DataRow row : arms.rows()) {
      if (row.is("muscle", "erector_spinae_mass") && row.is("angle_deg", "50")) {
        double left = row.number("moment_arm_m") / upright.get(row.text("joint"));
        curves.put(
            joint(row.text("joint").substring("spine_".length())),
            ArmCurve.through(new double[] {0, FULL_FLEXION}, new double[] {1, left}));
      }
    }
    return curves;
  }
}
