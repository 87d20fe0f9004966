package org.leverbook.terminal;

import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.BiFunction;
import org.leverbook.session.CallHint;
import org.leverbook.terminal.JavaTokens.Call;

/**
 * What the call at the cursor takes, found on a thread of its own: asking never waits. The session
 * is asked once for each opening bracket and comma, and only when typing pauses.
 */
final class Hints implements AutoCloseable {

  /** Between keys of someone who types on, the compiler is left alone; in milliseconds. */
  private static final long PAUSE = 40;

  /** Behind this much text the session would take too long to find the place. */
  private static final int LONGEST = 8_000;

  private final BiFunction<String, Integer, Optional<CallHint>> session;
  private final Runnable changed;
  private final ScheduledExecutorService worker =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "leverbook hints");
            thread.setDaemon(true);
            return thread;
          });

  private String asked = "";
  private Future<?> waiting;
  private String answered = "";
  private Optional<CallHint> answer = Optional.empty();

  /**
   * Hints.
   *
   * @param session finds a hint for a text and a place; may take its time
   * @param changed told when there is something new to show
   */
  Hints(BiFunction<String, Integer, Optional<CallHint>> session, Runnable changed) {
    this.session = session;
    this.changed = changed;
  }

  /** Does something once, in its turn on the same thread. */
  void behind(Runnable work) {
    worker.execute(work);
  }

  /**
   * The hint for a place, as far as it is known now; what is missing is looked for.
   *
   * @param before the text before the cursor
   */
  synchronized Optional<CallHint> at(String before) {
    Optional<Call> call =
        before.length() > LONGEST ? Optional.empty() : JavaTokens.of(before).callAtEnd();
    if (call.isEmpty()) {
      ask("");
      return Optional.empty();
    }
    String key = before.substring(0, call.get().since() + 1);
    ask(key);
    String sameCall = before.substring(0, call.get().open() + 1);
    boolean fits = answered.equals(key) || answered.startsWith(sameCall) && isIn(call.get());
    return fits
        ? answer.map(hint -> new CallHint(hint.forms(), call.get().parameter()))
        : Optional.empty();
  }

  /** Whether what was answered is about this call, at an earlier or later parameter. */
  private boolean isIn(Call call) {
    return JavaTokens.of(answered)
        .callAtEnd()
        .map(known -> known.open() == call.open())
        .orElse(false);
  }

  private void ask(String key) {
    if (key.equals(asked)) {
      return;
    }
    asked = key;
    if (waiting != null) {
      waiting.cancel(false);
    }
    if (!key.isEmpty() && !key.equals(answered)) {
      waiting = worker.schedule(() -> find(key), PAUSE, TimeUnit.MILLISECONDS);
    }
  }

  private void find(String key) {
    Optional<CallHint> found;
    try {
      found = session.apply(key, key.length());
    } catch (RuntimeException | StackOverflowError e) {
      // A hint that cannot be found is none: nobody asked for it.
      found = Optional.empty();
    }
    synchronized (this) {
      answered = key;
      answer = found;
    }
    changed.run();
  }

  @Override
  public void close() {
    worker.shutdownNow();
  }
}
