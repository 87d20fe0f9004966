package org.leverbook.display;

import java.util.List;
import java.util.stream.Collectors;

/** Lines of a CSV file: commas, a decimal point, every digit, quotes where they are needed. */
public final class Csv {

  private Csv() {}

  /**
   * Cells with commas between them.
   *
   * @param cells numbers, texts, or null for an empty cell
   * @return the line, without its end
   */
  public static String line(List<?> cells) {
    return cells.stream().map(Csv::cell).collect(Collectors.joining(","));
  }

  /**
   * One cell.
   *
   * @param cell a number, a text, or null
   * @return what stands in the file
   */
  public static String cell(Object cell) {
    if (cell instanceof Number number) {
      return FileCells.number(number.doubleValue());
    }
    return cell == null ? "" : FileCells.quoted(cell.toString());
  }
}
