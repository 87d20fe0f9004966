package org.leverbook.session;

import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinWorkerThread;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/**
 * The threads that run the user's code: one for the code itself, and its helpers.
 *
 * <p>They are a pool of their own because a parallel stream forks into the pool that it is started
 * from. In the common pool, the parts of a stopped stream that wait for their turn would be run
 * later, when nothing asks them to stop any more, and never end.
 */
final class Workers {

  /** How long threads that were told to end may take before the next code runs beside them. */
  private static final long GRACE = 200;

  private final ClassLoader loader;
  private final Set<Thread> threads = ConcurrentHashMap.newKeySet();
  private final ForkJoinPool pool;

  /**
   * Threads that wait for work.
   *
   * @param loader their context class loader, which knows the classes of the session
   */
  Workers(ClassLoader loader) {
    this.loader = loader;
    this.pool =
        new ForkJoinPool(Runtime.getRuntime().availableProcessors(), this::thread, null, false);
  }

  private ForkJoinWorkerThread thread(ForkJoinPool owner) {
    var created = ForkJoinPool.defaultForkJoinWorkerThreadFactory.newThread(owner);
    created.setName("leverbook evaluation " + (threads.size() + 1));
    created.setContextClassLoader(loader);
    threads.removeIf(other -> other.getState() == Thread.State.TERMINATED);
    threads.add(created);
    return created;
  }

  /** Runs a task on one of the threads; it should catch what it throws. */
  <T> Future<T> submit(Callable<T> task) {
    return pool.submit(task);
  }

  /** Whether a thread is one of these. */
  boolean own(Thread thread) {
    return threads.contains(thread);
  }

  /** Wakes whatever sleeps or waits. */
  void interrupt() {
    threads.forEach(Thread::interrupt);
  }

  /** Ends all threads: those that do not end at once are stopped wherever they meet a check. */
  void discard(SnippetLoader checks) {
    threads.forEach(checks::abandon);
    pool.shutdownNow();
    try {
      pool.awaitTermination(GRACE, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
