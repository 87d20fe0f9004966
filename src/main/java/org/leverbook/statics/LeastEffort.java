package org.leverbook.statics;

import java.util.Arrays;

/**
 * Quadratic programme of the supports: minimise ½ xᵀH x - gᵀx with W x = b (six rows, and one for
 * each push that is shared out) and x ≥ 0, from a point that fulfils both, by a primal active-set
 * method (Nocedal and Wright, Numerical Optimization, 2006, chapter 16, from memory).
 *
 * <p>Variables at zero are held there; on the free ones F a step p solves H_FF p = -grad - W_Fᵀλ,
 * W_F p = b - W x by the Cholesky factor L of H_FF (a row is appended when a variable is freed, the
 * rows below are done again when one is held), V = L⁻¹W_Fᵀ and the small matrix VᵀV, which is
 * factored with pivoting because fewer independent columns than rows may be free. A step ends at
 * the first variable that reaches zero; after a full step the held variable with the most negative
 * multiplier is freed.
 *
 * <p>What keeps it from stalling: a variable at zero whose step is within rounding of zero does not
 * stop the others; each step also removes what rounding has left of W x = b; a variable that was
 * just freed and at once wants to go negative is set aside until there is progress; after twelve
 * steps without any the lowest index goes first.
 */
final class LeastEffort {

  private static final double ROUNDING = 1e-12;
  private static final double PULL = 1e-10;
  private static final double CLEARLY = 1e-8;
  private static final int PATIENCE = 12;

  private final double[][] h;
  private final double[] g;
  private final double[][] w;
  private final double[] b;
  private final double[] x;
  private final int n;

  private final int[] free;
  private int count;
  private final double[][] factor;
  private final double[][] v;
  private final int rows;
  private final double[] lambda;
  private final double[] step;
  private final double[] gradient;
  private final boolean[] isFree;
  private final boolean[] setAside;

  private LeastEffort(double[][] h, double[] g, double[][] w, double[] b, double[] start) {
    this.h = h;
    this.g = g;
    this.w = w;
    this.b = b;
    n = g.length;
    rows = b.length;
    lambda = new double[rows];
    x = start.clone();
    free = new int[n];
    factor = new double[n][n];
    v = new double[n][rows];
    step = new double[n];
    gradient = new double[n];
    isFree = new boolean[n];
    setAside = new boolean[n];
  }

  /**
   * Solves.
   *
   * @param h symmetric and positive definite
   * @param g the linear term
   * @param w the columns
   * @param b as many numbers as a column has
   * @param start x ≥ 0 with W x = b within rounding
   * @return the minimum
   */
  static double[] of(double[][] h, double[] g, double[][] w, double[] b, double[] start) {
    LeastEffort solver = new LeastEffort(h, g, w, b, start);
    solver.solve();
    solver.balance();
    return solver.x;
  }

  private void solve() {
    for (int j = 0; j < n; j++) {
      if (x[j] > 0) {
        release(j);
      }
    }
    int idle = 0;
    int last = -1;
    for (int round = 0; round < 50 * n + 100; round++) {
      direction();
      if (last >= 0 && step[count - 1] < -ROUNDING && x[last] == 0) {
        hold(count - 1);
        setAside[last] = true;
        last = -1;
        idle++;
        continue;
      }
      int blocking = blocking();
      double length = blocking < 0 ? 1 : x[free[blocking]] / -step[blocking];
      double moved = advance(length);
      if (moved > 1e-11) {
        Arrays.fill(setAside, false);
        idle = 0;
      } else {
        idle++;
      }
      last = -1;
      if (blocking >= 0) {
        hold(blocking);
        continue;
      }
      last = entering(idle > PATIENCE);
      if (last < 0) {
        return;
      }
      release(last);
    }
  }

  /** Takes the last rounding out of W x = b, by the smallest change of what clearly pushes. */
  private void balance() {
    double[] lacking = b.clone();
    double[][] square = new double[rows][rows];
    for (int j = 0; j < n; j++) {
      for (int r = 0; r < rows; r++) {
        lacking[r] -= w[j][r] * x[j];
        for (int c = 0; c <= r && x[j] > CLEARLY; c++) {
          square[r][c] += w[j][r] * w[j][c];
        }
      }
    }
    double[] share = new double[rows];
    SmallSymmetric.solve(square, lacking, share);
    for (int j = 0; j < n; j++) {
      if (x[j] > CLEARLY) {
        x[j] += dot(w[j], share);
      }
    }
  }

  private double advance(double length) {
    double moved = 0;
    for (int k = 0; k < count; k++) {
      double change = length * step[k];
      moved = Math.max(moved, Math.abs(change));
      x[free[k]] = Math.max(0, x[free[k]] + change);
    }
    return moved;
  }

  /** The free variable that reaches zero first, or -1 where the full step fits. */
  private int blocking() {
    int blocking = -1;
    double shortest = 1;
    for (int k = 0; k < count; k++) {
      if (step[k] < -ROUNDING) {
        double length = x[free[k]] / -step[k];
        if (length < shortest) {
          shortest = length;
          blocking = k;
        }
      }
    }
    return blocking;
  }

  /** The held variable to free, or -1 at the minimum. */
  private int entering(boolean lowestFirst) {
    gradient();
    int best = -1;
    double most = -PULL;
    for (int j = 0; j < n; j++) {
      if (isFree[j] || setAside[j]) {
        continue;
      }
      double multiplier = gradient[j] + dot(w[j], lambda);
      if (multiplier < most) {
        best = j;
        most = multiplier;
        if (lowestFirst) {
          return best;
        }
      }
    }
    return best;
  }

  private void gradient() {
    for (int j = 0; j < n; j++) {
      gradient[j] = -g[j];
    }
    for (int k = 0; k < count; k++) {
      double[] row = h[free[k]];
      double here = x[free[k]];
      for (int j = 0; j < n; j++) {
        gradient[j] += row[j] * here;
      }
    }
  }

  private void release(int j) {
    isFree[j] = true;
    free[count] = j;
    append(count);
    count++;
  }

  private void hold(int k) {
    x[free[k]] = 0;
    isFree[free[k]] = false;
    System.arraycopy(free, k + 1, free, k, count - k - 1);
    count--;
    for (int i = k; i < count; i++) {
      append(i);
    }
  }

  /** Row k of the factor and of V. */
  private void append(int k) {
    double[] row = factor[k];
    double[] own = h[free[k]];
    for (int i = 0; i < k; i++) {
      double sum = own[free[i]];
      double[] above = factor[i];
      for (int c = 0; c < i; c++) {
        sum -= row[c] * above[c];
      }
      row[i] = sum / above[i];
    }
    double square = own[free[k]];
    for (int c = 0; c < k; c++) {
      square -= row[c] * row[c];
    }
    row[k] = Math.sqrt(Math.max(square, 1e-14));
    for (int r = 0; r < rows; r++) {
      double sum = w[free[k]][r];
      for (int c = 0; c < k; c++) {
        sum -= row[c] * v[c][r];
      }
      v[k][r] = sum / row[k];
    }
  }

  /** The step of the free variables to the minimum with the others held, and λ. */
  private void direction() {
    gradient();
    double[] u = new double[count];
    for (int k = 0; k < count; k++) {
      double sum = -gradient[free[k]];
      for (int c = 0; c < k; c++) {
        sum -= factor[k][c] * u[c];
      }
      u[k] = sum / factor[k][k];
    }
    double[] right = new double[rows];
    double[][] schur = new double[rows][rows];
    for (int r = 0; r < rows; r++) {
      right[r] = -b[r];
    }
    for (int k = 0; k < count; k++) {
      double[] vk = v[k];
      double[] column = w[free[k]];
      double here = x[free[k]];
      for (int r = 0; r < rows; r++) {
        right[r] += vk[r] * u[k] + column[r] * here;
        for (int c = 0; c <= r; c++) {
          schur[r][c] += vk[r] * vk[c];
        }
      }
    }
    SmallSymmetric.solve(schur, right, lambda);
    for (int k = count - 1; k >= 0; k--) {
      double sum = u[k] - dot(v[k], lambda);
      for (int c = k + 1; c < count; c++) {
        sum -= factor[c][k] * step[c];
      }
      step[k] = sum / factor[k][k];
    }
  }

  private double dot(double[] a, double[] c) {
    double sum = 0;
    for (int r = 0; r < rows; r++) {
      sum += a[r] * c[r];
    }
    return sum;
  }
}
