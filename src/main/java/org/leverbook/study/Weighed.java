package org.leverbook.study;

import java.util.Locale;
import org.leverbook.load.Load;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Largest;
import org.leverbook.statics.Position;

/**
 * Something whose load can have another size.
 *
 * @param <T> what it is: one position, or a whole way
 */
interface Weighed<T> {

  /**
   * With its load so many times as heavy.
   *
   * @throws Refused if nothing there can grow
   */
  T times(double factor);

  /**
   * What can grow.
   *
   * @throws Refused if nothing can
   */
  Load mainLoad();

  /**
   * What the limiter gives as a share of what it can give, as it is.
   *
   * @throws Refused if that is not known
   */
  double effort();

  /**
   * How many times its load makes the limiter give this share of what it can give.
   *
   * @throws Refused if no load does
   */
  double timesAtEffort(double share);

  /**
   * How many times its load is the largest that can be held.
   *
   * @throws Refused if nothing limits, or not even nothing can be held
   */
  double timesAtLargest();

  /** One position: the posture stays. */
  record OfPosition(Position position) implements Weighed<Position> {

    @Override
    public Position times(double factor) {
      return factor == 1 ? position : position.withLoadTimes(factor);
    }

    @Override
    public Load mainLoad() {
      return position.mainLoad();
    }

    @Override
    public double effort() {
      return position.limiter().effort().orElseThrow();
    }

    @Override
    public double timesAtEffort(double share) {
      return atLimiter(position.largestAtEffort(Units.percent(100 * share)), share);
    }

    @Override
    public double timesAtLargest() {
      return atAny(position.largest());
    }
  }

  /** The factor where a joint is what limits. */
  static double atLimiter(Largest found, double share) {
    double factor = atAny(found);
    if (found.limiter().isEmpty()) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "No joint comes to %.0f %% of what it can give: with a heavier load the supports no"
                  + " longer hold. %s",
              100 * share,
              found.reason()));
    }
    return factor;
  }

  /** The factor, whatever limits. */
  static double atAny(Largest found) {
    if (!found.limited()) {
      throw new Refused("No load is the largest here: " + found.reason() + ".");
    }
    if (found.load().isEmpty()) {
      throw new Refused(
          "Even without the load more is asked than that: "
              + found.reason().replaceAll("\\.$", "")
              + ".");
    }
    return found.factor();
  }
}
