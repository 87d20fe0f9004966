package org.leverbook.study;

import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.quantity.Units;

/**
 * A quantity to vary: its values lie evenly between two ends, both included.
 *
 * <p>{@code Span.of("hip height", cm(48), cm(72), 9)} works; one value, or twice the same end, is
 * refused.
 *
 * @param <Q> what kind of quantity
 * @param name as in "hip height"
 * @param unit that of its first end; tables use it
 * @param from first value, in that unit
 * @param to last value, in that unit; may be the smaller one
 * @param values how many, both ends included
 */
public record Span<Q extends Quantity<Q>>(
    String name, Unit<Q> unit, double from, double to, int values) {

  private static final int MOST = 1_000_000;

  /**
   * A quantity to vary.
   *
   * @param <Q> what kind of quantity
   * @param name as in "hip height"
   * @param from first value; its unit is the table's
   * @param to last value
   * @param values how many, both ends included; 2 to 1,000,000
   * @return the span
   * @throws Refused if something is missing, or the range is no range
   */
  public static <Q extends Quantity<Q>> Span<Q> of(
      String name, Quantity<Q> from, Quantity<Q> to, int values) {
    Ask.present("name of what is varied", name, "\"hip height\"");
    Unit<Q> unit = Ask.present("first value of the " + name, from, "cm(48)").getUnit();
    Ask.present("last value of the " + name, to, "cm(72)");
    double first = Si.in(unit, from, "an amount of its own kind", "cm(48)");
    double last =
        Si.in(unit, to, "of the same kind as the first value of the " + name, Units.text(from));
    if (values < 2 || values > MOST) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The %s from %s to %s takes 2 to %,d values, not %d.",
              name,
              Units.text(from),
              Units.text(to),
              MOST,
              values));
    }
    if (first == last) {
      throw new Refused(
          "The " + name + " needs two different ends, but both are " + Units.text(from) + ".");
    }
    return new Span<>(name, unit, first, last, values);
  }

  /**
   * One of its values.
   *
   * @param index from 0
   * @return in the span's unit; the ends are exactly those asked for
   * @throws Refused if there is no such value
   */
  public double value(int index) {
    if (index < 0 || index >= values) {
      throw new Refused(
          "The "
              + name
              + " has "
              + values
              + " values, counted from 0: there is none "
              + index
              + ".");
    }
    double share = index / (values - 1.0);
    return from * (1 - share) + to * share;
  }

  /**
   * One of its values with its unit.
   *
   * @param index from 0
   * @return the value
   */
  public Quantity<Q> quantity(int index) {
    return Units.of(value(index), unit);
  }

  /**
   * Its unit as tables write it.
   *
   * @return as in "cm"
   */
  public String symbol() {
    return Units.symbol(unit);
  }

  /**
   * Its name with its unit.
   *
   * @return as in "hip height (cm)"
   */
  public String heading() {
    return symbol().isEmpty() ? name : name + " (" + symbol() + ")";
  }

  /**
   * So many decimals that neighbouring values can be told apart.
   *
   * @return one to nine
   */
  public int decimals() {
    return decimals(Math.abs(value(1) - value(0)));
  }

  /** So many decimals that values a step apart can be told apart: one to nine. */
  static int decimals(double step) {
    return (int) Math.max(1, Math.min(9, Math.ceil(-Math.log10(step) - 1e-9)));
  }

  /**
   * One of its values as a reader sees it.
   *
   * @param value in the span's unit
   * @return as in "48.0 cm"
   * @throws Refused if it is no number
   */
  public String text(double value) {
    Ask.number("value of the " + name, value, -Double.MAX_VALUE, Double.MAX_VALUE);
    String gap = symbol().isEmpty() || symbol().equals("°") ? "" : " ";
    return String.format(Locale.ROOT, "%." + decimals() + "f%s%s", value, gap, symbol());
  }
}
