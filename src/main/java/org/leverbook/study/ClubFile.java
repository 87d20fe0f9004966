package org.leverbook.study;

import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.RuntimeJsonMappingException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.leverbook.data.ReadTrouble;
import org.leverbook.display.InputFile;
import org.leverbook.quantity.Refused;

/**
 * A spreadsheet's CSV file as rows of cells: separated by commas, semicolons or tabs, whichever the
 * header has most of; UTF-8, or else Windows 1252 as older spreadsheets write it. Lines that begin
 * with # are comments. A row is a line; a cell in quotation marks may hold separators but no line
 * break.
 *
 * @param name the file's name
 * @param separator between cells
 * @param header the cells of the header
 * @param lines the rows below it that are not empty
 */
record ClubFile(String name, char separator, List<String> header, List<Line> lines) {

  private static final CsvMapper CSV =
      CsvMapper.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();

  /** Spreadsheets may say the separator in a line of its own before the header. */
  private static final String SAID_SEPARATOR = "(?i)sep=.";

  /**
   * One row.
   *
   * @param number its line in the file, counted from 1, as a spreadsheet counts rows
   * @param cells its cells, outer blanks removed; empty where the line is no CSV
   * @param text the whole line
   */
  record Line(int number, List<String> cells, String text) {

    /** A cell, empty where the row is too short. */
    String cell(int column) {
      return column < cells.size() ? cells.get(column) : "";
    }
  }

  static ClubFile read(String file) {
    try {
      Path path = InputFile.find("list", file);
      return parse(file, decoded(Files.readAllBytes(path)));
    } catch (IOException e) {
      throw new Refused(
          "The list \"" + file + "\" could not be read: " + ReadTrouble.of(e) + ".", e);
    }
  }

  private static String decoded(byte[] bytes) {
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      text = new String(bytes, Charset.forName("windows-1252"));
    }
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /** From the file's text. */
  static ClubFile parse(String name, String text) {
    List<Line> lines = new ArrayList<>();
    List<String> header = null;
    char separator = ',';
    ObjectReader reader = null;
    int number = 0;
    for (String line : text.split("\r\n|\r|\n")) {
      number++;
      if (line.startsWith("#") || line.isBlank() || line.matches(SAID_SEPARATOR)) {
        continue;
      }
      if (header == null) {
        separator = separator(line);
        reader =
            CSV.readerForListOf(String.class)
                .with(CsvSchema.emptySchema().withColumnSeparator(separator));
        header = cells(reader, line);
        continue;
      }
      List<String> cells = cells(reader, line);
      if (cells.isEmpty() || !cells.stream().allMatch(String::isEmpty)) {
        lines.add(new Line(number, cells, line));
      }
    }
    if (header == null) {
      throw new Refused(name + " is empty: it needs a header line, as in " + Club.LAYOUT + ".");
    }
    return new ClubFile(name, separator, header, List.copyOf(lines));
  }

  private static char separator(String header) {
    String bare = header.replaceAll("\"[^\"]*\"", "");
    char best = ',';
    for (char candidate : new char[] {';', '\t'}) {
      if (count(bare, candidate) > count(bare, best)) {
        best = candidate;
      }
    }
    return best;
  }

  private static long count(String text, char wanted) {
    return text.chars().filter(c -> c == wanted).count();
  }

  /** The cells of a line; none where its quotation marks do not close. */
  private static List<String> cells(ObjectReader reader, String line) {
    if (count(line, '"') % 2 != 0) {
      return List.of();
    }
    try (var values = reader.<List<String>>readValues(line)) {
      return values.next().stream().map(String::strip).toList();
    } catch (IOException | RuntimeJsonMappingException e) {
      return List.of();
    }
  }
}
