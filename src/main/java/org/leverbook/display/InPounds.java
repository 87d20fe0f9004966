package org.leverbook.display;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Masses and lengths of a text in pounds and inches. Forces and moments stay in newtons and newton
 * metres: no trade unit of them is in common use.
 *
 * <p>Exact by definition: a pound is 0.45359237 kg, an inch 2.54 cm (International Yard and Pound
 * Agreement of 1959, from memory).
 */
final class InPounds {

  private static final double POUNDS_A_KILOGRAM = 1 / 0.45359237;
  private static final double INCHES_A_METRE = 1 / 0.0254;

  /**
   * The unit for a unit, and how many of it make one.
   *
   * @param symbol as it is written
   * @param factor how many make one of the other
   */
  record Other(String symbol, double factor) {}

  private static final Map<String, Other> OTHERS =
      Map.of(
          "kg", new Other("lb", POUNDS_A_KILOGRAM),
          "m", new Other("in", INCHES_A_METRE),
          "cm", new Other("in", INCHES_A_METRE / 100),
          "mm", new Other("in", INCHES_A_METRE / 1000));

  private static final String NUMBER = "-?\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|-?\\d+(?:\\.\\d+)?";

  /**
   * A number and its unit. A range has its unit only once: "48.0 to 60.0 cm", "between 48 and 60
   * cm". What is divided by a length, or is a moment or an area, is none.
   */
  private static final Pattern AMOUNT =
      Pattern.compile(
          "(?<![\\w.])(?:("
              + NUMBER
              + ")( to |–)|between ("
              + NUMBER
              + ") and )?"
              + "("
              + NUMBER
              + ")( ?)(kg|cm|mm|m)(?![\\w·/²³^*])");

  private InPounds() {}

  /** The other unit, where there is one. */
  static Other of(String unit) {
    return OTHERS.get(unit);
  }

  /** A text with its masses and lengths in the other units. */
  static String text(String text) {
    return AMOUNT.matcher(text).replaceAll(InPounds::converted);
  }

  private static String converted(MatchResult found) {
    Other other = OTHERS.get(found.group(6));
    String number = number(found.group(4), other.factor()) + found.group(5) + other.symbol();
    if (found.group(1) != null) {
      return number(found.group(1), other.factor()) + found.group(2) + number;
    }
    return found.group(3) == null
        ? number
        : "between " + number(found.group(3), other.factor()) + " and " + number;
  }

  private static String number(String told, double factor) {
    BigDecimal value = new BigDecimal(told.replace(",", ""));
    int places = Math.max(1, value.scale());
    return value
        .multiply(BigDecimal.valueOf(factor))
        .setScale(places, RoundingMode.HALF_EVEN)
        .toPlainString();
  }
}
