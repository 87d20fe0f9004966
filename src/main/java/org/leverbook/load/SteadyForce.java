package org.leverbook.load;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A force of given size towards a point: a partner's hand, or the answer of a handle that does not
 * move (the harder one pulls, the harder it pulls back: the coach gives how hard).
 *
 * @param kind as in "partner"
 * @param newtons how hard, zero or more
 * @param towards the point it pulls to, in the world, metres
 * @param grasps where it acts on the body
 */
public record SteadyForce(String kind, double newtons, Vector3D towards, Grasps grasps)
    implements Load {

  private static final double STRONGEST = 20_000;

  /** Nearer than this there is no direction, metres. */
  private static final double NO_DIRECTION = 0.01;

  /**
   * Checks what it is made of.
   *
   * @throws Refused if a part is missing, or a number beyond sense
   */
  public SteadyForce {
    Ask.present("kind of the force", kind, "\"partner\"");
    Ask.number("force in newtons", newtons, 0, Double.MAX_VALUE);
    Ask.vector("point it pulls to", towards, Grasps.FARTHEST, "m");
  }

  /**
   * A force on both hands.
   *
   * @param kind as in "fixed handle"
   * @param force how hard, 0 to 20000 N
   * @param towards the point it pulls to, in the world, metres
   * @return the load
   * @throws Refused if a value is missing or outside
   */
  public static SteadyForce of(
      String kind, Quantity<javax.measure.quantity.Force> force, Vector3D towards) {
    return new SteadyForce(
        kind,
        Ask.force(kind + "'s force", force, 0, STRONGEST),
        Ask.present("point it pulls to", towards, "at(cm(100), cm(100))"),
        Grasps.BOTH_HANDS);
  }

  /**
   * Acting elsewhere than on both hands.
   *
   * @param site as in {@code CHEST}
   * @return the changed load, on both sides where the site has two
   */
  public SteadyForce on(Site site) {
    return new SteadyForce(kind, newtons, towards, Grasps.at(site));
  }

  /**
   * Acting on one side.
   *
   * @param site as in {@code HAND}
   * @param side left or right
   * @return the changed load
   */
  public SteadyForce on(Site site, Side side) {
    return new SteadyForce(kind, newtons, towards, Grasps.at(site, side));
  }

  @Override
  public String source() {
    return kind;
  }

  @Override
  public String law() {
    return "A force of given size towards a given point.";
  }

  @Override
  public String description() {
    return String.format(Locale.ROOT, "%s %.0f N", kind, newtons);
  }

  @Override
  public double mass() {
    return 0;
  }

  @Override
  public List<Force> forces(Placement where) {
    Vector3D line = towards.subtract(grasps.handle(where));
    if (line.getNorm() < NO_DIRECTION) {
      throw new Refused(
          "The "
              + kind
              + " pulls towards the very place it acts on, so it has no direction. Move the point.");
    }
    return grasps.sharing(kind, where, line.normalize().scalarMultiply(newtons));
  }

  @Override
  public Optional<Load> times(double factor) {
    Ask.factor(factor);
    return Optional.of(new SteadyForce(kind, factor * newtons, towards, grasps));
  }

  @Override
  public String toString() {
    return description();
  }
}
