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
 */
public record Floor(Body body) implements Support {

  /**
   * How far a sole may be from the floor and still count as on it: rounding of a solver, metres.
   */
  private static final double TOUCHES = 1e-6;

  @Override
  public String source() {
    return "floor";
  }

  @Override
  public List<Contact> contacts(Placement where) {
    return body.soles().stream().map(sole -> contact(where, sole)).toList();
  }

  private static Contact contact(Placement where, Body.SolePoint sole) {
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
    return new Contact(sole.name(), sole.segment(), point, Vector3D.PLUS_J);
  }
}
