package org.leverbook.load;

import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/**
 * A force whose size and direction the coach gives: a partner's hand, or a handle that does not
 * move.
 *
 * @param source what a table calls it
 * @param force as it acts on the body, in the world, newtons
 * @param holds where; each takes an equal part
 */
public record GivenForce(String source, Vector3D force, List<Hold> holds) implements Load {

  private static final double MOST = 10_000;

  /** Keeps its own copy of the list. */
  public GivenForce {
    holds = List.copyOf(holds);
  }

  /**
   * A partner's hand that presses on the body.
   *
   * @param size 0 to 10,000 N
   * @param towards where it presses
   * @return the load, on both hands until {@link #at} says otherwise
   * @throws Refused if the size is missing or outside
   */
  public static GivenForce partner(Quantity<javax.measure.quantity.Force> size, Direction towards) {
    return new GivenForce(
        "partner", towards.unit().scalarMultiply(newtons(size)), Hold.both(Site.HAND));
  }

  /**
   * A handle that does not move, pulled or pushed on: the handle answers with the opposite force.
   *
   * @param effort how hard the person pulls or pushes, 0 to 10,000 N
   * @param towards where the person pulls or pushes
   * @return the load, in both hands until {@link #at} says otherwise
   * @throws Refused if the effort is missing or outside
   */
  public static GivenForce immovable(
      Quantity<javax.measure.quantity.Force> effort, Direction towards) {
    return new GivenForce(
        "immovable handle", towards.unit().scalarMultiply(-newtons(effort)), Hold.both(Site.HAND));
  }

  /**
   * The same force at another site, shared by both sides where it has two.
   *
   * @param site where
   * @return the changed load
   */
  public GivenForce at(Site site) {
    return new GivenForce(source, force, Hold.both(site));
  }

  /**
   * The same force at a site of one side.
   *
   * @param site where
   * @param side left or right
   * @return the changed load
   */
  public GivenForce at(Site site, Side side) {
    return new GivenForce(source, force, List.of(Hold.of(site, side)));
  }

  private static double newtons(Quantity<javax.measure.quantity.Force> size) {
    double newtons = Ask.present("force", size, "newton(300)").to(Units.N).getValue().doubleValue();
    if (newtons < 0 || newtons > MOST) {
      throw new Refused(
          "The force is "
              + Units.text(size)
              + ", but must lie between 0 and 10000 N; its direction is told by a word such as UP.");
    }
    return newtons;
  }

  @Override
  public String description() {
    return String.format(
        Locale.ROOT, "%s %.0f N at the %s", source, force.getNorm(), Holds.words(holds));
  }

  @Override
  public double mass() {
    return 0;
  }

  @Override
  public List<Force> forces(Placement where) {
    return force.getNorm() == 0 ? List.of() : Holds.share(source, holds, where, force);
  }

  @Override
  public String toString() {
    return description();
  }
}
