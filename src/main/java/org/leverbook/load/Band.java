package org.leverbook.load;

import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;

/**
 * A straight elastic band or tube from a fixed point of the world to the body: it pulls by its
 * {@link Stretch} curve beyond its rest length, and not at all while it is slack.
 *
 * <p>Tension of exercise tubing is close to linear in stretch (Hughes, Hurd, Jones and Sprigle
 * 1999, J Orthop Sports Phys Ther 29:413-420, from memory); real bands are stiffer at first and
 * give less on the way back, which a measured curve can show for one way. Its own weight is left
 * out.
 *
 * @param anchor its fixed end, in the world, metres
 * @param restLength at which it begins to pull, metres
 * @param curve force against stretch
 * @param grasps where it is held
 */
public record Band(Vector3D anchor, double restLength, Stretch curve, Grasps grasps)
    implements Load {

  /**
   * Checks the rest length.
   *
   * @throws Refused if it is below zero, or no pull is told
   */
  public Band {
    Ask.vector("point the band is fixed to", anchor, Grasps.FARTHEST, "m");
    Ask.present("band's pull", curve, "Stretch.linear(300)");
    if (!(restLength >= 0) || Double.isInfinite(restLength)) {
      throw new Refused(
          "The band's unstretched length is " + restLength + " m, but must be zero or more.");
    }
  }

  /**
   * A band in both hands that pulls in proportion to its stretch.
   *
   * <p>{@code of(at(cm(0), cm(0)), cm(100), newton(150), cm(200))}: 1 m long, pulls 150 N when it
   * is 2 m long. A length at the pull that is not longer than the rest length is refused.
   *
   * @param anchor its fixed end, in the world, metres
   * @param rest unstretched length, 1 cm to 10 m
   * @param pull how hard it pulls at
   * @param length this length
   * @return the band
   * @throws Refused if a value is missing or outside
   */
  public static Band of(
      Vector3D anchor,
      Quantity<Length> rest,
      Quantity<javax.measure.quantity.Force> pull,
      Quantity<Length> length) {
    double unstretched = Ask.length("band's unstretched length", rest, 0.01, 10);
    double at = Si.metres(Ask.present("band's stretched length", length, "cm(200)"));
    double newtons = Ask.force("band's pull", pull, 1, 5000);
    if (!(at > unstretched)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "At %.1f cm a band of %.1f cm is not stretched, so it cannot pull %.1f N: give a length above %.1f cm.",
              100 * at,
              100 * unstretched,
              newtons,
              100 * unstretched));
    }
    return new Band(
        Ask.present("band's anchor", anchor, "at(cm(0), cm(0))"),
        unstretched,
        Stretch.linear(newtons / (at - unstretched)),
        Grasps.BOTH_HANDS);
  }

  /**
   * With a measured curve.
   *
   * @param measured force against stretch
   * @return the changed band
   */
  public Band pullingBy(Stretch measured) {
    return new Band(anchor, restLength, measured, grasps);
  }

  /**
   * Held elsewhere than in both hands.
   *
   * @param site hand, ankle, …
   * @param side left or right
   * @return the changed band
   */
  public Band heldBy(Site site, Side side) {
    return new Band(anchor, restLength, curve, Grasps.at(site, side));
  }

  /**
   * How far it is stretched.
   *
   * @param where where the body is
   * @return metres beyond its rest length; zero while slack
   */
  public double stretch(Placement where) {
    return Math.max(0, anchor.distance(grasps.handle(where)) - restLength);
  }

  /**
   * How hard it pulls.
   *
   * @param where where the body is
   * @return newtons, zero while slack
   */
  public double tension(Placement where) {
    return curve.force(stretch(where));
  }

  @Override
  public String source() {
    return "band";
  }

  @Override
  public String law() {
    return "It pulls straight towards its fixed end by its curve of force against "
        + "stretch beyond the rest length, and not at all while slack; tension "
        + "close to linear in stretch after Hughes, Hurd, Jones and Sprigle 1999 "
        + "(from memory); its own weight is left out.";
  }

  @Override
  public String description() {
    return String.format(
        Locale.ROOT,
        "band %.0f cm long, %.0f N when stretched by 10 cm",
        100 * restLength,
        curve.force(0.1));
  }

  @Override
  public double mass() {
    return 0;
  }

  @Override
  public List<Force> forces(Placement where) {
    double tension = tension(where);
    Vector3D line = anchor.subtract(grasps.handle(where));
    if (tension == 0 || line.getNorm() == 0) {
      return List.of();
    }
    return grasps.sharing(source(), where, line.normalize().scalarMultiply(tension));
  }

  @Override
  public String toString() {
    return description();
  }
}
