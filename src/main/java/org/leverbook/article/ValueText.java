package org.leverbook.article;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.OptionalInt;
import javax.measure.Quantity;
import org.leverbook.body.JointId;
import org.leverbook.display.Display;
import org.leverbook.display.Kind;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Fact;
import org.leverbook.statics.JointMoment;
import org.leverbook.study.ClaimAnswer;
import org.leverbook.study.DoubtBand;

/**
 * How a value stands in a sentence: a number with the digits that a reader can use, a quantity with
 * its unit, a moment as its size.
 */
final class ValueText {

  /** Digits of a number nobody said more of. */
  private static final int DIGITS = 3;

  /** Digits of a quantity: 97.5 kg, 178.5 cm. */
  private static final int QUANTITY_DIGITS = 4;

  private static final int LONGEST = 200;

  private ValueText() {}

  /**
   * A value as it is read.
   *
   * @param value what was put in
   * @param decimals as asked for in the text
   * @param place which of the text's places, from 1, for the refusal
   */
  static String of(Object value, OptionalInt decimals, int place) {
    if (value == null) {
      throw new Refused(
          "Value "
              + place
              + " of the text is missing (null): give one, or leave its place {} out.");
    }
    if (value instanceof Quantity<?> quantity) {
      return quantity(quantity, decimals, place);
    }
    if (value instanceof JointMoment moment) {
      return decimal(moment.size(), decimals.orElse(0)) + " N·m";
    }
    if (value instanceof Fact fact) {
      String gap = fact.unit().equals("°") || fact.unit().isEmpty() ? "" : " ";
      return decimal(fact.value(), decimals.orElse(1)) + gap + fact.unit();
    }
    if (value instanceof DoubtBand band) {
      return band.sentence();
    }
    if (value instanceof ClaimAnswer answer) {
      return answer.shareText();
    }
    if (value instanceof JointId joint) {
      return joint.word();
    }
    if (value instanceof Number number) {
      return number(number, decimals, place);
    }
    return line(value, place);
  }

  private static String quantity(Quantity<?> quantity, OptionalInt decimals, int place) {
    double amount = checked(quantity.getValue().doubleValue(), place);
    String unit = Units.symbol(quantity.getUnit());
    String number = decimals.isPresent() ? decimal(amount, decimals.getAsInt()) : rounded(amount);
    return unit.isEmpty() || unit.equals("°") ? number + unit : number + " " + unit;
  }

  private static String number(Number number, OptionalInt decimals, int place) {
    double amount = checked(number.doubleValue(), place);
    if (decimals.isPresent()) {
      return decimal(amount, decimals.getAsInt());
    }
    boolean whole =
        !(number instanceof Double || number instanceof Float || number instanceof BigDecimal);
    if (whole || Math.abs(amount) >= 1000) {
      return String.format(Locale.ROOT, "%,.0f", amount);
    }
    return significant(amount, DIGITS).toPlainString();
  }

  /** A quantity as it was given: no digits that were not said, and none beyond the fourth. */
  private static String rounded(double amount) {
    return significant(amount, QUANTITY_DIGITS).stripTrailingZeros().toPlainString();
  }

  private static BigDecimal significant(double amount, int digits) {
    if (amount == 0) {
      return BigDecimal.ZERO;
    }
    BigDecimal number = new BigDecimal(amount).round(new MathContext(digits));
    return number.scale() < 0 ? number.setScale(0) : number;
  }

  private static String decimal(double amount, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", amount);
    return text.matches("-0\\.?0*") ? text.substring(1) : text;
  }

  private static double checked(double amount, int place) {
    if (!Double.isFinite(amount)) {
      throw new Refused(
          "Value "
              + place
              + " of the text is no number ("
              + amount
              + "), which nobody could read: look at what it is computed from.");
    }
    return amount;
  }

  private static String line(Object value, int place) {
    String text = Display.of(value).text().strip();
    if (text.contains("\n") || text.length() > LONGEST) {
      throw new Refused(
          "Value "
              + place
              + " of the text is "
              + Kind.of(value)
              + ", which takes several lines: put in one of its numbers, or add it by .table(…) or"
              + " .figure(…).");
    }
    return text;
  }
}
