package org.leverbook.kernel;

import java.io.PrintStream;

/**
 * What the kernel says about itself, on the error stream of its process: whoever started it reads
 * that, no notebook does. A flood of bad messages fills no disk.
 */
final class Log {

  private static final long MINUTE = 60_000_000_000L;
  private static final int MOST = 100;

  private final PrintStream out;
  private long since = System.nanoTime();
  private int said;

  Log(PrintStream out) {
    this.out = out;
  }

  /** Says a sentence; after a hundred in one minute, nothing more until the next. */
  synchronized void say(String sentence) {
    if (System.nanoTime() - since > MINUTE) {
      since = System.nanoTime();
      said = 0;
    }
    said++;
    if (said <= MOST) {
      out.println("leverbook kernel: " + sentence);
    }
    if (said == MOST) {
      out.println("leverbook kernel: More of this is left out for a minute.");
    }
  }

  /** Says what failed that should not have, with its place in the code. */
  void failed(String what, Throwable thrown) {
    StackTraceElement[] stack = thrown.getStackTrace();
    say(what + " failed: " + thrown + (stack.length == 0 ? "" : " at " + stack[0]));
  }
}
