package org.leverbook.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.format.SimpleUnitFormat;
import tech.units.indriya.quantity.Quantities;

/**
 * Quantities as a coach writes them: {@code kg(85)}, {@code lb(315)}, {@code cm(58)}, {@code
 * deg(35)}.
 *
 * <p>Each word takes a number and refuses one that is not a number or not finite, for example
 * {@code kg(0.0 / 0.0)}. What is too large or too small for its use (a stature of 17.8 m) is
 * refused where it is used, because only there is the sensible range known.
 */
public final class Units {

  /** Kilogram. */
  public static final Unit<Mass> KG = tech.units.indriya.unit.Units.KILOGRAM;

  /** Avoirdupois pound, 0.45359237 kg exactly (international yard and pound agreement of 1959). */
  public static final Unit<Mass> LB = KG.multiply(0.45359237);

  /** Metre. */
  public static final Unit<Length> M = tech.units.indriya.unit.Units.METRE;

  /** Centimetre. */
  public static final Unit<Length> CM = MetricPrefix.CENTI(M);

  /** Millimetre. */
  public static final Unit<Length> MM = MetricPrefix.MILLI(M);

  /** Inch, 0.0254 m exactly (international yard and pound agreement of 1959). */
  public static final Unit<Length> INCH = M.multiply(0.0254);

  /** Radian. */
  public static final Unit<Angle> RAD = tech.units.indriya.unit.Units.RADIAN;

  /** Degree of arc. */
  public static final Unit<Angle> DEG = RAD.multiply(Math.PI / 180);

  /** Newton. */
  public static final Unit<Force> N = tech.units.indriya.unit.Units.NEWTON;

  /** Second. */
  public static final Unit<Time> S = tech.units.indriya.unit.Units.SECOND;

  /** Per cent. */
  public static final Unit<Dimensionless> PERCENT = AbstractUnit.ONE.divide(100);

  static {
    SimpleUnitFormat format = SimpleUnitFormat.getInstance();
    format.label(LB, "lb");
    format.label(INCH, "in");
    format.label(DEG, "°");
    format.label(PERCENT, "%");
  }

  private Units() {}

  /**
   * A mass in kilograms.
   *
   * @param value kilograms
   * @return the mass
   */
  public static Quantity<Mass> kg(double value) {
    return quantity(value, KG, "kg");
  }

  /**
   * A mass in pounds.
   *
   * @param value pounds
   * @return the mass
   */
  public static Quantity<Mass> lb(double value) {
    return quantity(value, LB, "lb");
  }

  /**
   * A length in metres.
   *
   * @param value metres
   * @return the length
   */
  public static Quantity<Length> m(double value) {
    return quantity(value, M, "m");
  }

  /**
   * A length in centimetres.
   *
   * @param value centimetres
   * @return the length
   */
  public static Quantity<Length> cm(double value) {
    return quantity(value, CM, "cm");
  }

  /**
   * A length in millimetres.
   *
   * @param value millimetres
   * @return the length
   */
  public static Quantity<Length> mm(double value) {
    return quantity(value, MM, "mm");
  }

  /**
   * A length in inches.
   *
   * @param value inches
   * @return the length
   */
  public static Quantity<Length> inch(double value) {
    return quantity(value, INCH, "inch");
  }

  /**
   * An angle in degrees.
   *
   * @param value degrees
   * @return the angle
   */
  public static Quantity<Angle> deg(double value) {
    return quantity(value, DEG, "deg");
  }

  /**
   * A force in newtons.
   *
   * @param value newtons
   * @return the force
   */
  public static Quantity<Force> newton(double value) {
    return quantity(value, N, "newton");
  }

  /**
   * A share in per cent.
   *
   * @param value per cent
   * @return the share
   */
  public static Quantity<Dimensionless> percent(double value) {
    return quantity(value, PERCENT, "percent");
  }

  /**
   * A time in seconds.
   *
   * @param value seconds
   * @return the time
   */
  public static Quantity<Time> seconds(double value) {
    return quantity(value, S, "seconds");
  }

  /**
   * A quantity as a reader writes it: up to six significant digits, then the unit.
   *
   * @param quantity any quantity
   * @return for example {@code 58 cm} or {@code 35°}
   */
  public static String text(Quantity<?> quantity) {
    double value = quantity.getValue().doubleValue();
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(6)).stripTrailingZeros();
    double size = Math.abs(value);
    // Three hundred digits help nobody.
    boolean plain = size == 0 || size >= 1e-9 && size < 1e12;
    String number = plain ? rounded.toPlainString() : rounded.toString();
    String unit = quantity.getUnit().toString();
    return unit.equals("°") || unit.equals("one") || unit.isEmpty()
        ? number + (unit.equals("°") ? unit : "")
        : number + " " + unit;
  }

  /**
   * A quantity in a unit that is known only while running.
   *
   * @param <Q> what kind of quantity
   * @param value a finite number
   * @param unit its unit
   * @return the quantity
   * @throws Refused if the number is not finite
   */
  public static <Q extends Quantity<Q>> Quantity<Q> of(double value, Unit<Q> unit) {
    return quantity(value, unit, symbol(unit));
  }

  /**
   * A unit as a table's heading writes it.
   *
   * @param unit any unit
   * @return as in "cm"; empty for a pure number
   */
  public static String symbol(Unit<?> unit) {
    String symbol = unit.toString();
    return symbol.equals("one") ? "" : symbol;
  }

  private static <Q extends Quantity<Q>> Quantity<Q> quantity(
      double value, Unit<Q> unit, String word) {
    if (!Double.isFinite(value)) {
      throw new Refused(
          word
              + "("
              + value
              + ") is no amount: give a finite number. A NaN usually comes from dividing zero by zero, or from an"
              + " empty cell of a table.");
    }
    return Quantities.getQuantity(value, unit);
  }
}
