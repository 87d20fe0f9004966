package org.leverbook.study;

import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import org.leverbook.body.Person;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/**
 * A sentence that can be false, and the test that decides.
 *
 * <p>{@code Claim.of("the hip carries five times the shoulder's moment").margin("N·m", p ->
 * p.moment(HIP).size() - 5 * p.moment(SHOULDER).size()).over(people(FEMALE, 500, 1), who ->
 * hinge(who).holding(barbell(kg(60))).start())} works; {@code over} before {@code that} or {@code
 * margin} is refused, because nothing says what is tested.
 *
 * <p>{@link #that} takes a yes or no; {@link #margin} a number that is more than zero where the
 * claim holds, so that the closest and the worst cases are known too. Both take one position, or
 * two of the same person.
 */
public final class Claim implements Shown {

  private static final String HOW =
      ".margin(\"N·m\", p -> p.moment(HIP).size() - 5 * p.moment(SHOULDER).size()) or .that(p ->"
          + " p.moment(HIP).size() > 200)";

  private final String words;
  private final ClaimTest test;

  private Claim(String words, ClaimTest test) {
    this.words = words;
    this.test = test;
  }

  /**
   * The sentence.
   *
   * @param words what is claimed, as a coach says it
   * @return the claim, not yet testable
   * @throws Refused if it is missing or empty
   */
  public static Claim of(String words) {
    if (Ask.present("claim's sentence", words, "\"higher hips lower the knee moment\"").isBlank()) {
      throw new Refused(
          "The claim's sentence is empty: say what is claimed, as in claim(\"higher hips lower the"
              + " knee moment\").");
    }
    return new Claim(words.strip(), null);
  }

  /**
   * Holds where this says yes.
   *
   * @param test of one position
   * @return the claim; its answer cannot tell closest and worst cases
   * @throws Refused if the test is missing
   */
  public Claim that(Predicate<Position> test) {
    Ask.present("test", test, "p -> p.moment(HIP).size() > 200");
    return new Claim(words, new ClaimTest(false, false, "", (p, none) -> test.test(p) ? 1 : -1));
  }

  /**
   * Holds where this says yes of two positions of one person.
   *
   * @param test of the first and the second position
   * @return the claim; its answer cannot tell closest and worst cases
   * @throws Refused if the test is missing
   */
  public Claim that(BiPredicate<Position, Position> test) {
    Ask.present("test", test, "(low, high) -> high.moment(KNEE).size() < low.moment(KNEE).size()");
    return new Claim(words, new ClaimTest(true, false, "", (a, b) -> test.test(a, b) ? 1 : -1));
  }

  /**
   * Holds where this is more than zero.
   *
   * @param unit of the margin, as in "N·m"; may be empty
   * @param margin by how much the claim holds in one position; negative where it does not
   * @return the claim
   * @throws Refused if something is missing
   */
  public Claim margin(String unit, ToDoubleFunction<Position> margin) {
    Ask.present("unit", unit, "\"N·m\"");
    Ask.present("margin", margin, "p -> p.moment(HIP).size() - 200");
    return new Claim(words, new ClaimTest(false, true, unit, (p, none) -> margin.applyAsDouble(p)));
  }

  /**
   * Holds where this is more than zero of two positions of one person.
   *
   * @param unit of the margin, as in "N·m"; may be empty
   * @param margin by how much the claim holds; negative where it does not
   * @return the claim
   * @throws Refused if something is missing
   */
  public Claim margin(String unit, ToDoubleBiFunction<Position, Position> margin) {
    Ask.present("unit", unit, "\"N·m\"");
    Ask.present("margin", margin, "(a, b) -> a.moment(KNEE).size() - b.moment(KNEE).size()");
    return new Claim(words, new ClaimTest(true, true, unit, margin));
  }

  /**
   * Tests it on one position a person.
   *
   * @param people as in {@code people(FEMALE, 500, 1)}
   * @param position from a person to the position
   * @return the answer; who cannot get there or be held is counted apart, with the reason
   * @throws Refused if the group is empty or there is no test of one position
   */
  public ClaimAnswer over(List<Person> people, Function<Person, Position> position) {
    one();
    return answer(ClaimCases.of(people, position));
  }

  /**
   * Tests it on two positions a person.
   *
   * @param people as in {@code people(FEMALE, 500, 1)}
   * @param first from a person to the first position
   * @param second from a person to the second
   * @return the answer
   * @throws Refused if the group is empty or there is no test of two positions
   */
  public ClaimAnswer over(
      List<Person> people, Function<Person, Position> first, Function<Person, Position> second) {
    two();
    return answer(ClaimCases.of(people, first, second));
  }

  /**
   * Tests it on every person in every one of several positions: for lifts of several kinds, which
   * have no settings in common.
   *
   * @param people as in {@code people(FEMALE, 500, 1)}
   * @param lifts as in {@code List.of(liftOf("squat", who -> backSquat(who).finish()),
   *     liftOf("goblet", who -> gobletSquat(who).finish()))}
   * @return the answer
   * @throws Refused if a list is empty or there is no test of one position
   */
  public ClaimAnswer over(List<Person> people, List<NamedLift<Position>> lifts) {
    return over(people, lifts, List.of(NamedSetting.of("", Function.identity())));
  }

  /**
   * Tests it on every person with every lift in every setting.
   *
   * @param <L> what the lifts are
   * @param people as in {@code people(FEMALE, 500, 1)}
   * @param lifts as in {@code List.of(liftOf("hinge", who -> hinge(who)))}
   * @param settings as in {@code List.of(setting("start", pull -> pull.start()))}
   * @return the answer
   * @throws Refused if a list is empty or there is no test of one position
   */
  public <L> ClaimAnswer over(
      List<Person> people, List<NamedLift<L>> lifts, List<NamedSetting<L>> settings) {
    one();
    return answer(ClaimCases.of(people, lifts, settings));
  }

  /**
   * Tests it on every person with every lift in two settings side by side.
   *
   * @param <L> what the lifts are
   * @param people as in {@code people(FEMALE, 500, 1)}
   * @param lifts as in {@code List.of(liftOf("hinge", who -> hinge(who)))}
   * @param first gives the first position
   * @param second gives the second
   * @return the answer
   * @throws Refused if a list is empty or there is no test of two positions
   */
  public <L> ClaimAnswer over(
      List<Person> people,
      List<NamedLift<L>> lifts,
      NamedSetting<L> first,
      NamedSetting<L> second) {
    two();
    return answer(ClaimCases.of(people, lifts, first, second));
  }

  private void one() {
    if (tested().pair()) {
      throw new Refused(
          "The claim \""
              + words
              + "\" compares two positions, but only one was given for each person: add a second,"
              + " as in .over(people, who -> …, who -> …).");
    }
  }

  private void two() {
    if (!tested().pair()) {
      throw new Refused(
          "The claim \""
              + words
              + "\" looks at one position, but two were given for each person: leave one out, or"
              + " compare both, as in .that((a, b) -> …).");
    }
  }

  private ClaimTest tested() {
    if (test == null) {
      throw new Refused(
          "The claim \""
              + words
              + "\" has no test, so nothing says when it holds: add "
              + HOW
              + ".");
    }
    return test;
  }

  private ClaimAnswer answer(ClaimCases cases) {
    ClaimLedger ledger = new ClaimLedger(cases.count(), cases.people().size());
    long from = System.nanoTime();
    Many.each(
        "claim: " + words,
        cases.count(),
        number -> ClaimOutcome.of(test, cases, number),
        (number, outcome) -> ledger.take(number, cases.personOf(number), outcome));
    double seconds = 1e-9 * (System.nanoTime() - from);
    return new ClaimAnswer(words, test, cases, ledger, seconds);
  }

  /**
   * What is claimed.
   *
   * @return the sentence
   */
  public String words() {
    return words;
  }

  @Override
  public String text() {
    return "claim: "
        + words
        + (test == null
            ? "; not tested yet: add " + HOW
            : test.pair()
                ? "; of two positions: test it with .over(people, who -> …, who -> …)"
                : "; of one position: test it with .over(people, who -> …)");
  }

  @Override
  public String toString() {
    return text();
  }
}
