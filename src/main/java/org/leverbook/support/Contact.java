package org.leverbook.support;

import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.quantity.Refused;

/**
 * One point at which a support touches a segment.
 *
 * <p>It pushes the body along its normal, never pulls, and holds sideways by dry friction: the
 * force across the normal is at most {@code friction} times the push. A grip (a hand around a fixed
 * bar, a strapped foot) may also pull, in any direction.
 *
 * @param name as in "right heel, outer"
 * @param segment index of the segment that is pushed
 * @param point in the world, metres
 * @param normal unit vector in the world, the way it pushes the body
 * @param friction coefficient of dry friction, zero or more
 * @param grips whether it can pull as well, in any direction
 */
public record Contact(
    String name, int segment, Vector3D point, Vector3D normal, double friction, boolean grips) {

  /**
   * Checks the friction.
   *
   * @throws Refused if it is below zero or no number
   */
  public Contact {
    if (!(friction >= 0) || Double.isInfinite(friction)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The friction at the %s is %s, but must be zero or more: about 0.6 for a shoe on a"
                  + " gym floor, 0 for ice.",
              name,
              friction));
    }
  }

  /**
   * A point without friction.
   *
   * @param name as in "right heel, outer"
   * @param segment index of the segment that is pushed
   * @param point in the world, metres
   * @param normal unit vector in the world, the way it pushes the body
   * @return the contact, which only pushes
   */
  public static Contact smooth(String name, int segment, Vector3D point, Vector3D normal) {
    return new Contact(name, segment, point, normal, 0, false);
  }
}
