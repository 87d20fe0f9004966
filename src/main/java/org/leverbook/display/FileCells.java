package org.leverbook.display;

import java.math.BigDecimal;
import java.util.regex.Pattern;

/**
 * How single cells stand in a file, so that what is read back is what was written: numbers with
 * every digit and a decimal point, texts that would read as numbers in quotes.
 */
public final class FileCells {

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");

  private static final Pattern SPECIAL = Pattern.compile("[,;\"\r\n\t]|^\\s|\\s$|^\uFEFF");

  /** Within these powers of ten a number is written without an exponent. */
  private static final int SMALLEST = -9;

  private static final int LARGEST = 15;

  private FileCells() {}

  /**
   * A number with every digit that it takes to read the same number back.
   *
   * @param value finite
   * @return as in {@code 318.0412345678901}, {@code 48} or {@code 1.5E-12}
   */
  public static String number(double value) {
    String digits = Double.toString(value == 0 ? 0 : value);
    int exponent = digits.indexOf('E');
    if (exponent < 0) {
      return digits.endsWith(".0") ? digits.substring(0, digits.length() - 2) : digits;
    }
    int power = Integer.parseInt(digits.substring(exponent + 1));
    return power >= SMALLEST && power <= LARGEST
        ? new BigDecimal(digits).stripTrailingZeros().toPlainString()
        : digits.replace(".0E", "E");
  }

  /**
   * Whether a reader would take a text for a number.
   *
   * @param text any
   * @return true for {@code 12}, {@code 007}, {@code -1.5e3}
   */
  public static boolean readsAsNumber(String text) {
    String bare = text.strip();
    // Most texts begin with a letter and need no closer look.
    return !bare.isEmpty() && bare.charAt(0) <= '9' && NUMBER.matcher(bare).matches();
  }

  /** A text in a CSV file: in quotes where it needs them, or would be taken for a number. */
  static String quoted(String text) {
    if (text.isEmpty()) {
      return text;
    }
    boolean needed = readsAsNumber(text) || SPECIAL.matcher(text).find();
    return needed ? '"' + text.replace("\"", "\"\"") + '"' : text;
  }
}
