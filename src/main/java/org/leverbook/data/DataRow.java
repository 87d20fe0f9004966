package org.leverbook.data;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.leverbook.quantity.Refused;

/** One row of a table. Its numbers are read once, however often they are asked for. */
public final class DataRow {

  private final String table;
  private final int line;
  private final Header header;
  private final List<String> cells;
  private final Double[] numbers;

  /**
   * The columns of a table.
   *
   * @param names in order
   * @param places of each name
   */
  record Header(List<String> names, Map<String, Integer> places) {

    static Header of(List<String> names) {
      Map<String, Integer> places = new HashMap<>();
      for (int i = 0; i < names.size(); i++) {
        places.putIfAbsent(names.get(i), i);
      }
      // Not a copy: this kind finds its names faster.
      return new Header(List.copyOf(names), places);
    }
  }

  /**
   * A row.
   *
   * @param table the table's name
   * @param line its line in the file, counted from 1
   * @param header the columns
   * @param cells the cells, as many as the columns
   */
  DataRow(String table, int line, Header header, List<String> cells) {
    this.table = table;
    this.line = line;
    this.header = header;
    this.cells = List.copyOf(cells);
    this.numbers = new Double[cells.size()];
  }

  /**
   * The table's name.
   *
   * @return as in {@code body/joint_rom.csv}
   */
  public String table() {
    return table;
  }

  /**
   * Its line in the file.
   *
   * @return counted from 1
   */
  public int line() {
    return line;
  }

  /**
   * A cell as text.
   *
   * @param column a column name
   * @return the text, empty where the cell is
   * @throws Refused if there is no such column; names those that exist
   */
  public String text(String column) {
    return cells.get(place(column));
  }

  private int place(String column) {
    Integer place = header.places().get(column);
    if (place == null) {
      throw new Refused(
          table
              + " has no column \""
              + column
              + "\"; it has "
              + String.join(", ", header.names())
              + ".");
    }
    return place;
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
    int place = place(column);
    Double known = numbers[place];
    if (known != null) {
      return OptionalDouble.of(known);
    }
    String text = cells.get(place);
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
    // Several threads may find it at once; all of them find the same.
    numbers[place] = value;
    return OptionalDouble.of(value);
  }
}
