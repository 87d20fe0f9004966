package org.leverbook.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A mass that the body wears: its weight acts in equal parts at the places that carry it.
 *
 * @param kind as in "vest"
 * @param kilograms its mass
 * @param carriers the places that carry it, at least one
 */
public record Worn(String kind, double kilograms, List<Grasp> carriers) implements Load {

  private static final double HEAVIEST = 150;

  /** Keeps its own copy of the list. */
  public Worn {
    carriers = List.copyOf(carriers);
  }

  /**
   * A vest: half on the breast bone, half between the shoulder blades (assumption, no source).
   *
   * @param mass 0 to 150 kg
   * @return the vest
   * @throws Refused if the mass is missing or outside
   */
  public static Worn vest(Quantity<Mass> mass) {
    List<Grasp> carriers = new ArrayList<>();
    // As often in front as behind, so that the two halves balance.
    carriers.add(Grasp.at(Site.CHEST, Side.MIDLINE));
    carriers.add(Grasp.at(Site.CHEST, Side.MIDLINE));
    carriers.addAll(Grasps.at(Site.MID_BACK).all());
    return new Worn("vest", Ask.mass("vest's mass", mass, 0, HEAVIEST), carriers);
  }

  /**
   * A weight that hangs from the front of a belt.
   *
   * @param mass 0 to 150 kg
   * @return the belt
   * @throws Refused if the mass is missing or outside
   */
  public static Worn belt(Quantity<Mass> mass) {
    return new Worn(
        "belt", Ask.mass("belt's mass", mass, 0, HEAVIEST), Grasps.at(Site.BELT_FRONT).all());
  }

  @Override
  public String source() {
    return kind;
  }

  @Override
  public String law() {
    return "Its weight acts straight down in equal parts at the places that carry "
        + "it (assumption).";
  }

  @Override
  public String description() {
    return String.format(Locale.ROOT, "%s %.1f kg", kind, kilograms);
  }

  @Override
  public double mass() {
    return kilograms;
  }

  @Override
  public List<Force> forces(Placement where) {
    return new Grasps(carriers).sharing(kind, where, Gravity.VECTOR.scalarMultiply(kilograms));
  }

  @Override
  public Optional<Load> times(double factor) {
    Ask.factor(factor);
    return Optional.of(new Worn(kind, factor * kilograms, carriers));
  }

  @Override
  public OptionalDouble counted() {
    return OptionalDouble.of(kilograms);
  }

  @Override
  public String toString() {
    return description();
  }
}
