package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.display.ShownAdapter;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.FloatColumn;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/** Shows a Tablesaw table: long ones folded, with their counts. */
public final class TableAdapter implements ShownAdapter {

  private static final int LONGEST = 40;

  @Override
  public Optional<Shown> show(Object value) {
    return value instanceof Table table ? Optional.of(() -> text(table)) : Optional.empty();
  }

  /**
   * The cells of a Tablesaw table as a plain sheet, for who sets it as a page.
   *
   * @param value any value
   * @return the sheet, missing cells empty; or empty where the value is no such table
   */
  public static Optional<Sheet> sheet(Object value) {
    if (!(value instanceof Table table)) {
      return Optional.empty();
    }
    List<Sheet.Column> columns = new ArrayList<>();
    List<List<Object>> rows = new ArrayList<>();
    for (int r = 0; r < table.rowCount(); r++) {
      rows.add(new ArrayList<>());
    }
    for (Column<?> column : table.columns()) {
      boolean numbers = column instanceof NumericColumn<?>;
      boolean broken = column instanceof DoubleColumn || column instanceof FloatColumn;
      columns.add(new Sheet.Column(column.name(), "", broken ? 1 : 0));
      for (int r = 0; r < table.rowCount(); r++) {
        rows.get(r).add(cell(column, r, numbers));
      }
    }
    return Optional.of(new Sheet(String.valueOf(table.name()), columns, rows, List.of()));
  }

  private static Object cell(Column<?> column, int row, boolean number) {
    if (column.isMissing(row)) {
      return null;
    }
    return number
        ? (Object) ((NumericColumn<?>) column).getDouble(row)
        : String.valueOf(column.get(row));
  }

  private static String text(Table table) {
    String printed = table.printAll();
    if (table.rowCount() > LONGEST) {
      printed = table.print(LONGEST);
    }
    return printed.stripTrailing() + "\n" + table.rowCount() + " rows";
  }
}
