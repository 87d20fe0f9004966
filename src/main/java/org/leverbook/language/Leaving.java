package org.leverbook.language;

/**
 * Whether {@code quit()} was said. One flag for the process: the door that runs the session looks
 * at it after every statement, and leaves.
 */
public final class Leaving {

  private static volatile boolean asked;

  private Leaving() {}

  /** Asks the door to leave once the running statement is done. */
  public static void ask() {
    asked = true;
  }

  /**
   * Whether someone asked.
   *
   * @return true if so
   */
  public static boolean isAsked() {
    return asked;
  }

  /** A door opens: nobody asked yet. */
  public static void forget() {
    asked = false;
  }
}
