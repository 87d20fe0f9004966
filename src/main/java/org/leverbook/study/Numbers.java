package org.leverbook.study;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as sentences write them. */
final class Numbers {

  private static final MathContext FOUR = new MathContext(4);

  private Numbers() {}

  /** Four significant digits, whole numbers in full, without a tail of zeros. */
  static String four(double value) {
    if (!Double.isFinite(value)) {
      return "no finite number";
    }
    BigDecimal digits = new BigDecimal(value);
    BigDecimal rounded =
        Math.abs(value) >= 1000
            ? digits.setScale(0, java.math.RoundingMode.HALF_EVEN)
            : digits.round(FOUR);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
