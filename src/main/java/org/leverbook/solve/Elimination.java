package org.leverbook.solve;

/**
 * Symmetric positive definite equations, solved by elimination without exchange, two rows at a
 * time; only the upper half is read. Nothing is allocated after the constructor.
 */
final class Elimination {

  private final double[][] rows;

  /**
   * For so many unknowns or fewer.
   *
   * @param most at most
   */
  Elimination(int most) {
    rows = new double[most][most + 1];
  }

  /** Row a: from place a on its coefficients, then its right side at the place after the last. */
  double[] row(int a) {
    return rows[a];
  }

  /**
   * Solves what was written into the rows; they are used up.
   *
   * @param count how many rows
   * @param into the unknowns
   * @return false where the matrix is not positive definite
   */
  boolean solve(int count, double[] into) {
    int a = 0;
    for (; a + 1 < count; a += 2) {
      double[] row = rows[a];
      double[] below = rows[a + 1];
      if (!(row[a] > 0)) {
        return false;
      }
      eliminate(row, below, a + 1, count + 1, row[a + 1] / row[a]);
      if (!(below[a + 1] > 0)) {
        return false;
      }
      double one = 1 / row[a];
      double other = 1 / below[a + 1];
      for (int i = a + 2; i < count; i++) {
        if (row[i] != 0 || below[i] != 0) {
          eliminate(row, below, rows[i], i, count + 1, row[i] * one, below[i] * other);
        }
      }
    }
    if (a < count && !(rows[a][a] > 0)) {
      return false;
    }
    back(count, into);
    return true;
  }

  private void back(int count, double[] into) {
    for (int a = count - 1; a >= 0; a--) {
      double[] row = rows[a];
      double sum = row[count];
      for (int k = a + 1; k < count; k++) {
        sum -= row[k] * into[k];
      }
      into[a] = sum / row[a];
    }
  }

  /** One row less a part of another; apart, and each row an array, so that it runs in parallel. */
  private static void eliminate(double[] from, double[] to, int first, int end, double part) {
    for (int k = first; k < end; k++) {
      to[k] -= part * from[k];
    }
  }

  /** One row less parts of two others: what is loaded and stored once serves both. */
  private static void eliminate(
      double[] one, double[] other, double[] to, int first, int end, double part, double second) {
    for (int k = first; k < end; k++) {
      to[k] -= part * one[k] + second * other[k];
    }
  }
}
