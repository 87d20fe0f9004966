package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.study.Gap;
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

  private static List<String> gaps(Sweep sweep) {
    return Gap.in(sweep.rows().stream().map(Sweep.Row::reason).toList()).stream()
        .map(gap -> told(sweep, gap))
        .toList();
  }

  private static String told(Sweep sweep, Gap gap) {
    String first = at(sweep, sweep.rows().get(gap.first()).value());
    if (gap.size() == 1) {
      return "No position at " + first + ": " + gap.reason();
    }
    return String.format(
        Locale.ROOT,
        "No position from %s to %s (%d of %d values); at %s: %s",
        first,
        at(sweep, sweep.rows().get(gap.last()).value()),
        gap.size(),
        sweep.rows().size(),
        first,
        gap.reason());
  }

  private static String at(Sweep sweep, double value) {
    String gap = sweep.unit().isEmpty() || sweep.unit().equals("°") ? "" : " ";
    return String.format(Locale.ROOT, "%.1f%s%s", value, gap, sweep.unit());
  }
}
