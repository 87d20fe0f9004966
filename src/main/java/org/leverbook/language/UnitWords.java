package org.leverbook.language;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.leverbook.quantity.Units;

/** The words for amounts; {@link Vocabulary} hands them on. */
public abstract sealed class UnitWords permits LoadWords {

  UnitWords() {}

  /**
   * A mass in kilograms, as in {@code kg(85)}.
   *
   * @param value kilograms
   * @return the mass
   */
  public static Quantity<Mass> kg(double value) {
    return Units.kg(value);
  }

  /**
   * A mass in pounds, as in {@code lb(315)}.
   *
   * @param value pounds
   * @return the mass
   */
  public static Quantity<Mass> lb(double value) {
    return Units.lb(value);
  }

  /**
   * A length in metres, as in {@code m(1.78)}.
   *
   * @param value metres
   * @return the length
   */
  public static Quantity<Length> m(double value) {
    return Units.m(value);
  }

  /**
   * A length in centimetres, as in {@code cm(58)}.
   *
   * @param value centimetres
   * @return the length
   */
  public static Quantity<Length> cm(double value) {
    return Units.cm(value);
  }

  /**
   * A length in inches, as in {@code inch(22)}.
   *
   * @param value inches
   * @return the length
   */
  public static Quantity<Length> inch(double value) {
    return Units.inch(value);
  }

  /**
   * An angle in degrees, as in {@code deg(35)}.
   *
   * @param value degrees
   * @return the angle
   */
  public static Quantity<Angle> deg(double value) {
    return Units.deg(value);
  }

  /**
   * A force in newtons, as in {@code newton(500)}.
   *
   * @param value newtons
   * @return the force
   */
  public static Quantity<Force> newton(double value) {
    return Units.newton(value);
  }

  /**
   * A share in per cent, as in {@code percent(8)}.
   *
   * @param value per cent
   * @return the share
   */
  public static Quantity<Dimensionless> percent(double value) {
    return Units.percent(value);
  }
}
