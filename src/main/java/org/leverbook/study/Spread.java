package org.leverbook.study;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.leverbook.quantity.Refused;

/**
 * How an input scatters about its usual value.
 *
 * @param kind the shape
 * @param size standard deviation; of uniform half the range, of lognormal that of the logarithm
 */
record Spread(Kind kind, double size) {

  /** The shapes. */
  enum Kind {
    NORMAL,
    UNIFORM,
    LOGNORMAL
  }

  private static final NormalDistribution STANDARD = new NormalDistribution();

  /** The score that 95 % stay below: 1.645. */
  static final double HIGH = STANDARD.inverseCumulativeProbability(0.95);

  /** From the words of {@code body/spreads.csv}. */
  static Spread of(String kind, double size) {
    return switch (kind) {
      case "normal" -> new Spread(Kind.NORMAL, size);
      case "uniform" -> new Spread(Kind.UNIFORM, size);
      case "lognormal" -> new Spread(Kind.LOGNORMAL, size);
      default ->
          throw new Refused(
              "body/spreads.csv names a kind \""
                  + kind
                  + "\" that is none of normal, uniform, lognormal.");
    };
  }

  /**
   * The difference from the usual value at a score.
   *
   * @param score standard normal; the share of people below it is its cumulative probability
   * @return in the unit of the size; of lognormal as a share of the usual value
   */
  double at(double score) {
    return switch (kind) {
      case NORMAL -> size * score;
      case UNIFORM -> size * (2 * STANDARD.cumulativeProbability(score) - 1);
      case LOGNORMAL -> Math.expm1(size * score);
    };
  }

  /** The score below which a share of all lie. */
  static double score(double share) {
    return STANDARD.inverseCumulativeProbability(share);
  }
}
