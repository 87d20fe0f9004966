package org.leverbook.study;

import java.util.Optional;
import java.util.function.IntFunction;
import org.leverbook.display.Meter;

/**
 * Many computations: in parallel, handed on in order, one block in memory at a time. What is
 * computed must not depend on the order; then the outcome is the same on any number of processors.
 *
 * <p>Long work tells how far it is ({@link org.leverbook.display.Progress}), computations inside
 * computations do not. Work stops soon after the asking thread, or one that helps it, is
 * interrupted, or the user's code meets a stop check; what was computed up to there is handed on,
 * without a hole. The thread stays interrupted.
 */
final class Many {

  /** So many are computed before they are handed on: enough to keep all processors busy. */
  private static final int BLOCK = 512;

  /**
   * Takes one result.
   *
   * @param <T> what kind of result
   */
  @FunctionalInterface
  interface Taker<T> {

    /** Called in order, always on the thread that asked. */
    void take(int index, T result);
  }

  private Many() {}

  /**
   * Computes and hands on.
   *
   * @param <T> what kind of result
   * @param what is computed, for those who wait, as in "sweep over hip height"
   * @param count how many
   * @param work from an index to its result; called on any thread
   * @param taker called with each result, in order, on this thread
   * @return how many were handed on: all, or fewer where the user asked to stop
   * @throws RuntimeException what the work threw; of several, what the lowest index threw
   */
  static <T> int each(String what, int count, IntFunction<T> work, Taker<T> taker) {
    Optional<Meter> meter =
        Block.isInside() ? Optional.empty() : Optional.of(Meter.of(what, count));
    try {
      int done = 0;
      while (done < count) {
        int to = Math.min(count, done + BLOCK);
        Block<T> block = new Block<>(work, done, to, () -> meter.ifPresent(Meter::step));
        int ready = block.run();
        for (int i = 0; i < ready; i++) {
          taker.take(done++, block.result(i));
        }
        if (done < to) {
          return done;
        }
      }
      return done;
    } finally {
      meter.ifPresent(Meter::close);
    }
  }
}
