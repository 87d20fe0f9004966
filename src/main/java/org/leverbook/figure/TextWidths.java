package org.leverbook.figure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How much room a text takes, without asking any font of the machine, so that a page is laid out
 * alike everywhere.
 *
 * <p>The widths are those of DejaVu Sans (measured, rounded up to twentieths of the size), the
 * widest of the common sans-serif faces: a viewer with another face needs less. What the table does
 * not know counts as 1.1 of the size, the width of the widest letters of other scripts.
 */
final class TextWidths {

  private static final double UNKNOWN = 1.1;

  /** A bold letter is wider by up to this, measured over the same letters. */
  private static final double BOLD = 1.15;

  private static final Map<Integer, Double> WIDTHS = widths();

  private TextWidths() {}

  private static Map<Integer, Double> widths() {
    Map<Integer, Double> widths = new HashMap<>();
    put(widths, 0.30, "'IJijl");
    put(widths, 0.35, " ,./:;\\|·");
    put(widths, 0.40, "()-[]ft");
    put(widths, 0.45, "!r");
    put(widths, 0.50, "\"*_`°–");
    put(widths, 0.55, "?csz");
    put(widths, 0.60, "FLkvxy");
    put(widths, 0.65, "$0123456789EPSTYabdeghnopqu{}éèêáàäöü");
    put(widths, 0.70, "ABCKRVXZ");
    put(widths, 0.75, "NU");
    put(widths, 0.80, "&DGHOQ");
    put(widths, 0.85, "#+<=>^w~≥≤");
    put(widths, 0.90, "M");
    put(widths, 1.00, "%@Wm…→—");
    return widths;
  }

  private static void put(Map<Integer, Double> widths, double width, String letters) {
    letters.codePoints().forEach(c -> widths.put(c, width));
  }

  /**
   * The width of one line.
   *
   * @param text what it says
   * @param size of the font
   * @param bold whether bold
   * @return in the unit of the size
   */
  static double of(String text, double size, boolean bold) {
    double sum = text.codePoints().mapToDouble(c -> WIDTHS.getOrDefault(c, UNKNOWN)).sum();
    return sum * size * (bold ? BOLD : 1);
  }

  /**
   * Breaks a text into lines that fit; a word longer than a line is cut.
   *
   * @param text what it says
   * @param size of the font
   * @param room for a line, in the unit of the size
   * @return the lines
   */
  static List<String> wrapped(String text, double size, double room) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+")) {
      String rest = word;
      String gap = line.isEmpty() ? "" : " ";
      if (!line.isEmpty() && of(line + gap + rest, size, false) > room) {
        lines.add(line.toString());
        line.setLength(0);
        gap = "";
      }
      while (of(rest, size, false) > room) {
        int cut = longestThatFits(rest, size, room);
        lines.add(rest.substring(0, cut));
        rest = rest.substring(cut);
      }
      line.append(gap).append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  /**
   * A line that fits: whole, or its beginning and three dots.
   *
   * @param text what it says
   * @param size of the font
   * @param bold whether bold
   * @param room for it, in the unit of the size
   * @return the text or what fits of it
   */
  static String shortened(String text, double size, boolean bold, double room) {
    if (of(text, size, bold) <= room) {
      return text;
    }
    double left = room - of("…", size, bold);
    int cut = 0;
    while (cut < text.length()) {
      int next = text.offsetByCodePoints(cut, 1);
      if (of(text.substring(0, next), size, bold) > left) {
        break;
      }
      cut = next;
    }
    return text.substring(0, cut).stripTrailing() + "…";
  }

  /**
   * The size in which a title fits on its line, but never less than two thirds: then it is to be
   * shortened.
   *
   * @param title what it says, bold
   * @param size as it should be
   * @param room for it, in the unit of the size
   * @return the size
   */
  static double fitting(String title, double size, double room) {
    double needed = of(title, size, true);
    // A hair less, so that rounding never makes it too long for its own size.
    return needed <= room ? size : size * Math.max(2.0 / 3, 0.999 * room / needed);
  }

  private static int longestThatFits(String word, double size, double room) {
    int cut = word.offsetByCodePoints(0, 1);
    while (cut < word.length()) {
      int next = word.offsetByCodePoints(cut, 1);
      if (of(word.substring(0, next), size, false) > room) {
        break;
      }
      cut = next;
    }
    return cut;
  }
}
