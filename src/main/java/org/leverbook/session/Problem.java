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
   * The line and, below it, a caret under the place.
   *
   * @return two lines
   */
  public String caret() {
    StringBuilder below = new StringBuilder();
    for (int i = 0; i < column - 1 && i < source.length(); i++) {
      below.append(source.charAt(i) == '\t' ? '\t' : ' ');
    }
    return source + "\n" + below + "^";
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
