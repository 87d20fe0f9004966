package org.leverbook.load;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Site;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.pose.Accelerations;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * Chains that hang from a bar to the floor, as many on one end as on the other: what has left the
 * floor weighs on the bar, m = q · min(h, L) for each side, with q the mass per metre on one side,
 * h the height of the bar and L the chains' length.
 *
 * <p>Mass per metre of short-link steel chain comes from {@code equipment/chains.csv} (DIN 766 as
 * reprinted); between its sizes, and beyond them, it goes with the square of the steel's diameter
 * from the nearest size.
 *
 * @param perMetre q, kilograms per metre on each side
 * @param length L, metres
 * @param grasps where the bar rests on the body
 */
public record Chains(double perMetre, double length, Grasps grasps) implements Load {

  private static final DataTable STEEL = DataTable.read("equipment/chains.csv");

  /**
   * Chains on a bar in both hands.
   *
   * @param perMetre mass of one metre on each side, 0 to 50 kg
   * @param length of the chains, 10 cm to 5 m
   * @return the chains
   * @throws Refused if a value is missing or outside
   */
  public static Chains of(Quantity<Mass> perMetre, Quantity<Length> length) {
    return new Chains(
        Ask.mass("chain's mass per metre", perMetre, 0, 50),
        Ask.length("chain's length", length, 0.1, 5),
        Grasps.BOTH_HANDS);
  }

  /**
   * Chains by the thickness of their links, one on each side of a bar in both hands.
   *
   * @param link diameter of the link's steel, 4 to 30 mm
   * @param length of the chains, 10 cm to 5 m
   * @return the chains
   * @throws Refused if a value is missing or outside
   */
  public static Chains ofSteel(Quantity<Length> link, Quantity<Length> length) {
    double millimetres = 1000 * Ask.length("chain's link thickness", link, 0.004, 0.030);
    return new Chains(
        massPerMetre(millimetres), Ask.length("chain's length", length, 0.1, 5), Grasps.BOTH_HANDS);
  }

  private static double massPerMetre(double millimetres) {
    DataRow nearest =
        STEEL.rows().stream()
            .min(Comparator.comparingDouble(r -> Math.abs(r.number("diameter_mm") - millimetres)))
            .orElseThrow();
    double scale = millimetres / nearest.number("diameter_mm");
    return nearest.number("mass_per_metre_kg") * scale * scale;
  }

  /**
   * On a bar that rests elsewhere than in the hands.
   *
   * @param site as in {@code UPPER_BACK_HIGH}
   * @return the changed chains
   */
  public Chains on(Site site) {
    return new Chains(perMetre, length, Grasps.at(site));
  }

  /**
   * What hangs on the bar.
   *
   * @param barHeight metres above the floor
   * @return kilograms, both sides together
   * @throws Refused if the height is no number
   */
  public double hanging(double barHeight) {
    Ask.number("height of the bar in metres", barHeight, -Double.MAX_VALUE, Double.MAX_VALUE);
    return 2 * perMetre * Math.max(0, Math.min(barHeight, length));
  }

  @Override
  public String source() {
    return "chains";
  }

  @Override
  public String law() {
    return "What has left the floor weighs on the bar: mass per metre times the "
        + "height, up to the chains' length.";
  }

  @Override
  public String description() {
    return String.format(
        Locale.ROOT, "chains, %.1f kg a metre on each side, %.2f m long", perMetre, length);
  }

  /** What hangs depends on the height of the bar, so the forces tell it. */
  @Override
  public double mass() {
    return 0;
  }

  @Override
  public List<Force> forces(Placement where) {
    Vector3D bar = grasps.handle(where);
    return grasps.sharing(source(), where, Gravity.VECTOR.scalarMultiply(hanging(bar.getY())));
  }

  /** Of what hangs, as if it went with the bar; that links join it on the way up is left out. */
  @Override
  public List<Force> inertia(Accelerations moving) {
    double hanging = hanging(grasps.handle(moving.where()).getY());
    Vector3D resisted = grasps.acceleration(moving).scalarMultiply(-hanging);
    return grasps.resisting(source(), moving, resisted);
  }

  @Override
  public String toString() {
    return description();
  }
}
