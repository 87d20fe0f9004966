package org.leverbook.study;

import java.util.Arrays;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.leverbook.display.Stop;

/**
 * Neighbouring computations, shared out one by one to the threads of the pool that asks: none waits
 * while another has a pile left, and after a stop hardly more is lost than what was under way.
 *
 * @param <T> what kind of result
 */
final class Block<T> {

  private static final Object ABSENT = new Object();

  /** Whether this thread is at work for a block. */
  private static final ThreadLocal<Boolean> INSIDE = ThreadLocal.withInitial(() -> false);

  private final IntFunction<T> work;
  private final int from;
  private final Runnable step;
  private final Object[] results;
  private final AtomicInteger next = new AtomicInteger();
  private final Thread asking = Thread.currentThread();
  private volatile boolean stopped;
  private Throwable failure;
  private int failed = Integer.MAX_VALUE;

  /**
   * A block.
   *
   * @param work from an index to its result
   * @param from first index
   * @param to after the last index
   * @param step called after each result, on any thread
   */
  Block(IntFunction<T> work, int from, int to, Runnable step) {
    this.work = work;
    this.from = from;
    this.step = step;
    this.results = new Object[to - from];
    Arrays.fill(results, ABSENT);
  }

  /** Whether the current thread computes for another block. */
  static boolean isInside() {
    return INSIDE.get();
  }

  /**
   * Computes.
   *
   * @return how many are ready, counted from the first, up to the first that is not
   */
  int run() {
    int threads =
        ForkJoinTask.inForkJoinPool()
            ? ForkJoinTask.getPool().getParallelism()
            : ForkJoinPool.getCommonPoolParallelism() + 1;
    IntStream.range(0, Math.min(threads, results.length)).parallel().forEach(i -> share());
    if (failure instanceof Error error) {
      throw error;
    }
    if (failure instanceof RuntimeException exception) {
      throw exception;
    }
    int ready = 0;
    while (ready < results.length && results[ready] != ABSENT) {
      ready++;
    }
    return ready;
  }

  @SuppressWarnings("unchecked")
  T result(int index) {
    return (T) results[index];
  }

  /** One thread's share: whatever is next, until nothing is. */
  private void share() {
    boolean before = INSIDE.get();
    INSIDE.set(true);
    try {
      int i;
      while (goesOn() && (i = next.getAndIncrement()) < results.length) {
        compute(i);
      }
    } finally {
      INSIDE.set(before);
    }
  }

  private boolean goesOn() {
    if (Thread.currentThread().isInterrupted() || asking.isInterrupted()) {
      stopped = true;
    }
    return !stopped;
  }

  private void compute(int index) {
    try {
      T result = work.apply(from + index);
      results[index] = result;
      step.run();
    } catch (Stop e) {
      stopped = true;
    } catch (RuntimeException | Error e) {
      fail(index, e);
    }
  }

  /**
   * Everything before this index is already under way: so the lowest that fails is the same with
   * any number of threads.
   */
  private synchronized void fail(int index, Throwable thrown) {
    stopped = true;
    if (index < failed) {
      failed = index;
      failure = thrown;
    }
  }
}
