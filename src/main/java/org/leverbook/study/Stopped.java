package org.leverbook.study;

import java.util.List;
import java.util.Locale;

/** What is said of work that the user stopped. */
final class Stopped {

  private Stopped() {}

  /**
   * The note.
   *
   * @param done how many are there
   * @param asked how many were asked for
   * @return one sentence; none where all are there
   */
  static List<String> note(int done, int asked) {
    return done >= asked
        ? List.of()
        : List.of(
            String.format(
                Locale.ROOT,
                "The work was stopped after %,d of %,d; what was done is kept.",
                done,
                asked));
  }
}
