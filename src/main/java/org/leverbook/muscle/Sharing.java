package org.leverbook.muscle;

import java.util.Arrays;

/**
 * Shares the moments that joints need among muscles that only pull: with the least summed stress,
 * leaving nothing uncovered that can be covered at a reasonable price.
 *
 * <p>Symbols: a_i pull of muscle i as a share of its greatest force, 0 to 1; M_ki the moment that
 * it gives about axis k at full force (N·m); b_k the moment needed; r_k what stays uncovered. Each
 * axis is weighed by the size of what its muscles give together, the norm of its row of M. Wanted,
 * with M a + r = b and p = 2 or 3:
 *
 * <pre>least  sum of c_i a_i^p  +  sum of (l_k |r_k| + r_k² / 2)</pre>
 *
 * <p>c_i is 1 for a muscle. l_k is the price of leaving moment uncovered ({@link #DEAR}): so high
 * that everything which helps is pulled first, but not so high that muscle after muscle is set to
 * work against another for the last newton metre. An axis that something else holds as well is
 * given a price of its own ({@link #soften}).
 *
 * <p>The plan: the dual has one unknown an axis, the price v of moment, and no bounds to keep book
 * of: a_i = clip(inverse of c_i p a^(p-1), at M_i·v), r_k = what of v_k exceeds l_k. It is solved
 * by Newton's method, Hessian M D M' + E, D and E being the slopes of a and r. Where E is zero, (v
 * - c)/w is added to r to make the Hessian definite; w grows from 1 to its end in a few steps, each
 * starting from the last one's prices, then the centre c follows v (the proximal point method)
 * until that part of r is rounding.
 *
 * <p>The line search looks at the slope along the step, not at values, whose differences drown in
 * rounding near the end. For p = 3 the slope of a at zero is infinite; 0.001 a² is added. Axes are
 * taken from the outermost inward, as limbs meet only at the trunk: so the Cholesky factor keeps
 * its zeros, and only the part of each row right of its first entry is worked on.
 *
 * <p>Nothing is allocated after the constructor. Not for two threads at once. Background (from
 * memory): Nocedal and Wright, Numerical Optimization, 2006; Rockafellar 1976, SIAM J Control Optim
 * 14:877-898.
 */
public final class Sharing {

  /**
   * The price of leaving moment uncovered. A muscle alone that gives a fraction m of its axis' norm
   * is pulled fully from a price of 2/m (3/m for cubed stress) on: this one pulls all that give a
   * fifteenth or more. Our choice.
   */
  static final double DEAR = 30;

  /** The squared stress that is added to the cubed one. */
  static final double LITTLE = 1e-3;

  /** Growing weight of what makes the Hessian definite. */
  private static final double[] WEIGHTS = {1, 30, 1e3, 1e4};

  /** The weight grows to this while its part is taken out. */
  private static final double HEAVIEST = 1e7;

  /** How near the gradient must come to zero before the last weight: only a start is wanted. */
  private static final double ROUGH = 1e-2;

  /** At the last weight, as a share of what the muscles of an axis give together. */
  private static final double FINE = 1e-11;

  /** Less than this is rounding. */
  private static final double SETTLED = 1e-9;

  /** How much of the slope along a step may be left at its end. */
  private static final double LEFT = 0.01;

  private static final int ROUNDS = 12;
  private static final int STEPS = 100;

  private final int axes;
  private final int muscles;
  private final boolean cubed;
  private final double[] scales;
  private final double[] needed;
  private final double[] dear;
  private final double[] give;
  private final double[] costs;
  private final double[] prices;
  private final double[] centre;
  private final double[] seed;
  private final double[] gradient;
  private final double[] step;
  private final double[] firm;
  private final double[] pulls;
  private final double[] slopes;
  private final double[] worth;
  private final double[] worthStep;
  private final SparseColumns columns;
  private final EnvelopeCholesky hessian;
  private double weight;
  private boolean warm;
  private int steps;

  /**
   * Room for one problem at a time.
   *
   * @param axes how many moments are needed
   * @param muscles how many muscles share them
   * @param power 2 for squared, 3 for cubed stress
   */
  public Sharing(int axes, int muscles, int power) {
    if (power != 2 && power != 3) {
      throw new IllegalArgumentException("The power is 2 or 3, not " + power);
    }
    this.axes = axes;
    this.muscles = muscles;
    cubed = power == 3;
    scales = new double[axes];
    needed = new double[axes];
    dear = new double[axes];
    Arrays.fill(dear, DEAR);
    give = new double[axes];
    Arrays.fill(give, 1);
    costs = new double[muscles];
    Arrays.fill(costs, 1);
    prices = new double[axes];
    centre = new double[axes];
    seed = new double[axes];
    gradient = new double[axes];
    step = new double[axes];
    firm = new double[axes];
    pulls = new double[muscles];
    slopes = new double[muscles];
    worth = new double[muscles];
    worthStep = new double[muscles];
    columns = new SparseColumns(axes, muscles);
    hessian = new EnvelopeCholesky(axes);
  }

  /**
   * Lets something else than muscle hold an axis too: it costs w/2 times the square of what is left
   * to it, from the first newton metre on.
   *
   * @param axis which
   * @param price w, above zero
   */
  public void soften(int axis, double price) {
    dear[axes - 1 - axis] = 0;
    give[axes - 1 - axis] = 1 / price;
  }

  /**
   * Makes a pull cost less than a muscle's: that of tissue which is stretched anyway.
   *
   * @param muscle which column
   * @param cost c, above zero
   */
  public void cheapen(int muscle, double cost) {
    costs[muscle] = cost;
  }

  /** Forgets the last answer: the next search starts from nothing. */
  public void forget() {
    warm = false;
  }

  /**
   * Shares. Starts from the last answer's prices unless told to {@link #forget()}; the answer is
   * the same to rounding.
   *
   * @param moments what each muscle gives about each axis at full force, newton metres: axis after
   *     axis, muscle after muscle within an axis
   * @param moment needed about each axis, newton metres
   */
  public void solve(double[] moments, double[] moment) {
    columns.take(moments, scales);
    hessian.shape(columns);
    for (int q = 0; q < axes; q++) {
      needed[q] = moment[axes - 1 - q] / scales[q];
    }
    steps = 0;
    Arrays.fill(centre, 0);
    int first = 0;
    if (warm) {
      System.arraycopy(seed, 0, prices, 0, axes);
      first = WEIGHTS.length - 1;
    } else {
      Arrays.fill(prices, 0);
    }
    for (int i = first; i < WEIGHTS.length; i++) {
      weight = WEIGHTS[i];
      descend(i == WEIGHTS.length - 1 ? FINE : ROUGH);
    }
    System.arraycopy(prices, 0, seed, 0, axes);
    warm = true;
    for (int round = 0; round < ROUNDS && pulledBack() > SETTLED; round++) {
      System.arraycopy(prices, 0, centre, 0, axes);
      weight = Math.min(HEAVIEST, 10 * weight);
      descend(FINE);
    }
  }

  /** The largest part of what is uncovered that only makes the Hessian definite. */
  private double pulledBack() {
    double most = 0;
    for (int q = 0; q < axes; q++) {
      most = Math.max(most, Math.abs(prices[q] - centre[q]) / weight);
    }
    return most;
  }

  /** Newton's method at one weight, from the present prices. */
  private void descend(double tolerance) {
    columns.timesTransposed(prices, worth);
    double wanted = tolerance * (1 + largest(needed));
    for (int n = 0; n < STEPS; n++) {
      evaluate();
      if (largest(gradient) <= wanted) {
        return;
      }
      steps++;
      hessian.of(columns, slopes, firm);
      hessian.solve(gradient, step);
      columns.timesTransposed(step, worthStep);
      double length = along();
      for (int q = 0; q < axes; q++) {
        prices[q] += length * step[q];
      }
      columns.timesTransposed(prices, worth);
    }
    if (largest(gradient) > 1e-6 * (1 + largest(needed))) {
      throw new IllegalStateException("Sharing did not settle: " + largest(gradient));
    }
  }

  /** Pulls, what is uncovered, the slopes of both, and the way down: what is not yet balanced. */
  private void evaluate() {
    for (int i = 0; i < muscles; i++) {
      double pull = pull(i, worth[i]);
      pulls[i] = pull;
      double curve = cubed ? 6 * pull + 2 * LITTLE : 2;
      slopes[i] = pull > 0 && pull < 1 ? 1 / (costs[i] * curve) : 0;
    }
    for (int q = 0; q < axes; q++) {
      gradient[q] = needed[q] - left(q, prices[q]);
      firm[q] = 1 / weight + (Math.abs(prices[q]) > dear[q] ? give[q] : 0);
    }
    columns.subtractTimes(pulls, gradient);
  }

  private double pull(int muscle, double worthOf) {
    if (worthOf <= 0) {
      return 0;
    }
    double each = worthOf / costs[muscle];
    double free = cubed ? each / (LITTLE + Math.sqrt(LITTLE * LITTLE + 3 * each)) : each / 2;
    return Math.min(1, free);
  }

  private double left(int q, double price) {
    double beyond = Math.max(0, Math.abs(price) - dear[q]);
    return (price - centre[q]) / weight + Math.copySign(give[q] * beyond, price);
  }

  /**
   * How far to go along the step: to where little is left of the slope. Where muscles go from slack
   * to full within a sliver of the step, stopping short of the sliver or beyond it would have
   * Newton's method jump over it for ever; so secants and halvings go on until it is hit.
   */
  private double along() {
    double low = 0;
    double high = 1;
    double atLow = slope(0);
    double atHigh = slope(1);
    double enough = -LEFT * atLow;
    double length = 1;
    double at = atHigh;
    for (int n = 0; n < 60 && at > enough; n++) {
      boolean secant = n % 3 < 2 && atHigh > atLow;
      double share = secant ? atLow / (atLow - atHigh) : 0.5;
      length = low + share * (high - low);
      double there = slope(length);
      if (there > 0) {
        high = length;
        atHigh = there;
      } else {
        low = length;
        atLow = there;
      }
      at = Math.abs(there);
    }
    return length;
  }

  private double slope(double length) {
    double sum = 0;
    for (int q = 0; q < axes; q++) {
      sum += step[q] * (left(q, prices[q] + length * step[q]) - needed[q]);
    }
    for (int i = 0; i < muscles; i++) {
      sum += worthStep[i] * pull(i, worth[i] + length * worthStep[i]);
    }
    return sum;
  }

  private static double largest(double[] vector) {
    double most = 0;
    for (double part : vector) {
      most = Math.max(most, Math.abs(part));
    }
    return most;
  }

  /**
   * How hard a muscle pulls.
   *
   * @param muscle which
   * @return its share of its greatest force, 0 to 1
   */
  public double pullOf(int muscle) {
    return pulls[muscle];
  }

  /**
   * What the muscles do not give about an axis.
   *
   * @param axis which
   * @return newton metres, signed as the moment needed
   */
  public double uncovered(int axis) {
    int q = axes - 1 - axis;
    return left(q, prices[q]) * scales[q];
  }

  /**
   * What a newton metre about an axis is worth: the multiplier of its condition.
   *
   * @param axis which
   * @return per newton metre
   */
  double price(int axis) {
    int q = axes - 1 - axis;
    return prices[q] / scales[q];
  }

  /** How many muscles share. */
  int muscles() {
    return muscles;
  }

  /** How many times a system of equations was solved for the last answer. */
  int steps() {
    return steps;
  }
}
