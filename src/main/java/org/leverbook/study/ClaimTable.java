package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.leverbook.display.Caution;
import org.leverbook.display.Rows;
import org.leverbook.display.Saved;
import org.leverbook.display.TableFile;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.numbers.NumberColumnFormatter;

/** One row a case, as a table or straight into a file. */
final class ClaimTable {

  /**
   * A column.
   *
   * @param heading with its unit
   * @param cell from a case to a Double, an Integer, a String, or null where there is nothing
   * @param kind class of its cells
   */
  private record Column(String heading, Class<?> kind, IntFunction<Object> cell) {}

  private ClaimTable() {}

  private static List<Column> columns(ClaimTest test, ClaimCases cases, ClaimLedger ledger) {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column("case", Integer.class, n -> n + 1));
    columns.add(new Column("person", Integer.class, n -> cases.personOf(n) + 1));
    columns.add(
        new Column(
            "sex",
            String.class,
            n ->
                ledger.measured(cases.personOf(n))
                    ? ledger.measure(cases.personOf(n), 0) > 0 ? "male" : "female"
                    : ""));
    for (int m = 1; m < ClaimInputs.size(); m++) {
      int measure = m;
      columns.add(
          new Column(
              ClaimInputs.heading(m),
              Double.class,
              n ->
                  ledger.measured(cases.personOf(n))
                      ? rounded(ledger.measure(cases.personOf(n), measure))
                      : null));
    }
    if (cases.lifts().size() > 1 || !cases.lifts().get(0).isEmpty()) {
      columns.add(new Column("lift", String.class, n -> cases.lifts().get(cases.liftOf(n))));
    }
    if (cases.settings().size() > 1 || !cases.settings().get(0).name().isEmpty()) {
      columns.add(
          new Column(
              "setting", String.class, n -> cases.settings().get(cases.settingOf(n)).name()));
    }
    columns.add(
        new Column(
            "load (kg)",
            Double.class,
            n -> ledger.kind(n).tested() ? rounded(ledger.load(n)) : null));
    columns.add(new Column("holds", String.class, n -> ledger.kind(n).word()));
    if (test.exact()) {
      String unit = test.unit().isEmpty() ? "" : " (" + test.unit() + ")";
      columns.add(
          new Column(
              "margin" + unit,
              Double.class,
              n -> ledger.kind(n).tested() ? ledger.margin(n) : null));
    }
    columns.add(new Column("reason", String.class, ledger::reason));
    return columns;
  }

  /** Four bytes carry seven digits; the others would be noise. */
  private static Double rounded(float value) {
    return Double.valueOf(Float.toString(value));
  }

  static Table table(String words, ClaimTest test, ClaimCases cases, ClaimLedger ledger) {
    Table table = Table.create("Claim: " + words);
    for (Column column : columns(test, cases, ledger)) {
      if (column.kind() == Double.class) {
        DoubleColumn numbers = DoubleColumn.create(column.heading());
        // For reading only: files keep every digit.
        numbers.setPrintFormatter(NumberColumnFormatter.fixedWithGrouping(1));
        for (int n = 0; n < ledger.done(); n++) {
          Object cell = column.cell().apply(n);
          if (cell == null) {
            numbers.appendMissing();
          } else {
            numbers.append((Double) cell);
          }
        }
        table.addColumns(numbers);
      } else if (column.kind() == Integer.class) {
        IntColumn numbers = IntColumn.create(column.heading());
        for (int n = 0; n < ledger.done(); n++) {
          numbers.append((Integer) column.cell().apply(n));
        }
        table.addColumns(numbers);
      } else {
        StringColumn texts = StringColumn.create(column.heading());
        for (int n = 0; n < ledger.done(); n++) {
          texts.append((String) column.cell().apply(n));
        }
        table.addColumns(texts);
      }
    }
    return table;
  }

  static Saved save(
      String file, String words, ClaimTest test, ClaimCases cases, ClaimLedger ledger) {
    List<Column> columns = columns(test, cases, ledger);
    List<String> headings = columns.stream().map(Column::heading).toList();
    List<String> notes = List.of("Claim: " + words + ". " + Caution.TEXT);
    return TableFile.save(
        new Rows() {
          @Override
          public List<String> headings() {
            return headings;
          }

          @Override
          public int count() {
            return ledger.done();
          }

          @Override
          public Object cell(int row, int column) {
            return columns.get(column).cell().apply(row);
          }

          @Override
          public List<String> notes() {
            return notes;
          }
        },
        file);
  }
}
