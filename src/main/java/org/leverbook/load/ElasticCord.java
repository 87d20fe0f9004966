package org.leverbook.load;

import java.util.List;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;

/**
 * A straight elastic cord or band from a fixed point of the world to a point of one segment: T = k
 * (L - L0) while it is stretched, nothing while it is slack.
 *
 * <p>Symbols: T tension (N), k stiffness (N/m), L length now (m), L0 length at which it begins to
 * pull (m). Tension of exercise tubing is close to linear in stretch (Hughes, Hurd, Jones and
 * Sprigle 1999, J Orthop Sports Phys Ther 29:413-420, from memory); real bands are stiffer at first
 * and give less on the way back, which this law leaves out. Its own weight is left out too.
 *
 * @param anchor its fixed end, in the world, metres
 * @param restLength L0, metres, zero or more
 * @param stiffness k, newtons per metre, more than zero
 * @param segment index of the segment it is held by
 * @param place where, in that segment's frame, metres
 */
public record ElasticCord(
    Vector3D anchor, double restLength, double stiffness, int segment, Vector3D place)
    implements Load {

  /**
   * Checks the law.
   *
   * @throws Refused if the stiffness is not above zero or the rest length below zero
   */
  public ElasticCord {
    if (!(stiffness > 0) || Double.isInfinite(stiffness)) {
      throw new Refused(
          "The band's stiffness is " + stiffness + " N/m, but must be a number above zero.");
    }
    if (!(restLength >= 0) || Double.isInfinite(restLength)) {
      throw new Refused(
          "The band's unstretched length is " + restLength + " m, but must be zero or more.");
    }
  }

  /**
   * How far it is stretched.
   *
   * @param where where the body is
   * @return metres beyond its rest length; zero while slack
   */
  public double stretch(Placement where) {
    return Math.max(0, anchor.distance(where.toWorld(segment, place)) - restLength);
  }

  /**
   * How hard it pulls.
   *
   * @param where where the body is
   * @return newtons, zero while slack
   */
  public double tension(Placement where) {
    return stiffness * stretch(where);
  }

  /**
   * The stretch at which it pulls with a given force: the law read backwards.
   *
   * @param newtons the force, zero or more
   * @return metres beyond its rest length
   * @throws Refused if the force is negative: a cord cannot push
   */
  public double stretchFor(double newtons) {
    if (!(newtons >= 0)) {
      throw new Refused(
          "A band cannot push: it was asked for " + newtons + " N. Give 0 N or more.");
    }
    return newtons / stiffness;
  }

  @Override
  public String source() {
    return "band";
  }

  @Override
  public String description() {
    return String.format(Locale.ROOT, "band %.0f N/m from %.2f m", stiffness, restLength);
  }

  @Override
  public double mass() {
    return 0;
  }

  @Override
  public List<Force> forces(Placement where) {
    double tension = tension(where);
    if (tension == 0) {
      return List.of();
    }
    Vector3D end = where.toWorld(segment, place);
    Vector3D towards = anchor.subtract(end).normalize();
    return List.of(Force.ofLoad(source(), segment, end, towards.scalarMultiply(tension)));
  }
}
