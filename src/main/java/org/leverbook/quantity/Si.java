package org.leverbook.quantity;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;

/** The one crossing from quantities to plain SI doubles. */
public final class Si {

  private Si() {}

  /**
   * A mass in kilograms.
   *
   * @param mass any mass, not null
   * @return kilograms
   */
  public static double kilograms(Quantity<Mass> mass) {
    return mass.to(Units.KG).getValue().doubleValue();
  }

  /**
   * A length in metres.
   *
   * @param length any length, not null
   * @return metres
   */
  public static double metres(Quantity<Length> length) {
    return length.to(Units.M).getValue().doubleValue();
  }

  /**
   * An angle in radians.
   *
   * @param angle any angle, not null
   * @return radians
   */
  public static double radians(Quantity<Angle> angle) {
    return angle.to(Units.RAD).getValue().doubleValue();
  }

  /**
   * A time in seconds.
   *
   * @param time any time, not null
   * @return seconds
   */
  public static double seconds(Quantity<Time> time) {
    return time.to(Units.S).getValue().doubleValue();
  }

  /**
   * A share as a fraction of one.
   *
   * @param share any share, not null
   * @return the fraction: 0.08 for eight per cent
   */
  public static double fraction(Quantity<Dimensionless> share) {
    return share.getValue().doubleValue()
        * share.getUnit().getConverterTo(tech.units.indriya.AbstractUnit.ONE).convert(1.0);
  }
}
