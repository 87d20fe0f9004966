package org.leverbook.script;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;

/** Stops a cell that does not end within a limit, where there is one. */
final class Watch implements AutoCloseable {

  private final Optional<Duration> limit;
  private final Runnable stop;
  private long running;
  private boolean runs;
  private boolean struck;
  private final ScheduledExecutorService clock =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "limit of a cell");
            thread.setDaemon(true);
            return thread;
          });

  /**
   * A watch.
   *
   * @param limit how long each cell may take
   * @param stop stops the one that runs
   */
  Watch(Optional<Duration> limit, Runnable stop) {
    this.limit = limit;
    this.stop = stop;
  }

  /** Runs a cell under the limit. */
  void over(Runnable cell) {
    Optional<ScheduledFuture<?>> strike = limit.map(time -> due(began(), time));
    try {
      cell.run();
    } finally {
      ended();
      strike.ifPresent(s -> s.cancel(false));
    }
  }

  private synchronized long began() {
    runs = true;
    struck = false;
    return ++running;
  }

  private synchronized void ended() {
    runs = false;
  }

  private ScheduledFuture<?> due(long cell, Duration time) {
    return clock.schedule(() -> strike(cell), time.toMillis(), TimeUnit.MILLISECONDS);
  }

  /** A strike that comes late must not hit the next cell. */
  private synchronized void strike(long cell) {
    if (runs && cell == running) {
      struck = true;
      stop.run();
    }
  }

  /** Whether the last cell was stopped. */
  synchronized boolean struck() {
    return struck;
  }

  /** What is said of a cell that was stopped. */
  String words() {
    double seconds = limit.map(time -> time.toMillis() / 1000.0).orElse(0.0);
    String said =
        String.format(Locale.ROOT, seconds == Math.rint(seconds) ? "%.0f" : "%.3f", seconds);
    return "This cell did not end within "
        + said
        + " s, the limit asked for (--limit); it was stopped.";
  }

  @Override
  public void close() {
    clock.shutdownNow();
  }
}
