package org.leverbook.muscle;

import java.util.Arrays;

/**
 * Shares the moments that joints need among muscles that only pull: of all ways that leave least
 * uncovered, the one with the least summed stress.
 *
 * <p>Symbols: a_i pull of muscle i as a share of its greatest force, 0 to 1; M_ki the moment that
 * it gives about axis k at full force (N·m); b_k the moment needed; r_k what stays uncovered. Each
 * axis is weighed by the size of what its muscles give together, the norm of its row of M. Wanted:
 * least |r| first, then least sum of a^p, with M a + r = b; p is 2 or 3.
 *
 * <p>The plan:
 *
 * <ol>
 *   <li>Allow r at a price, sum a^p + (w/2)|r|². Its dual has one unknown an axis, the price v of
 *       moment: a_i = clip(inverse of p a^(p-1), at M_i·v) and r = v/w, so that bounds need no
 *       bookkeeping. Newton's method on it, Hessian M D M' + I/w, D being the slope of a_i; w grows
 *       from 1 to its end in few steps, each starting from the last one's prices.
 *   <li>Then take the price out: move the centre c in r = (v - c)/w to the last v and go on (the
 *       proximal point method). Where the muscles suffice, r falls to rounding within a few rounds;
 *       where they do not, it settles at the smallest that is possible.
 * </ol>
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

  /** Growing weight of what stays uncovered. */
  private static final double[] WEIGHTS = {1, 30, 1e3, 1e4};

  /** How near the gradient must come to zero before the last weight: only a start is wanted. */
  private static final double ROUGH = 1e-2;

  /** At the last weight, as a share of what the muscles of an axis give together. */
  private static final double FINE = 1e-11;

  /** What changes less than this from round to round has settled. */
  private static final double SETTLED = 1e-9;

  /** The squared stress that is added to the cubed one. */
  private static final double LITTLE = 1e-3;

  /** The weight grows to this while the price is taken out. */
  private static final double HEAVIEST = 1e7;

  /** How much of the slope along a step may be left at its end. */
  private static final double LEFT = 0.01;

  private static final int ROUNDS = 12;
  private static final int STEPS = 100;

  private final int axes;
  private final int muscles;
  private final boolean cubed;
  private final double[] scales;
  private final double[] needed;
  private final double[] prices;
  private final double[] centre;
  private final double[] seed;
  private final double[] gradient;
  private final double[] step;
  private final double[] uncovered;
  private final double[] last;
  private final double[] pulls;
  private final double[] slopes;
  private final double[] worth;
  private final double[] worthStep;
  private final SparseColumns columns;
  private final EnvelopeCholesky hessian;
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
    prices = new double[axes];
    centre = new double[axes];
    seed = new double[axes];
    gradient = new double[axes];
    step = new double[axes];
    uncovered = new double[axes];
    last = new double[axes];
    pulls = new double[muscles];
    slopes = new double[muscles];
    worth = new double[muscles];
    worthStep = new double[muscles];
    columns = new SparseColumns(axes, muscles);
    hessian = new EnvelopeCholesky(axes);
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
      descend(WEIGHTS[i], i == WEIGHTS.length - 1 ? FINE : ROUGH);
    }
    System.arraycopy(prices, 0, seed, 0, axes);
    warm = true;
    settle();
  }

  /**
   * Moves the centre until what stays uncovered changes no more. While it falls fast the weight
   * grows, which makes it fall faster; where it does not fall it is real, and a greater weight
   * would only make Newton's steps wild.
   */
  private void settle() {
    double weight = WEIGHTS[WEIGHTS.length - 1];
    double before = Double.POSITIVE_INFINITY;
    double now = largest(uncovered);
    for (int round = 0; round < ROUNDS && now > SETTLED; round++) {
      System.arraycopy(prices, 0, centre, 0, axes);
      System.arraycopy(uncovered, 0, last, 0, axes);
      if (now < 0.3 * before) {
        weight = Math.min(HEAVIEST, 10 * weight);
      }
      descend(weight, FINE);
      double change = 0;
      for (int q = 0; q < axes; q++) {
        change = Math.max(change, Math.abs(uncovered[q] - last[q]));
      }
      if (change < SETTLED) {
        return;
      }
      before = now;
      now = largest(uncovered);
    }
  }

  /** Newton's method at one weight, from the present prices. */
  private void descend(double weight, double tolerance) {
    columns.timesTransposed(prices, worth);
    double wanted = tolerance * (1 + largest(needed));
    for (int n = 0; n < STEPS; n++) {
      evaluate(weight);
      if (largest(gradient) <= wanted) {
        return;
      }
      steps++;
      hessian.of(columns, slopes, 1 / weight);
      hessian.solve(gradient, step);
      columns.timesTransposed(step, worthStep);
      double length = along(weight);
      for (int q = 0; q < axes; q++) {
        prices[q] += length * step[q];
      }
      columns.timesTransposed(prices, worth);
    }
    if (largest(gradient) > 1e-6 * (1 + largest(needed))) {
      throw new IllegalStateException("Sharing did not settle: " + largest(gradient));
    }
  }

  /** Pulls and their slopes, what is uncovered, and the way down: what is not yet balanced. */
  private void evaluate(double weight) {
    for (int i = 0; i < muscles; i++) {
      double pull = pull(worth[i]);
      pulls[i] = pull;
      slopes[i] = pull > 0 && pull < 1 ? (cubed ? 1 / (6 * pull + 2 * LITTLE) : 0.5) : 0;
    }
    for (int q = 0; q < axes; q++) {
      uncovered[q] = (prices[q] - centre[q]) / weight;
      gradient[q] = needed[q] - uncovered[q];
    }
    columns.subtractTimes(pulls, gradient);
  }

  private double pull(double worthOf) {
    if (worthOf <= 0) {
      return 0;
    }
    double free =
        cubed ? worthOf / (LITTLE + Math.sqrt(LITTLE * LITTLE + 3 * worthOf)) : worthOf / 2;
    return Math.min(1, free);
  }

  /**
   * How far to go along the step: to where little is left of the slope. Where muscles go from slack
   * to full within a sliver of the step, stopping short of the sliver or beyond it would have
   * Newton's method jump over it for ever; so secants and halvings go on until it is hit.
   */
  private double along(double weight) {
    double constant = 0;
    double linear = 0;
    for (int q = 0; q < axes; q++) {
      constant += step[q] * ((prices[q] - centre[q]) / weight - needed[q]);
      linear += step[q] * step[q] / weight;
    }
    double low = 0;
    double high = 1;
    double atLow = slope(constant, linear, 0);
    double atHigh = slope(constant, linear, 1);
    double enough = -LEFT * atLow;
    double length = 1;
    double at = atHigh;
    for (int n = 0; n < 60 && at > enough; n++) {
      boolean secant = n % 3 < 2 && atHigh > atLow;
      double share = secant ? atLow / (atLow - atHigh) : 0.5;
      double next = low + share * (high - low);
      double there = slope(constant, linear, next);
      if (there > 0) {
        high = next;
        atHigh = there;
      } else {
        low = next;
        atLow = there;
      }
      length = next;
      at = Math.abs(there);
    }
    return length;
  }

  private double slope(double constant, double linear, double length) {
    double sum = constant + length * linear;
    for (int i = 0; i < muscles; i++) {
      sum += worthStep[i] * pull(worth[i] + length * worthStep[i]);
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
   * What the muscles cannot give about an axis.
   *
   * @param axis which
   * @return newton metres, signed as the moment needed
   */
  public double uncovered(int axis) {
    int q = axes - 1 - axis;
    return uncovered[q] * scales[q];
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

  /** How many times a system of equations was solved for the last answer. */
  int steps() {
    return steps;
  }
}
