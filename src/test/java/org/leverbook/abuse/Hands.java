package org.leverbook.abuse;

import java.util.Arrays;
import java.util.stream.Collectors;

/** Threads that are left behind with the test, and exceptions for whoever mends them. */
public final class Hands {

  private Hands() {}

  static Thread daemon(Runnable task) {
    Thread thread = new Thread(null, task, "abuse", 1 << 20);
    thread.setDaemon(true);
    return thread;
  }

  /** An exception and where in our code it came from. */
  public static String brief(Throwable thrown) {
    String where =
        Arrays.stream(thrown.getStackTrace())
            .filter(f -> f.getClassName().startsWith("org.leverbook"))
            .filter(f -> !f.getClassName().contains("abuse"))
            .limit(4)
            .map(f -> f.getFileName() + ":" + f.getLineNumber())
            .collect(Collectors.joining(" < "));
    return thrown + " at " + where;
  }
}
