package org.leverbook.study;

import java.util.Locale;
import java.util.function.Predicate;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.quantity.Units;

/**
 * How a group is narrowed. Each word gives another group; the first one stays. {@link DrawnPeople}
 * keep their number and draw others who fit; a {@link Club} keeps those of its lifters who fit.
 *
 * @param <G> what kind of group
 */
public sealed interface Choosing<G extends Group> permits DrawnPeople, Club {

  /**
   * Those who fit a condition of one's own.
   *
   * <p>{@code people(200, 1).where("reach over 75 cm", p -> p.body().links().reach() > 0.75)}
   * works; a condition that nobody fits is refused with how many were looked at. Who makes the
   * condition itself be refused (a lift that this person cannot be set up for) does not fit.
   *
   * @param what the condition in words, for titles and messages
   * @param fits the condition
   * @return the narrowed group
   * @throws Refused if nobody or nearly nobody fits
   */
  G where(String what, Predicate<Person> fits);

  /**
   * Those who fit a condition of one's own, without words.
   *
   * @param fits the condition
   * @return the narrowed group
   * @throws Refused if nobody or nearly nobody fits
   */
  default G where(Predicate<Person> fits) {
    return where("own condition", fits);
  }

  /**
   * Those whose part is long for their stature.
   *
   * <p>{@code people(MALE, 100, 1).longFor(THIGH, percent(90))} are men whose thighs are longer
   * than those of 90 % of the men as tall as they are; see {@link Person#percentileForStature}.
   *
   * @param part which
   * @param above the percentile to be above, over 0 and under 100 %
   * @return the narrowed group
   * @throws Refused if the percentile is outside, the part does not vary, or nearly nobody fits
   */
  default G longFor(Part part, Quantity<Dimensionless> above) {
    double limit = limit(above, "percent(90)");
    varying(part);
    return where(
        String.format(
            Locale.ROOT,
            "%s over the %s percentile for stature",
            part.word(),
            Ordinals.of(100 * limit)),
        p -> p.percentileForStature(part) > 100 * limit);
  }

  /**
   * Those whose part is short for their stature.
   *
   * @param part which
   * @param below the percentile to be below, over 0 and under 100 %
   * @return the narrowed group
   * @throws Refused if the percentile is outside, the part does not vary, or nearly nobody fits
   */
  default G shortFor(Part part, Quantity<Dimensionless> below) {
    double limit = limit(below, "percent(10)");
    varying(part);
    return where(
        String.format(
            Locale.ROOT,
            "%s under the %s percentile for stature",
            part.word(),
            Ordinals.of(100 * limit)),
        p -> p.percentileForStature(part) < 100 * limit);
  }

  /**
   * Those of a stature between two limits, both included.
   *
   * @param from shortest
   * @param to tallest
   * @return the narrowed group
   * @throws Refused if the limits are the wrong way round, or nearly nobody fits
   */
  default G statureBetween(Quantity<Length> from, Quantity<Length> to) {
    double low = Si.metres(Ask.present("lowest stature", from, "cm(170)"));
    double high = Si.metres(Ask.present("highest stature", to, "cm(190)"));
    ordered("stature", low, high, Units.text(from), Units.text(to));
    return where(
        "stature " + Units.text(from) + " to " + Units.text(to),
        p -> Sizes.metres(p) >= low && Sizes.metres(p) <= high);
  }

  /**
   * Those of a body mass between two limits, both included.
   *
   * @param from lightest
   * @param to heaviest
   * @return the narrowed group
   * @throws Refused if the limits are the wrong way round, or nearly nobody fits
   */
  default G massBetween(Quantity<Mass> from, Quantity<Mass> to) {
    double low = Si.kilograms(Ask.present("lowest mass", from, "kg(70)"));
    double high = Si.kilograms(Ask.present("highest mass", to, "kg(90)"));
    ordered("mass", low, high, Units.text(from), Units.text(to));
    return where(
        "mass " + Units.text(from) + " to " + Units.text(to),
        p -> Sizes.kilograms(p) >= low && Sizes.kilograms(p) <= high);
  }

  /** Refuses a part that nobody has long or short. */
  private static void varying(Part part) {
    Person.of(Sex.MALE, Units.kg(80), Units.cm(178)).percentileForStature(part);
  }

  private static double limit(Quantity<Dimensionless> percentile, String example) {
    double limit = Si.fraction(Ask.present("percentile", percentile, example));
    if (!(limit > 0 && limit < 1)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The percentile is %s, but must lie over 0 and under 100 %%, as in %s.",
              Units.text(percentile),
              example));
    }
    return limit;
  }

  private static void ordered(String what, double low, double high, String from, String to) {
    if (low > high) {
      throw new Refused(
          "The lowest "
              + what
              + " ("
              + from
              + ") is above the highest ("
              + to
              + "): change them round.");
    }
  }
}
