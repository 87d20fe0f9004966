package org.leverbook.load;

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
 * A weight that rests on or hangs from one site, equally on both sides where the site has two: a
 * trap bar in the hands, a plate on the chest, cuffs at the ankles, a weight on a belt.
 *
 * @param source what a table calls it
 * @param kilograms all of it
 * @param holds where; each carries an equal part
 */
public record Hung(String source, double kilograms, List<Hold> holds) implements Load {

  /** Keeps its own copy of the list. */
  public Hung {
    holds = List.copyOf(holds);
  }

  /**
   * A trap bar: hands at its sides, level with its plates' axis.
   *
   * @param mass bar and plates together, 0 to 600 kg
   * @return the load
   * @throws Refused if the mass is missing or outside
   */
  public static Hung trapBar(Quantity<Mass> mass) {
    return new Hung("trap bar", Ask.mass("trap bar's mass", mass, 0, 600), Hold.both(Site.HAND));
  }

  /**
   * A weight that hangs from a belt, in front.
   *
   * @param mass 0 to 200 kg
   * @return the load
   * @throws Refused if the mass is missing or outside
   */
  public static Hung belt(Quantity<Mass> mass) {
    return new Hung("belt", Ask.mass("belt's weight", mass, 0, 200), Hold.both(Site.BELT_FRONT));
  }

  /**
   * A plain weight on the body, on both sides where the site has two.
   *
   * @param mass all of it, 0 to 300 kg
   * @param site where
   * @return the load
   * @throws Refused if the mass is missing or outside
   */
  public static Hung weight(Quantity<Mass> mass, Site site) {
    return new Hung("weight", Ask.mass("weight", mass, 0, 300), Hold.both(site));
  }

  /**
   * A plain weight on one side.
   *
   * @param mass all of it, 0 to 300 kg
   * @param site where
   * @param side left or right
   * @return the load
   * @throws Refused if the mass is missing or outside
   */
  public static Hung weight(Quantity<Mass> mass, Site site, Side side) {
    return new Hung("weight", Ask.mass("weight", mass, 0, 300), List.of(Hold.of(site, side)));
  }

  @Override
  public String description() {
    return String.format(
        Locale.ROOT, "%s %.1f kg at the %s", source, kilograms, Holds.words(holds));
  }

  @Override
  public double mass() {
    return kilograms;
  }

  @Override
  public List<Force> forces(Placement where) {
    return Holds.share(source, holds, where, Gravity.VECTOR.scalarMultiply(kilograms));
  }

  @Override
  public String toString() {
    return description();
  }
}
