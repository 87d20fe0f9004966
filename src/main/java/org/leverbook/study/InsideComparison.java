package org.leverbook.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.muscle.DiscLoad;
import org.leverbook.muscle.Discs;
import org.leverbook.muscle.Verdict;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Reaction;
import org.leverbook.study.Comparison.Row;

/** What lies behind the moments side by side: discs, muscles, and what holds up. */
final class InsideComparison {

  private InsideComparison() {}

  static Sheet discs(Comparison comparison) {
    List<Column> columns = new ArrayList<>(List.of(Column.text("disc")));
    for (Row row : comparison.rows()) {
      columns.add(new Column(row.name() + ", compression", "N", 0));
      columns.add(new Column(row.name() + ", shear", "N", 0));
    }
    for (Row row : ComparisonSheets.others(comparison)) {
      columns.add(new Column(row.name() + ", difference", "N", 0));
      columns.add(new Column(row.name() + ", ratio", "", 2));
    }
    List<List<Object>> rows = new ArrayList<>();
    for (JointId level : Discs.levels()) {
      List<DiscLoad> loads = new ArrayList<>();
      comparison.rows().forEach(row -> loads.add(row.held() ? row.position().disc(level) : null));
      List<Object> line = new ArrayList<>(List.of(level.word()));
      for (DiscLoad load : loads) {
        line.add(load == null ? ComparisonSheets.UNKNOWN : (Object) load.compression());
        line.add(load == null ? ComparisonSheets.UNKNOWN : (Object) load.shear());
      }
      for (DiscLoad load : loads.subList(1, loads.size())) {
        if (load == null || loads.get(0) == null) {
          line.addAll(List.of(ComparisonSheets.UNKNOWN, ComparisonSheets.UNKNOWN));
        } else {
          ComparisonSheets.against(line, load.compression(), loads.get(0).compression());
        }
      }
      rows.add(line);
    }
    List<String> notes = new ArrayList<>(ComparisonSheets.reasons(comparison));
    for (Row row : comparison.rows()) {
      if (row.held()) {
        Discs discs = Discs.of(row.position().effort(), row.position().body());
        discs.notes().forEach(note -> notes.add(row.name() + ": " + note));
      }
    }
    notes.add(
        "Muscles included. Compression: normal to the disc; shear: how hard the upper vertebra is"
            + " pushed forward along it. Difference and ratio of the compression, against "
            + comparison.rows().get(0).name()
            + ".");
    notes.add(Caution.TEXT);
    return new Sheet("Discs side by side, " + comparison.loads(), columns, rows, notes);
  }

  static Sheet verdicts(Comparison comparison) {
    List<String> names = new ArrayList<>();
    List<Verdict> verdicts = new ArrayList<>();
    for (Row row : comparison.rows()) {
      if (row.held()) {
        names.add(row.name());
        verdicts.add(row.position().verdict());
      }
    }
    return verdicts(names, verdicts, ComparisonSheets.reasons(comparison), comparison.loads());
  }

  static Sheet verdicts(
      List<String> names, List<Verdict> verdicts, List<String> reasons, String loads) {
    if (verdicts.isEmpty()) {
      throw new Refused("There is no verdict: none of them is held. " + String.join(" ", reasons));
    }
    Sheet sheet = Verdict.sideBySide(names, verdicts);
    List<String> notes = new ArrayList<>(reasons);
    notes.addAll(sheet.notes());
    return new Sheet(sheet.title() + ", " + loads, sheet.columns(), sheet.rows(), notes);
  }

  static Sheet reactions(Comparison comparison) {
    Map<List<String>, Map<Row, Double>> forces = new LinkedHashMap<>();
    for (Row row : comparison.rows()) {
      if (row.held()) {
        for (Reaction reaction : row.position().supportForces()) {
          forces
              .computeIfAbsent(
                  List.of(reaction.source(), reaction.on()), k -> new LinkedHashMap<>())
              .merge(row, reaction.force().getNorm(), Double::sum);
        }
      }
    }
    List<Column> columns = new ArrayList<>(List.of(Column.text("support"), Column.text("on")));
    comparison.rows().forEach(row -> columns.add(new Column(row.name(), "N", 0)));
    ComparisonSheets.others(comparison)
        .forEach(row -> columns.add(new Column(row.name() + ", difference", "N", 0)));
    Row first = comparison.rows().get(0);
    List<List<Object>> rows = new ArrayList<>();
    forces.forEach(
        (place, each) -> {
          List<Object> line = new ArrayList<>(place);
          for (Row row : comparison.rows()) {
            line.add(
                row.held()
                    ? each.containsKey(row) ? (Object) each.get(row) : ComparisonSheets.NONE
                    : ComparisonSheets.UNKNOWN);
          }
          for (Row row : ComparisonSheets.others(comparison)) {
            line.add(
                row.held() && first.held()
                    ? (Object) (each.getOrDefault(row, 0.0) - each.getOrDefault(first, 0.0))
                    : ComparisonSheets.UNKNOWN);
          }
          rows.add(line);
        });
    List<String> notes = new ArrayList<>(ComparisonSheets.reasons(comparison));
    notes.add(
        "How hard each support acts on the lifter, in all directions together; .reactions() of a"
            + " position tells where and along what.");
    notes.add(Caution.TEXT);
    return new Sheet("Supports side by side, " + comparison.loads(), columns, rows, notes);
  }
}
