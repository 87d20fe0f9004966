package org.leverbook.session;

/** What the shell says of an exception, for tests of other rooms. */
public final class SeenByUser {

  private SeenByUser() {}

  /** The words of the session for what was thrown. */
  public static String words(Throwable thrown) {
    return ExceptionWording.of(thrown);
  }
}
