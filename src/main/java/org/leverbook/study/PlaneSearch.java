package org.leverbook.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.hipparchus.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.hipparchus.random.MersenneTwister;
import org.leverbook.quantity.Refused;

/**
 * The best of two settings.
 *
 * <ol>
 *   <li>A scan over both ranges, in parallel.
 *   <li>From the lowest places of the scan that are lower than their eight neighbours: an evolution
 *       strategy with a fixed seed (CMA-ES of Hipparchus), which needs only to know what is lower
 *       and so does not mind walls.
 *   <li>Then, close by, a quadratic model (BOBYQA of Hipparchus), and each setting alone by Brent's
 *       method, which comes as near to a limit or to a wall as there is.
 * </ol>
 *
 * <p>Inside, both ranges are 0 to 1.
 */
final class PlaneSearch {

  private static final int MOST_STARTS = 4;
  private static final int OFFSPRING = 10;
  private static final int MOST_GENERATIONS = 40;
  private static final int MOST_MODELLED = 80;
  private static final int ROUNDS = 3;

  private final Ground ground;
  private final Span<?> first;
  private final Span<?> second;
  private final List<Trial> scan = new ArrayList<>();
  private double plateau;

  private PlaneSearch(Ground ground, Span<?> first, Span<?> second) {
    this.ground = ground;
    this.first = first;
    this.second = second;
  }

  /**
   * Searches.
   *
   * @param ground the cost of each pair of settings
   * @param first its values are the scan's; varies slowest
   * @param second its values are the scan's
   * @return what was found
   * @throws Refused if every pair of the scan is a wall; tells the most frequent reason
   */
  static Sought best(Ground ground, Span<?> first, Span<?> second) {
    PlaneSearch search = new PlaneSearch(ground, first, second);
    search.look();
    return search.refined();
  }

  private void look() {
    String both = first.name() + " and " + second.name();
    Searches.each(
        "scan over " + both,
        first.values() * second.values(),
        i -> ground.at(first.value(i / second.values()), second.value(i % second.values())),
        (i, trial) -> scan.add(trial));
    Searches.someFree(scan, "pairs of " + both);
    plateau = Searches.plateau(scan);
  }

  private Sought refined() {
    List<Trial> starts = starts();
    List<Trial> found = new ArrayList<>();
    Searches.each(
        "search over " + first.name() + " and " + second.name(),
        starts.size(),
        i -> new Walk(starts.get(i)).lowest(),
        (i, trial) -> found.add(trial));
    List<Trial> valleys =
        Searches.apart(
            found,
            Math.abs(first.value(1) - first.value(0)),
            Math.abs(second.value(1) - second.value(0)));
    return new Sought(scan, valleys.get(0), valleys);
  }

  private List<Trial> starts() {
    List<Trial> lower = new ArrayList<>();
    for (int i = 0; i < scan.size(); i++) {
      if (scan.get(i).free() && lowerThanBeside(i)) {
        lower.add(scan.get(i));
      }
    }
    lower.sort(Comparator.comparingDouble(Trial::cost));
    List<Trial> starts =
        Searches.apart(
            lower,
            1.5 * Math.abs(first.value(1) - first.value(0)),
            1.5 * Math.abs(second.value(1) - second.value(0)));
    return starts.subList(0, Math.min(MOST_STARTS, starts.size()));
  }

  private boolean lowerThanBeside(int index) {
    int width = second.values();
    int row = index / width;
    int column = index % width;
    for (int r = Math.max(0, row - 1); r <= Math.min(first.values() - 1, row + 1); r++) {
      for (int c = Math.max(0, column - 1); c <= Math.min(width - 1, column + 1); c++) {
        if (scan.get(r * width + c).trulyBelow(scan.get(index))) {
          return false;
        }
      }
    }
    return true;
  }

  private double x(double share) {
    return first.from() * (1 - share) + first.to() * share;
  }

  private double y(double share) {
    return second.from() * (1 - share) + second.to() * share;
  }

  /** One search from one start; remembers the lowest place it met, which is what counts. */
  private final class Walk {

    private final double[] steps = {1.0 / (first.values() - 1), 1.0 / (second.values() - 1)};
    private final double[] at;
    private Trial lowest;

    Walk(Trial start) {
      lowest = start;
      at =
          new double[] {
            (start.x() - first.from()) / (first.to() - first.from()),
            (start.y() - second.from()) / (second.to() - second.from())
          };
    }

    Trial lowest() {
      evolve();
      model();
      for (int round = 0; round < ROUNDS; round++) {
        Trial before = lowest;
        alone(0);
        alone(1);
        if (!lowest.trulyBelow(before)) {
          break;
        }
      }
      return lowest;
    }

    private double cost(double... shares) {
      double u = Math.max(0, Math.min(1, shares[0]));
      double v = Math.max(0, Math.min(1, shares[1]));
      Trial here = ground.at(x(u), y(v));
      if (here.cost() < lowest.cost()) {
        lowest = here;
        at[0] = u;
        at[1] = v;
      }
      return here.free() ? here.cost() : plateau;
    }

    private void evolve() {
      CMAESOptimizer strategy =
          new CMAESOptimizer(
              MOST_GENERATIONS,
              Double.NEGATIVE_INFINITY,
              true,
              0,
              0,
              new MersenneTwister(6),
              false,
              new SimpleValueChecker(1e-10, -1));
      settled(
          () ->
              strategy.optimize(
                  new ObjectiveFunction((MultivariateFunction) this::cost),
                  GoalType.MINIMIZE,
                  new InitialGuess(at.clone()),
                  new CMAESOptimizer.Sigma(steps.clone()),
                  new CMAESOptimizer.PopulationSize(OFFSPRING),
                  new MaxEval(OFFSPRING * MOST_GENERATIONS + 10),
                  new SimpleBounds(new double[2], new double[] {1, 1})));
    }

    private void model() {
      double reach = Math.min(steps[0], steps[1]) / 20;
      settled(
          () ->
              new BOBYQAOptimizer(5, reach, reach * 1e-6)
                  .optimize(
                      new ObjectiveFunction((MultivariateFunction) this::cost),
                      GoalType.MINIMIZE,
                      new InitialGuess(at.clone()),
                      new MaxEval(MOST_MODELLED),
                      new SimpleBounds(new double[2], new double[] {1, 1})));
    }

    /** One setting alone, within a quarter step, up to the edge before a wall. */
    private void alone(int which) {
      double[] fixed = at.clone();
      Ground.Line line =
          t -> which == 0 ? ground.at(x(t), y(fixed[1])) : ground.at(x(fixed[0]), y(t));
      double here = fixed[which];
      double low = bound(line, here, Math.max(0, here - steps[which] / 4));
      double high = bound(line, here, Math.min(1, here + steps[which] / 4));
      double start = here > low && here < high ? here : (low + high) / 2;
      double[] candidates = {low, high, Ground.lowest(line, low, start, high, plateau)};
      for (double candidate : candidates) {
        cost(which == 0 ? candidate : fixed[0], which == 0 ? fixed[1] : candidate);
      }
    }

    private static double bound(Ground.Line line, double here, double there) {
      return line.at(there).free() ? there : Ground.edge(line, here, there, Trial::free);
    }

    /** An optimiser may end by asking too often or by meeting a wall; what it met counts. */
    private static void settled(Runnable optimiser) {
      try {
        optimiser.run();
      } catch (MathRuntimeException e) {
        // Nothing to repair: the lowest place met is remembered.
        return;
      }
    }
  }
}
