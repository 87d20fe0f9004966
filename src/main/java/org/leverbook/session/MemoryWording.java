package org.leverbook.session;

import java.util.Optional;

/** What is said where memory was full: how full, who holds it, and how to have more. */
final class MemoryWording {

  private static final String KEPT = " All variables made before are kept.";

  private MemoryWording() {}

  /**
   * What is said of code that was stopped.
   *
   * @param found how full it was
   * @param hoard the variable that holds most, where one stands out
   */
  static String stopped(Fullness found, Optional<Hoard> hoard) {
    return "There is not enough memory for this: "
        + found.words()
        + " are in use, and the rest is needed to go on, so it was stopped."
        + KEPT
        + advice(hoard);
  }

  /**
   * What is said of code that asked for more than there was.
   *
   * @param full what Java threw
   * @param hoard the variable that holds most, where one stands out
   */
  static String refused(OutOfMemoryError full, Optional<Hoard> hoard) {
    String message = Copies.message(full);
    if (message.contains("native thread")) {
      return "The system gives no more threads; "
          + Thread.activeCount()
          + " are there. Start fewer at once, or share a pool of them."
          + KEPT;
    }
    if (message.contains("array size")) {
      return "A list or array this long cannot be made: two thousand million places are the most."
          + KEPT;
    }
    return "There is not enough memory for this: all values together may take "
        + Runtime.getRuntime().maxMemory() / Fullness.MB
        + " MB."
        + KEPT
        + advice(hoard);
  }

  /** What is said of code in the background that was stopped. */
  static String behind(Fullness found) {
    return "The memory was nearly full ("
        + found.words()
        + " in use), so the code that went on in the background was stopped."
        + advice(Optional.empty());
  }

  private static String advice(Optional<Hoard> hoard) {
    String less =
        hoard
            .map(
                one ->
                    " Some "
                        + one.bytes() / Fullness.MB
                        + " MB are held by "
                        + one.name()
                        + ": "
                        + one.name()
                        + " = null lets go of them.")
            .orElse(" Keep fewer results at once, or do it in parts.");
    long more = 2 * (Runtime.getRuntime().maxMemory() / Fullness.MB / 64 + 1) * 64;
    return less
        + " For more memory start with java -Xmx"
        + more
        + "m -jar leverbook.jar; for a notebook, set JAVA_TOOL_OPTIONS=-Xmx"
        + more
        + "m before Jupyter starts.";
  }
}
