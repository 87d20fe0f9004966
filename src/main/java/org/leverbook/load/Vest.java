package org.leverbook.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A weighted vest: equal parts at the centre of mass of each slice of the trunk from T1 to T12 (an
 * assumption, no source: half its weight in front, half behind).
 *
 * @param kilograms all of it
 */
public record Vest(double kilograms) implements Load {

  private static final int SLICES = 12;

  /**
   * A vest.
   *
   * @param mass 0 to 100 kg
   * @return the load
   * @throws Refused if the mass is missing or outside
   */
  public static Vest of(Quantity<Mass> mass) {
    return new Vest(Ask.mass("vest's mass", mass, 0, 100));
  }

  @Override
  public String source() {
    return "vest";
  }

  @Override
  public String description() {
    return String.format(Locale.ROOT, "vest %.1f kg", kilograms);
  }

  @Override
  public double mass() {
    return kilograms;
  }

  @Override
  public List<Force> forces(Placement where) {
    List<Force> forces = new ArrayList<>();
    for (int level = 1; level <= SLICES; level++) {
      int slice = where.tree().indexOf("T" + level);
      forces.add(
          Force.ofLoad(
              source(),
              slice,
              where.centreOfMass(slice),
              Gravity.VECTOR.scalarMultiply(kilograms / SLICES)));
    }
    return forces;
  }

  @Override
  public String toString() {
    return description();
  }
}
