package org.leverbook.load;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A force of given size and direction, wherever the body is: a partner who walks along, or the
 * answer of a handle on a rail. Where it points to a fixed place instead, see {@link SteadyForce}.
 *
 * @param kind as in "partner"
 * @param newtons how hard, zero or more
 * @param direction in which it pulls the body
 * @param grasps where it acts on the body
 */
public record DirectedForce(String kind, double newtons, Direction direction, Grasps grasps)
    implements Load {

  private static final double STRONGEST = 20_000;

  /**
   * Checks what it is made of.
   *
   * @throws Refused if a part is missing, or a number beyond sense
   */
  public DirectedForce {
    Ask.present("kind of the force", kind, "\"partner\"");
    Ask.number("force in newtons", newtons, 0, Double.MAX_VALUE);
    Ask.present("direction it pulls in", direction, "FORWARD");
  }

  /**
   * A force on both hands.
   *
   * @param kind as in "partner"
   * @param force how hard, 0 to 20000 N
   * @param direction in which it pulls the hands
   * @return the load
   * @throws Refused if a value is missing or outside
   */
  public static DirectedForce of(
      String kind, Quantity<javax.measure.quantity.Force> force, Direction direction) {
    return new DirectedForce(
        kind,
        Ask.force(kind + "'s force", force, 0, STRONGEST),
        Ask.present("direction it pulls in", direction, "FORWARD"),
        Grasps.BOTH_HANDS);
  }

  /**
   * Acting elsewhere than on both hands.
   *
   * @param site as in {@code CHEST}
   * @return the changed load, on both sides where the site has two
   */
  public DirectedForce on(Site site) {
    return new DirectedForce(kind, newtons, direction, Grasps.at(site));
  }

  /**
   * Acting on one side.
   *
   * @param site as in {@code HAND}
   * @param side left or right
   * @return the changed load
   */
  public DirectedForce on(Site site, Side side) {
    return new DirectedForce(kind, newtons, direction, Grasps.at(site, side));
  }

  @Override
  public String source() {
    return kind;
  }

  @Override
  public String law() {
    return "A force of given size and direction, wherever the body is.";
  }

  @Override
  public String description() {
    return String.format(Locale.ROOT, "%s %.0f N %s", kind, newtons, direction.word());
  }

  @Override
  public double mass() {
    return 0;
  }

  @Override
  public boolean deadWeight() {
    return true;
  }

  @Override
  public List<Force> forces(Placement where) {
    return newtons == 0
        ? List.of()
        : grasps.sharing(kind, where, direction.line().scalarMultiply(newtons));
  }

  @Override
  public Optional<Load> times(double factor) {
    Ask.factor(factor);
    return Optional.of(new DirectedForce(kind, factor * newtons, direction, grasps));
  }

  @Override
  public String toString() {
    return description();
  }
}
