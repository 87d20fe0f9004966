package org.leverbook.load;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Accelerations;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A cable from a weight stack over pulleys. It pulls the handle towards its last pulley with T = m
 * g / n · (1 + s f), where n is how far the handle travels for each metre of the stack (1 for a
 * plain machine, 2 where the stack hangs in a loop; the product over a chain of pulleys), f the
 * share that friction takes, and s what the stack does: +1 while it is lifted, -1 while it is
 * lowered, 0 held still, where friction may help either way and is left out.
 *
 * @param kilograms m, the stack that moves
 * @param ratio n, travel of the handle over travel of the stack, more than zero
 * @param friction s f, from -0.9 to 0.9
 * @param pulley the last pulley, in the world, metres
 * @param grasps where the handle is held
 */
public record Cable(double kilograms, double ratio, double friction, Vector3D pulley, Grasps grasps)
    implements Load {

  /** Nearer than this the handle counts as at the pulley, metres. */
  private static final double AT_THE_PULLEY = 0.01;

  private static final double MOST_FRICTION = 0.9;

  /** No machine in a gym halves or doubles the way more than a few times (common practice). */
  private static final double LEAST_RATIO = 0.05;

  private static final double MOST_RATIO = 20;

  /**
   * Checks what was given.
   *
   * @throws Refused if the stack is negative, or the ratio not above zero
   */
  public Cable {
    Ask.vector("pulley's place", pulley, Grasps.FARTHEST, "m");
    if (!(kilograms >= 0) || Double.isInfinite(kilograms)) {
      throw new Refused("The stack is " + kilograms + " kg, but must be zero or more.");
    }
    if (!(ratio > 0) || Double.isInfinite(ratio)) {
      throw new Refused(
          "The pulley ratio is "
              + ratio
              + ", but must be above zero: 1 for a plain machine, 2 where the stack moves half as"
              + " far as the handle.");
    }
  }

  /**
   * A plain cable without friction.
   *
   * @param kilograms the stack
   * @param ratio travel of the handle over travel of the stack
   * @param pulley in the world, metres
   * @param grasps where the handle is held, at least one
   */
  public Cable(double kilograms, double ratio, Vector3D pulley, List<Grasp> grasps) {
    this(kilograms, ratio, 0, pulley, new Grasps(grasps));
  }

  /**
   * A plain cable, its handle in both hands.
   *
   * <p>{@code of(kg(50), at(cm(90), cm(5)))} pulls forward and down; {@code of(kg(-1), …)} is
   * refused.
   *
   * @param stack the mass that moves, 0 to 300 kg
   * @param pulley the last pulley, in the world, metres
   * @return the cable
   * @throws Refused if the mass is missing or outside
   */
  public static Cable of(Quantity<Mass> stack, Vector3D pulley) {
    return new Cable(
        Ask.mass("stack", stack, 0, 300),
        1,
        0,
        Ask.present("pulley's place", pulley, "at(cm(90), cm(5))"),
        Grasps.BOTH_HANDS);
  }

  /**
   * With pulleys between stack and handle.
   *
   * @param ratios for each, how far its far end travels for each metre of its near end: 2 for a
   *     loop, 0.5 for one the other way round; multiplied together
   * @return the changed cable
   * @throws Refused if one is not above zero
   */
  public Cable through(double... ratios) {
    double product = 1;
    for (double one : ratios) {
      if (!(one >= LEAST_RATIO && one <= MOST_RATIO)) {
        throw new Refused(
            String.format(
                Locale.ROOT,
                "A pulley ratio is %s, but must lie between %s and %s: 1 for a plain pulley, 2 for a"
                    + " loop that moves half as far as the handle.",
                one,
                LEAST_RATIO,
                MOST_RATIO));
      }
      product *= one;
    }
    return new Cable(kilograms, product, friction, pulley, grasps);
  }

  /**
   * While the stack rises: the pulleys' friction adds to its pull.
   *
   * @param share of the pull, 0 to 90 %
   * @return the changed cable
   * @throws Refused if the share is missing or outside
   */
  public Cable lifting(Quantity<Dimensionless> share) {
    double taken = Ask.share("friction of the pulleys", share, 0, MOST_FRICTION);
    return new Cable(kilograms, ratio, taken, pulley, grasps);
  }

  /**
   * While the stack sinks: the pulleys' friction carries part of it.
   *
   * @param share of the pull, 0 to 90 %
   * @return the changed cable
   * @throws Refused if the share is missing or outside
   */
  public Cable lowering(Quantity<Dimensionless> share) {
    double taken = Ask.share("friction of the pulleys", share, 0, MOST_FRICTION);
    return new Cable(kilograms, ratio, -taken, pulley, grasps);
  }

  /**
   * Held elsewhere than in both hands.
   *
   * @param site hand, ankle, …
   * @param side left or right
   * @return the changed cable
   */
  public Cable heldBy(Site site, Side side) {
    return new Cable(kilograms, ratio, friction, pulley, Grasps.at(site, side));
  }

  /**
   * How hard the cable pulls.
   *
   * @return newtons
   */
  public double tension() {
    return kilograms * Gravity.STANDARD / ratio * (1 + friction);
  }

  /**
   * How far the handle travels.
   *
   * @param stackTravel how far the stack rises, metres
   * @return metres
   * @throws Refused if it is more than 1000 m either way, or no number
   */
  public double handleTravel(double stackTravel) {
    return ratio * Ask.number("stack's travel in metres", stackTravel, -1_000, 1_000);
  }

  @Override
  public String source() {
    return "cable";
  }

  @Override
  public String law() {
    return "It pulls the handle straight towards the last pulley with stack times "
        + "gravity over the ratio of the pulleys; held still, friction is left out "
        + "unless it was told.";
  }

  @Override
  public String description() {
    return String.format(Locale.ROOT, "cable %.1f kg, %.3g : 1", kilograms, ratio);
  }

  /** None of the stack rests on the body: what it gives is a pull. */
  @Override
  public double mass() {
    return 0;
  }

  @Override
  public List<Force> forces(Placement where) {
    Vector3D line = pulley.subtract(grasps.handle(where));
    double length = line.getNorm();
    if (length < AT_THE_PULLEY) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The handle is at the pulley (%.1f cm away), so the cable has no direction. Move either.",
              100 * length));
    }
    return grasps.sharing(source(), where, line.scalarMultiply(tension() / length));
  }

  /**
   * The stack's: it moves 1/n as fast as the cable runs, so the handle feels m / n² times how the
   * cable's free length L speeds up, L'' = u·a + (v² - (u·v)²) / L along its line u. Pulleys and
   * rope weigh nothing here.
   */
  @Override
  public List<Force> inertia(Accelerations moving) {
    Vector3D line = grasps.handle(moving.where()).subtract(pulley);
    double length = line.getNorm();
    if (length < AT_THE_PULLEY) {
      return List.of();
    }
    Vector3D away = line.scalarMultiply(1 / length);
    Vector3D speed = grasps.velocity(moving);
    double running = away.dotProduct(speed);
    double quickening =
        away.dotProduct(grasps.acceleration(moving))
            + (speed.getNormSq() - running * running) / length;
    double pull = kilograms / (ratio * ratio) * quickening;
    return grasps.resisting(source(), moving, away.scalarMultiply(-pull));
  }

  @Override
  public Optional<Load> times(double factor) {
    Ask.factor(factor);
    return Optional.of(new Cable(factor * kilograms, ratio, friction, pulley, grasps));
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
