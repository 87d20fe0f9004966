package org.leverbook.session;

import java.lang.StackWalker.Option;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Which errand the running code belongs to.
 *
 * <p>A thread that the user's code starts inherits the errand. A pool's thread serves many, so its
 * errand is read from its stack: the outermost class of the user's code there is, for a lambda or a
 * task class, the one that was compiled for the text that handed it in.
 */
public final class Errands {

  private static final InheritableThreadLocal<Errand> OWN = new InheritableThreadLocal<>();
  private static final ThreadLocal<Errand> RUNNING = new ThreadLocal<>();
  private static final StackWalker WALKER = StackWalker.getInstance(Option.RETAIN_CLASS_REFERENCE);

  private Errands() {}

  /**
   * Does something on an errand: texts evaluated meanwhile on this thread belong to it.
   *
   * @param <T> what the work gives
   * @param errand the errand
   * @param work what to do
   * @return what the work gives
   */
  public static <T> T during(Errand errand, Supplier<T> work) {
    Errand before = OWN.get();
    OWN.set(errand);
    try {
      return work.get();
    } finally {
      OWN.set(before);
    }
  }

  /**
   * The errand of the code that runs on this thread.
   *
   * @return the errand; empty where none was given, or nothing tells whose code a pool's thread
   *     runs
   */
  public static Optional<Errand> here() {
    Errand running = RUNNING.get();
    return running != null ? Optional.of(running) : WALKER.walk(Errands::read);
  }

  private static Optional<Errand> read(java.util.stream.Stream<StackWalker.StackFrame> frames) {
    Errand outermost = null;
    boolean pooled = false;
    boolean forked = false;
    var each = frames.iterator();
    while (each.hasNext()) {
      Class<?> owner = each.next().getDeclaringClass();
      if (owner.getClassLoader() instanceof SnippetLoader loader) {
        outermost = loader.errand(owner).orElse(outermost);
      }
      String name = owner.getName();
      forked |= name.startsWith("java.util.concurrent.ForkJoin");
      pooled |= forked || name.equals("java.util.concurrent.ThreadPoolExecutor");
    }
    if (pooled && outermost != null) {
      return Optional.of(outermost);
    }
    // Threads of a forking pool are started by whoever comes by: what they inherited says nothing.
    return Optional.ofNullable(forked ? null : OWN.get());
  }

  /** The errand of the texts evaluated on this thread, or null. */
  static Errand own() {
    return OWN.get();
  }

  /** Runs a unit's code on another thread than the one that evaluates. */
  static <T> T running(Errand errand, Supplier<T> code) {
    RUNNING.set(errand);
    try {
      return during(errand, code);
    } finally {
      RUNNING.remove();
    }
  }
}
