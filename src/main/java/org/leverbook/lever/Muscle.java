package org.leverbook.lever;

import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Force;
import javax.measure.quantity.Pressure;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;

/**
 * A muscle with the greatest force it can give.
 *
 * @param line where it pulls
 * @param maxForce newtons, more than zero
 */
public record Muscle(LineOfPull line, double maxForce) {

  /**
   * Checks the force.
   *
   * @throws Refused if it is not a finite number above zero
   */
  public Muscle {
    if (!(maxForce > 0) || Double.isInfinite(maxForce)) {
      throw new Refused(
          "The greatest force of the "
              + line.name()
              + " is "
              + maxForce
              + " N, but must be a number above zero.");
    }
  }

  /**
   * A muscle of known strength.
   *
   * @param line where it pulls
   * @param maxForce the greatest force it can give
   * @return the muscle
   * @throws Refused if the force is missing or not above zero
   */
  public static Muscle of(LineOfPull line, Quantity<Force> maxForce) {
    return new Muscle(line, Si.newtons(Ask.present("greatest force", maxForce, "newton(1000)")));
  }

  /**
   * A muscle whose strength follows from its thickness: greatest force = physiological
   * cross-section x specific tension. The two must come from the same method of measuring.
   *
   * @param line where it pulls
   * @param crossSection physiological cross-section
   * @param tension greatest force for each area
   * @return the muscle
   * @throws Refused if one is missing, or their product is not above zero
   */
  public static Muscle ofCrossSection(
      LineOfPull line, Quantity<Area> crossSection, Quantity<Pressure> tension) {
    double squareMetres =
        Ask.present("cross-section", crossSection, "25 cm²")
            .toSystemUnit()
            .getValue()
            .doubleValue();
    double pascals =
        Ask.present("specific tension", tension, "30 N/cm²")
            .toSystemUnit()
            .getValue()
            .doubleValue();
    return new Muscle(line, squareMetres * pascals);
  }
}
