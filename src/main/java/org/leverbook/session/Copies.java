package org.leverbook.session;

import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;

/**
 * What the library puts around a failure on its way from one thread to another: wrappers, and
 * copies of the failure's own class.
 *
 * <p>A task that another thread ran fails again in the thread that asks for it, as a new exception
 * of the same class, made by the constructor that takes a cause or by the one that takes nothing.
 * So the copy's message is its cause's text, or empty.
 */
final class Copies {

  private Copies() {}

  /** What lies inside all wrappers and copies. */
  static Throwable essential(Throwable thrown) {
    Throwable cause = thrown;
    while (isAround(cause)) {
      cause = cause.getCause();
    }
    return cause;
  }

  /** Whether this only carries its cause. */
  static boolean isAround(Throwable thrown) {
    return thrown.getCause() != null
        && (thrown instanceof CompletionException
            || thrown instanceof ExecutionException
            || thrown instanceof ExceptionInInitializerError
            || isCopy(thrown));
  }

  /** Whether this is a copy of its cause. */
  static boolean isCopy(Throwable thrown) {
    Throwable cause = thrown.getCause();
    if (cause == null || cause.getClass() != thrown.getClass()) {
      return false;
    }
    String message = message(thrown);
    return message.isEmpty() || message.equals(Words.unwrapped(text(cause)).strip());
  }

  /** What a failure says, without names that only the compiler needs. */
  static String message(Throwable thrown) {
    try {
      String message = thrown.getMessage();
      return message == null ? "" : Words.unwrapped(message).strip();
    } catch (RuntimeException | StackOverflowError e) {
      // The class is the user's: its message may be as wrong as the rest.
      return "(its message failed: " + e.getClass().getSimpleName() + ")";
    }
  }

  private static String text(Throwable thrown) {
    try {
      return String.valueOf(thrown);
    } catch (RuntimeException | StackOverflowError e) {
      return thrown.getClass().getName();
    }
  }
}
