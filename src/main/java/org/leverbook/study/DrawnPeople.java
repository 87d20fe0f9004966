package org.leverbook.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.leverbook.body.Condition;
import org.leverbook.body.Person;
import org.leverbook.body.Population;
import org.leverbook.body.Sex;
import org.leverbook.body.Training;
import org.leverbook.data.Recent;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * Adults whose measures go together as in a survey, made when asked for.
 *
 * <p>Person number i depends on the seed, the wishes and i alone, not on how many there are or who
 * asked first. A wish ({@code longFor}, {@code where} …) keeps the size of the group: who does not
 * fit is drawn anew until someone does. The share of women is met exactly and spread evenly over
 * the numbers, also among those who fit a wish.
 */
public final class DrawnPeople extends Group implements Choosing<DrawnPeople> {

  private static final int MOST = 1_000_000;

  /** More draws than this are not made for one group. */
  private static final double MOST_DRAWS = 20_000_000;

  /** Draws for one person, in the mean draws it takes: missed once in 10^26. */
  private static final double PATIENCE = 60;

  /** Who fits may take many draws: so many are kept for those who ask again. */
  private static final int KEPT = 1024;

  private final int count;
  private final double women;
  private final Casting casting;
  private final Recent<Integer, Person> recent = new Recent<>(KEPT, this::found);
  private final Map<Sex, Casting.Fit> fits = new EnumMap<>(Sex.class);

  private DrawnPeople(int count, double women, Casting casting) {
    this.count = count;
    this.women = women;
    this.casting = casting;
    for (Sex sex : Sex.values()) {
      if (number(sex) > 0 && casting.wishful()) {
        fits.put(sex, casting.probe(sex, !fits.isEmpty()));
      }
    }
    double draws =
        fits.entrySet().stream().mapToDouble(e -> number(e.getKey()) / e.getValue().share()).sum();
    if (draws > MOST_DRAWS) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "%,d people who fit (%s) would take about %,.0f million draws; at most %,.0f million"
                  + " are made. Ask for at most %,d people, or for something less rare.",
              count,
              casting.words(),
              draws / 1e6,
              MOST_DRAWS / 1e6,
              (int) (count * MOST_DRAWS / draws)));
    }
  }

  /**
   * Adults of one sex.
   *
   * <p>{@code of(MALE, 20, 1)} works; {@code of(MALE, 0, 1)} is refused: "Between 1 and 1,000,000
   * people can be drawn, but 0 were asked."
   *
   * @param sex of all of them
   * @param count how many, 1 to a million
   * @param seed the same seed gives the same people
   * @return the people
   * @throws Refused if the count is outside
   */
  public static DrawnPeople of(Sex sex, int count, long seed) {
    double share = Ask.present("sex", sex, "MALE") == Sex.FEMALE ? 1 : 0;
    return new DrawnPeople(checked(count), share, Casting.open(seed));
  }

  /**
   * Adults, half of them women.
   *
   * @param count how many, 1 to a million
   * @param seed the same seed gives the same people
   * @return the people
   * @throws Refused if the count is outside
   */
  public static DrawnPeople of(int count, long seed) {
    return new DrawnPeople(checked(count), 0.5, Casting.open(seed));
  }

  private static int checked(int count) {
    if (count < 1 || count > MOST) {
      throw new Refused(
          "Between 1 and 1,000,000 people can be drawn, but " + count + " were asked for.");
    }
    return count;
  }

  /**
   * The same with another share of women.
   *
   * @param share 0 to 100 %
   * @return the changed group
   * @throws Refused if the share is outside
   */
  public DrawnPeople women(Quantity<Dimensionless> share) {
    return new DrawnPeople(count, Ask.share("share of women", share, 0, 1), casting);
  }

  /**
   * The same people at ages drawn evenly between two, both included. Ages decide strength only: the
   * survey's correlations are of all ages together.
   *
   * <p>{@code people(100, 1).aged(18, 60)} works; {@code aged(60, 18)} is refused.
   *
   * @param youngest years, from 18
   * @param oldest years, to 80
   * @return the changed group
   * @throws Refused if an age is outside or they are the wrong way round
   */
  public DrawnPeople aged(int youngest, int oldest) {
    Condition low = new Condition(youngest, Training.UNTRAINED);
    Condition high = new Condition(oldest, Training.UNTRAINED);
    if (low.years() > high.years()) {
      throw new Refused(
          "The youngest ("
              + youngest
              + " years) is older than the oldest ("
              + oldest
              + "): write aged("
              + oldest
              + ", "
              + youngest
              + ").");
    }
    return new DrawnPeople(count, women, casting.aged(youngest, oldest));
  }

  /**
   * The same people, all trained so much with weights. Training decides strength only.
   *
   * @param training {@code UNTRAINED}, {@code TRAINED} or {@code COMPETITIVE}
   * @return the changed group
   * @throws Refused if it is missing
   */
  public DrawnPeople trained(Training training) {
    return new DrawnPeople(
        count, women, casting.trained(Ask.present("training", training, "TRAINED")));
  }

  @Override
  public DrawnPeople where(String what, Predicate<Person> fits) {
    Ask.present("condition in words", what, "\"long thighs\"");
    Ask.present("condition", fits, "p -> p.metres() > 1.8");
    return new DrawnPeople(count, women, casting.with(new Casting.Wish(what, fits)));
  }

  @Override
  public Person get(int number) {
    if (number < 0 || number >= count) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "There is no person %,d: the group's numbers are 0 to %,d.",
              number,
              count - 1));
    }
    return casting.wishful() ? recent.get(number) : found(number);
  }

  private Person found(int number) {
    Sex sex = sex(number);
    Casting.Fit fit = fits.get(sex);
    return casting.person(sex, number, fit == null ? 1 : (int) Math.ceil(PATIENCE / fit.share()));
  }

  @Override
  public int size() {
    return count;
  }

  @Override
  public String label(int number) {
    return (sex(number) == Sex.MALE ? "man " : "woman ") + number;
  }

  @Override
  public String title() {
    String who =
        women == 0
            ? counted(count, "man", "men")
            : women == 1
                ? counted(count, "woman", "women")
                : counted(number(Sex.MALE), "man", "men")
                    + " and "
                    + counted(number(Sex.FEMALE), "woman", "women");
    return who + casting.title();
  }

  @Override
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (!fits.isEmpty()) {
      notes.add(
          fits.entrySet().stream()
              .map(
                  e ->
                      String.format(
                          Locale.ROOT,
                          "%s of %,d %s drawn",
                          percent(e.getValue().share()),
                          e.getValue().drawn(),
                          e.getKey() == Sex.MALE ? "men" : "women"))
              .collect(
                  Collectors.joining(
                      ", ",
                      "Who fits: ",
                      fits.size() > 1 ? "; the share of women is kept among them." : ".")));
    }
    notes.add("Drawn from the means and correlations of " + Population.SOURCE + ".");
    casting.ageNote().ifPresent(notes::add);
    return notes;
  }

  /** A share with two digits that count. */
  static String percent(double share) {
    return new java.math.BigDecimal(100 * share)
            .round(new java.math.MathContext(2))
            .stripTrailingZeros()
            .toPlainString()
        + " %";
  }

  private static String counted(int number, String one, String more) {
    return String.format(Locale.ROOT, "%,d %s", number, number == 1 ? one : more);
  }

  /** Women come as often as their share asks, as evenly as whole people allow. */
  private Sex sex(int number) {
    return womenBefore(number + 1) > womenBefore(number) ? Sex.FEMALE : Sex.MALE;
  }

  private int womenBefore(int number) {
    // Rounding must not lose the last of them: 0.29 · 100 is 28.999… in binary.
    return (int) Math.floor(women * number + 1e-9);
  }

  private int number(Sex sex) {
    int ofWomen = womenBefore(count);
    return sex == Sex.FEMALE ? ofWomen : count - ofWomen;
  }
}
