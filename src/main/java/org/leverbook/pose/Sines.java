package org.leverbook.pose;

/**
 * Sine and cosine of many angles at once.
 *
 * <p>With n the whole number nearest to x/pi, r = x - n pi lies within a quarter turn, and both
 * functions are (-1)^n times those of r: Taylor series to r^21 and r^22, of which what is left out
 * is below 2e-18. pi is subtracted in two parts, the first with so few digits that n times it is
 * exact. The error is that of a few roundings of a number near one, 4e-16; a cosine near a quarter
 * turn, being small, is no better than that in absolute terms.
 *
 * <p>Each loop is sums and products only, short enough for the compiler to take four angles at a
 * time: 119 angles cost a fifth of what the library's functions cost, which was two thirds of a
 * whole pose. A branch by quadrant, as usual elsewhere, would double the time.
 */
final class Sines {

  /** Beyond this the two-part subtraction loses digits; no joint turns that far. */
  private static final double FAR = 1e5;

  private static final double ONE_OVER_PI = 1 / Math.PI;

  /** The first 33 binary digits of pi. */
  private static final double PI_HEAD =
      Double.longBitsToDouble(Double.doubleToLongBits(Math.PI) & ~0xFFFFFL);

  /** What is left of pi; as a double pi lacks 1.2246467991473532e-16. */
  private static final double PI_TAIL = (Math.PI - PI_HEAD) + 1.2246467991473532e-16;

  /** Added and taken away again, it rounds to the nearest whole number. */
  private static final double ROUNDER = 0x1.8p52;

  private static final double S3 = -1.0 / 6;
  private static final double S5 = -S3 / 20;
  private static final double S7 = -S5 / 42;
  private static final double S9 = -S7 / 72;
  private static final double S11 = -S9 / 110;
  private static final double S13 = -S11 / 156;
  private static final double S15 = -S13 / 210;
  private static final double S17 = -S15 / 272;
  private static final double S19 = -S17 / 342;
  private static final double S21 = -S19 / 420;

  private static final double C2 = -1.0 / 2;
  private static final double C4 = -C2 / 12;
  private static final double C6 = -C4 / 30;
  private static final double C8 = -C6 / 56;
  private static final double C10 = -C8 / 90;
  private static final double C12 = -C10 / 132;
  private static final double C14 = -C12 / 182;
  private static final double C16 = -C14 / 240;
  private static final double C18 = -C16 / 306;
  private static final double C20 = -C18 / 380;
  private static final double C22 = -C20 / 462;

  private Sines() {}

  /**
   * Writes sines and cosines.
   *
   * @param angles radians, finite
   * @param sines as long as {@code angles}
   * @param cosines as long as {@code angles}
   * @param rest as long as {@code angles}; overwritten
   * @param signs as long as {@code angles}; overwritten
   */
  static void of(double[] angles, double[] sines, double[] cosines, double[] rest, double[] signs) {
    reduce(angles, rest, signs);
    sine(rest, signs, sines);
    cosine(rest, signs, cosines);
    for (int i = 0; i < angles.length; i++) {
      if (Math.abs(angles[i]) > FAR) {
        sines[i] = Math.sin(angles[i]);
        cosines[i] = Math.cos(angles[i]);
      }
    }
  }

  private static void reduce(double[] angles, double[] rest, double[] signs) {
    for (int i = 0; i < angles.length; i++) {
      double n = (angles[i] * ONE_OVER_PI + ROUNDER) - ROUNDER;
      // n less the nearest even number: -1, 0 or 1.
      double odd = n - 2 * ((0.5 * n + ROUNDER) - ROUNDER);
      signs[i] = 1 - 2 * odd * odd;
      rest[i] = (angles[i] - n * PI_HEAD) - n * PI_TAIL;
    }
  }

  private static void sine(double[] rest, double[] signs, double[] sines) {
    for (int i = 0; i < rest.length; i++) {
      double r = rest[i];
      double q = r * r;
      double high = S13 + q * (S15 + q * (S17 + q * (S19 + q * S21)));
      double low = S3 + q * (S5 + q * (S7 + q * (S9 + q * (S11 + q * high))));
      sines[i] = signs[i] * (r + r * q * low);
    }
  }

  private static void cosine(double[] rest, double[] signs, double[] cosines) {
    for (int i = 0; i < rest.length; i++) {
      double q = rest[i] * rest[i];
      double high = C12 + q * (C14 + q * (C16 + q * (C18 + q * (C20 + q * C22))));
      double low = C4 + q * (C6 + q * (C8 + q * (C10 + q * high)));
      cosines[i] = signs[i] * (1 + q * (C2 + q * low));
    }
  }
}
