package org.leverbook.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;

/**
 * A cable from a weight stack over pulleys without friction, held still. It pulls the handle
 * towards its last pulley with T = m g / n, where n is how far the handle travels for each metre of
 * the stack: 1 for a plain machine, 2 where the stack hangs in a loop.
 *
 * <p>A handle held at several places (a bar in two hands) is one point midway between them; each
 * place takes an equal part of the pull.
 *
 * @param kilograms m, the stack that moves
 * @param ratio n, travel of the handle over travel of the stack, more than zero
 * @param pulley the last pulley, in the world, metres
 * @param holds where it is held, at least one
 */
public record Cable(double kilograms, double ratio, Vector3D pulley, List<Hold> holds)
    implements Load {

  /**
   * A place at which the handle is held.
   *
   * @param segment index of the segment
   * @param place in that segment's frame, metres
   */
  public record Hold(int segment, Vector3D place) {}

  /**
   * Checks what was given.
   *
   * @throws Refused if the stack is negative, the ratio not above zero, or nothing holds the handle
   */
  public Cable {
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
    if (holds.isEmpty()) {
      throw new Refused("Nothing holds the cable's handle: say which hand or cuff does.");
    }
    holds = List.copyOf(holds);
  }

  /**
   * How hard the cable pulls.
   *
   * @return newtons
   */
  public double tension() {
    return kilograms * Gravity.STANDARD / ratio;
  }

  /**
   * How far the handle travels.
   *
   * @param stackTravel how far the stack rises, metres
   * @return metres
   */
  public double handleTravel(double stackTravel) {
    return ratio * stackTravel;
  }

  @Override
  public String source() {
    return "cable";
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
    List<Vector3D> points = new ArrayList<>();
    Vector3D handle = Vector3D.ZERO;
    for (Hold hold : holds) {
      Vector3D point = where.toWorld(hold.segment(), hold.place());
      points.add(point);
      handle = handle.add(point.scalarMultiply(1.0 / holds.size()));
    }
    double length = pulley.distance(handle);
    if (length == 0) {
      throw new Refused("The handle is at the pulley, so the cable has no direction. Move either.");
    }
    Vector3D pull = pulley.subtract(handle).scalarMultiply(tension() / length / holds.size());
    List<Force> forces = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      forces.add(Force.ofLoad(source(), holds.get(i).segment(), points.get(i), pull));
    }
    return forces;
  }
}
