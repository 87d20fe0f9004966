package org.leverbook.study;

import java.util.regex.Pattern;
import org.leverbook.display.ColumnUnits;
import org.leverbook.display.FileCells;
import org.leverbook.display.TableFile;
import org.leverbook.quantity.Refused;

/** What one column of a CSV file holds, and its cells as numbers or texts. */
final class CsvColumn {

  private static final Pattern DECIMAL_COMMA = Pattern.compile("[-+]?\\d*,\\d+");
  private static final Pattern THOUSANDS =
      Pattern.compile("[-+]?\\d{1,3}([.,' \\u00A0\\u202F]\\d{3})+([.,]\\d+)?");
  private static final Pattern LEADING_ZERO = Pattern.compile("[-+]?0\\d+");

  private final String file;
  private final String heading;
  private final boolean ours;
  private final boolean commaFree;
  private final boolean promised;
  private long numbers;
  private long commaNumbers;
  private long texts;
  private long quoted;
  private boolean leadingZeros;
  private boolean numeric;
  private boolean commas;

  /**
   * Begins.
   *
   * @param file for sentences
   * @param heading its name
   * @param ours whether Leverbook wrote the file
   * @param commaFree whether a comma may be a decimal one, because something else stands between
   *     the columns
   */
  CsvColumn(String file, String heading, boolean ours, boolean commaFree) {
    this.file = file;
    this.heading = heading;
    this.ours = ours;
    this.commaFree = commaFree;
    this.promised = ColumnUnits.promised(heading);
  }

  String heading() {
    return heading;
  }

  boolean numeric() {
    return numeric;
  }

  /** Looks at a cell. */
  void look(long row, String cell) {
    if (cell.startsWith("\"")) {
      checkClosed(row, cell);
      quoted++;
    }
    String text = unquoted(cell).strip();
    if (text.isEmpty()) {
      return;
    }
    if (FileCells.readsAsNumber(text)) {
      numbers++;
      leadingZeros |= text.indexOf('0') >= 0 && LEADING_ZERO.matcher(text).matches();
    } else if (commaFree && DECIMAL_COMMA.matcher(text).matches()) {
      commaNumbers++;
    } else {
      texts++;
    }
  }

  private void checkClosed(long row, String cell) {
    if (cell.length() < 2 || !cell.endsWith("\"")) {
      throw new Refused(at(row) + "a quote is opened and not closed: " + shown(cell) + ".");
    }
  }

  boolean hasDecimalComma() {
    return commaNumbers > 0 && texts == 0;
  }

  /** Decides what it holds, once every cell was looked at. */
  void decide(boolean fileHasCommas) {
    commas = fileHasCommas;
    boolean marked = ours && quoted > 0;
    if (heading.equals(TableFile.NOTE) || marked) {
      numeric = false;
    } else if (promised) {
      numeric = true;
    } else {
      numeric = texts == 0 && !leadingZeros && (ours || numbers + commaNumbers > 0);
    }
  }

  /** Whether a cell is empty. */
  boolean missing(String cell) {
    return unquoted(cell).isBlank();
  }

  String text(long row, String cell) {
    return unquoted(cell);
  }

  double number(long row, String cell) {
    String text = unquoted(cell).strip();
    boolean comma = commas && DECIMAL_COMMA.matcher(text).matches();
    if (commas && text.contains(".")) {
      throw new Refused(
          at(row)
              + shown(text)
              + " has a decimal point, but other numbers of this file have a decimal comma. Use one"
              + " of them throughout, and no marks of thousands.");
    }
    String plain = comma ? text.replace(',', '.') : text;
    if (!FileCells.readsAsNumber(plain)) {
      throw new Refused(at(row) + shown(text) + " is no number" + hint(text));
    }
    double value = Double.parseDouble(plain);
    if (!Double.isFinite(value)) {
      throw new Refused(at(row) + shown(text) + " is too large for a number.");
    }
    return value;
  }

  private String hint(String text) {
    if (DECIMAL_COMMA.matcher(text).matches() && !commaFree) {
      return ": is it a decimal comma? Write a decimal point, or put semicolons between the"
          + " columns.";
    }
    if (THOUSANDS.matcher(text).matches()) {
      return ": leave out the marks of thousands.";
    }
    return ", but the heading promises numbers. Leave the cell empty where nothing is known, or take"
        + " the unit out of the heading.";
  }

  private String at(long row) {
    return file + ", row " + row + ", column " + heading + ": ";
  }

  private static String shown(String text) {
    return "\"" + (text.length() > 40 ? text.substring(0, 40) + "…" : text) + "\"";
  }

  static String unquoted(String cell) {
    boolean inQuotes = cell.length() > 1 && cell.startsWith("\"") && cell.endsWith("\"");
    return inQuotes ? cell.substring(1, cell.length() - 1) : cell;
  }
}
