package org.leverbook.display;

import java.util.function.Consumer;
import java.util.function.LongSupplier;

/** Tells the progress of long work in lines of text, at most one in five seconds. */
public final class ProgressLines implements Progress.Listener {

  private static final long APART = 5_000_000_000L;

  private final Consumer<String> line;
  private final LongSupplier clock;
  private long due;

  /**
   * Lines of text.
   *
   * @param line takes each line
   */
  public ProgressLines(Consumer<String> line) {
    this(line, System::nanoTime);
  }

  ProgressLines(Consumer<String> line, LongSupplier clock) {
    this.line = line;
    this.clock = clock;
    this.due = clock.getAsLong();
  }

  @Override
  public synchronized void at(Progress progress) {
    long now = clock.getAsLong();
    if (now - due >= 0) {
      due = now + APART;
      line.accept(progress.text());
    }
  }

  @Override
  public void over() {
    // The value that follows says that the work is done.
  }
}
