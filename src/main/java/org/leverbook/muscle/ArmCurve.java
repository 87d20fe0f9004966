package org.leverbook.muscle;

import java.util.Arrays;
import java.util.List;
import org.leverbook.quantity.Refused;

/**
 * An arm as a smooth function of one angle, through every value of a table.
 *
 * <p>Cubic pieces with continuous slope that never overshoot (Fritsch and Carlson 1980, SIAM J
 * Numer Anal 17:238-246): the slope at an inner value is zero where the table turns, else the
 * weighted harmonic mean of the two neighbouring steps (Fritsch and Butland 1984, SIAM J Sci Stat
 * Comput 5:300-304; both from memory). Between two values the curve stays between them.
 *
 * <p>Outside the table the end values hold; the slope at both ends is zero, so the course is smooth
 * there too.
 */
public final class ArmCurve {

  private final double[] at;
  private final double[] value;
  private final double[] slope;

  private ArmCurve(double[] at, double[] value, double[] slope) {
    this.at = at;
    this.value = value;
    this.slope = slope;
  }

  /**
   * A curve through values.
   *
   * @param at angles, radians, rising
   * @param value one for each angle, metres (or a bare factor)
   * @return the curve
   * @throws Refused if there is no value, or the angles do not rise
   */
  public static ArmCurve through(double[] at, double[] value) {
    if (at.length == 0 || at.length != value.length) {
      throw new Refused(
          "A curve needs one value for each angle, but there are "
              + at.length
              + " angles and "
              + value.length
              + " values.");
    }
    for (int i = 1; i < at.length; i++) {
      if (!(at[i] > at[i - 1])) {
        throw new Refused(
            "The angles of a curve must rise, but "
                + Math.toDegrees(at[i])
                + "° follows "
                + Math.toDegrees(at[i - 1])
                + "°.");
      }
    }
    return new ArmCurve(at.clone(), value.clone(), slopes(at, value));
  }

  private static double[] slopes(double[] at, double[] value) {
    double[] slope = new double[at.length];
    for (int i = 1; i < at.length - 1; i++) {
      double before = at[i] - at[i - 1];
      double after = at[i + 1] - at[i];
      double left = (value[i] - value[i - 1]) / before;
      double right = (value[i + 1] - value[i]) / after;
      if (left * right > 0) {
        double first = 2 * after + before;
        double second = after + 2 * before;
        slope[i] = (first + second) / (first / left + second / right);
      }
    }
    return slope;
  }

  /**
   * The value at an angle.
   *
   * @param angle radians
   * @return metres (or a bare factor)
   */
  public double at(double angle) {
    int last = at.length - 1;
    if (last == 0 || angle <= at[0]) {
      return value[0];
    }
    if (angle >= at[last]) {
      return value[last];
    }
    int i = 0;
    while (angle > at[i + 1]) {
      i++;
    }
    double wide = at[i + 1] - at[i];
    double t = (angle - at[i]) / wide;
    double u = 1 - t;
    return u * u * ((1 + 2 * t) * value[i] + t * wide * slope[i])
        + t * t * ((1 + 2 * u) * value[i + 1] - u * wide * slope[i + 1]);
  }

  /**
   * Where the table begins.
   *
   * @return radians
   */
  public double from() {
    return at[0];
  }

  /**
   * Where the table ends.
   *
   * @return radians; the same as {@link #from} where there is one value only
   */
  public double to() {
    return at[at.length - 1];
  }

  /**
   * The angles of the table.
   *
   * @return radians, rising
   */
  public List<Double> angles() {
    return Arrays.stream(at).boxed().toList();
  }

  /**
   * Whether the table has one value only, so that the arm is known near that angle and held
   * elsewhere.
   *
   * @return true if so
   */
  public boolean single() {
    return at.length == 1;
  }

  /**
   * The same course, every value times a factor.
   *
   * @param factor what to multiply by
   * @return the changed curve
   */
  public ArmCurve times(double factor) {
    double[] values = value.clone();
    double[] slopes = slope.clone();
    for (int i = 0; i < values.length; i++) {
      values[i] *= factor;
      slopes[i] *= factor;
    }
    return new ArmCurve(at, values, slopes);
  }
}
