package org.leverbook.pose;

/**
 * Weights that make derivatives out of function values at given places: those of the polynomial
 * through them.
 *
 * <p>Each place has Lagrange's basis polynomial, a product of linear factors (z - x_j) / (x_k -
 * x_j); value, slope and curvature of the product are built up factor by factor with the product
 * rule.
 */
final class Stencil {

  private Stencil() {}

  /**
   * The weights for value, slope and curvature.
   *
   * @param at where they are wanted
   * @param places where the function is known, all different
   * @param from first place used
   * @param to place after the last one used
   * @return three rows, a weight for each of {@code places}; zero for those not used
   */
  static double[][] weights(double at, double[] places, int from, int to) {
    double[][] weights = new double[3][places.length];
    for (int k = from; k < to; k++) {
      double value = 1;
      double slope = 0;
      double curvature = 0;
      for (int j = from; j < to; j++) {
        if (j != k) {
          double width = places[k] - places[j];
          double factor = (at - places[j]) / width;
          curvature = curvature * factor + 2 * slope / width;
          slope = slope * factor + value / width;
          value *= factor;
        }
      }
      weights[0][k] = value;
      weights[1][k] = slope;
      weights[2][k] = curvature;
    }
    return weights;
  }
}
