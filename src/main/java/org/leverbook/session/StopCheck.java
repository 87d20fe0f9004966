package org.leverbook.session;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.leverbook.quantity.Refused;

/**
 * The check woven into the user's code. Every session's class loader defines its own copy of this
 * class, so that stopping one session leaves another running; public for that reason only.
 */
public final class StopCheck {

  // One read of a field is all that a loop pays while nobody stops it.
  private static volatile boolean raised;
  private static volatile boolean asked;
  private static final Set<Thread> ABANDONED = ConcurrentHashMap.newKeySet();

  /** So many checks to one look: a look takes ten times as long. */
  private static final int LOOKS = 16;

  private static volatile Runnable look;
  private static int checks;

  private StopCheck() {}

  /** Leaves the running code if a stop was asked for. */
  public static void here() {
    if (raised) {
      heed();
    }
  }

  private static void heed() {
    Runnable now = look;
    // Threads may count over each other: what matters is that each comes by now and then.
    checks++;
    if (now != null && checks % LOOKS == 0) {
      now.run();
    }
    if (asked || ABANDONED.contains(Thread.currentThread())) {
      throw new Stopped();
    }
  }

  /**
   * Stands in for {@code System.exit}.
   *
   * @param code the exit code that was asked for
   * @throws Refused always
   */
  public static void refuseToEnd(int code) {
    throw new Refused(
        "This would end Leverbook itself, with all you made in it, so it was not done. quit() leaves;"
            + " a method is left by return.");
  }

  /**
   * Stands in for {@code Runtime.exit} and {@code Runtime.halt}.
   *
   * @param runtime what it was called on
   * @param code the exit code that was asked for
   * @throws Refused always
   */
  public static void refuseToEnd(Runtime runtime, int code) {
    refuseToEnd(code);
  }

  /**
   * Asks all code of this session to stop, or lets it run again.
   *
   * @param stop true to stop
   */
  public static synchronized void ask(boolean stop) {
    asked = stop;
    ABANDONED.removeIf(thread -> !thread.isAlive());
    raised = stop || look != null || !ABANDONED.isEmpty();
  }

  /**
   * Keeps asking one thread to stop, also after the others run again.
   *
   * @param thread a thread that did not answer in time
   */
  public static synchronized void abandon(Thread thread) {
    ABANDONED.add(thread);
    raised = true;
  }

  /**
   * Has the running code look now and then whether it may go on.
   *
   * @param each what it does then, on its own thread; null for nothing
   */
  public static synchronized void look(Runnable each) {
    look = each;
    ask(asked);
  }
}
