package org.leverbook.data;

import java.util.List;
import java.util.OptionalDouble;
import org.leverbook.quantity.Refused;

/**
 * One row of a table.
 *
 * @param table the table's name
 * @param line its line in the file, counted from 1
 * @param columns the column names
 * @param cells the cells, as many as the columns
 */
public record DataRow(String table, int line, List<String> columns, List<String> cells) {

  /** Keeps its own copies. */
  public DataRow {
    columns = List.copyOf(columns);
    cells = List.copyOf(cells);
  }

  /**
   * A cell as text.
   *
   * @param column a column name
   * @return the text, empty where the cell is
   * @throws Refused if there is no such column; names those that exist
   */
  public String text(String column) {
    int index = columns.indexOf(column);
    if (index < 0) {
      throw new Refused(
          table + " has no column \"" + column + "\"; it has " + String.join(", ", columns) + ".");
    }
    return cells.get(index);
  }

  /**
   * Whether a cell holds exactly this text.
   *
   * @param column a column name
   * @param value the text
   * @return true if so
   */
  public boolean is(String column, String value) {
    return text(column).equals(value);
  }

  /**
   * A cell as a number that must be there.
   *
   * @param column a column name
   * @return the number, finite
   * @throws Refused if it is empty or no finite number; names file, line, column and text
   */
  public double number(String column) {
    return optionalNumber(column)
        .orElseThrow(
            () ->
                new Refused(
                    String.format(
                        "%s, line %d, column %s: a number is missing.", table, line, column)));
  }

  /**
   * A cell as a number that may be missing.
   *
   * @param column a column name
   * @return the number, finite, or empty where the cell is
   * @throws Refused if the cell holds something else; names file, line, column and text
   */
  public OptionalDouble optionalNumber(String column) {
    String text = text(column);
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    double value;
    try {
      value = Double.parseDouble(text);
    } catch (NumberFormatException e) {
      value = Double.NaN;
    }
    if (!Double.isFinite(value)) {
      throw new Refused(
          String.format("%s, line %d, column %s: \"%s\" is no number.", table, line, column, text));
    }
    return OptionalDouble.of(value);
  }
}
