package org.leverbook.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jline.utils.AttributedString;

/** Cuts tables to the size of a terminal, and breaks sentences between words. */
final class Fitting {

  /** Two cells with a gap between them: a line of a table. */
  private static final Pattern ROW = Pattern.compile("\\S {2,}\\S");

  private static final int FEWEST_ROWS = 8;
  private static final int LAST_ROWS = 2;

  private final int columns;
  private final int rows;

  /**
   * A fitting.
   *
   * @param columns the terminal's width in cells
   * @param lines the terminal's height
   */
  Fitting(int columns, int lines) {
    this.columns = columns;
    // A title and the next prompt should stay in sight.
    this.rows = Math.max(FEWEST_ROWS, lines - 4);
  }

  /** The text, its tables cut, and a last line that says what was left out. */
  String fit(String text) {
    List<String> lines = text.lines().toList();
    List<Integer> table = new ArrayList<>();
    int widest = 0;
    for (int i = 0; i < lines.size(); i++) {
      if (ROW.matcher(lines.get(i)).find()) {
        table.add(i);
        widest = Math.max(widest, width(lines.get(i)));
      }
    }
    boolean tooLong = table.size() > rows;
    int firstHidden = tooLong ? table.get(rows - LAST_ROWS) : lines.size();
    int nextShown = tooLong ? table.get(table.size() - LAST_ROWS) : lines.size();
    List<String> shown = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (i == firstHidden) {
        shown.add("…");
      }
      if (i < firstHidden || i >= nextShown) {
        shown.add(table.contains(i) ? cut(lines.get(i)) : broken(lines.get(i)));
      }
    }
    if (tooLong || widest > columns) {
      shown.add(broken(note(tooLong, table.size(), widest)));
    }
    return String.join("\n", shown);
  }

  private String note(boolean tooLong, int lines, int widest) {
    List<String> said = new ArrayList<>();
    if (tooLong) {
      said.add("%d of %d lines".formatted(rows, lines));
    }
    if (widest > columns) {
      said.add("%d of %d characters a line".formatted(columns, widest));
    }
    return "(cut to this terminal: " + String.join(", ", said) + "; a saved file holds everything)";
  }

  private String cut(String line) {
    return cut(line, columns);
  }

  /** A line cut to a width, with a mark where something is missing. */
  static String cut(String line, int columns) {
    if (columns < 1) {
      return "";
    }
    return width(line) <= columns
        ? line
        : new AttributedString(line).columnSubSequence(0, columns - 1) + "…";
  }

  private String broken(String line) {
    StringBuilder text = new StringBuilder();
    String rest = line;
    while (width(rest) > columns) {
      int fits = new AttributedString(rest).columnSubSequence(0, columns + 1).length();
      int blank = rest.lastIndexOf(' ', fits - 1);
      if (blank <= 0 || rest.substring(0, blank).isBlank()) {
        break;
      }
      text.append(rest, 0, blank).append('\n');
      rest = rest.substring(blank + 1);
    }
    return text.append(rest).toString();
  }

  private static int width(String line) {
    return new AttributedString(line).columnLength();
  }
}
