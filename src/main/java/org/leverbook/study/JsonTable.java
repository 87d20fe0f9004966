package org.leverbook.study;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.leverbook.data.ReadTrouble;
import org.leverbook.display.ColumnUnits;
import org.leverbook.display.FileCells;
import org.leverbook.display.TableFile;
import org.leverbook.quantity.Refused;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/** Reads a JSON file that holds an array of flat objects, one for each row. */
final class JsonTable {

  private final String file;
  private final Path path;
  private final Map<String, List<Object>> columns = new LinkedHashMap<>();
  private int rows;

  JsonTable(String file, Path path) {
    this.file = file;
    this.path = path;
  }

  Table read(String name) throws IOException {
    try (BufferedReader text = Files.newBufferedReader(path, StandardCharsets.UTF_8);
        JsonParser json = new JsonFactory().createParser(text)) {
      json.enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION);
      json.enable(JsonParser.Feature.AUTO_CLOSE_SOURCE);
      if (json.nextToken() != JsonToken.START_ARRAY) {
        throw new Refused(
            file + " holds no table: it must be an array with one object for each row.");
      }
      while (json.nextToken() != JsonToken.END_ARRAY) {
        row(json);
      }
    } catch (JsonProcessingException e) {
      throw new Refused(
          file
              + " breaks off or is no JSON at line "
              + e.getLocation().getLineNr()
              + ": "
              + ReadTrouble.json(e)
              + ".",
          e);
    }
    Table table = Table.create(name);
    boolean ours = columns.containsKey(TableFile.NOTE);
    needDifferent(columns.keySet());
    columns.forEach((heading, cells) -> add(table, heading, cells, ours));
    return table;
  }

  /** A table knows no difference between large and small letters. */
  private void needDifferent(Set<String> headings) {
    Map<String, String> seen = new HashMap<>();
    for (String heading : headings) {
      String other = seen.put(heading.strip().toLowerCase(Locale.ROOT), heading);
      if (other != null) {
        throw new Refused(
            file
                + ": the columns \""
                + other
                + "\" and \""
                + heading
                + "\" differ in nothing but blanks or capitals. Give each its own name.");
      }
    }
  }

  private void row(JsonParser json) throws IOException {
    if (json.currentToken() != JsonToken.START_OBJECT) {
      throw new Refused(
          file + ", row " + (rows + 1) + " is no object of columns and values: " + json.getText());
    }
    while (json.nextToken() != JsonToken.END_OBJECT) {
      String heading = json.currentName();
      List<Object> cells = columns.computeIfAbsent(heading, h -> new ArrayList<>());
      json.nextToken();
      fill(cells, rows);
      cells.add(cell(json, heading));
    }
    rows++;
  }

  /** Rows that left the column out hold nothing there. */
  private static void fill(List<Object> cells, int upTo) {
    while (cells.size() < upTo) {
      cells.add(null);
    }
  }

  private Object cell(JsonParser json, String heading) throws IOException {
    return switch (json.currentToken()) {
      case VALUE_NULL -> null;
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> finite(json, heading);
      case VALUE_STRING, VALUE_TRUE, VALUE_FALSE -> json.getText();
      default ->
          throw new Refused(
              at(rows, heading) + "a value must be a number or a text, not a list or an object.");
    };
  }

  private Double finite(JsonParser json, String heading) throws IOException {
    double value = Double.parseDouble(json.getText());
    if (!Double.isFinite(value)) {
      throw new Refused(at(rows, heading) + json.getText() + " is too large for a number.");
    }
    return value;
  }

  private void add(Table table, String heading, List<Object> cells, boolean ours) {
    fill(cells, rows);
    boolean texts = cells.stream().anyMatch(String.class::isInstance);
    boolean numbers = cells.stream().anyMatch(Double.class::isInstance);
    if (texts && (numbers && !ours || ColumnUnits.promised(heading) && !ours)) {
      refuse(heading, cells);
    }
    if (texts || heading.equals(TableFile.NOTE)) {
      StringColumn column = StringColumn.create(heading);
      cells.forEach(cell -> column.append(text(cell)));
      table.addColumns(column);
    } else {
      DoubleColumn column = DoubleColumn.create(heading);
      for (Object cell : cells) {
        if (cell == null) {
          column.appendMissing();
        } else {
          column.append((Double) cell);
        }
      }
      table.addColumns(column);
    }
  }

  private static String text(Object cell) {
    return cell instanceof Double number
        ? FileCells.number(number)
        : cell == null ? "" : cell.toString();
  }

  private void refuse(String heading, List<Object> cells) {
    int row = 0;
    while (!(cells.get(row) instanceof String)) {
      row++;
    }
    throw new Refused(
        at(row, heading)
            + "\""
            + cells.get(row)
            + "\" is no number, but "
            + (ColumnUnits.promised(heading) ? "the heading promises" : "other rows have")
            + " numbers. Write null where nothing is known.");
  }

  private String at(int row, String heading) {
    return file + ", row " + (row + 1) + ", column " + heading + ": ";
  }
}
