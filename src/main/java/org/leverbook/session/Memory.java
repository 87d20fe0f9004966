package org.leverbook.session;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryNotificationInfo;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.lang.management.MemoryUsage;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import javax.management.NotificationEmitter;

/**
 * Watches over the memory of this process, which all sessions share with the sockets and the
 * terminal. Code that fills it with small things would have the others fail before itself: it is
 * asked to stop while there is still room for them.
 *
 * <p>The pool of what has grown old tells when it passes a mark. Much of it may be garbage: it is
 * collected first, and only what is left counts. While no session uses much, two numbers are read
 * now and then, and nothing else is done.
 */
final class Memory {

  private static final long LEAST_ROOM = 24 * Fullness.MB;
  private static final long MOST_ROOM = 256 * Fullness.MB;

  private static final Set<Engine> ENGINES = ConcurrentHashMap.newKeySet();

  private static volatile Memory watched;

  private final long most = Runtime.getRuntime().maxMemory();

  /** What is kept free for everything but the user's code. */
  private final long room = Math.min(most / 3, Math.max(LEAST_ROOM, Math.min(most / 6, MOST_ROOM)));

  private final List<MemoryPoolMXBean> pools;
  private final Optional<MemoryPoolMXBean> old;

  /** Given back when nothing else is left, so that there is room to let go of what fills it. */
  private byte[] reserve;

  private volatile boolean isShort;

  /** What was in use when the running text began; known only while memory is short. */
  private long begun;

  private Memory() {
    pools =
        ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .toList();
    old =
        pools.stream()
            .filter(MemoryPoolMXBean::isUsageThresholdSupported)
            .max(Comparator.comparingLong(pool -> pool.getUsage().getMax()));
    var bean = (NotificationEmitter) ManagementFactory.getMemoryMXBean();
    bean.addNotificationListener(
        (told, nothing) -> look(),
        told -> told.getType().equals(MemoryNotificationInfo.MEMORY_THRESHOLD_EXCEEDED),
        null);
    reserve = new byte[(int) room / 2];
    mark();
  }

  /** An engine whose code is to be stopped when memory is full. */
  static void watch(Engine engine) {
    ENGINES.add(engine);
  }

  static void forget(Engine engine) {
    ENGINES.remove(engine);
  }

  /** Begins to watch, once a quarter is in use; often called, and quick. */
  static void glance() {
    Runtime java = Runtime.getRuntime();
    if (watched == null && java.totalMemory() - java.freeMemory() > java.maxMemory() / 4) {
      begin();
    }
  }

  private static synchronized void begin() {
    if (watched == null) {
      watched = new Memory();
    }
  }

  /** A text is about to be evaluated. */
  static void textBegins() {
    glance();
    Memory own = watched;
    if (own != null && own.isShort) {
      own.measure();
    }
  }

  /** Whether it was full, and has not been seen otherwise since. */
  static boolean isShort() {
    Memory own = watched;
    return own != null && own.isShort;
  }

  /** An allocation failed: what was set aside is given back. */
  static void ranOut() {
    Memory own = watched;
    if (own != null) {
      own.giveBack();
    }
  }

  private synchronized void giveBack() {
    isShort = true;
    reserve = null;
  }

  private synchronized void measure() {
    begun = live();
    if (begun < most - 2 * room) {
      isShort = false;
      begun = 0;
      reserve = new byte[(int) room / 2];
    }
    mark();
  }

  /** The mark was passed: is it garbage, or full? */
  private synchronized void look() {
    long used = live();
    boolean grown = used > begun + room / 3;
    Optional<Fullness> found =
        used > most - room ? Optional.of(new Fullness(used, most)) : old.flatMap(this::ofOld);
    if (grown && found.isPresent()) {
      giveBack();
      ENGINES.forEach(engine -> engine.full(found.get()));
    }
    mark();
  }

  /** Some collectors keep room for the young that the old never get: it fills before the whole. */
  private Optional<Fullness> ofOld(MemoryPoolMXBean pool) {
    return left(pool) < room / 4
        ? Optional.of(new Fullness(most(pool) - left(pool), most(pool)))
        : Optional.empty();
  }

  private static long left(MemoryPoolMXBean pool) {
    return most(pool) - used(pool.getCollectionUsage());
  }

  private static long most(MemoryPoolMXBean pool) {
    long most = pool.getUsage().getMax();
    return most < 0 ? Runtime.getRuntime().maxMemory() : most;
  }

  /**
   * What is left after a full collection; what only the last one knew, where it is switched off.
   */
  private long live() {
    System.gc();
    return pools.stream().mapToLong(pool -> used(pool.getCollectionUsage())).sum();
  }

  private static long used(MemoryUsage usage) {
    return usage == null ? 0 : usage.getUsed();
  }

  /** Sets the mark: twice the room before the end at first, then ever closer to it. */
  private void mark() {
    if (old.isEmpty()) {
      return;
    }
    MemoryPoolMXBean pool = old.get();
    long end = most(pool);
    long first = end - (end < most ? room : 2 * room);
    long closer = end - left(pool) * 3 / 4;
    long last = Math.max(end - room, end - left(pool) * 9 / 10);
    pool.setUsageThreshold(Math.max(1, Math.max(first, Math.min(closer, last))));
  }
}
