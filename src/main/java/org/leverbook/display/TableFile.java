package org.leverbook.display;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.leverbook.quantity.Refused;

/**
 * Writes tables as CSV or JSON, row by row.
 *
 * <p>CSV: UTF-8, commas, a header line with the units, one line a row, decimal points. JSON: an
 * array with one object a row, a line each; its keys are the columns' names with their units,
 * numbers are numbers, what is missing is null. In both the last column is called {@code note} and
 * holds caution and notes on the first row, because a file without its caution must not exist.
 *
 * <p>Every number has all its digits. A text that would read as a number stands in quotes in CSV;
 * where all texts of a column are empty, the first is written as two quotes, and where the heading
 * promises numbers by its unit, every text stands in quotes. So a file read back has the same
 * columns, types and values.
 */
public final class TableFile {

  /** The last column of every file. */
  public static final String NOTE = "note";

  private TableFile() {}

  /**
   * Saves a table in the output folder.
   *
   * @param rows what to write
   * @param name a file name that ends in {@code .csv} or {@code .json}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public static Saved save(Rows rows, String name) {
    if (name.endsWith(".csv")) {
      return new Saved(List.of(OutputFolder.writeText(name, file -> csv(rows, file))));
    }
    if (name.endsWith(".json")) {
      return new Saved(List.of(OutputFolder.writeText(name, file -> json(rows, file))));
    }
    throw new Refused("A table is saved as .csv or .json, not as \"" + name + "\".");
  }

  static void csv(Rows rows, Appendable file) throws IOException {
    List<String> headings = new ArrayList<>(rows.headings());
    int columns = headings.size();
    boolean[] empty = new boolean[columns];
    boolean[] united = new boolean[columns];
    for (int c = 0; c < columns; c++) {
      empty[c] = onlyEmptyTexts(rows, c);
      united[c] = ColumnUnits.promised(headings.get(c));
      file.append(FileCells.quoted(headings.get(c))).append(',');
    }
    file.append(NOTE).append('\n');
    String note = String.join(" ", rows.notes());
    for (int r = 0; r < rows.count(); r++) {
      for (int c = 0; c < columns; c++) {
        Object cell = rows.cell(r, c);
        if (cell instanceof Number number) {
          file.append(FileCells.number(number.doubleValue()));
        } else if (cell != null) {
          String text = cell.toString();
          boolean marked = text.isEmpty() ? r == 0 && empty[c] : united[c];
          file.append(marked ? '"' + text.replace("\"", "\"\"") + '"' : FileCells.quoted(text));
        }
        file.append(',');
      }
      file.append(FileCells.quoted(r == 0 ? note : "")).append('\n');
    }
  }

  /** Whether nothing in a column would tell a reader that it holds texts. */
  private static boolean onlyEmptyTexts(Rows rows, int column) {
    boolean text = false;
    for (int r = 0; r < rows.count(); r++) {
      Object cell = rows.cell(r, column);
      if (cell instanceof Number || cell instanceof String s && !s.isEmpty()) {
        return false;
      }
      text |= cell != null;
    }
    return text;
  }

  static void json(Rows rows, Writer file) throws IOException {
    List<String> headings = rows.headings();
    // The generator must not close a writer that it did not open.
    try (JsonGenerator json =
        new JsonFactory().createGenerator(file).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)) {
      json.setRootValueSeparator(null);
      json.writeStartArray();
      String note = String.join(" ", rows.notes());
      for (int r = 0; r < rows.count(); r++) {
        json.writeRaw('\n');
        json.writeStartObject();
        for (int c = 0; c < headings.size(); c++) {
          json.writeFieldName(headings.get(c));
          Object cell = rows.cell(r, c);
          if (cell instanceof Number number) {
            json.writeNumber(FileCells.number(number.doubleValue()));
          } else if (cell == null) {
            json.writeNull();
          } else {
            json.writeString(cell.toString());
          }
        }
        json.writeStringField(NOTE, r == 0 ? note : "");
        json.writeEndObject();
      }
      json.writeRaw('\n');
      json.writeEndArray();
      json.writeRaw('\n');
    }
  }
}
