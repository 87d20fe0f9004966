package org.leverbook.statics;

/** Solves a small symmetric system that may lack rank, by a Cholesky factor with pivoting. */
final class SmallSymmetric {

  /** A pivot below this share of the largest counts as zero. */
  private static final double RANK = 1e-13;

  private SmallSymmetric() {}

  /**
   * Solves S y = r; where S lacks rank, the unknowns beyond it are zero.
   *
   * @param s its lower half, overwritten
   * @param r the right side
   * @param y the answer
   */
  static void solve(double[][] s, double[] r, double[] y) {
    int n = r.length;
    int[] order = new int[n];
    for (int i = 0; i < n; i++) {
      order[i] = i;
      for (int j = i + 1; j < n; j++) {
        s[i][j] = s[j][i];
      }
    }
    double[][] l = new double[n][n];
    double[] left = new double[n];
    for (int i = 0; i < n; i++) {
      left[i] = s[i][i];
    }
    int rank = 0;
    double largest = 0;
    for (; rank < n; rank++) {
      int pivot = rank;
      for (int i = rank + 1; i < n; i++) {
        pivot = left[order[i]] > left[order[pivot]] ? i : pivot;
      }
      int p = order[pivot];
      largest = Math.max(largest, left[p]);
      if (left[p] <= RANK * largest) {
        break;
      }
      order[pivot] = order[rank];
      order[rank] = p;
      l[p][rank] = Math.sqrt(left[p]);
      for (int i = rank + 1; i < n; i++) {
        int q = order[i];
        double sum = s[q][p];
        for (int c = 0; c < rank; c++) {
          sum -= l[q][c] * l[p][c];
        }
        l[q][rank] = sum / l[p][rank];
        left[q] -= l[q][rank] * l[q][rank];
      }
    }
    substitute(l, order, rank, r, y);
  }

  private static void substitute(double[][] l, int[] order, int rank, double[] r, double[] y) {
    double[] z = new double[rank];
    for (int k = 0; k < rank; k++) {
      double sum = r[order[k]];
      for (int c = 0; c < k; c++) {
        sum -= l[order[k]][c] * z[c];
      }
      z[k] = sum / l[order[k]][k];
    }
    java.util.Arrays.fill(y, 0);
    for (int k = rank - 1; k >= 0; k--) {
      double sum = z[k];
      for (int c = k + 1; c < rank; c++) {
        sum -= l[order[c]][k] * y[order[c]];
      }
      y[order[k]] = sum / l[order[k]][k];
    }
  }
}
