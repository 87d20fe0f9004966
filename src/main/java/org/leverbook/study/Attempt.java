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

  /**
   * Asks.
   *
   * @param wanted what is asked
   * @return what came of it
   * @throws Refused if the user asked to stop
   */
  static Attempt at(Supplier<Position> wanted) {
    if (Thread.currentThread().isInterrupted()) {
      throw new Refused("Stopped before all positions were computed.");
    }
    try {
      Position found = wanted.get();
      return found != null
          ? new Attempt(found, found.holding().sentence())
          : new Attempt(null, "The lambda gave no position (null).");
    } catch (Refused e) {
      return new Attempt(null, String.valueOf(e.getMessage()));
    }
  }

  boolean held() {
    return position != null && position.held();
  }
}
