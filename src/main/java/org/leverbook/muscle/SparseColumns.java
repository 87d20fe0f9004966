package org.leverbook.muscle;

/**
 * A matrix of axes by muscles with few entries, column by column: most muscles cross one or two
 * joints. Its rows are the axes from the last to the first, each divided by its norm.
 */
final class SparseColumns {

  final int rows;
  final int columns;
  final int[] starts;
  final int[] rowOf;
  final double[] values;

  SparseColumns(int rows, int columns) {
    this.rows = rows;
    this.columns = columns;
    starts = new int[columns + 1];
    rowOf = new int[rows * columns];
    values = new double[rows * columns];
  }

  /**
   * Takes a full matrix.
   *
   * @param full row-major, axes in their own order
   * @param scales written: the norm of each row, from the last axis to the first; 1 where no muscle
   *     turns it
   */
  void take(double[] full, double[] scales) {
    for (int q = 0; q < rows; q++) {
      int from = (rows - 1 - q) * columns;
      double sum = 0;
      for (int i = 0; i < columns; i++) {
        sum += full[from + i] * full[from + i];
      }
      scales[q] = sum > 0 ? Math.sqrt(sum) : 1;
    }
    int count = 0;
    for (int i = 0; i < columns; i++) {
      starts[i] = count;
      for (int q = 0; q < rows; q++) {
        double value = full[(rows - 1 - q) * columns + i];
        if (value != 0) {
          rowOf[count] = q;
          values[count++] = value / scales[q];
        }
      }
    }
    starts[columns] = count;
  }

  /** into = M' v. */
  void timesTransposed(double[] v, double[] into) {
    for (int i = 0; i < columns; i++) {
      double sum = 0;
      for (int k = starts[i]; k < starts[i + 1]; k++) {
        sum += values[k] * v[rowOf[k]];
      }
      into[i] = sum;
    }
  }

  /** from -= M a. */
  void subtractTimes(double[] a, double[] from) {
    for (int i = 0; i < columns; i++) {
      double factor = a[i];
      if (factor != 0) {
        for (int k = starts[i]; k < starts[i + 1]; k++) {
          from[rowOf[k]] -= factor * values[k];
        }
      }
    }
  }
}
