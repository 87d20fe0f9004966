package org.leverbook.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.leverbook.data.ReadTrouble;
import org.leverbook.display.Caution;
import org.leverbook.display.InputFile;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Rows;
import org.leverbook.display.Saved;
import org.leverbook.display.TableFile;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/**
 * Tables out of files and into files. What Leverbook wrote comes back equal: the same columns, the
 * same types, every digit, every text; and the column {@code note} with the caution.
 *
 * <p>Of foreign CSV files it is seen what stands between the columns (comma, semicolon, tab) and
 * whether decimals have a point or, with semicolons, a comma. A column whose heading ends in a unit
 * in brackets must hold numbers; any other holds numbers if all its cells are numbers, none of them
 * with leading zeros.
 */
public final class TableFiles {

  private TableFiles() {}

  /**
   * Reads a table.
   *
   * @param file a name that ends in {@code .csv} or {@code .json}; looked for where files are
   *     saved, then in the working folder
   * @return columns of numbers (doubles) and of texts, named as in the file
   * @throws Refused if there is no such file, or a cell is not what its column promises; names row
   *     and column
   */
  public static Table read(String file) {
    Ask.present("file name", file, "\"hip-height.csv\"");
    Path path = found(file);
    String name = path.getFileName().toString().replaceFirst("\\.[^.]*$", "");
    try {
      if (file.endsWith(".csv")) {
        return new CsvTable(file, path).read(name);
      }
      if (file.endsWith(".json")) {
        return new JsonTable(file, path).read(name);
      }
    } catch (UncheckedIOException | IOException e) {
      throw unread(file, e);
    }
    throw new Refused("A table is read from .csv or .json, not from \"" + file + "\".");
  }

  private static Refused unread(String file, Exception e) {
    Exception cause = e instanceof UncheckedIOException ? ((UncheckedIOException) e).getCause() : e;
    return cause instanceof CharacterCodingException
        ? new Refused(
            file
                + " is not in UTF-8: save it again as \"CSV UTF-8\", so that N·m and ° stay what they"
                + " are.",
            e)
        : new Refused(
            "The table \"" + file + "\" could not be read: " + ReadTrouble.of(cause) + ".", e);
  }

  private static Path found(String file) {
    Path saved = OutputFolder.resolve(file);
    return Files.isRegularFile(saved) ? saved : InputFile.find("table", file);
  }

  /**
   * Saves a Tablesaw table as it saves its own: with its notes and the caution in the last column.
   *
   * @param table any; whole numbers are written as numbers, dates and truth values as texts
   * @param file a name that ends in {@code .csv} or {@code .json}
   * @return what was written
   * @throws Refused if a number is infinite, the name has another ending, or the disk says no
   */
  public static Saved save(Table table, String file) {
    Ask.present("table", table, "byHip.table()");
    Ask.present("file name", file, "\"hip-height.csv\"");
    return TableFile.save(rows(table), file);
  }

  static Rows rows(Table table) {
    boolean noted =
        table.columnCount() > 0
            && table.column(table.columnCount() - 1).name().equals(TableFile.NOTE);
    int columns = table.columnCount() - (noted ? 1 : 0);
    String note = noted && table.rowCount() > 0 ? table.column(columns).getString(0) : "";
    List<String> headings = table.columnNames().subList(0, columns);
    return new Rows() {
      @Override
      public List<String> headings() {
        return headings;
      }

      @Override
      public int count() {
        return table.rowCount();
      }

      @Override
      public Object cell(int row, int column) {
        return TableFiles.cell(table.column(column), row);
      }

      @Override
      public List<String> notes() {
        return List.of(note.isEmpty() ? Caution.TEXT : note);
      }
    };
  }

  private static Object cell(Column<?> column, int row) {
    if (column.type() == ColumnType.STRING) {
      return column.getString(row);
    }
    if (column.isMissing(row)) {
      return null;
    }
    if (!(column instanceof NumericColumn<?> numbers)) {
      return column.getString(row);
    }
    double value = numbers.getDouble(row);
    if (Double.isInfinite(value)) {
      throw new Refused(
          "Row "
              + (row + 1)
              + ", column "
              + column.name()
              + ": an infinite number cannot be saved. Set it missing, or leave the row out.");
    }
    return value;
  }
}
