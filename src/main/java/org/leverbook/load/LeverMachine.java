package org.leverbook.load;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
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
 * A machine whose lever turns about a level axis from left to right: the body holds one arm, the
 * plates hang on another, or a stack pulls over a cam.
 *
 * <p>Balance about the pivot, in the side plane: the handle is pressed square to its arm with F = T
 * / r, where r is the distance from pivot to handle and T the moment of the resistance: m g a sin
 * (angle of the plates' arm from straight down) for plates, m g c(angle) for a cam of radius c.
 * What acts along the arm the pivot takes. The lever's own weight is left out.
 *
 * @param pivot in the world, metres; its sideways place does not matter
 * @param kilograms m, plates or stack
 * @param arm a, from pivot to plates, metres; zero where a cam is used
 * @param offset the plates' arm seen from the handle's arm, radians, positive towards the top of a
 *     forward-pointing handle (right-handed about the axis to the right)
 * @param cam radius against the angle of the handle's arm; empty where plates hang
 * @param grasps where it is held
 */
public record LeverMachine(
    Vector3D pivot, double kilograms, double arm, double offset, Optional<Cam> cam, Grasps grasps)
    implements Load {

  /** No arm goes round more often, radians. */
  private static final double MANY_TURNS = 1_000 * 2 * Math.PI;

  private static final double SHORTEST = 0.05;

  /**
   * Checks the pivot.
   *
   * @throws Refused if it is missing, or beyond any gym
   */
  public LeverMachine {
    Ask.vector("pivot of the machine", pivot, Grasps.FARTHEST, "m");
  }

  /**
   * Plates on the lever.
   *
   * @param pivot in the world, metres
   * @param plates 0 to 500 kg
   * @param arm from pivot to plates, 5 cm to 2 m
   * @return the machine, its plates on the handle's own arm, held in both hands
   * @throws Refused if a value is missing or outside
   */
  public static LeverMachine of(Vector3D pivot, Quantity<Mass> plates, Quantity<Length> arm) {
    return new LeverMachine(
        Ask.present("pivot's place", pivot, "at(cm(20), cm(90))"),
        Ask.mass("plates' mass", plates, 0, 500),
        Ask.length("plates' arm", arm, 0.05, 2),
        0,
        Optional.empty(),
        Grasps.BOTH_HANDS);
  }

  /**
   * A stack that pulls over a cam instead of plates.
   *
   * @param pivot in the world, metres
   * @param stack 0 to 500 kg
   * @param cam radius against the angle of the handle's arm
   * @return the machine, held in both hands
   * @throws Refused if a value is missing or outside
   */
  public static LeverMachine of(Vector3D pivot, Quantity<Mass> stack, Cam cam) {
    return new LeverMachine(
        Ask.present("pivot's place", pivot, "at(cm(20), cm(90))"),
        Ask.mass("stack", stack, 0, 500),
        0,
        0,
        Optional.of(Ask.present("cam", cam, "Cam.round(cm(10))")),
        Grasps.BOTH_HANDS);
  }

  /**
   * With the plates' arm turned against the handle's arm.
   *
   * @param angle -180 to 180 degrees; 180 puts the plates opposite the handle
   * @return the changed machine
   * @throws Refused if the angle is missing or outside
   */
  public LeverMachine platesTurnedBy(Quantity<Angle> angle) {
    double radians = Ask.angle("angle of the plates' arm", angle, -Math.PI, Math.PI);
    return new LeverMachine(pivot, kilograms, arm, radians, cam, grasps);
  }

  /**
   * Held elsewhere than in both hands.
   *
   * @param site as in {@code SHIN}
   * @return the changed machine, on both sides where the site has two
   */
  public LeverMachine heldBy(Site site) {
    return new LeverMachine(pivot, kilograms, arm, offset, cam, Grasps.at(site));
  }

  /**
   * Held on one side.
   *
   * @param site as in {@code HAND}
   * @param side left or right
   * @return the changed machine
   */
  public LeverMachine heldBy(Site site, Side side) {
    return new LeverMachine(pivot, kilograms, arm, offset, cam, Grasps.at(site, side));
  }

  @Override
  public String source() {
    return "machine";
  }

  @Override
  public String law() {
    return "The handle presses square to its arm, in balance about the pivot with "
        + "the plates or the stack over its cam; the lever's own weight is left "
        + "out.";
  }

  @Override
  public String description() {
    return cam.isEmpty()
        ? String.format(Locale.ROOT, "lever machine %.1f kg at %.0f cm", kilograms, 100 * arm)
        : String.format(Locale.ROOT, "lever machine %.1f kg over a cam", kilograms);
  }

  /** The pivot carries it. */
  @Override
  public double mass() {
    return 0;
  }

  @Override
  public List<Force> forces(Placement where) {
    Vector3D handle = grasps.handle(where).subtract(pivot);
    double x = handle.getX();
    double y = handle.getY();
    double reach = Math.hypot(x, y);
    if (reach < SHORTEST) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The handle is %.1f cm from the machine's pivot: it needs at least %.0f cm to turn it.",
              100 * reach,
              100 * SHORTEST));
    }
    double moment = moment(Math.atan2(y, x));
    // Square to the handle's arm, turning it about +Z.
    Vector3D square = new Vector3D(-y / reach, x / reach, 0);
    return grasps.sharing(source(), where, square.scalarMultiply(moment / reach));
  }

  /**
   * The resistance's moment about the pivot.
   *
   * @param handleAngle of the handle's arm above straight ahead, radians
   * @return newton metres about the axis to the right (+Z), negative where it turns a
   *     forward-pointing handle down
   * @throws Refused if the angle is beyond a thousand turns, or no number
   */
  public double moment(double handleAngle) {
    Ask.number("angle of the handle in radians", handleAngle, -MANY_TURNS, MANY_TURNS);
    double weight = kilograms * Gravity.STANDARD;
    return cam.isEmpty()
        ? -weight * arm * Math.cos(handleAngle + offset)
        : -weight * cam.get().radius(handleAngle);
  }

  /**
   * Of plates that turn with the lever, m a², or of a stack that follows the cam, m c² with its
   * change of radius along the way.
   */
  @Override
  public List<Force> inertia(Accelerations moving) {
    Vector3D handle = grasps.handle(moving.where()).subtract(pivot);
    Vector3D speed = grasps.velocity(moving);
    Vector3D quick = grasps.acceleration(moving);
    double x = handle.getX();
    double y = handle.getY();
    double square = x * x + y * y;
    double turning = (x * speed.getY() - y * speed.getX()) / square;
    double sliding = (x * speed.getX() + y * speed.getY()) / square;
    double quickening = (x * quick.getY() - y * quick.getX()) / square - 2 * sliding * turning;
    double angle = Math.atan2(y, x);
    double moment;
    if (cam.isEmpty()) {
      moment = -kilograms * arm * arm * quickening;
    } else {
      double radius = cam.get().radius(angle);
      moment =
          -kilograms * radius * (radius * quickening + cam.get().slope(angle) * turning * turning);
    }
    Vector3D felt = new Vector3D(-y, x, 0).scalarMultiply(moment / square);
    return grasps.resisting(source(), moving, felt);
  }

  @Override
  public Optional<Load> times(double factor) {
    Ask.factor(factor);
    return Optional.of(new LeverMachine(pivot, factor * kilograms, arm, offset, cam, grasps));
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
