package org.leverbook.study;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * Many computations: in parallel, handed on in order, one block in memory at a time. What is
 * computed must not depend on the order; then the outcome is the same on any number of processors.
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
   */
  static <T> int each(String what, int count, IntFunction<T> work, Taker<T> taker) {
    int done = 0;
    while (done < count && !Thread.currentThread().isInterrupted()) {
      int from = done;
      int to = Math.min(count, from + BLOCK);
      List<T> block = IntStream.range(from, to).parallel().mapToObj(work).toList();
      for (T result : block) {
        taker.take(done++, result);
      }
    }
    return done;
  }
}
