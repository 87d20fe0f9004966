package org.leverbook.data;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.leverbook.quantity.Refused;

/** Rows of a table by the texts of some columns: for what is asked many times. */
public final class Lookup {

  private final String table;
  private final Map<List<String>, DataRow> rows = new HashMap<>();

  /**
   * Sorts a table's rows.
   *
   * @param table which
   * @param columns whose texts together name a row
   * @throws Refused if two rows have the same name, or there is no such column
   */
  public Lookup(DataTable table, String... columns) {
    this.table = table.name();
    for (DataRow row : table.rows()) {
      List<String> key = Arrays.stream(columns).map(row::text).toList();
      if (rows.put(key, row) != null) {
        throw new Refused(
            table.name()
                + " should have one row for "
                + String.join(", ", key)
                + ", but has more.");
      }
    }
  }

  /**
   * One row.
   *
   * @param texts of the columns, in their order
   * @return the row
   * @throws Refused if there is none
   */
  public DataRow row(String... texts) {
    DataRow row = rows.get(List.of(texts));
    if (row == null) {
      throw new Refused(
          table + " should have one row for " + String.join(", ", texts) + ", but has 0.");
    }
    return row;
  }

  /**
   * One row, where there is one.
   *
   * @param texts of the columns, in their order
   * @return the row, or empty
   */
  public Optional<DataRow> find(String... texts) {
    return Optional.ofNullable(rows.get(List.of(texts)));
  }
}
