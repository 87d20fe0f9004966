package org.leverbook.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * Dumbbells or kettlebells, each hand its own mass, held still: the weight acts straight down
 * through the grip. A kettlebell is taken to hang freely below its handle, so its line passes
 * through the grip too.
 *
 * @param kind which of the two
 * @param right kilograms in the right hand
 * @param left kilograms in the left hand
 */
public record HandWeight(Kind kind, double right, double left) implements Load {

  /** What is in the hands. */
  public enum Kind {
    /** A short bar with a head at each end. */
    DUMBBELL,
    /** A ball below a handle. */
    KETTLEBELL;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * One in one hand.
   *
   * @param kind which
   * @param mass 0 to 150 kg
   * @param side left or right
   * @return the load
   * @throws Refused if the mass is missing or outside, or the side is no hand's
   */
  public static HandWeight one(Kind kind, Quantity<Mass> mass, Side side) {
    double kilograms = Ask.mass(kind.word() + "'s mass", mass, 0, 150);
    if (side == null || side == Side.MIDLINE) {
      throw new Refused("Say which hand holds the " + kind.word() + ": LEFT or RIGHT.");
    }
    return side == Side.RIGHT
        ? new HandWeight(kind, kilograms, 0)
        : new HandWeight(kind, 0, kilograms);
  }

  /**
   * One in each hand.
   *
   * @param kind which
   * @param left in the left hand, 0 to 150 kg
   * @param right in the right hand, 0 to 150 kg
   * @return the load
   * @throws Refused if a mass is missing or outside
   */
  public static HandWeight each(Kind kind, Quantity<Mass> left, Quantity<Mass> right) {
    return new HandWeight(
        kind,
        Ask.mass("right " + kind.word() + "'s mass", right, 0, 150),
        Ask.mass("left " + kind.word() + "'s mass", left, 0, 150));
  }

  @Override
  public String source() {
    return right > 0 && left > 0 ? kind.word() + "s" : kind.word();
  }

  @Override
  public String description() {
    if (right == left) {
      return String.format(Locale.ROOT, "%ss 2 x %.1f kg", kind.word(), right);
    }
    List<String> each = new ArrayList<>();
    if (left > 0) {
      each.add(String.format(Locale.ROOT, "left %.1f kg", left));
    }
    if (right > 0) {
      each.add(String.format(Locale.ROOT, "right %.1f kg", right));
    }
    return source() + " " + String.join(", ", each);
  }

  @Override
  public double mass() {
    return right + left;
  }

  @Override
  public List<Force> forces(Placement where) {
    List<Force> forces = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      double kilograms = side == Side.RIGHT ? right : left;
      if (kilograms > 0) {
        Hold hand = Hold.of(Site.HAND, side);
        forces.add(hand.force(source(), where, Gravity.VECTOR.scalarMultiply(kilograms)));
      }
    }
    return forces;
  }

  @Override
  public String toString() {
    return description();
  }
}
