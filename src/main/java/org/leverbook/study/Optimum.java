package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import tech.tablesaw.api.Table;

/**
 * The setting, or the pair of settings, that makes a quantity lowest or highest, under limits.
 *
 * <p>A scan over the whole range finds the valleys, an optimiser (Hipparchus: Brent's method for
 * one setting; CMA-ES with a fixed seed, then BOBYQA, for two) the lowest place of each. What
 * cannot be reached or held is a wall, and so is what breaks a limit. It is worked out when it is
 * first asked for, once, and is the same on any number of processors.
 *
 * <p>The best of a model is no advice: what a lifter should do has more sides than one number.
 *
 * @param <T> what is looked at, mostly a position
 */
public final class Optimum<T> implements Shown {

  private static final int LOOKS = 49;
  private static final int LOOKS_OF_TWO = 13;
  private static final int MOST_LOOKS = 10_000;
  private static final String LAMBDA = "h -> pull.hipHeight(h).start()";
  private static final String MEASURE = "p -> p.moment(L5_S1).size()";

  private final Quest<T> quest;
  private Sought found;
  private Surroundings around;

  private Optimum(Quest<T> quest) {
    this.quest = quest;
  }

  /**
   * One setting.
   *
   * @param <Q> what kind of quantity the setting is
   * @param <T> what is looked at
   * @param name what is set, as in "hip height"
   * @param from one end of its range
   * @param to the other
   * @param made from a value to what is looked at
   * @param quantity what is to be lowest
   * @param least whether the lowest is sought, not the highest
   * @return the search, not yet begun
   * @throws Refused if something is missing, or the range is no range
   */
  public static <Q extends Quantity<Q>, T> Optimum<T> over(
      String name,
      Quantity<Q> from,
      Quantity<Q> to,
      Function<Quantity<Q>, T> made,
      ToDoubleFunction<T> quantity,
      boolean least) {
    Span<Q> span = Span.of(name, from, to, LOOKS);
    Ask.present("lambda", made, LAMBDA);
    Ask.present("quantity", quantity, MEASURE);
    return new Optimum<>(
        new Quest<>(
            List.of(span),
            x -> made.apply(Units.of(x[0], span.unit())),
            new Quest.Named<>("quantity", "", quantity),
            least ? 1 : -1,
            List.of()));
  }

  /**
   * Two settings.
   *
   * @param <A> what kind of quantity the first setting is
   * @param <B> what kind of quantity the second setting is
   * @param <T> what is looked at
   * @param first name and ends of the first
   * @param second name and ends of the second
   * @param made from a pair of values to what is looked at
   * @param quantity what is to be lowest
   * @param least whether the lowest is sought, not the highest
   * @return the search, not yet begun
   * @throws Refused if something is missing, or both settings have one name
   */
  public static <A extends Quantity<A>, B extends Quantity<B>, T> Optimum<T> over(
      Span<A> first,
      Span<B> second,
      BiFunction<Quantity<A>, Quantity<B>, T> made,
      ToDoubleFunction<T> quantity,
      boolean least) {
    Ask.present("lambda", made, "(h, w) -> pull.hipHeight(h).stanceWidth(w).start()");
    Ask.present("quantity", quantity, MEASURE);
    if (first.name().equals(second.name())) {
      throw new Refused(
          "Both settings are called \""
              + first.name()
              + "\": give them two names, so that they can be told apart.");
    }
    Optimum<T> all =
        new Optimum<>(
            new Quest<>(
                List.of(first, second),
                x -> made.apply(Units.of(x[0], first.unit()), Units.of(x[1], second.unit())),
                new Quest.Named<>("quantity", "", quantity),
                least ? 1 : -1,
                List.of()));
    return all.scanned(LOOKS_OF_TWO);
  }

  /**
   * The same with a name for the quantity, as in {@code .called("L5/S1 moment", "N·m")}.
   *
   * @param name for sentences, plot and table
   * @param unit as a table writes it; may be empty
   * @return the search, not yet begun
   * @throws Refused if one is missing
   */
  public Optimum<T> called(String name, String unit) {
    Ask.present("name of the quantity", name, "\"L5/S1 moment\"");
    Ask.present("unit of the quantity", unit, "\"N·m\", or \"\" where it has none");
    return new Optimum<>(quest.called(name, unit));
  }

  /**
   * The same under a limit, as in {@code .where("knee below 100°", p -> p.fact("knee bend") <
   * 100)}.
   *
   * @param sentence what must hold
   * @param kept whether it does
   * @return the search, not yet begun
   * @throws Refused if one is missing
   */
  public Optimum<T> where(String sentence, Predicate<T> kept) {
    Ask.present("limit's name", sentence, "\"knee below 100°\"");
    Ask.present("limit's test", kept, "p -> p.fact(\"knee bend\") < 100");
    return new Optimum<>(
        quest.with(
            new Quest.Limit<>(
                sentence,
                there ->
                    kept.test(there)
                        ? Optional.empty()
                        : Optional.of("Breaks the limit \"" + sentence + "\"."))));
  }

  /**
   * The same with a second quantity held down, as in {@code .atMost("knee moment", "N·m", 100, p ->
   * p.moment(KNEE).size())}.
   *
   * @param name of the second quantity
   * @param unit its unit
   * @param most so much is allowed
   * @param second the second quantity
   * @return the search, not yet begun
   * @throws Refused if something is missing
   */
  public Optimum<T> atMost(String name, String unit, double most, ToDoubleFunction<T> second) {
    return bounded(name, unit, most, second, 1);
  }

  /**
   * The same with a second quantity held up.
   *
   * @param name of the second quantity
   * @param unit its unit
   * @param least so much there must be
   * @param second the second quantity
   * @return the search, not yet begun
   * @throws Refused if something is missing
   */
  public Optimum<T> atLeast(String name, String unit, double least, ToDoubleFunction<T> second) {
    return bounded(name, unit, least, second, -1);
  }

  private Optimum<T> bounded(
      String name, String unit, double bound, ToDoubleFunction<T> second, int sign) {
    Quest.Named<T> named = named(name, unit, second);
    if (!Double.isFinite(bound)) {
      throw new Refused("The limit of the " + name + " is " + bound + ": give a finite number.");
    }
    String words = (sign > 0 ? " at most " : " at least ") + named.text(bound);
    return new Optimum<>(
        quest.with(
            new Quest.Limit<>(
                name + words,
                there -> {
                  double value = second.applyAsDouble(there);
                  // Not a number keeps no limit either.
                  return sign * value <= sign * bound
                      ? Optional.empty()
                      : Optional.of(
                          "The "
                              + name
                              + " is "
                              + is(named, value, bound)
                              + ";"
                              + words
                              + " was asked.");
                })));
  }

  /** A value beyond a bound, also where both are written alike. */
  private static <T> String is(Quest.Named<T> named, double value, double bound) {
    if (!named.text(value).equals(named.text(bound))) {
      return named.text(value);
    }
    return "a trace " + (value > bound ? "above " : "below ") + named.text(bound);
  }

  /**
   * The same with another number of first looks at each setting; more find narrower valleys.
   *
   * @param looks 3 to 10,000 for one setting (usually 49), 3 to 100 for two (usually 13)
   * @return the search, not yet begun
   * @throws Refused if it is outside
   */
  public Optimum<T> scanned(int looks) {
    int most = quest.two() ? (int) Math.sqrt(MOST_LOOKS) : MOST_LOOKS;
    if (looks < 3 || looks > most) {
      throw new Refused(
          String.format(
              Locale.ROOT, "A scan takes 3 to %,d values of each setting, not %d.", most, looks));
    }
    List<Span<?>> spans = new ArrayList<>();
    quest.spans().forEach(s -> spans.add(new Span<>(s.name(), s.unit(), s.from(), s.to(), looks)));
    return new Optimum<>(quest.over(spans));
  }

  /**
   * This quantity against a second one that should be low: what each costs the other.
   *
   * @param name of the second quantity
   * @param unit its unit
   * @param second the second quantity
   * @return the settings of the scan that no other beats in both
   * @throws Refused if something is missing, or no setting can be done
   */
  public TradeOff<T> andLowest(String name, String unit, ToDoubleFunction<T> second) {
    return TradeOff.of(quest, named(name, unit, second), 1);
  }

  /**
   * This quantity against a second one that should be high: what each costs the other.
   *
   * @param name of the second quantity
   * @param unit its unit
   * @param second the second quantity
   * @return the settings of the scan that no other beats in both
   * @throws Refused if something is missing, or no setting can be done
   */
  public TradeOff<T> andHighest(String name, String unit, ToDoubleFunction<T> second) {
    return TradeOff.of(quest, named(name, unit, second), -1);
  }

  private static <T> Quest.Named<T> named(String name, String unit, ToDoubleFunction<T> second) {
    return new Quest.Named<>(
        Ask.present("name of the second quantity", name, "\"knee moment\""),
        Ask.present("unit of the second quantity", unit, "\"N·m\", or \"\" where it has none"),
        Ask.present("second quantity", second, "p -> p.moment(KNEE).size()"));
  }

  Quest<T> quest() {
    return quest;
  }

  synchronized Sought found() {
    if (found == null) {
      Sought sought = quest.search();
      around = Surroundings.of(quest, sought);
      found = sought;
    }
    return found;
  }

  private synchronized Surroundings around() {
    found();
    return around;
  }

  /**
   * The best settings.
   *
   * @return one or two, in the units they were asked in
   * @throws Refused if no setting can be done; tells the most frequent reason
   */
  public List<Quantity<?>> settings() {
    Trial best = found().best();
    List<Quantity<?>> settings = new ArrayList<>();
    settings.add(Units.of(best.x(), quest.spans().get(0).unit()));
    if (quest.two()) {
      settings.add(Units.of(best.y(), quest.spans().get(1).unit()));
    }
    return List.copyOf(settings);
  }

  /**
   * The quantity at the best setting.
   *
   * @return in the unit of the quantity
   * @throws Refused if no setting can be done; tells the most frequent reason
   */
  public double value() {
    return quest.value(found().best());
  }

  /**
   * What is there at the best setting, as in {@code .best().picture()}.
   *
   * @return the position, or whatever the lambda gives
   * @throws Refused if no setting can be done; tells the most frequent reason
   */
  public T best() {
    return quest.make(found().best().x(), found().best().y());
  }

  /**
   * What to know of the best: whether it lies at a limit of the range or on an edge, how far one
   * may stray from it, which settings were left out.
   *
   * @return sentences
   * @throws Refused if no setting can be done; tells the most frequent reason
   */
  public List<String> notes() {
    return Optima.notes(quest, found(), around());
  }

  /**
   * The scan with the best settings in their places.
   *
   * @return a row for each setting, with its reason where it gave nothing
   * @throws Refused if no setting can be done; tells the most frequent reason
   */
  public Sheet sheet() {
    return Optima.sheet(quest, found(), around()).about(this);
  }

  /**
   * The same as a Tablesaw table.
   *
   * @return units in the column names
   * @throws Refused if no setting can be done; tells the most frequent reason
   */
  public Table table() {
    return Tables.of(sheet());
  }

  /**
   * The scan drawn, with the best marked.
   *
   * @return the plot
   * @throws Refused if no setting can be done; tells the most frequent reason
   */
  public Picture plot() {
    return Illustrator.pictureOf(this, List.of());
  }

  /**
   * Saves the scan with its caution.
   *
   * @param file a name that ends in {@code .csv} or {@code .json}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public Saved save(String file) {
    return sheet().save(file);
  }

  @Override
  public String text() {
    return Optima.text(quest, found(), around());
  }

  @Override
  public String toString() {
    return text();
  }
}
