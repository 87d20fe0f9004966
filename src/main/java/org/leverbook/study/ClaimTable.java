package org.leverbook.study;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.leverbook.display.Caution;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Saved;
import org.leverbook.quantity.Refused;
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

  private static final MathContext FILE_DIGITS = new MathContext(10);

  /** No number of ten digits is longer, with its sign and its point. */
  private static final int SHORT = 12;

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
    if (!file.endsWith(".csv")) {
      throw new Refused("A claim's cases are saved as .csv, not as \"" + file + "\".");
    }
    List<Column> columns = columns(test, cases, ledger);
    return new Saved(
        List.of(OutputFolder.write(file, out -> write(out, words, columns, ledger.done()))));
  }

  private static void write(BufferedWriter out, String words, List<Column> columns, int rows) {
    try {
      for (Column column : columns) {
        out.write(quoted(column.heading()) + ",");
      }
      out.write("note\n");
      for (int n = 0; n < rows; n++) {
        for (Column column : columns) {
          Object cell = column.cell().apply(n);
          out.write((cell instanceof String text ? quoted(text) : number(cell)) + ",");
        }
        out.write(n == 0 ? quoted("Claim: " + words + ". " + Caution.TEXT) + "\n" : "\n");
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String number(Object cell) {
    if (cell instanceof Double value) {
      String plain = Double.toString(value);
      return plain.length() <= SHORT && plain.indexOf('E') < 0
          ? plain.endsWith(".0") ? plain.substring(0, plain.length() - 2) : plain
          : new BigDecimal(value).round(FILE_DIGITS).stripTrailingZeros().toPlainString();
    }
    return cell == null ? "" : cell.toString();
  }

  private static String quoted(String cell) {
    boolean plain = cell.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
