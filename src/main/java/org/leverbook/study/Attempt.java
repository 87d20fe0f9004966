package org.leverbook.study;

import java.util.function.Supplier;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/**
 * What came of asking for a position: what cannot be done is a reason, not a failure.
 *
 * @param position what came of it; null where nothing did
 * @param reason why nothing did, or why it cannot be held; empty where it is held
 */
record Attempt(Position position, String reason) {

  /** Where exceptions of the session's own compiler live: it tells them best. */
  private static final String COMPILER = "jdk.jshell.";

  /**
   * Asks.
   *
   * @param wanted what is asked; may throw whatever the user's code throws
   * @return what came of it
   */
  static Attempt at(Supplier<Position> wanted) {
    try {
      Position found = wanted.get();
      return found != null
          ? new Attempt(found, found.holding().sentence())
          : new Attempt(null, "The lambda gave no position (null).");
    } catch (Refused e) {
      return new Attempt(null, String.valueOf(e.getMessage()));
    } catch (RuntimeException e) {
      if (e.getClass().getName().startsWith(COMPILER)) {
        throw e;
      }
      return new Attempt(null, told(e));
    }
  }

  /** What the user's code threw, in words. */
  private static String told(RuntimeException thrown) {
    return "The lambda failed here: " + words(thrown);
  }

  /** An exception of the user's code: its kind and what it says, without the inside of Java. */
  static String words(RuntimeException thrown) {
    String message = thrown.getMessage();
    boolean silent = message == null || message.isBlank();
    return thrown.getClass().getSimpleName() + (silent ? "." : ": " + plain(message));
  }

  /** The same as the end of a sentence. */
  static String ending(RuntimeException thrown) {
    String words = words(thrown);
    return words.matches("(?s).*[.!?]") ? words : words + ".";
  }

  /**
   * The JDK's messages name packages, and call a variable whose name is lost by a number in angle
   * brackets.
   */
  private static String plain(String message) {
    return message
        .strip()
        .replaceAll("\\s+", " ")
        .replaceAll("\\b(?:[a-z]\\w*\\.)+(?=[A-Z])", "")
        .replaceAll("\"<local[0-9]+>\"", "it");
  }

  boolean held() {
    return position != null && position.held();
  }
}
