package org.leverbook.support;

import java.util.List;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;

/**
 * The level floor at height zero, under both feet: five points a foot (heel, ball and toe tip).
 *
 * @param body whose soles
 * @param friction between sole and floor, zero or more
 */
public record Floor(Body body, double friction) implements Support {

  /** A shoe on a dry gym floor: a careful value. Common practice, no source. */
  public static final double SHOE_FRICTION = 0.6;

  /**
   * How far a sole may be from the floor and still count as on it: rounding of a solver, metres.
   */
  private static final double TOUCHES = 1e-6;

  /** No ground holds better. */
  private static final double ROUGHEST = 10;

  /**
   * Checks the ground.
   *
   * @throws Refused if the friction is below zero, beyond 10 or no number
   */
  public Floor {
    checked(friction);
  }

  /** Checks the friction of ground under shoes. */
  static void checked(double friction) {
    if (!(friction >= 0 && friction <= ROUGHEST)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The friction of the ground is %s, but must lie between 0 and %.0f: about %.1f for a"
                  + " shoe on a gym floor, 0 for ice.",
              friction,
              ROUGHEST,
              SHOE_FRICTION));
    }
  }

  /**
   * A gym floor under shoes.
   *
   * @param body whose soles
   */
  public Floor(Body body) {
    this(body, SHOE_FRICTION);
  }

  @Override
  public String description() {
    return String.format(Locale.ROOT, "floor, friction %.2f", friction);
  }

  @Override
  public String source() {
    return "floor";
  }

  @Override
  public List<Contact> contacts(Placement where) {
    return body.soles().stream().map(sole -> contact(where, sole)).toList();
  }

  private Contact contact(Placement where, Body.SolePoint sole) {
    Vector3D point = where.toWorld(sole.segment(), sole.place());
    if (Math.abs(point.getY()) > TOUCHES) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The %s is %.1f cm %s the floor: put the foot flat.",
              sole.name(),
              100 * Math.abs(point.getY()),
              point.getY() > 0 ? "above" : "below"));
    }
    return new Contact(sole.name(), sole.segment(), point, Vector3D.PLUS_J, friction, false);
  }
}
