package org.leverbook.statics;

import java.util.Arrays;

/**
 * Non-negative least squares with few rows: x ≥ 0 that makes W x - b as short as can be. Whether
 * pushes alone can balance a wrench, and by how much they cannot.
 *
 * <p>Columns enter one by one, the one that shortens the remainder fastest first; a column whose
 * share would turn negative leaves again (Lawson and Hanson, Solving Least Squares Problems, 1974,
 * chapter 23, from memory). At most as many columns carry at once as there are rows, so each step
 * is a small orthogonal factorisation.
 */
final class NonNegative {

  /** A remainder longer than this, in body weights, is a lack and not rounding. */
  static final double LACK = 1e-9;

  /** A column whose part across the others is below this share of its length brings nothing new. */
  private static final double DEPENDENT = 1e-10;

  private final double[][] columns;
  private final double[] target;
  private final double[] x;
  private final int rows;
  private final double[] remainder;
  private final int[] passive;
  private int count;

  private NonNegative(double[][] columns, double[] target) {
    this.columns = columns;
    this.target = target;
    x = new double[columns.length];
    rows = target.length;
    remainder = new double[rows];
    passive = new int[rows];
  }

  /**
   * What was found.
   *
   * @param x one number for each column, zero or more
   * @param remainder b - W x
   */
  record Answer(double[] x, double[] remainder) {

    /** Its length. */
    double lack() {
      double sum = 0;
      for (double r : remainder) {
        sum += r * r;
      }
      return Math.sqrt(sum);
    }

    boolean held() {
      return lack() < LACK;
    }
  }

  /**
   * Solves.
   *
   * @param columns each of as many numbers as the target
   * @param target few numbers: six, and one for each push that is shared out
   */
  static Answer of(double[][] columns, double[] target) {
    NonNegative solver = new NonNegative(columns, target);
    solver.solve();
    return new Answer(solver.x, solver.remainder);
  }

  private void solve() {
    boolean[] barred = new boolean[columns.length];
    for (int step = 0; step < 10 * columns.length + 60; step++) {
      measure();
      int entering = steepest(barred);
      if (entering < 0) {
        return;
      }
      passive[count++] = entering;
      double[] trial = least();
      if (trial == null || trial[count - 1] <= 0) {
        // It brings nothing new, or only by rounding: not before something else has changed.
        count--;
        barred[entering] = true;
        continue;
      }
      Arrays.fill(barred, false);
      shrink(trial);
    }
    measure();
  }

  /** Takes the trial, dropping columns on the way that would turn negative. */
  private void shrink(double[] first) {
    double[] trial = first;
    while (true) {
      double share = 1;
      int leaving = -1;
      for (int k = 0; k < count; k++) {
        if (trial[k] <= 0) {
          double here = x[passive[k]] / (x[passive[k]] - trial[k]);
          if (leaving < 0 || here < share) {
            share = here;
            leaving = k;
          }
        }
      }
      for (int k = 0; k < count; k++) {
        x[passive[k]] += share * (trial[k] - x[passive[k]]);
      }
      if (leaving < 0) {
        return;
      }
      x[passive[leaving]] = 0;
      System.arraycopy(passive, leaving + 1, passive, leaving, count - leaving - 1);
      count--;
      trial = least();
      if (trial == null) {
        return;
      }
    }
  }

  private void measure() {
    System.arraycopy(target, 0, remainder, 0, rows);
    for (int k = 0; k < count; k++) {
      double[] column = columns[passive[k]];
      for (int r = 0; r < rows; r++) {
        remainder[r] -= column[r] * x[passive[k]];
      }
    }
  }

  private int steepest(boolean[] barred) {
    int best = -1;
    if (count == rows) {
      return best;
    }
    double most = 1e-14;
    for (int j = 0; j < columns.length; j++) {
      if (x[j] > 0 || barred[j]) {
        continue;
      }
      double slope = 0;
      for (int r = 0; r < rows; r++) {
        slope += columns[j][r] * remainder[r];
      }
      if (slope > most) {
        most = slope;
        best = j;
      }
    }
    return best;
  }

  /**
   * The unrestricted least squares on the passive columns; null where they depend on each other.
   */
  private double[] least() {
    double[][] q = new double[count][];
    double[][] upper = new double[count][count];
    double[] projected = new double[count];
    for (int k = 0; k < count; k++) {
      double[] v = columns[passive[k]].clone();
      double before = length(v);
      // Twice is enough: the second pass removes what rounding left of the first.
      for (int pass = 0; pass < 2; pass++) {
        for (int i = 0; i < k; i++) {
          double dot = dot(q[i], v);
          upper[i][k] += dot;
          for (int r = 0; r < rows; r++) {
            v[r] -= dot * q[i][r];
          }
        }
      }
      double after = length(v);
      if (after < DEPENDENT * before) {
        return null;
      }
      upper[k][k] = after;
      for (int r = 0; r < rows; r++) {
        v[r] /= after;
      }
      q[k] = v;
      projected[k] = dot(v, target);
    }
    double[] y = new double[count];
    for (int k = count - 1; k >= 0; k--) {
      double sum = projected[k];
      for (int i = k + 1; i < count; i++) {
        sum -= upper[k][i] * y[i];
      }
      y[k] = sum / upper[k][k];
    }
    return y;
  }

  private double dot(double[] a, double[] b) {
    double sum = 0;
    for (int r = 0; r < rows; r++) {
      sum += a[r] * b[r];
    }
    return sum;
  }

  private double length(double[] a) {
    return Math.sqrt(dot(a, a));
  }
}
