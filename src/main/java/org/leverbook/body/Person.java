package org.leverbook.body;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.quantity.Units;

/**
 * Who lifts: sex, body mass, stature and any proportions changed.
 *
 * <p>What stays constant when a part is made longer or shorter:
 *
 * <ul>
 *   <li><b>Stature</b> stays, unless {@link #statureFollows()}: those of shanks, thighs and trunk
 *       that were not changed give or take the difference, in proportion to their lengths. Arms,
 *       widths and foot length do not touch stature; the ankle's height goes with the foot.
 *   <li><b>Body mass</b> and every segment's share of it stay, unless {@link #massFollows()}: a
 *       longer thigh is then a slimmer one. With {@code massFollows()} a changed part weighs in
 *       proportion to its length, and body mass with it.
 * </ul>
 *
 * @param sex the sample that lengths and masses come from
 * @param kilograms body mass, before {@code massFollows} is applied
 * @param metres stature, before {@code statureFollows} is applied
 * @param changes factor on the usual length of each part changed
 * @param statureChanges whether stature follows the changes
 * @param massChanges whether body mass follows the changes
 * @param table the published masses
 * @param condition age and training, which decide strength
 * @param variation how this body differs from its kind; none unless how sure an answer is is asked
 */
public record Person(
    Sex sex,
    double kilograms,
    double metres,
    Map<Part, Double> changes,
    boolean statureChanges,
    boolean massChanges,
    SegmentTable table,
    Condition condition,
    Variation variation)
    implements Shown {

  private static final double LIGHTEST = 30;
  private static final double HEAVIEST = 300;
  private static final double SHORTEST = 1.2;
  private static final double TALLEST = 2.3;

  private static final double SMALLEST_FACTOR = 0.7;
  private static final double LARGEST_FACTOR = 1.4;

  /** Wide enough for every draw within the doubt of a body mass. */
  private static final double MOST_TIMES = 10;

  /** Keeps its own copy of the map. */
  public Person {
    EnumMap<Part, Double> copy = new EnumMap<>(Part.class);
    copy.putAll(changes);
    changes = Collections.unmodifiableMap(copy);
  }

  /**
   * An adult of usual proportions.
   *
   * <p>{@code of(MALE, kg(85), cm(178))} works; {@code of(MALE, kg(85), m(17.8))} is refused: "The
   * stature is 17.8 m, but must lie between 120 and 230 cm. Is a decimal point one place off?"
   *
   * @param sex the sample that lengths and masses come from
   * @param mass body mass, 30 to 300 kg
   * @param stature standing height without shoes, 1.2 to 2.3 m
   * @return the person
   * @throws Refused if a value is missing or outside
   */
  public static Person of(Sex sex, Quantity<Mass> mass, Quantity<Length> stature) {
    return usual(
        Ask.present("sex", sex, "MALE"),
        Ask.mass("body mass", mass, LIGHTEST, HEAVIEST),
        Ask.length("stature", stature, SHORTEST, TALLEST));
  }

  /** An adult of usual proportions, with values that were checked or come from a survey. */
  static Person usual(Sex sex, double kilograms, double metres) {
    return new Person(
        sex,
        kilograms,
        metres,
        Map.of(),
        false,
        false,
        SegmentTable.DE_LEVA_1996,
        Condition.USUAL,
        Variation.NONE);
  }

  /** Whether a mass and a stature are those that {@link #of} takes. */
  static boolean possible(double kilograms, double metres) {
    return kilograms >= LIGHTEST
        && kilograms <= HEAVIEST
        && metres >= SHORTEST
        && metres <= TALLEST;
  }

  /**
   * The same person with one part longer than usual.
   *
   * @param part what is longer
   * @param by by how much of its usual length, as in {@code percent(8)}
   * @return the changed person
   * @throws Refused if the length would leave 70 to 140 % of the usual one
   */
  public Person longer(Part part, Quantity<Dimensionless> by) {
    return scaled(part, 1 + Si.fraction(Ask.present("change", by, "percent(8)")));
  }

  /**
   * The same person with one part shorter than usual.
   *
   * @param part what is shorter
   * @param by by how much of its usual length, as in {@code percent(5)}
   * @return the changed person
   * @throws Refused if the length would leave 70 to 140 % of the usual one
   */
  public Person shorter(Part part, Quantity<Dimensionless> by) {
    return scaled(part, 1 - Si.fraction(Ask.present("change", by, "percent(5)")));
  }

  /**
   * The same person with one part of a measured length, joint centre to joint centre.
   *
   * @param part what was measured
   * @param length its length, as in {@code cm(46)}
   * @return the changed person
   * @throws Refused if the length is not 70 to 140 % of the usual one
   */
  public Person measured(Part part, Quantity<Length> length) {
    double usual = Links.usual(sex, metres).lengthOf(part);
    double asked =
        Ask.length(
            part.word() + " (length)", length, SMALLEST_FACTOR * usual, LARGEST_FACTOR * usual);
    return scaled(part, asked / usual);
  }

  /**
   * The same person, but stature is let grow or shrink with the changed parts.
   *
   * @return the changed person
   */
  public Person statureFollows() {
    return new Person(
        sex, kilograms, metres, changes, true, massChanges, table, condition, variation);
  }

  /**
   * The same person, but body mass is let grow or shrink with the changed parts.
   *
   * @return the changed person
   */
  public Person massFollows() {
    return new Person(
        sex, kilograms, metres, changes, statureChanges, true, table, condition, variation);
  }

  /**
   * The same person with masses from another published table.
   *
   * @param other the table
   * @return the changed person
   */
  public Person weighedBy(SegmentTable other) {
    return but(kilograms, Ask.present("segment table", other, "WINTER_2009"), condition, variation);
  }

  /**
   * The same person at an age. Only strength depends on it.
   *
   * <p>{@code aged(40)} works; {@code aged(7)} is refused: "The age is 7 years, but the published
   * strengths are of people between 18 and 80."
   *
   * @param years 18 to 80
   * @return the changed person
   * @throws Refused if the age is outside
   */
  public Person aged(int years) {
    return in(new Condition(years, condition.training()));
  }

  /**
   * The same person, trained so much with weights. Only strength depends on it.
   *
   * @param training {@code UNTRAINED}, {@code TRAINED} or {@code COMPETITIVE}
   * @return the changed person
   * @throws Refused if it is missing
   */
  public Person trained(Training training) {
    return in(new Condition(condition.years(), training));
  }

  /**
   * The same person at a training level told by its number.
   *
   * @param level 1 untrained, 2 trained, 3 competitive
   * @return the changed person
   * @throws Refused if there is no such level
   */
  public Person trained(int level) {
    return trained(Training.level(level));
  }

  private Person in(Condition other) {
    return but(kilograms, table, other, variation);
  }

  private Person but(double mass, SegmentTable masses, Condition how, Variation differences) {
    return new Person(
        sex, mass, metres, changes, statureChanges, massChanges, masses, how, differences);
  }

  /**
   * The same person, whose body differs so from what tables say of its kind.
   *
   * @param other the differences; they take the place of earlier ones
   * @return the changed person
   * @throws Refused if a length would leave what stature allows
   */
  public Person varied(Variation other) {
    Ask.present("variation", other, "Variation.NONE");
    Person person = but(kilograms, table, condition, other);
    Links.of(person);
    return person;
  }

  /**
   * The same person, so many times as heavy.
   *
   * @param factor on body mass, from a tenth to ten
   * @return the changed person
   * @throws Refused if the factor is no such number
   */
  public Person heavier(double factor) {
    if (!(factor >= 1 / MOST_TIMES && factor <= MOST_TIMES)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A person can be made 0.1 to 10 times as heavy, not %s times: 1.1 is ten per cent"
                  + " more.",
              factor));
    }
    return but(factor * kilograms, table, condition, variation);
  }

  /**
   * Body mass as it results.
   *
   * @return kilograms as a quantity
   */
  public Quantity<Mass> mass() {
    return Units.kg(massChanges ? Body.of(this).tree().mass() : kilograms);
  }

  /**
   * Stature as it results.
   *
   * @return centimetres as a quantity
   */
  public Quantity<Length> stature() {
    return Units.cm(100 * (statureChanges ? Links.of(this).stature() : metres));
  }

  /**
   * The body of this person.
   *
   * @return lengths, masses and joints
   */
  public Body body() {
    return Body.of(this);
  }

  /**
   * Where a part stands among people of the same sex and stature, by the survey's spreads and
   * correlations: {@code lifter.longer(THIGH, percent(8)).percentileForStature(THIGH)} is 94, so 94
   * of a hundred people as tall have shorter thighs.
   *
   * @param part which
   * @return a percentile, 0 to 100
   * @throws Refused if the part has no spread of its own in the survey's correlations: the neck
   */
  public double percentileForStature(Part part) {
    return 100 * ForStature.shareShorter(this, part);
  }

  /**
   * The changes in words.
   *
   * @return as in "thighs 8 % longer, stature kept, mass kept", or empty where there are none
   */
  public String changesInWords() {
    if (changes.isEmpty()) {
      return "";
    }
    StringJoiner words = new StringJoiner(", ");
    changes.forEach(
        (part, factor) ->
            words.add(
                String.format(
                    Locale.ROOT,
                    "%s %.1f %% %s",
                    part.word(),
                    100 * Math.abs(factor - 1),
                    factor >= 1 ? "longer" : "shorter")));
    words.add(statureChanges ? "stature follows" : "stature kept");
    words.add(massChanges ? "mass follows" : "mass kept");
    return words.toString();
  }

  @Override
  public String text() {
    String changed = changesInWords();
    return String.format(
        Locale.ROOT,
        "%s, %.1f kg, %.1f cm%s%s%s; masses: %s",
        sex == Sex.MALE ? "man" : "woman",
        Si.kilograms(mass()),
        100 * Si.metres(stature()),
        condition.words(),
        changed.isEmpty() ? "" : " (" + changed + ")",
        variation.sizes().isEmpty() ? "" : ", varied",
        table.source());
  }

  @Override
  public String toString() {
    return text();
  }

  /** The same person with several parts changed at once, each by a factor on its usual length. */
  Person with(Map<Part, Double> factors) {
    factors.forEach(
        (part, factor) -> {
          if (!(factor >= SMALLEST_FACTOR && factor <= LARGEST_FACTOR)) {
            throw new Refused("The " + part.word() + " would be beyond 70 to 140 % of usual.");
          }
        });
    return reshaped(factors);
  }

  private Person scaled(Part part, double factor) {
    Ask.present("part", part, "THIGH");
    if (!(factor >= SMALLEST_FACTOR && factor <= LARGEST_FACTOR)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The %s would have %.0f %% of their usual length; 70 to 140 %% can be asked for.",
              part.word(),
              100 * factor));
    }
    EnumMap<Part, Double> changed = new EnumMap<>(Part.class);
    changed.putAll(changes);
    changed.put(part, factor);
    return reshaped(changed);
  }

  /** With these lengths, if a body can be made of them. */
  private Person reshaped(Map<Part, Double> lengths) {
    Person person =
        new Person(
            sex,
            kilograms,
            metres,
            lengths,
            statureChanges,
            massChanges,
            table,
            condition,
            variation);
    Links.of(person);
    return person;
  }
}
