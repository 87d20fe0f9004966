package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.leverbook.body.JointId;
import org.leverbook.display.Picture;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.muscle.Discs;
import org.leverbook.quantity.Refused;
import org.leverbook.strength.Demand;
import org.leverbook.study.Comparison.Row;

/** A comparison of positions as tables for further work: numbers only in columns of numbers. */
final class ComparisonTables {

  private ComparisonTables() {}

  static Sheet tidy(Comparison comparison) {
    List<Column> columns =
        List.of(
            Column.text("position"),
            Column.text("load"),
            Column.text("joint"),
            Column.text("side"),
            Column.text("about"),
            new Column("moment", "N·m", 1),
            new Column("arm", "cm", 1),
            new Column("difference", "N·m", 1),
            new Column("ratio", "", 2),
            new Column("compression", "N", 1),
            Column.text("reason"));
    List<Map<Slot, Reading>> readings = comparison.rows().stream().map(Row::readings).toList();
    List<SideBySide> slots = SideBySide.split(SideBySide.of(List.of(JointId.values()), readings));
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      for (SideBySide one : slots) {
        rows.add(line(comparison.rows().get(i), one, readings.get(i), readings.get(0), i == 0));
      }
    }
    return new Sheet(
        ComparisonSheets.title(comparison), columns, rows, ComparisonSheets.notes(comparison));
  }

  private static List<Object> line(
      Row row,
      SideBySide one,
      Map<Slot, Reading> readings,
      Map<Slot, Reading> firsts,
      boolean isFirst) {
    Reading reading = readings.get(one.slot());
    Reading first = firsts.get(one.slot());
    List<Object> line = new ArrayList<>();
    line.add(row.name());
    line.add(row.load());
    line.add(one.slot().joint().word());
    line.add(one.side());
    line.add(one.axis());
    line.add(reading == null ? null : reading.moment(one.axis()));
    line.add(reading == null ? null : reading.armInCm(one.axis()).orElse(null));
    boolean both = !isFirst && reading != null && first != null;
    double here = both ? reading.moment(one.axis()) : 0;
    double there = both ? first.moment(one.axis()) : 0;
    Optional<Double> ratio = SideBySide.ratio(here, there);
    line.add(both ? here - there : null);
    line.add(both ? ratio.orElse(null) : null);
    boolean disc = row.held() && Discs.levels().contains(one.slot().joint());
    line.add(disc ? row.position().disc(one.slot().joint()).compression() : null);
    String incomparable =
        both && ratio.isEmpty()
            ? ComparisonSheets.INCOMPARABLE + ": the first has nearly none"
            : "";
    line.add(row.reason().isEmpty() ? incomparable : row.reason());
    return line;
  }

  static Sheet wide(Comparison comparison, List<JointId> joints) {
    List<Map<Slot, Reading>> readings = comparison.rows().stream().map(Row::readings).toList();
    List<SideBySide> slots = SideBySide.of(joints, readings);
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("position"));
    columns.add(Column.text("load"));
    columns.add(new Column("limiter's effort", "%", 1));
    columns.add(Column.text("limiter"));
    slots.forEach(s -> columns.add(new Column(name(s) + " moment", "N·m", 1)));
    slots.forEach(s -> columns.add(new Column(name(s) + " arm", "cm", 1)));
    columns.add(Column.text("reason"));
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      Row row = comparison.rows().get(i);
      Map<Slot, Reading> each = readings.get(i);
      Optional<Demand> limiter = row.limiter();
      List<Object> line = new ArrayList<>();
      line.add(row.name());
      line.add(row.load());
      line.add(limiter.map(d -> 100 * d.effort().orElseThrow()).orElse(null));
      line.add(limiter.map(Demand::what).orElse(""));
      for (SideBySide s : slots) {
        Reading reading = each.get(s.slot());
        line.add(reading == null ? null : reading.moment(s.axis()));
      }
      for (SideBySide s : slots) {
        Reading reading = each.get(s.slot());
        line.add(reading == null ? null : reading.armInCm(s.axis()).orElse(null));
      }
      line.add(row.reason());
      rows.add(line);
    }
    return new Sheet(
        ComparisonSheets.title(comparison), columns, rows, ComparisonSheets.notes(comparison));
  }

  /** As in "hip" or "left hip". */
  static String name(SideBySide one) {
    String joint = one.slot().joint().word();
    return one.side().isEmpty() || one.side().equals("each") ? joint : one.side() + " " + joint;
  }

  /** A table or a picture, by the ending of the name. */
  static Saved save(String file, Sheet sheet, Supplier<Picture> picture) {
    if (file.endsWith(".csv")) {
      return sheet.save(file);
    }
    if (file.endsWith(".svg") || file.endsWith(".png")) {
      return picture.get().save(file);
    }
    throw new Refused(
        "A comparison is saved as .csv (its table), .svg or .png (its picture), not as \""
            + file
            + "\".");
  }
}
