package org.leverbook.solve;

import java.util.Arrays;

/**
 * Least squares within bounds: finds unknowns x with low ≤ x ≤ high that make
 *
 * <pre>  ½ Σ μ (c + s)² + ½ Σ (w r)² + ½ Σ (k (x - usual))²</pre>
 *
 * <p>small, c the residuals of conditions, s their shifts, r those of wishes. Each step solves
 * Newton's equations for the unknowns that are free: one at a bound that the slope presses further
 * is left out. They are damped (Levenberg and Marquardt) by the scale of the wishes, not by that of
 * the strong conditions, which would hold back what moves along them. A step is cut at the bounds
 * and kept if the sum got less. Raising μ and taking the residual left over into the shift (the
 * method of multipliers) then brings the conditions to rounding while the wishes stay as they
 * should.
 *
 * <p>Background: Nocedal and Wright, Numerical Optimization, 2006, chapters 10, 16 and 17, from
 * memory. Nothing is allocated after the constructor.
 */
final class Descent {

  /** A sum that changes by less than this share of itself has come to rest. */
  private static final double ROUNDING = 1e-13;

  /** Even an unknown that nothing is wished of is damped a little. */
  private static final double LEAST_SCALE = 1e-6;

  /** Where conditions miss by more, second derivatives seldom help: metres and radians. */
  private static final double FAR = 1e-3;

  private static final double LEAST_DAMPING = 1e-9;
  private static final double MOST_DAMPING = 1e8;

  private final PoseProblem problem;
  private final int n;
  private final int rows;
  private final double[] residuals;
  private final double[] tried;
  private final double[] foreseen;
  private final double[] next;
  private final double[] gradient;
  private final double[] normal;
  private final double[] curved;
  private final double[] scale;
  private final double[] pulls;
  private final Elimination equations;
  private final double[] step;
  private final double[] shift;
  private final double[] slope;
  private final double[] move;
  private final int[] free;
  private final int[] open;
  private double strength;
  private double cost;
  private double damping;

  /** Whether the scene stands where a step was refused. */
  private boolean astray;

  /** The unknowns that it walks with. */
  private double[] at;

  private int steps;

  Descent(PoseProblem problem) {
    this.problem = problem;
    n = problem.unknowns;
    rows = problem.rows;
    residuals = new double[rows];
    tried = new double[rows];
    foreseen = new double[rows];
    next = new double[n];
    gradient = new double[n];
    normal = new double[n * n];
    curved = new double[n * n];
    pulls = new double[rows];
    equations = new Elimination(n);
    scale = new double[n];
    step = new double[n];
    shift = new double[rows];
    slope = new double[n];
    move = new double[n];
    free = new int[n];
    open = new int[n];
  }

  /** Forgets the shifts. */
  void begin() {
    Arrays.fill(shift, 0);
    steps = 0;
  }

  /** Takes what the conditions still miss into their shifts. */
  void shift() {
    Arrays.setAll(shift, r -> r < problem.conditions ? shift[r] + residuals[r] : 0);
  }

  /** The pull of each condition: its shift times the strength. */
  double[] holds() {
    double[] holds = new double[problem.conditions];
    for (int r = 0; r < holds.length; r++) {
      holds[r] = strength * shift[r];
    }
    return holds;
  }

  /** Shifts as of given pulls; none where they are those of other conditions. */
  void shiftTo(double[] holds) {
    for (int r = 0; r < problem.conditions && holds.length == problem.conditions; r++) {
      shift[r] = holds[r] / strength;
    }
  }

  /** Scales the shifts with the strength of the conditions, so that their pull stays the same. */
  void strength(double mu) {
    for (int r = 0; r < problem.conditions; r++) {
      shift[r] *= strength / mu;
    }
    strength = mu;
  }

  /** How far the conditions miss at most. */
  double worst() {
    double worst = 0;
    for (int r = 0; r < problem.conditions; r++) {
      worst = Math.max(worst, Math.abs(residuals[r]));
    }
    return worst;
  }

  double[] residuals() {
    return residuals;
  }

  /** The slope of the sum with an unknown at the end of the last run. */
  double slopeOf(int unknown) {
    return gradient[unknown];
  }

  double damping() {
    return damping;
  }

  int steps() {
    return steps;
  }

  /**
   * Begins at x, which is moved into the bounds.
   *
   * @param x the unknowns, in place
   */
  void start(double[] x) {
    for (int i = 0; i < n; i++) {
      x[i] = Math.max(problem.low[i], Math.min(problem.high[i], x[i]));
    }
    astray = false;
    at = x;
    problem.residuals(x, residuals);
  }

  /**
   * To be called after the start, and where shifts or strength changed: the sum is another one.
   *
   * @param x where it stands
   * @param firstDamping small where x is already near
   */
  void again(double[] x, double firstDamping) {
    damping = firstDamping;
    cost = cost(x, residuals);
  }

  /** Puts the scene where the search has come to, if its last try was refused; or anywhere else. */
  void standAt(double[] x) {
    if (astray || at != x) {
      problem.residuals(x, residuals);
      astray = false;
      at = x;
    }
  }

  /**
   * One step downhill from x, in place.
   *
   * @return the largest part of it, radians and metres; zero where no step lessens the sum beyond
   *     rounding
   */
  double step(double[] x) {
    steps++;
    if (astray) {
      problem.residuals(x, tried);
      astray = false;
    }
    linearise(x);
    boolean far = worst() > FAR;
    if (!far) {
      System.arraycopy(normal, 0, curved, 0, normal.length);
      problem.curve(pulls, curved);
    }
    int count = freeOnes(x);
    while (damping < MOST_DAMPING) {
      if (!far && bounded(curved, x, count, damping) || bounded(normal, x, count, damping)) {
        double moved = stepTo(x);
        problem.residuals(next, tried);
        astray = true;
        double tryCost = cost(next, tried);
        if (tryCost < cost) {
          astray = false;
          boolean rest = cost - tryCost <= ROUNDING * cost;
          cost = tryCost;
          foresee(x);
          System.arraycopy(next, 0, x, 0, n);
          System.arraycopy(tried, 0, residuals, 0, rows);
          damping = Math.max(LEAST_DAMPING, damping / 10);
          return rest ? 0 : moved;
        }
        if (tryCost - cost <= ROUNDING * cost) {
          return 0;
        }
      }
      damping *= 8;
    }
    return 0;
  }

  /** What the conditions would miss after the step if they were straight: what their pulls lack. */
  private void foresee(double[] x) {
    for (int r = 0; r < problem.conditions; r++) {
      int[] columns = problem.flat[r].columns;
      double[] slopes = problem.flat[r].slopes;
      double sum = residuals[r];
      for (int a = 0; a < columns.length; a++) {
        sum += slopes[a] * (next[columns[a]] - x[columns[a]]);
      }
      foreseen[r] = sum;
    }
  }

  /** Takes what was foreseen of the last step into the shifts; the sum is another one then. */
  void shiftAsForeseen(double[] x) {
    for (int r = 0; r < problem.conditions; r++) {
      shift[r] += foreseen[r];
      foreseen[r] = 0;
    }
    cost = cost(x, residuals);
  }

  /** Steps until one is small, at most so many. */
  void run(double[] x, double smallStep, int most) {
    for (int i = 0; i < most; i++) {
      if (step(x) < smallStep) {
        return;
      }
    }
  }

  private double cost(double[] x, double[] r) {
    double sum = 0;
    for (int i = 0; i < problem.conditions; i++) {
      double c = r[i] + shift[i];
      sum += strength * c * c;
    }
    for (int i = problem.conditions; i < rows; i++) {
      double w = problem.weights[i] * r[i];
      sum += w * w;
    }
    for (int i = 0; i < n; i++) {
      double k = problem.stiffness[i] * (x[i] - problem.usual[i]);
      sum += k * k;
    }
    return sum;
  }

  /** Gradient and normal matrix (its lower half). */
  private void linearise(double[] x) {
    problem.slopes();
    Arrays.fill(normal, 0);
    for (int i = 0; i < n; i++) {
      double k = problem.stiffness[i] * problem.stiffness[i];
      gradient[i] = k * (x[i] - problem.usual[i]);
      normal[i * n + i] = k;
      scale[i] = k + LEAST_SCALE;
    }
    for (int r = 0; r < rows; r++) {
      boolean condition = r < problem.conditions;
      double w = condition ? strength : problem.weights[r] * problem.weights[r];
      double c = residuals[r] + (condition ? shift[r] : 0);
      pulls[r] = w * c;
      int[] columns = problem.flat[r].columns;
      double[] slopes = problem.flat[r].slopes;
      for (int a = 0; a < columns.length; a++) {
        double wa = w * slopes[a];
        if (wa != 0) {
          if (!condition) {
            scale[columns[a]] += wa * slopes[a];
          }
          gradient[columns[a]] += wa * c;
          int row = columns[a] * n;
          for (int b = 0; b <= a; b++) {
            normal[row + columns[b]] += wa * slopes[b];
          }
        }
      }
    }
  }

  private int freeOnes(double[] x) {
    int count = 0;
    for (int i = 0; i < n; i++) {
      boolean held =
          problem.low[i] == problem.high[i]
              || x[i] <= problem.low[i] && gradient[i] > 0
              || x[i] >= problem.high[i] && gradient[i] < 0;
      if (!held) {
        free[count++] = i;
      }
    }
    return count;
  }

  /**
   * The step within the bounds: an unknown that would pass its bound goes to it, and the others are
   * solved for once more with that given, the one that passes soonest first.
   */
  private boolean bounded(double[] matrix, double[] x, int freeAtFirst, double damping) {
    int count = freeAtFirst;
    System.arraycopy(gradient, 0, slope, 0, n);
    Arrays.fill(move, 0);
    System.arraycopy(free, 0, open, 0, count);
    while (count > 0) {
      if (!solve(matrix, count, damping)) {
        return false;
      }
      int first = -1;
      double soonest = 1;
      for (int a = 0; a < count; a++) {
        int i = open[a];
        double end = step[a] > 0 ? problem.high[i] - x[i] : problem.low[i] - x[i];
        if (Math.abs(step[a]) > Math.abs(end)) {
          double share = end / step[a];
          if (share < soonest) {
            soonest = share;
            first = a;
          }
        }
      }
      if (first < 0) {
        for (int a = 0; a < count; a++) {
          move[open[a]] = step[a];
        }
        return true;
      }
      count = close(matrix, x, first, count);
    }
    return true;
  }

  /** Moves one unknown to its bound and takes it out of the open ones. */
  private int close(double[] matrix, double[] x, int which, int count) {
    int i = open[which];
    move[i] = step[which] > 0 ? problem.high[i] - x[i] : problem.low[i] - x[i];
    for (int a = which; a < count - 1; a++) {
      open[a] = open[a + 1];
    }
    for (int a = 0; a < count - 1; a++) {
      int j = open[a];
      slope[j] += matrix[Math.max(i, j) * n + Math.min(i, j)] * move[i];
    }
    return count - 1;
  }

  /** The damped equations of the open unknowns; false where the matrix is not positive definite. */
  private boolean solve(double[] matrix, int count, double damping) {
    for (int a = 0; a < count; a++) {
      double[] row = equations.row(a);
      int column = open[a];
      double own = matrix[column * n + column];
      row[a] = own + damping * (scale[column] + damping * Math.abs(own));
      for (int b = a + 1; b < count; b++) {
        row[b] = matrix[open[b] * n + column];
      }
      row[count] = -slope[column];
    }
    return equations.solve(count, step);
  }

  /** Takes the step; the largest part of it. */
  private double stepTo(double[] x) {
    double moved = 0;
    for (int i = 0; i < n; i++) {
      next[i] = Math.max(problem.low[i], Math.min(problem.high[i], x[i] + move[i]));
      moved = Math.max(moved, Math.abs(move[i]));
    }
    return moved;
  }
}
