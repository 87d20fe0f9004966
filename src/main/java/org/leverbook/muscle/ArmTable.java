package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.quantity.Refused;

/**
 * The arms of {@code muscle/moment_arms.csv}: the rows of the set "primary", of which there is one
 * a muscle, axis and angle. The set "alternative" holds second sources; those rows are never
 * summed.
 */
final class ArmTable {

  private static final List<String> CONFIDENCE = List.of("high", "medium", "low");

  /** The table that travels with Leverbook. */
  static final ArmTable SHIPPED = of(DataTable.read("muscle/moment_arms.csv"), MuscleTable.SHIPPED);

  private final Map<String, List<ArmSeries>> byMuscle = new LinkedHashMap<>();

  private ArmTable() {}

  /**
   * Reads a table.
   *
   * @param arms the rows
   * @param muscles the muscles that may be named
   * @return the arms
   * @throws Refused if a row names an unknown muscle, lacks a number or stands there twice; names
   *     file and line
   */
  static ArmTable of(DataTable arms, MuscleTable muscles) {
    Map<List<String>, List<DataRow>> groups = new LinkedHashMap<>();
    for (DataRow row : arms.rows()) {
      if (!row.is("set", "primary") && !row.is("set", "alternative")) {
        throw MuscleRow.bad(row, "set", "must be primary or alternative");
      }
      if (row.is("set", "primary")) {
        for (String muscle : muscles.keys(row, "applies_to")) {
          groups.computeIfAbsent(key(muscle, row), k -> new ArrayList<>()).add(row);
        }
      }
    }
    ArmTable table = new ArmTable();
    groups.forEach(
        (key, rows) ->
            table
                .byMuscle
                .computeIfAbsent(key.get(0), k -> new ArrayList<>())
                .add(series(key, rows)));
    return table;
  }

  /**
   * The arms of one muscle.
   *
   * @param muscle its key
   * @return one series for each axis and coordinate; empty where the table has none
   */
  List<ArmSeries> of(String muscle) {
    return List.copyOf(byMuscle.getOrDefault(muscle, List.of()));
  }

  private static List<String> key(String muscle, DataRow row) {
    return List.of(
        muscle,
        MuscleRow.filled(row, "joint"),
        MuscleRow.filled(row, "axis"),
        MuscleRow.filled(row, "positive_action"),
        MuscleRow.filled(row, "angle_of"));
  }

  private static ArmSeries series(List<String> key, List<DataRow> rows) {
    List<DataRow> sorted = new ArrayList<>(rows);
    sorted.sort((a, b) -> Double.compare(a.number("angle_deg"), b.number("angle_deg")));
    double[] at = new double[sorted.size()];
    double[] arm = new double[sorted.size()];
    Set<String> sources = new LinkedHashSet<>();
    Set<String> statuses = new LinkedHashSet<>();
    int worst = 0;
    for (int i = 0; i < at.length; i++) {
      DataRow row = sorted.get(i);
      at[i] = Math.toRadians(row.number("angle_deg"));
      arm[i] = row.number("moment_arm_m");
      if (i > 0 && at[i] == at[i - 1]) {
        throw MuscleRow.bad(row, "angle_deg", "the muscle has another arm at this angle");
      }
      sources.add(MuscleRow.filled(row, "source"));
      statuses.add(MuscleRow.status(row));
      worst = Math.max(worst, CONFIDENCE.indexOf(row.text("confidence")));
    }
    return new ArmSeries(
        key.get(0),
        key.get(1),
        key.get(2),
        key.get(3),
        key.get(4),
        ArmCurve.through(at, arm),
        List.copyOf(sources),
        statuses.size() > 1 ? "partly from memory" : statuses.iterator().next(),
        CONFIDENCE.get(worst));
  }
}
