package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.study.Gap;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;

/** What stands below the plot of a sweep. */
final class SweepNotes {

  private SweepNotes() {}

  /** With what must be known of moments. */
  static List<String> of(Sweep sweep, List<JointId> joints) {
    boolean paired = joints.stream().anyMatch(JointId::paired);
    return ofMeasure(sweep, paired ? Measure.MOMENT.notes() : List.of());
  }

  static List<String> ofMeasure(Sweep sweep, List<String> more) {
    List<String> notes = new ArrayList<>();
    SweepRow first = sweep.rows().stream().filter(SweepRow::held).findFirst().orElseThrow();
    String loads =
        first.position().loads().stream()
            .filter(l -> l.mass() > 0)
            .map(l -> l.description())
            .collect(Collectors.joining(", "));
    notes.add(
        Caption.capital(first.position().name())
            + ". At "
            + at(sweep, first)
            + ": "
            + first.position().body().person().text()
            + (loads.isEmpty() ? "; nothing held." : "; " + loads + "."));
    notes.addAll(more);
    notes.addAll(sweep.notes());
    notes.addAll(gaps(sweep));
    notes.add(Caution.TEXT);
    return notes;
  }

  /** What is told of one side only, and where nothing is told and why. */
  static List<String> gapsAndSides(Sweep sweep, List<JointId> joints) {
    List<String> notes = new ArrayList<>();
    if (joints.stream().anyMatch(JointId::paired)) {
      notes.add("Moments of paired joints are of one side.");
    }
    notes.addAll(sweep.notes());
    notes.addAll(gaps(sweep));
    return notes;
  }

  private static List<String> gaps(Sweep sweep) {
    return Gap.in(sweep.rows().stream().map(SweepRow::reason).toList()).stream()
        .map(gap -> told(sweep, gap))
        .toList();
  }

  private static String told(Sweep sweep, Gap gap) {
    String first = at(sweep, sweep.rows().get(gap.first()));
    if (gap.size() == 1) {
      return "No position at " + first + ": " + gap.reason();
    }
    return String.format(
        Locale.ROOT,
        "No position from %s to %s (%d of %d values); at %s: %s",
        first,
        at(sweep, sweep.rows().get(gap.last())),
        gap.size(),
        sweep.rows().size(),
        first,
        gap.reason());
  }

  private static String at(Sweep sweep, SweepRow row) {
    if (sweep.named()) {
      boolean numbered = Bars.isNumbered(sweep);
      return sweep.name() + " " + (numbered ? String.format("%.0f", row.value()) : row.name());
    }
    String gap = sweep.unit().isEmpty() || sweep.unit().equals("°") ? "" : " ";
    return String.format(Locale.ROOT, "%.1f%s%s", row.value(), gap, sweep.unit());
  }
}
