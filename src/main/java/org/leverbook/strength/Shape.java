package org.leverbook.strength;

import java.util.Comparator;
import java.util.List;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.leverbook.data.DataRow;

/**
 * Published points joined by straight lines; beyond the ends the end values are kept, since nothing
 * was measured there.
 */
final class Shape {

  private final PolynomialSplineFunction lines;
  private final double low;
  private final double high;

  private Shape(double[] x, double[] y) {
    lines = new LinearInterpolator().interpolate(x, y);
    low = x[0];
    high = x[x.length - 1];
  }

  /**
   * Through rows of a table.
   *
   * @param rows in any order, no two at the same place
   * @param across the column of places
   * @param up the column of values
   */
  static Shape of(List<DataRow> rows, String across, String up) {
    List<DataRow> sorted =
        rows.stream().sorted(Comparator.comparingDouble(r -> r.number(across))).toList();
    return new Shape(
        sorted.stream().mapToDouble(r -> r.number(across)).toArray(),
        sorted.stream().mapToDouble(r -> r.number(up)).toArray());
  }

  double at(double place) {
    return lines.value(Math.max(low, Math.min(high, place)));
  }

  double low() {
    return low;
  }

  double high() {
    return high;
  }
}
