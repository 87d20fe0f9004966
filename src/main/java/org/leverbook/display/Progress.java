package org.leverbook.display;

import java.util.Locale;
import java.util.Objects;

/**
 * How far long work has come. Whoever talks to the user listens: a bar in the shell, lines of text
 * in a script; nobody at first. {@link Meter} tells it.
 *
 * @param what is computed, as in "sweep over hip height"
 * @param done how many are computed
 * @param total how many there are
 * @param spent seconds since the start
 */
public record Progress(String what, long done, long total, double spent) {

  /** Hears how far work has come: from any thread, one call at a time, four a second at most. */
  public interface Listener {

    /**
     * Work goes on; not called before it has taken a second.
     *
     * @param progress how far it is
     */
    void at(Progress progress);

    /** The work is over, finished or not; called only where {@link #at} was. */
    void over();
  }

  private static final Listener NOBODY =
      new Listener() {
        @Override
        public void at(Progress progress) {}

        @Override
        public void over() {}
      };

  private static volatile Listener listener = NOBODY;

  /**
   * Listens from here on, in place of whoever listened before.
   *
   * @param next hears of all later work; null for nobody
   * @return who listened before, to be put back
   */
  public static synchronized Listener listen(Listener next) {
    Listener before = listener;
    listener = Objects.requireNonNullElse(next, NOBODY);
    return before;
  }

  static Listener listener() {
    return listener;
  }

  /**
   * The time left if the rest goes as fast as what is done.
   *
   * @return seconds; as long as what was spent where nothing is done yet
   */
  public double left() {
    return done == 0 ? spent : spent * (total - done) / done;
  }

  /**
   * How much is done.
   *
   * @return 0 to 100
   */
  public int percent() {
    return total == 0 ? 100 : (int) (100 * done / total);
  }

  /**
   * One line.
   *
   * @return as in "sweep over hip height: 340 of 1,000, about 12 s left"
   */
  public String text() {
    return String.format(
        Locale.ROOT, "%s: %,d of %,d, about %s left", what, done, total, time(left()));
  }

  private static String time(double seconds) {
    if (seconds < 90) {
      return String.format(Locale.ROOT, "%.0f s", Math.max(1, Math.ceil(seconds)));
    }
    return seconds < 5400
        ? String.format(Locale.ROOT, "%.0f min", Math.ceil(seconds / 60))
        : String.format(Locale.ROOT, "%.1f h", seconds / 3600);
  }

  @Override
  public String toString() {
    return text();
  }
}
