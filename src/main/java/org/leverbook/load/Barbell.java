package org.leverbook.load;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.leverbook.body.Site;
import org.leverbook.pose.Accelerations;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/**
 * A barbell held still: half its weight rests on each side of the body, in the hands or wherever it
 * lies.
 *
 * @param kilograms bar, collars and plates together
 * @param plateRadius of the largest plates, metres: the height of its axis when it lies on the
 *     floor
 * @param site where it rests: hands, upper back, front of the shoulders, hip crease
 * @param kind as in "barbell"
 * @param floorShare how much of its weight the floor still carries through the plates, 0 to 1
 */
public record Barbell(
    double kilograms, double plateRadius, Site site, String kind, double floorShare)
    implements Load {

  /** How far the plates may be off the floor and still rest on it, metres: rounding by eye. */
  private static final double TOUCHES = 0.01;

  /**
   * A bar that rests on the floor is moving at more than this, m/s or m/s2: poses are solved to
   * 1e-7 m, which differences between neighbours enlarge.
   */
  private static final double MOVING = 1e-3;

  private static final List<Site> RESTS =
      List.of(
          Site.HAND,
          Site.UPPER_BACK_HIGH,
          Site.UPPER_BACK_LOW,
          Site.FRONT_OF_SHOULDER,
          Site.HIP_CREASE);

  /**
   * Half of 0.450 m, the largest disc of competition (International Weightlifting Federation
   * technical rules, from memory; bars_and_plates.csv).
   */
  public static final double STANDARD_PLATE_RADIUS = 0.225;

  /**
   * Half of 28 mm, the men's bar (International Weightlifting Federation technical rules, as
   * reported on a secondary page; bars_and_plates.csv).
   */
  public static final double GRIP_RADIUS = 0.014;

  /**
   * A bar that the body carries alone.
   *
   * @param kilograms bar, collars and plates together
   * @param plateRadius of the largest plates, metres
   * @param site where it rests
   * @param kind as in "barbell"
   */
  public Barbell(double kilograms, double plateRadius, Site site, String kind) {
    this(kilograms, plateRadius, site, kind, 0);
  }

  /**
   * A barbell in both hands.
   *
   * @param kilograms bar, collars and plates together
   * @param plateRadius of the largest plates, metres
   */
  public Barbell(double kilograms, double plateRadius) {
    this(kilograms, plateRadius, Site.HAND, "barbell");
  }

  /**
   * A bar with side handles that the lifter stands in; half its weight hangs on each grip.
   *
   * @param mass bar, collars and plates together, 0 to 600 kg
   * @return the bar
   * @throws Refused if the mass is missing or outside
   */
  public static Barbell trap(Quantity<Mass> mass) {
    return new Barbell(
        Ask.mass("trap bar's mass", mass, 0, 600), STANDARD_PLATE_RADIUS, Site.HAND, "trap bar");
  }

  /**
   * A barbell with plates of the standard size.
   *
   * <p>{@code of(kg(140))} works; {@code of(kg(-5))} is refused: "The barbell's mass is -5 kg, but
   * must lie between 0 and 600 kg. A mass cannot be negative: is the minus a slip?"
   *
   * @param mass bar, collars and plates together, 0 to 600 kg
   * @return the barbell
   * @throws Refused if the mass is missing or outside
   */
  public static Barbell of(Quantity<Mass> mass) {
    return new Barbell(Ask.mass("barbell's mass", mass, 0, 600), STANDARD_PLATE_RADIUS);
  }

  /**
   * A bar and the discs of one end, as they are counted in the gym: {@code loaded(kg(20), kg(20),
   * kg(10))} is 80 kg.
   *
   * @param bar the empty bar, with its collars where they are used, 0 to 100 kg
   * @param eachSide the discs of one end, 0 to 50 kg each; the other end carries the same
   * @return the barbell, in both hands
   * @throws Refused if a mass is missing or outside, or all of it above 600 kg
   */
  @SafeVarargs
  public static Barbell loaded(Quantity<Mass> bar, Quantity<Mass>... eachSide) {
    double all = Ask.mass("empty bar's mass", bar, 0, 100);
    for (Quantity<Mass> disc : eachSide) {
      all += 2 * Ask.mass("disc's mass", disc, 0, 50);
    }
    return of(Units.kg(all));
  }

  /**
   * The same barbell with other plates.
   *
   * @param radius of the largest plate, 5 to 40 cm
   * @return the changed barbell
   * @throws Refused if the radius is missing or outside
   */
  public Barbell plateRadius(Quantity<Length> radius) {
    return new Barbell(
        kilograms, Ask.length("plate radius", radius, 0.05, 0.40), site, kind, floorShare);
  }

  /**
   * The same barbell lying elsewhere than in the hands.
   *
   * @param rest {@code HAND}, {@code UPPER_BACK_HIGH}, {@code UPPER_BACK_LOW}, {@code
   *     FRONT_OF_SHOULDER} or {@code HIP_CREASE}
   * @return the changed barbell
   * @throws Refused if a bar does not lie there
   */
  public Barbell on(Site rest) {
    Ask.present("place of the bar", rest, "UPPER_BACK_HIGH");
    if (!RESTS.contains(rest)) {
      throw new Refused(
          "A bar does not lie on the "
              + rest.word()
              + "; it can lie on "
              + RESTS.stream().map(Site::name).collect(Collectors.joining(", "))
              + ".");
    }
    if (rest != Site.HAND && floorShare > 0) {
      throw new Refused("A bar that still rests on the floor is in the hands, not on the body.");
    }
    return new Barbell(kilograms, plateRadius, rest, kind, floorShare);
  }

  /**
   * The same barbell pulled at, but not off the floor yet: its plates still press on the floor with
   * a share of its weight, and the hands carry the rest.
   *
   * @param share of its weight that the floor carries, 0 to 100 %
   * @return the changed barbell
   * @throws Refused if the share is missing or outside, or the bar is not in the hands
   */
  public Barbell stillOnFloor(Quantity<Dimensionless> share) {
    double part = Ask.share("share that the floor carries", share, 0, 1);
    if (site != Site.HAND) {
      throw new Refused(
          "A bar on the " + site.word() + " does not rest on the floor: leave out .on(…) first.");
    }
    return new Barbell(kilograms, plateRadius, site, kind, part);
  }

  @Override
  public String source() {
    return "bar";
  }

  @Override
  public String law() {
    return "Half of its weight acts straight down on each side where it is held or "
        + "lies, with the standard gravity of 9.80665 m/s².";
  }

  @Override
  public String description() {
    String where = site == Site.HAND ? "" : " on the " + site.word();
    String floor =
        floorShare == 0
            ? ""
            : String.format(
                Locale.ROOT, ", %.1f kg of it still on the floor", floorShare * kilograms);
    return String.format(Locale.ROOT, "%s %.1f kg%s%s", kind, kilograms, where, floor);
  }

  @Override
  public Optional<String> note() {
    double weight = kilograms * Gravity.STANDARD;
    return floorShare == 0
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "The floor pushes up at the bar's plates with %.0f N; of the bar's %.0f N the hands"
                    + " carry the other %.0f N, and only these count as \"bar\".",
                floorShare * weight,
                weight,
                (1 - floorShare) * weight));
  }

  /** What the body carries of it. */
  @Override
  public double mass() {
    return (1 - floorShare) * kilograms;
  }

  /** It hangs on the grips wherever they are, unless its plates must be on the floor. */
  @Override
  public boolean deadWeight() {
    return floorShare == 0;
  }

  @Override
  public List<Force> forces(Placement where) {
    Grasps grasps = Grasps.at(site);
    if (floorShare > 0) {
      double above = grasps.handle(where).getY() - plateRadius;
      if (Math.abs(above) > TOUCHES) {
        throw new Refused(
            String.format(
                Locale.ROOT,
                "The plates are %.1f cm %s the floor, so the floor cannot carry %.0f %% of the bar:"
                    + " bring the bar to %.1f cm, or leave out .stillOnFloor(…).",
                100 * Math.abs(above),
                above > 0 ? "above" : "inside",
                100 * floorShare,
                100 * plateRadius));
      }
    }
    return grasps.sharing(source(), where, Gravity.VECTOR.scalarMultiply(mass()));
  }

  /** On the floor it does not move. */
  @Override
  public List<Force> inertia(Accelerations moving) {
    if (floorShare > 0) {
      for (Force force : forces(moving.where())) {
        if (moving.acceleration(force.segment(), force.point()).getNorm() > MOVING
            || moving.velocity(force.segment(), force.point()).getNorm() > MOVING) {
          throw new Refused(
              "A bar that still rests on the floor does not move: take .stillOnFloor(…) off for a"
                  + " movement.");
        }
      }
      return List.of();
    }
    return Load.super.inertia(moving);
  }

  @Override
  public Optional<Load> times(double factor) {
    Ask.factor(factor);
    return Optional.of(new Barbell(factor * kilograms, plateRadius, site, kind, floorShare));
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
