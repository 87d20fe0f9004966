package org.leverbook.article;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.leverbook.display.Caution;
import org.leverbook.display.Kind;
import org.leverbook.display.Sheet;
import org.leverbook.lift.LargestLoad;
import org.leverbook.lift.Library;
import org.leverbook.muscle.Verdict;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.strength.Capacity;
import org.leverbook.study.Cells;
import org.leverbook.study.ClaimAnswer;
import org.leverbook.study.ClaimSheet;
import org.leverbook.study.Comparison;
import org.leverbook.study.Doubt;
import org.leverbook.study.Group;
import org.leverbook.study.Optimum;
import org.leverbook.study.Sensitivity;
import org.leverbook.study.Sweep;
import org.leverbook.study.TableAdapter;
import org.leverbook.study.TradeOff;
import org.leverbook.study.WayComparison;

/** The tables that values have, as an article sets them. */
final class Tables {

  /** How long a computation took is no result: it differs each time. */
  private static final String CLOCK = "seconds (s)";

  private Tables() {}

  /**
   * The table of a value, with something in it and not too much.
   *
   * @param value a table, or what has one
   * @param most how many rows can be read
   */
  static Sheet of(Object value, int most) {
    Sheet sheet = timeless(sheet(value));
    if (sheet.rows().isEmpty()) {
      throw new Refused(
          "The table \"" + sheet.title() + "\" has no rows: there is nothing to show in it.");
    }
    if (sheet.rows().size() > most) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The table \"%s\" has %,d rows; an article takes up to %,d, more is no reading. Take"
                  + " fewer values, show a plot, or save it apart: save(\"table.csv\").",
              sheet.title(),
              sheet.rows().size(),
              most));
    }
    return sheet;
  }

  /** The notes of a table that do not stand elsewhere in the article. */
  static List<String> notes(Sheet sheet) {
    return sheet.notes().stream().filter(note -> !note.equals(Caution.TEXT)).toList();
  }

  private static Sheet sheet(Object value) {
    if (value instanceof Sheet sheet) {
      return sheet;
    }
    if (value instanceof Position position) {
      return position.moments();
    }
    if (value instanceof Verdict verdict) {
      return verdict.table();
    }
    if (value instanceof LargestLoad largest) {
      return largest.table();
    }
    if (value instanceof Capacity capacity) {
      return capacity.table();
    }
    if (value instanceof Library library) {
      return library.table();
    }
    return TableAdapter.sheet(value).orElseGet(() -> ofStudy(value));
  }

  private static Sheet ofStudy(Object value) {
    if (value instanceof Sweep sweep) {
      return sweep.sheet();
    }
    if (value instanceof Cells cells) {
      return cells.sheet();
    }
    if (value instanceof Comparison comparison) {
      return comparison.moments();
    }
    if (value instanceof WayComparison ways) {
      return ways.peaks();
    }
    if (value instanceof Group group) {
      return group.sheet();
    }
    if (value instanceof ClaimAnswer answer) {
      return ClaimSheet.of(List.of(answer));
    }
    if (value instanceof Doubt doubt) {
      return doubt.table();
    }
    if (value instanceof Sensitivity sensitivity) {
      return sensitivity.sheet();
    }
    if (value instanceof Optimum<?> optimum) {
      return optimum.sheet();
    }
    if (value instanceof TradeOff<?> trade) {
      return trade.sheet();
    }
    throw new Refused(
        "There is no table of "
            + Kind.of(value)
            + ": give a table, as in start.moments(), or a sweep, comparison, verdict, people or"
            + " their like.");
  }

  private static Sheet timeless(Sheet sheet) {
    List<Integer> kept =
        IntStream.range(0, sheet.columns().size())
            .filter(c -> !sheet.columns().get(c).heading().equals(CLOCK))
            .boxed()
            .toList();
    if (kept.size() == sheet.columns().size()) {
      return sheet;
    }
    List<List<Object>> rows = new ArrayList<>();
    for (List<Object> row : sheet.rows()) {
      List<Object> cells = new ArrayList<>();
      kept.forEach(c -> cells.add(row.get(c)));
      rows.add(cells);
    }
    List<Sheet.Column> columns = kept.stream().map(sheet.columns()::get).toList();
    return new Sheet(sheet.title(), columns, rows, sheet.notes(), sheet.subjects());
  }
}
