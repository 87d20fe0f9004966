package org.leverbook.session;

import java.util.List;
import java.util.Optional;

/**
 * What went wrong, where, in words.
 *
 * @param kind what sort of mistake
 * @param name a short technical name: the exception's class, or the kind of mistake
 * @param message one or more lines of words, without place
 * @param line where, in the text that was given, from 1
 * @param column where in that line, from 1, in UTF-16 units
 * @param source that line
 * @param trail how the code came there, innermost first, one line each
 * @param original the compiler's own words; empty where it said nothing
 * @param thrown what the user's code threw, with its stack; empty where it threw nothing
 */
public record Problem(
    Kind kind,
    String name,
    String message,
    int line,
    int column,
    String source,
    List<String> trail,
    String original,
    Optional<Throwable> thrown) {

  /** Longer lines are cut around the place. */
  private static final int LONGEST = 160;

  /** What sort of mistake. */
  public enum Kind {
    /** The text is no Java the compiler accepts. */
    COMPILATION,
    /** A word refused what it was asked, and says why. */
    REFUSAL,
    /** The code ran and threw an exception. */
    EXCEPTION,
    /** The code ran into a declaration that lacks something not yet declared. */
    UNRESOLVED,
    /** The text ends too early. */
    INCOMPLETE
  }

  /** Keeps its own copy of the trail. */
  public Problem {
    trail = List.copyOf(trail);
  }

  /**
   * The line and, below it, a caret under the place. Of a long line only the part around the place
   * is shown; characters that cannot be seen show as a mark.
   *
   * @return two lines
   */
  public String caret() {
    int at = Math.min(Math.max(0, column - 1), source.length());
    int from = source.length() <= LONGEST ? 0 : Math.max(0, at - LONGEST / 2);
    int to = Math.min(source.length(), from + LONGEST);
    StringBuilder shown = new StringBuilder(from == 0 ? "" : "\u2026 ");
    StringBuilder below = new StringBuilder(from == 0 ? "" : "  ");
    for (int i = from; i < to; i++) {
      char c = source.charAt(i);
      boolean unseen = Characters.isUnseen(source, i);
      shown.append(unseen ? '\u25A1' : c);
      if (i < at && !isCombining(c)) {
        below.append(c == '\t' ? '\t' : isWide(c) ? '\u3000' : ' ');
      }
    }
    return shown + (to == source.length() ? "" : " \u2026") + "\n" + below + "^";
  }

  private static boolean isCombining(char c) {
    return Character.getType(c) == Character.NON_SPACING_MARK;
  }

  /** Whether a terminal gives a character two places: the scripts of East Asia. */
  private static boolean isWide(char c) {
    return c >= 0x1100
        && (c <= 0x115F
            || c >= 0x2E80 && c <= 0xA4CF
            || c >= 0xAC00 && c <= 0xD7A3
            || c >= 0xF900 && c <= 0xFAFF
            || c >= 0xFE30 && c <= 0xFE6F
            || c >= 0xFF00 && c <= 0xFF60);
  }

  /**
   * The same problem in other words.
   *
   * @param other one or more lines of words, without place
   * @return a problem that says them
   */
  public Problem saying(String other) {
    return new Problem(kind, name, other, line, column, source, trail, original, thrown);
  }

  /**
   * The whole problem as text.
   *
   * @param where what stands before line and column, such as a file name and a colon; may be empty
   * @return {@code where}line:column: message, the line, the caret, the trail
   */
  public String text(String where) {
    StringBuilder text = new StringBuilder(where);
    text.append(line).append(':').append(column).append(": ").append(message);
    text.append('\n').append(caret());
    trail.forEach(step -> text.append("\n  ").append(step));
    return text.toString();
  }
}
