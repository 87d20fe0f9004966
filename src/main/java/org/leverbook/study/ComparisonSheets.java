package org.leverbook.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.statics.Position;
import org.leverbook.strength.Demand;
import org.leverbook.study.Comparison.Row;

/** Lays positions side by side: loads and limiters, moments and arms. */
final class ComparisonSheets {

  /** What a coach asks of first. */
  static final List<JointId> USUAL =
      List.of(
          JointId.HIP,
          JointId.KNEE,
          JointId.ANKLE,
          JointId.L5_S1,
          JointId.T7_T8,
          JointId.SHOULDER,
          JointId.ELBOW);

  /** Stands where a number would. */
  static final String UNKNOWN = "not known";

  /** Stands where there is nothing to tell a number of. */
  static final String NONE = "none";

  /** Stands where a ratio would. */
  static final String INCOMPARABLE = "not comparable";

  private ComparisonSheets() {}

  static Sheet summary(Comparison comparison) {
    List<Column> columns =
        List.of(
            Column.text("position"),
            Column.text("load"),
            new Column("limiter's effort", "%", 1),
            Column.text("limiter"),
            Column.text("held"));
    List<List<Object>> rows = new ArrayList<>();
    for (Row row : comparison.rows()) {
      Optional<Demand> limiter = row.limiter();
      List<Object> line = new ArrayList<>();
      line.add(row.name());
      line.add(row.load().isEmpty() ? UNKNOWN : row.load());
      line.add(limiter.isPresent() ? 100 * limiter.get().effort().orElseThrow() : UNKNOWN);
      line.add(limiter.map(Demand::what).orElse(UNKNOWN));
      line.add(row.reason().isEmpty() ? "yes" : row.reason());
      rows.add(line);
    }
    List<String> notes = new ArrayList<>();
    loadsDiffer(comparison).ifPresent(notes::add);
    ofLifters(positions(comparison)).ifPresent(notes::add);
    kept(comparison).ifPresent(notes::add);
    notes.add(
        "The limiter is the joint nearest to what healthy people of that build, age and training"
            + " gave; .strength() of a position tells the rest.");
    notes.add(Caution.TEXT);
    return new Sheet(title(comparison), columns, rows, notes);
  }

  private static Optional<String> kept(Comparison comparison) {
    return comparison.posturesKept()
        ? Optional.of("Postures stay as they were given while the loads change.")
        : Optional.empty();
  }

  static String title(Comparison comparison) {
    return "Side by side, " + comparison.loads();
  }

  static Sheet moments(Comparison comparison, List<JointId> joints) {
    List<Map<Slot, Reading>> readings = comparison.rows().stream().map(Row::readings).toList();
    List<SideBySide> slots = SideBySide.of(joints, readings);
    boolean axes = slots.stream().anyMatch(s -> !s.axis().equals("flexion"));
    List<Column> columns = new ArrayList<>(List.of(Column.text("joint"), Column.text("side")));
    if (axes) {
      columns.add(Column.text("about"));
    }
    for (Row row : comparison.rows()) {
      columns.add(new Column(row.name() + ", moment", "N·m", 1));
      columns.add(new Column(row.name() + ", arm", "cm", 1));
    }
    for (Row row : others(comparison)) {
      columns.add(new Column(row.name() + ", difference", "N·m", 1));
      columns.add(new Column(row.name() + ", ratio", "", 2));
    }
    List<List<Object>> rows = new ArrayList<>();
    for (SideBySide one : slots) {
      List<Object> line = new ArrayList<>();
      line.add(one.slot().joint().word());
      line.add(one.side());
      if (axes) {
        line.add(one.axis());
      }
      cells(line, one, readings);
      rows.add(line);
    }
    return new Sheet(
        "Moments side by side, " + comparison.loads(), columns, rows, notes(comparison));
  }

  private static void cells(List<Object> line, SideBySide one, List<Map<Slot, Reading>> readings) {
    for (Map<Slot, Reading> each : readings) {
      Reading reading = each.get(one.slot());
      line.add(reading == null ? UNKNOWN : (Object) reading.moment(one.axis()));
      line.add(reading == null ? UNKNOWN : arm(reading, one.axis()));
    }
    Reading first = readings.get(0).get(one.slot());
    for (Map<Slot, Reading> each : readings.subList(1, readings.size())) {
      Reading reading = each.get(one.slot());
      if (first == null || reading == null) {
        line.add(UNKNOWN);
        line.add(UNKNOWN);
      } else {
        against(line, reading.moment(one.axis()), first.moment(one.axis()));
      }
    }
  }

  /** An arm, or that there is none. */
  static Object arm(Reading reading, String axis) {
    return reading.armInCm(axis).<Object>map(cm -> cm).orElse(NONE);
  }

  /** Difference and ratio. */
  static void against(List<Object> line, double value, double first) {
    line.add(value - first);
    Optional<Double> ratio = SideBySide.ratio(value, first);
    line.add(ratio.isPresent() ? (Object) ratio.get() : INCOMPARABLE);
  }

  static List<Row> others(Comparison comparison) {
    return comparison.rows().subList(1, comparison.rows().size());
  }

  static List<String> notes(Comparison comparison) {
    List<String> notes = new ArrayList<>(reasons(comparison));
    loadsDiffer(comparison).ifPresent(notes::add);
    ofLifters(positions(comparison)).ifPresent(notes::add);
    kept(comparison).ifPresent(notes::add);
    notes.add(signs(comparison.rows().get(0).name()));
    notes.add(Caution.TEXT);
    return notes;
  }

  /** How to read the numbers. */
  static String signs(String first) {
    return "Moments and arms: positive where they tend to flex the joint; of paired joints, one side."
        + " No arm is told where no load acts beyond the joint. Difference and ratio: against "
        + first
        + "; a negative ratio turns the joint the other way, and where the first has less than"
        + " 0.5 N·m no ratio is told.";
  }

  /** Why a column has no numbers. */
  static List<String> reasons(Comparison comparison) {
    return comparison.rows().stream()
        .filter(row -> !row.reason().isEmpty())
        .map(row -> row.name() + ": " + row.reason())
        .toList();
  }

  private static List<Position> positions(Comparison comparison) {
    return comparison.rows().stream().map(Row::position).filter(p -> p != null).toList();
  }

  private static Optional<String> loadsDiffer(Comparison comparison) {
    List<Position> positions = positions(comparison);
    boolean alike = positions.stream().map(ComparedNames::sizes).distinct().count() < 2;
    if (alike) {
      return Optional.empty();
    }
    return Optional.of(
        comparison.rows().stream()
            .filter(row -> row.position() != null)
            .map(row -> row.name() + ": " + row.load())
            .collect(Collectors.joining("; ", "The loads differ. ", ".")));
  }

  private static Optional<String> ofLifters(List<Position> positions) {
    List<String> lifters = positions.stream().map(ComparedNames::who).distinct().toList();
    return lifters.size() < 2 ? Optional.empty() : Optional.of(liftersDiffer(lifters));
  }

  static String liftersDiffer(Collection<String> lifters) {
    return "The lifters differ, so a difference may be theirs: " + String.join("; ", lifters) + ".";
  }
}
