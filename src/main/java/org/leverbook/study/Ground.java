package org.leverbook.study;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * The ground that a search for the best walks on: the cost of each setting, and walls where there
 * is none. It must be the same whatever was asked before, and from any thread.
 */
@FunctionalInterface
interface Ground {

  /** Halvings of one step of a scan until an edge is known: a billionth of a range. */
  int HALVINGS = 24;

  /** Share of its bracket to which Brent's method finds a lowest place. */
  double FINE = 1e-7;

  int MOST_ASKED = 120;

  /** What comes of a setting. */
  Trial at(double x, double y);

  /** One line through this ground; {@code t} is where on it. */
  @FunctionalInterface
  interface Line {

    Trial at(double t);
  }

  /**
   * The last place on a line that still fits, on the way from one that does to one that does not.
   *
   * @param line where
   * @param inside fits
   * @param outside does not
   * @param fits the condition
   * @return a place that fits, hardly a step from one that does not
   */
  static double edge(
      Line line, double inside, double outside, java.util.function.Predicate<Trial> fits) {
    double in = inside;
    double out = outside;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (in + out) / 2;
      if (fits.test(line.at(middle))) {
        in = middle;
      } else {
        out = middle;
      }
    }
    return in;
  }

  /**
   * The lowest place near a start, by Brent's method (Hipparchus). A wall inside the bracket counts
   * as a high plateau.
   *
   * @param line where
   * @param low lower end of the bracket
   * @param start inside it
   * @param high its upper end
   * @param plateau what a wall counts, more than anything seen
   * @return where Brent's method was lowest, never a wall unless all was wall; the start's own cost
   *     included
   */
  static double lowest(Line line, double low, double start, double high, double plateau) {
    double[] best = {start};
    Trial[] lowest = {line.at(start)};
    UnivariateFunction cost =
        t -> {
          Trial here = line.at(t);
          if (here.cost() < lowest[0].cost()) {
            lowest[0] = here;
            best[0] = t;
          }
          return here.free() ? here.cost() : plateau;
        };
    try {
      new BrentOptimizer(1e-10, FINE * (high - low))
          .optimize(
              new UnivariateObjectiveFunction(cost),
              GoalType.MINIMIZE,
              new SearchInterval(low, high, start),
              new MaxEval(MOST_ASKED));
    } catch (MathIllegalStateException e) {
      // Ground too rough to settle on: the lowest place met is as good as it gets.
      return best[0];
    }
    return best[0];
  }
}
