package org.leverbook.kernel;

import java.util.function.BooleanSupplier;
import org.leverbook.session.Session;

/** Makes a session do once what its user will do first, so that the user does not wait for it. */
final class WarmUp {

  /** So long nothing must run before the compiler is borrowed, in milliseconds. */
  private static final long QUIET = 300;

  private WarmUp() {}

  /**
   * Warms up, leaving nothing behind. A cell that runs does the same and better: it is left alone.
   *
   * @param session the session
   * @param busy whether a cell waits or runs
   */
  static void of(Session session, BooleanSupplier busy) {
    if (!busy.getAsBoolean()) {
      session.evaluate("if (true) { }");
    }
    try {
      do {
        Thread.sleep(QUIET);
      } while (busy.getAsBoolean());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return;
    }
    session.prepareCompletion();
    session.completeness("kg(85)");
    session.completions("kg(", 3);
  }
}
