package org.leverbook.statics;

import java.util.Optional;
import java.util.function.DoubleFunction;
import org.leverbook.strength.Demand;

/**
 * Finds how far a load can grow until a joint reaches its limit or the supports no longer hold.
 *
 * <p>The load grows from nothing in steps, so that the first limit is met and not a later one; the
 * step in which it lies is then narrowed by false position (Illinois), or halved where one end is
 * not held at all. Where nothing at all is too much (a counterweight is needed), small loads are
 * tried first.
 */
final class Growth {

  /**
   * What one size of the load gives.
   *
   * @param held whether the supports hold
   * @param effort the greatest share of a joint's strength; not used where nothing holds
   * @param limiter the joint that gives it; empty where nothing holds or nothing is asked
   * @param reason why it is not held, in words; empty where it is
   */
  record Tried(boolean held, double effort, Optional<Demand> limiter, String reason) {

    boolean possible() {
      return held && effort <= 1;
    }
  }

  /**
   * What was found.
   *
   * @param factor the largest that can be held; zero where not even nothing can
   * @param possible whether anything can be held
   * @param unlimited whether no limit was met
   * @param limit what the load does that is just too much; at zero what nothing does
   */
  record Found(double factor, boolean possible, boolean unlimited, Tried limit) {}

  /** Beyond about a thousand times its size nothing is looked for. */
  private static final double MOST = 2000;

  private static final double STEP = 2;

  private final DoubleFunction<Tried> attempt;
  private final double first;
  private final double near;

  private Growth(DoubleFunction<Tried> attempt, double first, double near) {
    this.attempt = attempt;
    this.first = first;
    this.near = near;
  }

  /**
   * Lets a load grow.
   *
   * @param attempt what a load so many times its size does
   * @param first the first step, as a share of the load's size now
   * @param near how nearly, as a share of the largest load
   * @return the largest and its limit
   */
  static Found of(DoubleFunction<Tried> attempt, double first, double near) {
    return new Growth(attempt, first, near).grow();
  }

  private Found grow() {
    double low = 0;
    Tried below = attempt.apply(0);
    if (!below.possible()) {
      Tried nothing = below;
      low = first;
      below = attempt.apply(low);
      while (!below.possible()) {
        low *= STEP;
        if (low > MOST) {
          return new Found(0, false, false, nothing);
        }
        below = attempt.apply(low);
      }
    }
    double high = Math.max(first, low);
    Tried above = below;
    do {
      high *= STEP;
      if (high > MOST) {
        return new Found(low, true, true, below);
      }
      above = attempt.apply(high);
      if (above.possible()) {
        low = high;
        below = above;
      }
    } while (above.possible());
    return narrowed(low, below, high, above);
  }

  private Found narrowed(double from, Tried at, double to, Tried over) {
    double low = from;
    double high = to;
    Tried above = over;
    double lowValue = at.effort() - 1;
    double highValue = over.effort() - 1;
    int kept = 0;
    while (high - low > near * high) {
      boolean secant = above.held() && highValue > lowValue;
      double part = secant ? -lowValue / (highValue - lowValue) : 0.5;
      double middle = low + Math.max(0.02, Math.min(0.98, part)) * (high - low);
      Tried here = attempt.apply(middle);
      if (here.possible()) {
        low = middle;
        lowValue = here.effort() - 1;
        highValue = kept < 0 ? highValue / 2 : highValue;
        kept = -1;
      } else {
        high = middle;
        above = here;
        highValue = here.effort() - 1;
        lowValue = kept > 0 ? lowValue / 2 : lowValue;
        kept = 1;
      }
    }
    return new Found(low, true, false, above);
  }
}
