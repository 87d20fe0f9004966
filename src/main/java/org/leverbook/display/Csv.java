package org.leverbook.display;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.stream.Collectors;

/** Lines of a CSV file: commas, a decimal point, ten digits, quotes where they are needed. */
public final class Csv {

  private static final MathContext DIGITS = new MathContext(10);
  private static final double NOTHING = 1e-9;

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
    if (cell instanceof Double number) {
      double value = Math.abs(number) < NOTHING ? 0 : number;
      return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
    }
    return cell == null ? "" : quoted(cell.toString());
  }

  private static String quoted(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (",\"\r\n".indexOf(text.charAt(i)) >= 0) {
        return '"' + text.replace("\"", "\"\"") + '"';
      }
    }
    return text;
  }
}
