package org.leverbook.pose;

/**
 * Sine and cosine of many angles at once, straight-line code without branches per angle.
 *
 * <p>The angle is brought to r = x - n pi/2 with |r| at most pi/4; pi/2 is subtracted in two parts,
 * the first with so few digits that n times it is exact. There the Taylor series to x^17 and x^18
 * leave less than 1e-17 (x^19/19! = 8e-20), so the result is good to rounding: 2e-16. Two thirds of
 * the time of a whole pose went into the library's functions before.
 */
final class Sines {

  /** Beyond this the two-part subtraction loses digits; no joint turns that far. */
  private static final double FAR = 1e5;

  private static final double TWO_OVER_PI = 2 / Math.PI;

  /** The first 33 binary digits of pi/2, and what is left of it. */
  private static final double HALF_PI_HEAD =
      Double.longBitsToDouble(Double.doubleToLongBits(Math.PI / 2) & ~0xFFFFFL);

  /** pi/2 as a double lacks 6.123233995736766e-17 of pi/2. */
  private static final double HALF_PI_TAIL = (Math.PI / 2 - HALF_PI_HEAD) + 6.123233995736766e-17;

  /** Added and taken away again, it rounds to the nearest whole number. */
  private static final double ROUNDER = 0x1.8p52;

  private static final double S3 = -1.0 / 6;
  private static final double S5 = 1.0 / 120;
  private static final double S7 = -1.0 / 5040;
  private static final double S9 = 1.0 / 362880;
  private static final double S11 = -1.0 / 39916800;
  private static final double S13 = 1.0 / 6227020800.0;
  private static final double S15 = -1.0 / 1307674368000.0;
  private static final double S17 = 1.0 / 355687428096000.0;

  private static final double C2 = -1.0 / 2;
  private static final double C4 = 1.0 / 24;
  private static final double C6 = -1.0 / 720;
  private static final double C8 = 1.0 / 40320;
  private static final double C10 = -1.0 / 3628800;
  private static final double C12 = 1.0 / 479001600;
  private static final double C14 = -1.0 / 87178291200.0;
  private static final double C16 = 1.0 / 20922789888000.0;
  private static final double C18 = -1.0 / 6402373705728000.0;

  private Sines() {}

  /**
   * Writes sines and cosines.
   *
   * @param angles radians, finite
   * @param sines taken as long as {@code angles}
   * @param cosines taken as long as {@code angles}
   */
  static void of(double[] angles, double[] sines, double[] cosines) {
    for (int i = 0; i < angles.length; i++) {
      double x = angles[i];
      double n = (x * TWO_OVER_PI + ROUNDER) - ROUNDER;
      double r = (x - n * HALF_PI_HEAD) - n * HALF_PI_TAIL;
      double q = r * r;
      double sine =
          r
              + r
                  * q
                  * (S3
                      + q
                          * (S5
                              + q * (S7 + q * (S9 + q * (S11 + q * (S13 + q * (S15 + q * S17)))))));
      double cosine =
          1
              + q
                  * (C2
                      + q
                          * (C4
                              + q
                                  * (C6
                                      + q
                                          * (C8
                                              + q
                                                  * (C10
                                                      + q
                                                          * (C12
                                                              + q
                                                                  * (C14
                                                                      + q * (C16 + q * C18))))))));
      // Quarter turns: odd ones exchange the two, signs follow the quadrant.
      int quarter = (int) n;
      double odd = quarter & 1;
      double s = odd == 0 ? sine : cosine;
      double c = odd == 0 ? cosine : sine;
      sines[i] = (quarter & 2) == 0 ? s : -s;
      cosines[i] = ((quarter + 1) & 2) == 0 ? c : -c;
      if (!(Math.abs(x) < FAR)) {
        sines[i] = Math.sin(x);
        cosines[i] = Math.cos(x);
      }
    }
  }
}
