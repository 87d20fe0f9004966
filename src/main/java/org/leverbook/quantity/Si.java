package org.leverbook.quantity;

import javax.measure.IncommensurableException;
import javax.measure.Quantity;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import tech.units.indriya.AbstractUnit;

/** The one crossing from quantities to plain SI doubles. */
public final class Si {

  /** Beyond this no amount is meant, and sums of it would leave what numbers can hold. */
  private static final double MOST = 1e12;

  private Si() {}

  /**
   * A mass in kilograms.
   *
   * @param mass any mass, not null
   * @return kilograms
   * @throws Refused if it is of another kind, as raw types allow
   */
  public static double kilograms(Quantity<Mass> mass) {
    return in(Units.KG, mass, "a mass", "kg(85)");
  }

  /**
   * A length in metres.
   *
   * @param length any length, not null
   * @return metres
   */
  public static double metres(Quantity<Length> length) {
    return in(Units.M, length, "a length", "cm(178)");
  }

  /**
   * An angle in radians.
   *
   * @param angle any angle, not null
   * @return radians
   */
  public static double radians(Quantity<Angle> angle) {
    return in(Units.RAD, angle, "an angle", "deg(35)");
  }

  /**
   * A time in seconds.
   *
   * @param time any time, not null
   * @return seconds
   */
  public static double seconds(Quantity<Time> time) {
    return in(Units.S, time, "a time", "seconds(1.5)");
  }

  /**
   * A share as a fraction of one.
   *
   * @param share any share, not null
   * @return the fraction: 0.08 for eight per cent
   */
  public static double fraction(Quantity<Dimensionless> share) {
    try {
      return sane(
          share,
          share.getValue().doubleValue()
              * share.getUnit().getConverterToAny(AbstractUnit.ONE).convert(1.0));
    } catch (IncommensurableException e) {
      throw otherKind(share, "a share", "percent(50)", e);
    }
  }

  /**
   * A force in newtons.
   *
   * @param force any force, not null
   * @return newtons
   */
  public static double newtons(Quantity<Force> force) {
    return in(Units.N, force, "a force", "newton(200)");
  }

  /**
   * A quantity as a number of a unit.
   *
   * @param <Q> what kind of quantity
   * @param unit the unit wanted
   * @param amount any amount, not null
   * @param kind what is asked for, as in "a mass"
   * @param example how to write one
   * @return the number
   * @throws Refused if the amount is of another kind, which code without type arguments lets
   *     through
   */
  public static <Q extends Quantity<Q>> double in(
      Unit<Q> unit, Quantity<Q> amount, String kind, String example) {
    try {
      return sane(amount, amount.to(unit).getValue().doubleValue());
    } catch (UnconvertibleException e) {
      throw otherKind(amount, kind, example, e);
    }
  }

  private static double sane(Quantity<?> amount, double number) {
    if (!(Math.abs(number) <= MOST)) {
      throw new Refused(
          Units.text(amount) + " is more than anything here can be: give a smaller amount.");
    }
    return number;
  }

  private static Refused otherKind(
      Quantity<?> amount, String kind, String example, Exception cause) {
    return new Refused(
        Units.text(amount) + " is not " + kind + ": give one, such as " + example + ".", cause);
  }
}
