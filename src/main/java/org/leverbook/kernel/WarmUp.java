package org.leverbook.kernel;

import org.leverbook.session.Session;

/** Makes a session do once what its user will do first, so that the user does not wait for it. */
final class WarmUp {

  private WarmUp() {}

  /** Compiles and runs something that leaves nothing behind. */
  static void toRun(Session session) {
    session.evaluate("if (true) { }");
  }

  /** Judges and completes something; a cell may run meanwhile. */
  static void toAssist(Session session) {
    session.completeness("kg(85)");
    session.completions("kg(", 3);
  }
}
