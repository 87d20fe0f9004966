package org.leverbook.study;

import java.util.function.Supplier;
import org.leverbook.display.FailureWording;
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
      return new Attempt(null, "The lambda failed here: " + FailureWording.of(e));
    }
  }

  boolean held() {
    return position != null && position.held();
  }
}
