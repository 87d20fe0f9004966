package org.leverbook.display;

import java.util.List;
import java.util.ServiceLoader;

/**
 * A service that tells in words what a user's code threw. Rows of a table and cases of a claim keep
 * such a failure as their reason; the words are those of the session, which lives in a room that
 * knows tables, not the other way round. Registered in {@code META-INF/services}.
 */
public interface FailureWording {

  /**
   * Tells what was thrown.
   *
   * @param thrown by code of the user
   * @return what the shell says of it, without place; further lines tell why it came
   */
  String told(Throwable thrown);

  /**
   * What was thrown, in one line.
   *
   * @param thrown by code of the user
   * @return what the shell says of it, its lines joined
   */
  static String of(Throwable thrown) {
    for (FailureWording each : Found.ALL) {
      return ended(each.told(thrown).strip().replaceAll("\\s+", " "));
    }
    return ended(String.valueOf(thrown.getMessage()));
  }

  private static String ended(String sentence) {
    return sentence.matches("(?s).*[.!?]") ? sentence : sentence + ".";
  }

  /** Looked up once: a table may have a million rows that fail. */
  final class Found {
    private static final List<FailureWording> ALL =
        ServiceLoader.load(FailureWording.class, FailureWording.class.getClassLoader()).stream()
            .map(ServiceLoader.Provider::get)
            .toList();

    private Found() {}
  }
}
