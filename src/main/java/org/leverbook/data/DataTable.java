package org.leverbook.data;

import com.fasterxml.jackson.databind.RuntimeJsonMappingException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Predicate;
import org.leverbook.quantity.Refused;

/**
 * One published table: its source lines, its columns, its rows.
 *
 * @param name the file, as in {@code body/joint_rom.csv}
 * @param sources the comment lines at its head, without their marks
 * @param columns the column names, in order
 * @param rows the rows, in order
 */
public record DataTable(
    String name, List<String> sources, List<String> columns, List<DataRow> rows) {

  /** As much of a bad line as a message shows. */
  private static final int SHOWN = 200;

  private static final CsvMapper CSV =
      CsvMapper.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();

  /** Keeps its own copies. */
  public DataTable {
    sources = List.copyOf(sources);
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  /**
   * Reads a table that travels with Leverbook.
   *
   * @param name a path below {@code datasets/}, as in {@code body/joint_rom.csv}
   * @return the table
   * @throws Refused if it is missing or broken
   */
  public static DataTable read(String name) {
    try (InputStream in =
        DataTable.class.getClassLoader().getResourceAsStream("datasets/" + name)) {
      if (in == null) {
        throw new Refused("The data set " + name + " is missing from this copy of Leverbook.");
      }
      return parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new Refused("The data set " + name + " could not be read: " + e + ".", e);
    }
  }

  /**
   * Reads a table from its text.
   *
   * @param name what to call it in messages
   * @param text the whole file
   * @return the table
   * @throws Refused if there is no header, or a row has more or fewer cells than the header; names
   *     the line
   */
  public static DataTable parse(String name, String text) {
    List<String> sources = new ArrayList<>();
    List<String> columns = null;
    DataRow.Header header = null;
    List<DataRow> rows = new ArrayList<>();
    int line = 0;
    for (String raw : text.split("\r?\n")) {
      line++;
      if (raw.startsWith("#")) {
        sources.add(raw.substring(1).strip());
      } else if (columns == null) {
        columns = cells(name, line, raw);
        header = DataRow.Header.of(columns);
      } else if (!raw.isBlank()) {
        rows.add(new DataRow(name, line, header, sameWidth(name, line, columns, raw)));
      }
    }
    if (columns == null) {
      throw new Refused(name + " has no header line.");
    }
    return new DataTable(name, sources, columns, rows);
  }

  /**
   * The only row that fits.
   *
   * @param what the row in words, for the message
   * @param fits which row
   * @return the row
   * @throws Refused if there is none or more than one
   */
  public DataRow only(String what, Predicate<DataRow> fits) {
    List<DataRow> found = rows.stream().filter(fits).toList();
    if (found.size() != 1) {
      throw new Refused(
          name + " should have one row for " + what + ", but has " + found.size() + ".");
    }
    return found.get(0);
  }

  /**
   * The first row that fits.
   *
   * @param fits which row
   * @return the row, or empty
   */
  public Optional<DataRow> first(Predicate<DataRow> fits) {
    return rows.stream().filter(fits).findFirst();
  }

  private static List<String> sameWidth(String name, int line, List<String> columns, String raw) {
    List<String> cells = cells(name, line, raw);
    if (cells.size() != columns.size()) {
      throw new Refused(
          String.format(
              "%s, line %d: %d cells, but the header has %d.",
              name, line, cells.size(), columns.size()));
    }
    return cells;
  }

  private static List<String> cells(String name, int line, String raw) {
    try (var values = CSV.readerForListOf(String.class).<List<String>>readValues(raw)) {
      return values.next().stream().map(String::strip).toList();
    } catch (IOException | RuntimeJsonMappingException | NoSuchElementException e) {
      String seen = raw.length() <= SHOWN ? raw : raw.substring(0, SHOWN) + "…";
      throw new Refused(
          name
              + ", line "
              + line
              + ": not a CSV line, as a quote is not closed or stands in the middle of a cell: \""
              + seen
              + "\".",
          e);
    }
  }
}
