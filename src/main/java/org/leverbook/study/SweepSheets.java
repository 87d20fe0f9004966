package org.leverbook.study;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;

/** The tables of a sweep, and its short text. */
final class SweepSheets {

  /** A text shows this many rows of a longer sweep at its beginning, and so many at its end. */
  private static final int FIRST = 50;

  private static final int LAST = 10;

  private SweepSheets() {}

  static Sheet of(Sweep sweep, Forms form, List<JointId> joints) {
    return of(sweep, sweep.rows(), form, joints, sweep.notes());
  }

  private static Sheet of(
      Sweep sweep, List<SweepRow> shown, Forms form, List<JointId> joints, List<String> more) {
    List<List<Object>> cells = new ArrayList<>();
    for (SweepRow row : shown) {
      Object value = sweep.named() ? row.name() : (Object) row.value();
      form.rows(List.of(value), row.kept(), joints, cells);
    }
    List<String> notes = new ArrayList<>(more);
    notes.add(ColumnNames.SIGNS);
    notes.add(Caution.TEXT);
    return new Sheet(
        title(sweep),
        form.columns(List.of(sweep.varied().column(decimals(sweep))), joints),
        cells,
        notes);
  }

  private static String title(Sweep sweep) {
    if (sweep.subject().isEmpty()) {
      return "Sweep over " + sweep.name();
    }
    String title = sweep.title();
    return title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1);
  }

  /** So many decimals that neighbouring values can be told apart. */
  private static int decimals(Sweep sweep) {
    DoubleSummaryStatistics values =
        sweep.rows().stream().mapToDouble(SweepRow::value).summaryStatistics();
    double range = values.getCount() < 2 ? 0 : values.getMax() - values.getMin();
    return range == 0 ? 1 : Span.decimals(range / (values.getCount() - 1));
  }

  static String text(Sweep sweep) {
    List<SweepRow> shown = sweep.rows();
    List<String> notes = new ArrayList<>(sweep.notes());
    if (shown.size() > FIRST + LAST) {
      shown = new ArrayList<>(sweep.rows().subList(0, FIRST));
      shown.addAll(sweep.rows().subList(sweep.rows().size() - LAST, sweep.rows().size()));
      notes.add(
          String.format(
              Locale.ROOT,
              "The first %d and the last %d of %,d rows; sheet(), table() and save(\"sweep.csv\")"
                  + " have all.",
              FIRST,
              LAST,
              sweep.rows().size()));
    }
    return of(sweep, shown, Forms.WIDE, Tables.USUAL, notes).text()
        + String.format(
            Locale.ROOT, "\n%,d of %,d could be held.", sweep.held(), sweep.rows().size());
  }
}
