package org.leverbook.study;

import com.univocity.parsers.csv.CsvParser;
import com.univocity.parsers.csv.CsvParserSettings;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.leverbook.display.TableFile;
import org.leverbook.quantity.Refused;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/**
 * Reads a CSV file in two goes, so that a long one does not lie in memory twice: first what each
 * column holds, then the cells.
 *
 * <p>The parser (univocity, as in Tablesaw) keeps the quotes, which tell a text from a number.
 */
final class CsvTable {

  private static final int MOST_COLUMNS = 10_000;

  private final String file;
  private final Path path;
  private final char between;

  /** Called with each row, counted from 1 below the headings. */
  private interface Taker {

    void take(long row, List<String> cells);
  }

  CsvTable(String file, Path path) throws IOException {
    this.file = file;
    this.path = path;
    this.between = between();
  }

  Table read(String name) throws IOException {
    List<String> headings = headings();
    boolean ours = headings.get(headings.size() - 1).equals(TableFile.NOTE);
    List<CsvColumn> columns = new ArrayList<>();
    headings.forEach(h -> columns.add(new CsvColumn(file, h, ours, between != ',')));
    rows(
        headings.size(),
        (row, cells) -> {
          for (int c = 0; c < columns.size(); c++) {
            columns.get(c).look(row, cells.get(c));
          }
        });
    boolean commas = columns.stream().anyMatch(CsvColumn::hasDecimalComma);
    columns.forEach(column -> column.decide(commas));
    return filled(name, columns);
  }

  private Table filled(String name, List<CsvColumn> columns) throws IOException {
    Table table = Table.create(name);
    for (CsvColumn column : columns) {
      table.addColumns(
          column.numeric()
              ? DoubleColumn.create(column.heading())
              : StringColumn.create(column.heading()));
    }
    rows(
        columns.size(),
        (row, cells) -> {
          for (int c = 0; c < columns.size(); c++) {
            CsvColumn column = columns.get(c);
            if (!column.numeric()) {
              table.stringColumn(c).append(column.text(row, cells.get(c)));
            } else if (column.missing(cells.get(c))) {
              table.doubleColumn(c).appendMissing();
            } else {
              table.doubleColumn(c).append(column.number(row, cells.get(c)));
            }
          }
        });
    return table;
  }

  private List<String> headings() throws IOException {
    try (BufferedReader text = open()) {
      CsvParser parser = parser();
      parser.beginParsing(text);
      String[] first = parser.parseNext();
      parser.stopParsing();
      if (first == null) {
        throw new Refused(file + " is empty: a table begins with a line of headings.");
      }
      List<String> headings = new ArrayList<>();
      Map<String, Integer> places = new HashMap<>();
      for (int c = 0; c < first.length; c++) {
        String heading = CsvColumn.unquoted(first[c] == null ? "" : first[c]).strip();
        heading = heading.isEmpty() ? "column " + (c + 1) : heading;
        Integer before = places.put(heading, c + 1);
        if (before != null) {
          throw new Refused(
              String.format(
                  "%s: columns %d and %d are both called \"%s\". Give each its own heading.",
                  file, before, c + 1, heading));
        }
        headings.add(heading);
      }
      return headings;
    }
  }

  private void rows(int columns, Taker taker) throws IOException {
    try (BufferedReader text = open()) {
      CsvParser parser = parser();
      parser.beginParsing(text);
      parser.parseNext();
      long row = 0;
      String[] cells;
      while ((cells = parser.parseNext()) != null) {
        row++;
        if (cells.length != columns) {
          throw new Refused(
              String.format(
                  "%s, row %d has %d cells, but there are %d headings. %s",
                  file,
                  row,
                  cells.length,
                  columns,
                  cells.length > columns
                      ? "A cell that holds a \"" + between + "\" must stand in quotes."
                      : "Empty cells need their \"" + between + "\" too."));
        }
        List<String> line = new ArrayList<>(columns);
        for (String cell : cells) {
          line.add(cell == null ? "" : cell);
        }
        taker.take(row, line);
      }
    }
  }

  /** What stands between the columns: what the line of headings has most of, outside quotes. */
  private char between() throws IOException {
    int[] counts = new int[3];
    String candidates = ",;\t";
    try (BufferedReader text = open()) {
      boolean quoted = false;
      int letter;
      while ((letter = text.read()) >= 0 && (quoted || letter != '\n')) {
        quoted ^= letter == '"';
        int which = candidates.indexOf(letter);
        if (!quoted && which >= 0) {
          counts[which]++;
        }
      }
    }
    int most = counts[1] > counts[0] ? 1 : 0;
    return candidates.charAt(counts[2] > counts[most] ? 2 : most);
  }

  private BufferedReader open() throws IOException {
    BufferedReader text = Files.newBufferedReader(path, StandardCharsets.UTF_8);
    text.mark(1);
    // Spreadsheets put a mark of the byte order first.
    if (text.read() != '\uFEFF') {
      text.reset();
    }
    return text;
  }

  private CsvParser parser() {
    CsvParserSettings settings = new CsvParserSettings();
    settings.getFormat().setDelimiter(between);
    // A cell may begin with any letter; none begins a comment.
    settings.getFormat().setComment('\0');
    settings.setLineSeparatorDetectionEnabled(true);
    settings.setNormalizeLineEndingsWithinQuotes(false);
    settings.setKeepQuotes(true);
    settings.trimValues(false);
    settings.setSkipEmptyLines(true);
    settings.setEmptyValue("\"\"");
    settings.setMaxCharsPerColumn(-1);
    settings.setMaxColumns(MOST_COLUMNS);
    settings.setReadInputOnSeparateThread(false);
    return new CsvParser(settings);
  }
}
