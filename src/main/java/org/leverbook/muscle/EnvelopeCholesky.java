package org.leverbook.muscle;

import java.util.Arrays;

/**
 * Solves (M D M' + E) x = r by a Cholesky factor that is stored and worked on only from each row's
 * first entry on.
 */
final class EnvelopeCholesky {

  private final int size;
  private final int[] first;
  private final double[] factor;

  EnvelopeCholesky(int size) {
    this.size = size;
    first = new int[size];
    factor = new double[size * size];
  }

  /** Finds where each row begins. */
  void shape(SparseColumns m) {
    for (int q = 0; q < size; q++) {
      first[q] = q;
    }
    for (int i = 0; i < m.columns; i++) {
      if (m.starts[i] < m.starts[i + 1]) {
        int outermost = m.rowOf[m.starts[i]];
        for (int k = m.starts[i] + 1; k < m.starts[i + 1]; k++) {
          int row = m.rowOf[k];
          first[row] = Math.min(first[row], outermost);
        }
      }
    }
  }

  /** Fills in and factors; E, diagonal and above zero, makes it positive definite. */
  void of(SparseColumns m, double[] d, double[] e) {
    for (int q = 0; q < size; q++) {
      Arrays.fill(factor, q * size + first[q], q * size + q, 0);
      factor[q * size + q] = e[q];
    }
    for (int i = 0; i < m.columns; i++) {
      double weight = d[i];
      if (weight != 0) {
        int end = m.starts[i + 1];
        for (int k = m.starts[i]; k < end; k++) {
          double value = weight * m.values[k];
          int row = m.rowOf[k] * size;
          for (int j = m.starts[i]; j <= k; j++) {
            factor[row + m.rowOf[j]] += value * m.values[j];
          }
        }
      }
    }
    factor();
  }

  private void factor() {
    for (int i = 0; i < size; i++) {
      int row = i * size;
      for (int j = first[i]; j <= i; j++) {
        int other = j * size;
        double sum = factor[row + j];
        for (int k = Math.max(first[i], first[j]); k < j; k++) {
          sum -= factor[row + k] * factor[other + k];
        }
        factor[row + j] = j < i ? sum / factor[other + j] : Math.sqrt(sum);
      }
    }
  }

  void solve(double[] right, double[] into) {
    for (int i = 0; i < size; i++) {
      int row = i * size;
      double sum = right[i];
      for (int k = first[i]; k < i; k++) {
        sum -= factor[row + k] * into[k];
      }
      into[i] = sum / factor[row + i];
    }
    for (int i = size - 1; i >= 0; i--) {
      int row = i * size;
      into[i] /= factor[row + i];
      for (int k = first[i]; k < i; k++) {
        into[k] -= factor[row + k] * into[i];
      }
    }
  }
}
