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
 * Dumbbells or kettlebells: each side its own mass, held still, its weight straight through the
 * grip.
 *
 * @param kind as in "dumbbell"
 * @param right mass in the right hand, kilograms, zero where it is empty
 * @param left mass in the left hand
 * @param shared whether it is one weight that both hands hold, half its mass in each
 */
public record HandWeights(String kind, double right, double left, boolean shared) implements Load {

  private static final double HEAVIEST = 150;

  /**
   * Each hand its own weight.
   *
   * @param kind as in "dumbbell"
   * @param right mass in the right hand, kilograms, zero where it is empty
   * @param left mass in the left hand
   */
  public HandWeights(String kind, double right, double left) {
    this(kind, right, left, false);
  }

  /**
   * One weight in both hands, as at the chest or between the legs.
   *
   * @param kind as in "kettlebell"
   * @param mass 0 to 150 kg
   * @return the weight
   * @throws Refused if the mass is missing or outside
   */
  public static HandWeights inBothHands(String kind, Quantity<Mass> mass) {
    Ask.present("kind of weight", kind, "\"dumbbell\"");
    double half = Ask.mass(kind + "'s mass", mass, 0, HEAVIEST) / 2;
    return new HandWeights(kind, half, half, true);
  }

  /**
   * The same weight in each hand.
   *
   * @param kind as in "dumbbell"
   * @param each mass of one, 0 to 150 kg
   * @return the pair
   * @throws Refused if the mass is missing or outside
   */
  public static HandWeights pair(String kind, Quantity<Mass> each) {
    double kilograms = Ask.mass(kind + "'s mass", each, 0, HEAVIEST);
    return new HandWeights(kind, kilograms, kilograms);
  }

  /**
   * One weight in one hand.
   *
   * @param kind as in "dumbbell"
   * @param mass 0 to 150 kg
   * @param side left or right
   * @return the weight
   * @throws Refused if the mass is missing or outside, or the side is neither
   */
  public static HandWeights one(String kind, Quantity<Mass> mass, Side side) {
    return new HandWeights(Ask.present("kind of weight", kind, "\"dumbbell\""), 0, 0)
        .withOther(mass, side);
  }

  /**
   * Another mass in one hand.
   *
   * @param mass 0 to 150 kg
   * @param side left or right
   * @return the changed weights
   * @throws Refused if the mass is missing or outside, or the side is neither
   */
  public HandWeights withOther(Quantity<Mass> mass, Side side) {
    double kilograms = Ask.mass(kind + "'s mass", mass, 0, HEAVIEST);
    if (side != Side.RIGHT && side != Side.LEFT) {
      throw new Refused("A " + kind + " is held in one hand: say LEFT or RIGHT.");
    }
    return side == Side.RIGHT
        ? new HandWeights(kind, kilograms, left)
        : new HandWeights(kind, right, kilograms);
  }

  @Override
  public String source() {
    return kind;
  }

  @Override
  public String law() {
    return "Each weight acts straight down through the grip, with the standard "
        + "gravity of 9.80665 m/s².";
  }

  @Override
  public String description() {
    if (shared) {
      return String.format(Locale.ROOT, "%s of %.1f kg in both hands", kind, mass());
    }
    return right == left
        ? String.format(Locale.ROOT, "two %ss of %.1f kg", kind, right)
        : String.format(Locale.ROOT, "%s: right %.1f kg, left %.1f kg", kind, right, left);
  }

  @Override
  public double mass() {
    return right + left;
  }

  /** They hang on the grips wherever these are. */
  @Override
  public boolean deadWeight() {
    return true;
  }

  @Override
  public List<Force> forces(Placement where) {
    List<Force> forces = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      double kilograms = side == Side.RIGHT ? right : left;
      if (kilograms > 0) {
        forces.addAll(
            Grasps.at(Site.HAND, side)
                .sharing(kind, where, Gravity.VECTOR.scalarMultiply(kilograms)));
      }
    }
    return forces;
  }

  @Override
  public Optional<Load> times(double factor) {
    Ask.factor(factor);
    return Optional.of(new HandWeights(kind, factor * right, factor * left, shared));
  }

  @Override
  public OptionalDouble counted() {
    return OptionalDouble.of(mass());
  }

  @Override
  public String toString() {
    return description();
  }
}
