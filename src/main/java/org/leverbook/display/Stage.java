package org.leverbook.display;

import java.util.Objects;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Where a running text shows values on the way, before it has ended. Whoever talks to the user
 * watches: the shell prints them, a notebook puts them under the cell. One stage for the process;
 * nobody watches at first.
 */
public final class Stage {

  /** Sees what is shown, from whatever thread shows it. */
  public interface Audience {

    /**
     * A value is shown.
     *
     * @param scene its number, unique in this process
     * @param value any value, or null
     */
    void shows(long scene, Object value);

    /**
     * Another value takes the place of one shown before.
     *
     * @param scene the number it was shown under
     * @param value any value, or null
     */
    void changes(long scene, Object value);
  }

  private static final Audience NOBODY =
      new Audience() {
        @Override
        public void shows(long scene, Object value) {}

        @Override
        public void changes(long scene, Object value) {}
      };

  private static final AtomicLong LAST = new AtomicLong();

  private static volatile Audience audience = NOBODY;

  private Stage() {}

  /**
   * Watches from here on, in place of whoever watched before.
   *
   * @param next sees all that is shown later; null for nobody
   * @return who watched before, to be put back
   */
  public static synchronized Audience watch(Audience next) {
    Audience before = audience;
    audience = Objects.requireNonNullElse(next, NOBODY);
    return before;
  }

  /**
   * Shows a value.
   *
   * @param value any value, or null
   * @return its place, where another value can follow
   */
  public static OnStage show(Object value) {
    long scene = LAST.incrementAndGet();
    audience.shows(scene, value);
    return new OnStage(scene);
  }

  static void change(long scene, Object value) {
    audience.changes(scene, value);
  }
}
