package org.leverbook.display;

import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;

/**
 * Counts work that may take long, and tells whoever listens how far it is: not in the first second,
 * then at most four times a second. Steps may come from any thread.
 */
public final class Meter implements AutoCloseable {

  private static final long QUIET = 1_000_000_000L;
  private static final long APART = 250_000_000L;

  private final String what;
  private final long total;
  private final Progress.Listener listener;
  private final LongSupplier clock;
  private final long start;
  private final AtomicLong done = new AtomicLong();
  private final AtomicLong due;
  private boolean told;
  private boolean closed;

  private Meter(String what, long total, Progress.Listener listener, LongSupplier clock) {
    this.what = what;
    this.total = total;
    this.listener = listener;
    this.clock = clock;
    this.start = clock.getAsLong();
    this.due = new AtomicLong(start + QUIET);
  }

  /**
   * Begins to count.
   *
   * @param what is computed, as in "sweep over hip height"
   * @param total how many there are
   * @return the meter; closing it says that the work is over
   */
  public static Meter of(String what, long total) {
    return new Meter(what, total, Progress.listener(), System::nanoTime);
  }

  /** The same by another clock, nanoseconds. */
  static Meter of(String what, long total, LongSupplier clock) {
    return new Meter(what, total, Progress.listener(), clock);
  }

  /** One more is done. */
  public void step() {
    done.incrementAndGet();
    long now = clock.getAsLong();
    long next = due.get();
    // Of threads that arrive together one tells; the others go on.
    if (now - next >= 0 && due.compareAndSet(next, now + APART)) {
      tell(now);
    }
  }

  private synchronized void tell(long now) {
    if (!closed) {
      told = true;
      listener.at(new Progress(what, done.get(), total, (now - start) / 1e9));
    }
  }

  /** The work is over, finished or not. */
  @Override
  public synchronized void close() {
    if (!closed && told) {
      listener.over();
    }
    closed = true;
  }
}
