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
 * collected first, and only what is left counts. From then on the running code looks for itself, at
 * its stop checks: a thread beside it comes too late on a busy machine. While no session uses much,
 * two numbers are read now and then, and nothing else is done.
 */
final class Memory {

  private static final long LEAST_ROOM = 24 * Fullness.MB;
  private static final long MOST_ROOM = 256 * Fullness.MB;

  /** Less than this is no growth. */
  private static final long LEAST_GROWTH = Fullness.MB;

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

  /** Whether the running code looks for itself. */
  private volatile boolean tight;

  /** What was in use when the running text began; 0 unless memory is short. */
  private volatile long begun;

  /** How often was looked while the text runs: each time less is allowed, lest it crawl on. */
  private int looks;

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
    Memory own = watched;
    if (own != null && own.tight) {
      engine.look(own::heed);
    }
  }

  static void forget(Engine engine) {
    ENGINES.remove(engine);
  }

  /** Begins to watch, once a quarter is in use; often called, and quick. */
  static void glance() {
    if (watched == null && used() > Runtime.getRuntime().maxMemory() / 4) {
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
    } else if (own != null && own.tight) {
      own.relax();
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
    looks = 0;
    begun = live();
    if (begun < most - 2 * room) {
      isShort = false;
      reserve = new byte[(int) room / 2];
      tighten(begun > near());
      begun = 0;
    }
    mark();
  }

  /** The mark was passed: is it garbage, or full? */
  private synchronized void look() {
    long used = live();
    tighten(used > near());
    long allowed = Math.max(LEAST_GROWTH, growth() >> Math.min(looks, 20));
    looks++;
    if (used > most - room && used > begun + allowed) {
      giveBack();
      Fullness found = new Fullness(used, most);
      ENGINES.forEach(engine -> engine.full(found));
    }
    mark();
  }

  /** As the running code does now and then: whoever fills the memory is the first to see it. */
  private void heed() {
    if (isAtTheGate()) {
      synchronized (this) {
        // Another thread may have looked meanwhile.
        if (isAtTheGate()) {
          look();
        }
      }
    }
  }

  private boolean isAtTheGate() {
    return used() > Math.max(most - room / 2, begun + growth());
  }

  /** So much may come to what was there when the text began, also while memory is short. */
  private long growth() {
    return Math.min(room / 3, (most - begun) / 3);
  }

  /** From here on the running code looks for itself. */
  private long near() {
    return Math.max(most / 3, most - 4 * room);
  }

  private void tighten(boolean now) {
    if (tight != now) {
      tight = now;
      ENGINES.forEach(engine -> engine.look(now ? this::heed : null));
    }
  }

  private synchronized void relax() {
    tighten(used() > near());
  }

  private static long used() {
    Runtime java = Runtime.getRuntime();
    return java.totalMemory() - java.freeMemory();
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

  /** Sets the mark: halfway at first, with large memories later, then ever closer to the end. */
  private void mark() {
    if (old.isEmpty()) {
      return;
    }
    MemoryPoolMXBean pool = old.get();
    long end = most(pool);
    long first = Math.max(end / 2, end - 4 * room);
    pool.setUsageThreshold(Math.max(first, end - left(pool) * 2 / 3));
  }
}
