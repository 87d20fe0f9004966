package org.leverbook.session;

import java.util.Arrays;

/**
 * A text that was given, as the compiler is to read it, and where its lines begin. Lines and
 * columns count from 1.
 */
final class SourceText {

  private final String given;
  private final String text;
  private final int[] starts;

  SourceText(String given) {
    this.given = given;
    this.text = Pasted.plain(given);
    int[] found = new int[16];
    int count = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean ends =
          c == '\n' || c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n');
      if (ends) {
        if (count == found.length) {
          found = Arrays.copyOf(found, 2 * count);
        }
        found[count++] = i + 1;
      }
    }
    this.starts = Arrays.copyOf(found, count);
  }

  /** The text with typographic characters made plain; every place is where it was given. */
  String text() {
    return text;
  }

  int lines() {
    return starts.length;
  }

  /** The line that holds this place; the last one for a place behind the end. */
  int lineAt(int offset) {
    int found = Arrays.binarySearch(starts, Math.max(0, offset));
    return found >= 0 ? found + 1 : -found - 1;
  }

  int columnAt(int offset) {
    return Math.max(0, offset) - starts[lineAt(offset) - 1] + 1;
  }

  /** Where a line begins. */
  int start(int line) {
    return starts[line - 1];
  }

  /** Where the next line begins, or the end of the text. */
  int nextStart(int line) {
    return line < starts.length ? starts[line] : text.length();
  }

  /** A line as it was given, without its line end. */
  String line(int line) {
    String whole = given.substring(start(line), nextStart(line));
    int end = whole.length();
    while (end > 0 && (whole.charAt(end - 1) == '\n' || whole.charAt(end - 1) == '\r')) {
      end--;
    }
    return whole.substring(0, end);
  }

  /** The column of the first character of a line that is not blank. */
  int firstColumn(int line) {
    String content = line(line);
    int column = 0;
    while (column < content.length() && Character.isWhitespace(content.charAt(column))) {
      column++;
    }
    return column == content.length() ? 1 : column + 1;
  }
}
