package org.leverbook.load;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Accelerations;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A bar whose one end turns on the floor and whose other end is loaded and held.
 *
 * <p>The hands press square to the bar: F = g (m a + M b / 2) cos e / h, with m the plates at a
 * from the pivot, M the bar of length b, e its angle above the level, h the distance from pivot to
 * hands. What acts along the bar the pivot takes (assumption: a hand that only lifts does not pull
 * along).
 *
 * @param pivot in the world, metres
 * @param plates m, kilograms
 * @param bar M, kilograms
 * @param length b, metres; the plates sit at its end, a = b
 * @param grasps where it is held
 */
public record PivotingBar(Vector3D pivot, double plates, double bar, double length, Grasps grasps)
    implements Load {

  /**
   * A men's bar: 20 kg, 2.2 m (International Weightlifting Federation technical rules, as reported
   * on a secondary page).
   */
  static final double USUAL_BAR = 20;

  static final double USUAL_LENGTH = 2.2;

  private static final double SHORTEST_REACH = 0.2;

  /**
   * Checks the pivot.
   *
   * @throws Refused if it is missing, or beyond any gym
   */
  public PivotingBar {
    Ask.vector("pivot of the bar", pivot, Grasps.FARTHEST, "m");
  }

  /**
   * A men's bar in both hands.
   *
   * @param pivot its end on the floor, in the world, metres
   * @param plates 0 to 300 kg
   * @return the load
   * @throws Refused if a value is missing or outside
   */
  public static PivotingBar of(Vector3D pivot, Quantity<Mass> plates) {
    return new PivotingBar(
        Ask.present("pivot's place", pivot, "at(cm(150), cm(0))"),
        Ask.mass("plates' mass", plates, 0, 300),
        USUAL_BAR,
        USUAL_LENGTH,
        Grasps.BOTH_HANDS);
  }

  /**
   * With another bar.
   *
   * @param mass 1 to 50 kg
   * @param barLength 50 cm to 3 m
   * @return the changed load
   * @throws Refused if a value is missing or outside
   */
  public PivotingBar bar(Quantity<Mass> mass, Quantity<Length> barLength) {
    return new PivotingBar(
        pivot,
        plates,
        Ask.mass("bar's mass", mass, 1, 50),
        Ask.length("bar's length", barLength, 0.5, 3),
        grasps);
  }

  /**
   * Held in one hand.
   *
   * @param side left or right
   * @return the changed load
   */
  public PivotingBar in(Side side) {
    return new PivotingBar(pivot, plates, bar, length, Grasps.at(Site.HAND, side));
  }

  @Override
  public String source() {
    return "pivoting bar";
  }

  @Override
  public String law() {
    return "The hands press square to the bar, in balance about the end on the "
        + "floor; what acts along the bar the pivot takes (assumption).";
  }

  @Override
  public String description() {
    return String.format(Locale.ROOT, "pivoting bar %.1f kg with %.1f kg at its end", bar, plates);
  }

  /** The pivot carries part of it, so the forces tell what the hands carry. */
  @Override
  public double mass() {
    return 0;
  }

  @Override
  public List<Force> forces(Placement where) {
    Vector3D along = grasps.handle(where).subtract(pivot);
    double reach = along.getNorm();
    if (reach < SHORTEST_REACH || reach > length) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The hands are %.0f cm from the pivot, but this bar is held between %.0f and %.0f cm from it. Move the"
                  + " pivot or the lifter.",
              100 * reach,
              100 * SHORTEST_REACH,
              100 * length));
    }
    Vector3D line = along.scalarMultiply(1 / reach);
    // Gravity's part square to the bar; its length is g cos e.
    Vector3D square = Gravity.VECTOR.subtract(line.scalarMultiply(Gravity.VECTOR.dotProduct(line)));
    double moved = (plates * length + bar * length / 2) / reach;
    return grasps.sharing(source(), where, square.scalarMultiply(moved));
  }

  /**
   * Plates and bar turn about the pivot: moment of inertia m b² + M b² / 3; what the hand feels is
   * square to the bar.
   */
  @Override
  public List<Force> inertia(Accelerations moving) {
    Vector3D along = grasps.handle(moving.where()).subtract(pivot);
    double reach = along.getNorm();
    Vector3D line = along.scalarMultiply(1 / reach);
    Vector3D speed = grasps.velocity(moving);
    Vector3D turning = line.crossProduct(speed).scalarMultiply(1 / reach);
    // The hand may slide along the bar, which changes how its speed turns it.
    Vector3D quickening =
        line.crossProduct(grasps.acceleration(moving))
            .subtract(turning.scalarMultiply(2 * line.dotProduct(speed)))
            .scalarMultiply(1 / reach);
    double resists = length * length * (plates + bar / 3);
    Vector3D felt = quickening.crossProduct(line).scalarMultiply(-resists / reach);
    return grasps.resisting(source(), moving, felt);
  }

  @Override
  public Optional<Load> times(double factor) {
    Ask.factor(factor);
    return Optional.of(new PivotingBar(pivot, factor * plates, bar, length, grasps));
  }

  @Override
  public OptionalDouble counted() {
    return OptionalDouble.of(plates);
  }

  @Override
  public String toString() {
    return description();
  }
}
