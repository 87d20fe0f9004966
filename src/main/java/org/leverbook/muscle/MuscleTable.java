package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.quantity.Refused;

/** All muscles of the reference man, in the order of {@code muscle/muscles.csv}. */
public final class MuscleTable {

  /** The table that travels with Leverbook. */
  public static final MuscleTable SHIPPED =
      of(DataTable.read("muscle/muscles.csv"), DataTable.read("muscle/names.csv"));

  private final Map<String, MuscleRow> rows;

  private MuscleTable(Map<String, MuscleRow> rows) {
    this.rows = rows;
  }

  /**
   * Reads a table.
   *
   * @param muscles cross-sections, stresses, groups
   * @param names what each is called
   * @return the muscles
   * @throws Refused if a row is missing or broken, or two rows have one name; names file and line
   */
  static MuscleTable of(DataTable muscles, DataTable names) {
    Map<String, String> shown = new LinkedHashMap<>();
    for (DataRow row : names.rows()) {
      if (row.is("kind", "part")) {
        shown.put(row.text("muscles"), row.text("name"));
      }
    }
    Map<String, MuscleRow> rows = new LinkedHashMap<>();
    for (DataRow row : muscles.rows()) {
      String key = MuscleRow.filled(row, "name");
      MuscleRow muscle = MuscleRow.of(row, shown.getOrDefault(key, key.replace('_', ' ')));
      if (rows.put(key, muscle) != null) {
        throw MuscleRow.bad(row, "name", "the muscle \"" + key + "\" stands there twice");
      }
    }
    return new MuscleTable(rows);
  }

  /**
   * All of them.
   *
   * @return in the order of the table
   */
  public List<MuscleRow> all() {
    return new ArrayList<>(rows.values());
  }

  /**
   * One by its key.
   *
   * @param key as in "gluteus_maximus"
   * @return the muscle
   * @throws Refused if there is none
   */
  public MuscleRow row(String key) {
    MuscleRow row = rows.get(key);
    if (row == null) {
      throw new Refused("There is no muscle \"" + key + "\" in the table of muscles.");
    }
    return row;
  }

  /**
   * The muscles that a cell of another table names.
   *
   * @param row the other table's row
   * @param column its column; keys with semicolons between them
   * @return at least one key of this table
   * @throws Refused if there is none or an unknown one; names file, line and column
   */
  List<String> keys(DataRow row, String column) {
    List<String> keys = List.of(MuscleRow.filled(row, column).split("; *"));
    for (String key : keys) {
      if (!rows.containsKey(key)) {
        throw MuscleRow.bad(row, column, "there is no muscle \"" + key + "\"");
      }
    }
    return keys;
  }
}
