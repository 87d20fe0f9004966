package org.leverbook.study;

import java.math.BigDecimal;
import java.math.MathContext;

/** A place in an order, in words. */
final class Ordinals {

  private static final MathContext DIGITS = new MathContext(6);

  private Ordinals() {}

  /** As in "90th", "1st", "22nd", "97.5th". */
  static String of(double place) {
    BigDecimal number = new BigDecimal(place).round(DIGITS).stripTrailingZeros();
    String text = number.toPlainString();
    if (number.scale() > 0) {
      return text + "th";
    }
    int last = number.intValue() % 10;
    boolean teen = number.intValue() % 100 / 10 == 1;
    return text
        + (teen
            ? "th"
            : switch (last) {
              case 1 -> "st";
              case 2 -> "nd";
              case 3 -> "rd";
              default -> "th";
            });
  }
}
