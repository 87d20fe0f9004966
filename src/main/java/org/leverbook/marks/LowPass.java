package org.leverbook.marks;

import java.util.Locale;
import org.leverbook.quantity.Refused;

/**
 * A low-pass filter without lag: Butterworth of second order, run forward and then backward, which
 * makes it fourth order and undoes the delay.
 *
 * <p>With f the cut-off frequency and s frames a second, w = tan(π f / s) / C, and C = (2^(1/2) -
 * 1)^(1/4) = 0.802 corrects for the two passes, so that the whole passes 1/√2 of a movement at f
 * (Winter 2009, Biomechanics and Motor Control of Human Movement, 4th ed., p. 69, as cited by
 * Selling 2018). The coefficients are those of the bilinear transform of 1 / (p² + √2 p + 1).
 *
 * <p>Ends are padded by turning the signal about its end point over two periods of the cut-off, so
 * that values and slopes go on; a steady signal comes out unchanged.
 */
final class LowPass {

  private static final double CORRECTION = Math.pow(Math.sqrt(2) - 1, 0.25);
  private static final double PERIODS = 2;

  private final double hertz;
  private final double framesPerSecond;
  private final double a0;
  private final double b1;
  private final double b2;

  /**
   * A filter for one frame rate.
   *
   * @param hertz cut-off
   * @param framesPerSecond how often places are given
   * @throws Refused if the cut-off is not well below half the frame rate
   */
  LowPass(double hertz, double framesPerSecond) {
    if (hertz > 0.4 * framesPerSecond) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A cut-off of %.1f Hz asks for more than %.0f frames a second, but there are %.1f."
                  + " Lower it to %.1f Hz or less, as in .smoothed(%.0f).",
              hertz,
              2.5 * hertz,
              framesPerSecond,
              0.4 * framesPerSecond,
              Math.max(1, Math.floor(0.4 * framesPerSecond))));
    }
    this.hertz = hertz;
    this.framesPerSecond = framesPerSecond;
    double w = Math.tan(Math.PI * hertz / framesPerSecond) / CORRECTION;
    double whole = 1 + Math.sqrt(2) * w + w * w;
    a0 = w * w / whole;
    b1 = 2 * (1 - w * w) / whole;
    b2 = -(1 - Math.sqrt(2) * w + w * w) / whole;
  }

  /**
   * Smooths values at equal times.
   *
   * @param values two or more
   * @return as many
   */
  double[] smooth(double[] values) {
    int n = values.length;
    if (n < 2) {
      return values.clone();
    }
    int pad = Math.min(n - 1, (int) Math.ceil(PERIODS * framesPerSecond / hertz));
    double[] padded = new double[n + 2 * pad];
    for (int i = 0; i < pad; i++) {
      padded[i] = 2 * values[0] - values[pad - i];
      padded[n + pad + i] = 2 * values[n - 1] - values[n - 2 - i];
    }
    System.arraycopy(values, 0, padded, pad, n);
    double[] once = pass(padded);
    reverse(once);
    double[] twice = pass(once);
    reverse(twice);
    double[] smooth = new double[n];
    System.arraycopy(twice, pad, smooth, 0, n);
    return smooth;
  }

  /** One pass, begun as if the first value had stood for ever. */
  private double[] pass(double[] x) {
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      double x1 = i > 0 ? x[i - 1] : x[0];
      double x2 = i > 1 ? x[i - 2] : x[0];
      double y1 = i > 0 ? y[i - 1] : x[0];
      double y2 = i > 1 ? y[i - 2] : x[0];
      y[i] = a0 * (x[i] + 2 * x1 + x2) + b1 * y1 + b2 * y2;
    }
    return y;
  }

  private static void reverse(double[] values) {
    for (int i = 0, k = values.length - 1; i < k; i++, k--) {
      double keep = values[i];
      values[i] = values[k];
      values[k] = keep;
    }
  }
}
