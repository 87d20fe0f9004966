package org.leverbook.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * How much of the scatter of an answer comes from each input: a straight-line fit y = a + Σ b_i x_i
 * over the cases, whose explained variance is split as b_i cov(x_i, y) / var(y). The parts add up
 * to the fit's R² also where inputs go together, as lengths do (Pratt 1987, from memory); for
 * inputs that do not, each is the usual share of variance.
 *
 * @param shares one an input, in order; slightly below zero where chance has it
 * @param explained their sum, R²
 */
record VarianceShares(double[] shares, double explained) {

  /** So many cases an input are needed. */
  private static final int CASES_PER_INPUT = 3;

  /** Empty where there are too few cases, or nothing scatters. */
  static Optional<VarianceShares> of(List<double[]> inputs, double[] answers) {
    int cases = answers.length;
    int count = cases == 0 ? 0 : inputs.get(0).length;
    double mean = Arrays.stream(answers).average().orElse(0);
    double variance = Arrays.stream(answers).map(v -> (v - mean) * (v - mean)).sum();
    double largest = Arrays.stream(answers).map(Math::abs).max().orElse(0);
    if (count == 0 || cases < CASES_PER_INPUT * count || variance <= 1e-18 * largest * largest) {
      return Optional.empty();
    }
    RealMatrix x = new Array2DRowRealMatrix(cases, count);
    for (int k = 0; k < count; k++) {
      int input = k;
      double middle = inputs.stream().mapToDouble(row -> row[input]).average().orElseThrow();
      for (int i = 0; i < cases; i++) {
        x.setEntry(i, k, inputs.get(i)[k] - middle);
      }
    }
    double[] centred = Arrays.stream(answers).map(v -> v - mean).toArray();
    RealVector with = x.preMultiply(new ArrayRealVector(centred));
    // Scores have variance one, so the normal equations are as well conditioned as the problem.
    RealVector slopes =
        new CholeskyDecomposition(x.transposeMultiply(x), 1e-9, 1e-12).getSolver().solve(with);
    double[] shares = slopes.ebeMultiply(with).mapDivide(variance).toArray();
    return Optional.of(new VarianceShares(shares, Arrays.stream(shares).sum()));
  }
}
