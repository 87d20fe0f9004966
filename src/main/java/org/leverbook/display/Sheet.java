package org.leverbook.display;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A plain table of results: named columns with their units, rows of texts and numbers, and notes
 * below.
 *
 * @param title what it shows
 * @param columns the columns, in order
 * @param rows the cells of each row, as many as the columns; a number, a text, or null where there
 *     is nothing to say
 * @param notes sentences below the table
 * @param subjects the values it was made of; no part of what makes two tables equal
 */
public record Sheet(
    String title,
    List<Column> columns,
    List<List<Object>> rows,
    List<String> notes,
    List<Object> subjects)
    implements Shown, Traced {

  /**
   * A column.
   *
   * @param name its name, without unit
   * @param unit its unit, empty for texts and pure numbers
   * @param decimals places shown after the point in text and HTML; files keep more
   */
  public record Column(String name, String unit, int decimals) {

    /**
     * A column of texts.
     *
     * @param name its name
     * @return the column
     */
    public static Column text(String name) {
      return new Column(name, "", 0);
    }

    /**
     * Checks the words.
     *
     * @throws Refused if the name or the unit is missing
     */
    public Column {
      Ask.present("name of a column", name, "\"trunk lean\"");
      Ask.present("unit of the " + name, unit, "\"°\"; for a plain number, \"\"");
    }

    /**
     * The heading with its unit.
     *
     * @return as in {@code moment (N·m)}
     */
    public String heading() {
      return unit.isEmpty() ? name : name + " (" + unit + ")";
    }
  }

  /**
   * Checks the widths and that no number is NaN or infinite, then keeps its own copies.
   *
   * @throws Refused if the title is missing
   */
  public Sheet {
    Ask.present("title of the table", title, "\"squat, three builds\"");
    columns = List.copyOf(columns);
    notes = List.copyOf(notes);
    subjects = List.copyOf(subjects);
    List<List<Object>> copies = new ArrayList<>();
    for (List<Object> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            title + ": a row has " + row.size() + " cells for " + columns.size() + " columns");
      }
      for (Object cell : row) {
        if (cell instanceof Double number && !Double.isFinite(number)) {
          throw new IllegalArgumentException(title + ": a cell is " + number);
        }
      }
      copies.add(java.util.Collections.unmodifiableList(new ArrayList<>(row)));
    }
    rows = List.copyOf(copies);
  }

  /**
   * A table that does not tell what it was made of.
   *
   * @param title what it shows
   * @param columns the columns, in order
   * @param rows the cells of each row
   * @param notes sentences below the table
   */
  public Sheet(String title, List<Column> columns, List<List<Object>> rows, List<String> notes) {
    this(title, columns, rows, notes, List.of());
  }

  /**
   * The same table, which remembers what it was made of.
   *
   * @param values positions, sweeps, people and their like
   * @return the table
   */
  public Sheet about(Object... values) {
    return new Sheet(title, columns, rows, notes, List.of(values));
  }

  @Override
  public String text() {
    return forReader().plain();
  }

  private String plain() {
    List<List<String>> cells = new ArrayList<>();
    cells.add(columns.stream().map(Column::heading).toList());
    rows.forEach(row -> cells.add(shown(row)));
    int[] widths = new int[columns.size()];
    for (List<String> row : cells) {
      for (int c = 0; c < widths.length; c++) {
        widths[c] = Math.max(widths[c], row.get(c).length());
      }
    }
    StringBuilder text = new StringBuilder(title).append('\n');
    for (List<String> row : cells) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < widths.length; c++) {
        String pad = " ".repeat(widths[c] - row.get(c).length());
        line.append(c == 0 ? "" : "  ");
        line.append(isNumeric(c) ? pad + row.get(c) : row.get(c) + pad);
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
    notes.forEach(note -> text.append(note).append('\n'));
    return text.toString().stripTrailing();
  }

  @Override
  public Optional<String> html() {
    return Optional.of(forReader().markup());
  }

  private String markup() {
    StringBuilder html = new StringBuilder("<table><caption>");
    html.append(escaped(title)).append("</caption><thead><tr>");
    columns.forEach(c -> html.append("<th>").append(escaped(c.heading())).append("</th>"));
    html.append("</tr></thead><tbody>");
    for (List<Object> row : rows) {
      html.append("<tr>");
      shown(row).forEach(cell -> html.append("<td>").append(escaped(cell)).append("</td>"));
      html.append("</tr>");
    }
    html.append("</tbody></table>");
    notes.forEach(note -> html.append("<p>").append(escaped(note)).append("</p>"));
    return html.toString();
  }

  /** The table as its reader prefers it. */
  private Sheet forReader() {
    Preferences chosen = Preferences.current();
    if (chosen.measure() == Preferences.Measure.KILOGRAMS && chosen.furtherDigits() == 0) {
      return this;
    }
    return ReaderSheet.of(this, chosen);
  }

  /**
   * The table as CSV: a header line with units, one line a row, every digit of each number; the
   * notes stand in a last column, on the first row.
   *
   * @return lines that end in a line feed
   */
  public String csv() {
    StringBuilder csv = new StringBuilder();
    try {
      TableFile.csv(inFile(), csv);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return csv.toString();
  }

  /**
   * The table as JSON: an array with an object for each row, its keys the headings of the columns;
   * the notes stand in a last column, on the first row.
   *
   * @return a line for each row
   */
  public String json() {
    StringWriter json = new StringWriter();
    try {
      TableFile.json(inFile(), json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return json.toString();
  }

  /**
   * Saves the table.
   *
   * @param name a file name that ends in {@code .csv} or {@code .json}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public Saved save(String name) {
    return TableFile.save(inFile(), name);
  }

  /** What a file needs to know of it. */
  private Rows inFile() {
    List<String> headings = columns.stream().map(Column::heading).toList();
    boolean[] texts = new boolean[columns.size()];
    for (int c = 0; c < texts.length; c++) {
      texts[c] = columns.get(c).equals(Column.text(columns.get(c).name())) && !isNumeric(c);
    }
    return new Rows() {
      @Override
      public List<String> headings() {
        return headings;
      }

      @Override
      public int count() {
        return rows.size();
      }

      @Override
      public Object cell(int row, int column) {
        Object cell = rows.get(row).get(column);
        return cell == null && texts[column] ? "" : cell;
      }

      @Override
      public List<String> notes() {
        return notes;
      }
    };
  }

  /**
   * A cell.
   *
   * @param row its row, from 0
   * @param column the column's name without unit
   * @return the cell
   * @throws Refused if there is no such column or row
   */
  public Object cell(int row, String column) {
    for (int c = 0; c < columns.size(); c++) {
      if (columns.get(c).name().equals(column)) {
        if (row < 0 || row >= rows.size()) {
          throw new Refused(
              "There is no row " + row + ": the rows are 0 to " + (rows.size() - 1) + ".");
        }
        return rows.get(row).get(c);
      }
    }
    throw new Refused(
        "There is no column \""
            + column
            + "\"; there are "
            + columns.stream().map(Column::name).collect(Collectors.joining(", "))
            + ".");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Sheet sheet
        && title.equals(sheet.title)
        && columns.equals(sheet.columns)
        && rows.equals(sheet.rows)
        && notes.equals(sheet.notes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(title, columns, rows, notes);
  }

  @Override
  public String toString() {
    return text();
  }

  /**
   * Whether a column holds numbers.
   *
   * @param column from 0
   * @return true if any cell is a number
   */
  public boolean numeric(int column) {
    return isNumeric(column);
  }

  /**
   * The cells of a row as text and HTML show them.
   *
   * @param row from 0
   * @return one text for each column; empty where there is nothing to say
   */
  public List<String> shownRow(int row) {
    return shown(rows.get(row));
  }

  private boolean isNumeric(int column) {
    return rows.stream().anyMatch(row -> row.get(column) instanceof Number);
  }

  private List<String> shown(List<Object> row) {
    List<String> cells = new ArrayList<>();
    for (int c = 0; c < row.size(); c++) {
      Object cell = row.get(c);
      if (cell instanceof Double number) {
        String text = String.format(Locale.ROOT, "%." + columns.get(c).decimals() + "f", number);
        // A tiny negative number must not show as "-0".
        cells.add(text.matches("-0\\.?0*") ? text.substring(1) : text);
      } else {
        cells.add(cell == null ? "" : cell.toString());
      }
    }
    return cells;
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
