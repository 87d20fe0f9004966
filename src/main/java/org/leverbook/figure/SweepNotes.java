package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.study.Sweep;

/** What stands below the plot of a sweep. */
final class SweepNotes {

  private SweepNotes() {}

  static List<String> of(Sweep sweep, List<JointId> joints) {
    List<String> notes = new ArrayList<>();
    Sweep.Row first = sweep.rows().stream().filter(Sweep.Row::held).findFirst().orElseThrow();
    String loads =
        first.position().loads().stream()
            .filter(l -> l.mass() > 0)
            .map(l -> l.description())
            .collect(Collectors.joining(", "));
    notes.add(
        Caption.capital(first.position().name())
            + ". At "
            + at(sweep, first.value())
            + ": "
            + first.position().body().person().text()
            + (loads.isEmpty() ? "; nothing held." : "; " + loads + "."));
    if (joints.stream().anyMatch(JointId::paired)) {
      notes.add("Moments of paired joints are of one side.");
    }
    notes.addAll(gaps(sweep));
    notes.add(Caution.TEXT);
    return notes;
  }

  /** Neighbours that failed for the same reason, but for its numbers, share a sentence. */
  private static List<String> gaps(Sweep sweep) {
    List<String> gaps = new ArrayList<>();
    List<Sweep.Row> rows = sweep.rows();
    int i = 0;
    while (i < rows.size()) {
      int from = i;
      if (rows.get(from).held()) {
        i++;
        continue;
      }
      while (i < rows.size() && alike(rows.get(i), rows.get(from))) {
        i++;
      }
      gaps.add(gap(sweep, rows.subList(from, i)));
    }
    return gaps;
  }

  private static boolean alike(Sweep.Row row, Sweep.Row other) {
    return !row.held() && wording(row).equals(wording(other));
  }

  private static String wording(Sweep.Row row) {
    return row.reason().replaceAll("[0-9.,-]+", "#");
  }

  private static String gap(Sweep sweep, List<Sweep.Row> run) {
    Sweep.Row first = run.get(0);
    if (run.size() == 1) {
      return "No position at " + at(sweep, first.value()) + ": " + first.reason();
    }
    return String.format(
        Locale.ROOT,
        "No position from %s to %s (%d of %d values); at %s: %s",
        at(sweep, first.value()),
        at(sweep, run.get(run.size() - 1).value()),
        run.size(),
        sweep.rows().size(),
        at(sweep, first.value()),
        first.reason());
  }

  private static String at(Sweep sweep, double value) {
    String gap = sweep.unit().isEmpty() || sweep.unit().equals("°") ? "" : " ";
    return String.format(Locale.ROOT, "%.1f%s%s", value, gap, sweep.unit());
  }
}
