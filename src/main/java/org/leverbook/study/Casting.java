package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.leverbook.body.Person;
import org.leverbook.body.Population;
import org.leverbook.body.Sex;
import org.leverbook.body.Training;
import org.leverbook.display.FailureWording;
import org.leverbook.quantity.Refused;

/**
 * What is wished of drawn people, and how one who fits is found: person number i is the first of
 * the draws of number i who fits every wish.
 *
 * @param seed of all draws
 * @param youngest age drawn; 0 where ages are as usual
 * @param oldest age drawn
 * @param training of all
 * @param wishes all of them must be met
 */
record Casting(long seed, int youngest, int oldest, Training training, List<Wish> wishes) {

  /** Nobody is looked for beyond so many draws. */
  private static final int MOST_PROBED = 1_000_000;

  /** So many who fit tell the share well enough, to about a fifth. */
  private static final int ENOUGH = 25;

  /** Fewer than this of all probed are nearly nobody. */
  private static final int NEARLY_NOBODY = 10;

  private static final int FIRST_BLOCK = 64;
  private static final int LARGEST_BLOCK = 16_384;

  /** Makes the stream of ages another than that of bodies. */
  private static final long AGES = 0x5DEECE66DL;

  /**
   * One wish.
   *
   * @param what in words
   * @param fits the condition
   */
  record Wish(String what, Predicate<Person> fits) {}

  /**
   * How many fit.
   *
   * @param fitting how many did
   * @param drawn of so many
   */
  record Fit(int fitting, int drawn) {

    double share() {
      return (double) fitting / drawn;
    }
  }

  /** What came of one probe: whether they fit, and why the wish itself could not be asked. */
  private record Probe(boolean fits, String reason) {}

  static Casting open(long seed) {
    return new Casting(seed, 0, 0, Training.UNTRAINED, List.of());
  }

  Casting aged(int from, int to) {
    return new Casting(seed, from, to, training, wishes);
  }

  Casting trained(Training other) {
    return new Casting(seed, youngest, oldest, other, wishes);
  }

  Casting with(Wish wish) {
    List<Wish> more = new ArrayList<>(wishes);
    more.add(wish);
    return new Casting(seed, youngest, oldest, training, List.copyOf(more));
  }

  boolean wishful() {
    return !wishes.isEmpty();
  }

  /** The wishes in words. */
  String words() {
    return wishes.stream().map(Wish::what).collect(Collectors.joining(", "));
  }

  /** What stands after "100 men" in a title. */
  String title() {
    String ages =
        youngest == 0
            ? ""
            : youngest == oldest
                ? ", " + youngest + " years"
                : ", " + youngest + " to " + oldest + " years";
    String trained = training == Training.UNTRAINED ? "" : ", " + training.word();
    return ages + trained + (wishful() ? ", " + words() : "") + ", seed " + seed;
  }

  /** What is to be said of ages, where they are drawn. */
  Optional<String> ageNote() {
    return youngest == 0
        ? Optional.empty()
        : Optional.of(
            "Ages are drawn evenly (common practice, no source) and change strength only.");
  }

  /**
   * Person number so-and-so.
   *
   * @param tries draws at most
   */
  Person person(Sex sex, int number, int tries) {
    Population.Draws draws = new Population.Draws(sex, seed, number);
    SplittableRandom ages = new SplittableRandom((seed ^ AGES) + number * 0x9E3779B97F4A7C15L);
    for (int i = 0; i < tries; i++) {
      Person person = dressed(draws.next(), ages);
      if (probe(person).fits) {
        return person;
      }
      if (i % 1024 == 1023 && Thread.currentThread().isInterrupted()) {
        throw new Refused("Stopped while looking for people who fit (" + words() + ").");
      }
    }
    throw new Refused(
        String.format(
            Locale.ROOT,
            "Person %,d: none of %,d draws fits (%s), although others do. Does the condition give"
                + " the same answer each time?",
            number,
            tries,
            words()));
  }

  private Person dressed(Person drawn, SplittableRandom ages) {
    Person aged = youngest == 0 ? drawn : drawn.aged(ages.nextInt(youngest, oldest + 1));
    return training == Training.UNTRAINED ? aged : aged.trained(training);
  }

  private Probe probe(Person person) {
    for (Wish wish : wishes) {
      try {
        if (!wish.fits.test(person)) {
          return new Probe(false, "");
        }
      } catch (Refused e) {
        return new Probe(false, String.valueOf(e.getMessage()));
      } catch (RuntimeException e) {
        throw new Refused(
            "The condition \""
                + wish.what
                + "\" failed for "
                + person.text()
                + ": "
                + FailureWording.of(e),
            e);
      }
    }
    return new Probe(true, "");
  }

  /**
   * How many of one sex fit, by drawing others than those of the group until enough do.
   *
   * @param othersFit whether enough of the other sex are known to fit
   * @throws Refused if nobody or nearly nobody does
   */
  Fit probe(Sex sex, boolean othersFit) {
    return probe(sex, othersFit, MOST_PROBED);
  }

  /** The same, giving up after so many draws. */
  Fit probe(Sex sex, boolean othersFit, int most) {
    int[] fitting = {0};
    String[] reason = {""};
    int drawn = 0;
    int block = FIRST_BLOCK;
    while (fitting[0] < ENOUGH && drawn < most) {
      int from = drawn;
      int asked = Math.min(block, most - drawn);
      int done =
          Many.each(
              "people who fit",
              asked,
              i -> probe(other(sex, from + i)),
              (i, probe) -> {
                fitting[0] += probe.fits ? 1 : 0;
                reason[0] = reason[0].isEmpty() ? probe.reason : reason[0];
              });
      drawn += done;
      if (done < asked) {
        throw new Refused(
            String.format(
                Locale.ROOT,
                "Stopped while looking for people who fit (%s): %,d of %,d drawn did.",
                words(),
                fitting[0],
                drawn));
      }
      block = Math.min(LARGEST_BLOCK, 2 * block);
    }
    if (fitting[0] < NEARLY_NOBODY) {
      throw nearlyNobody(sex, othersFit, fitting[0], drawn, reason[0]);
    }
    return new Fit(fitting[0], drawn);
  }

  private Refused nearlyNobody(Sex sex, boolean othersFit, int fitting, int drawn, String reason) {
    String who = sex == Sex.MALE ? "men" : "women";
    return new Refused(
        String.format(
            Locale.ROOT,
            "%s of %,d %s drawn fit%s: %s.%s Ask for something less rare%s.",
            fitting == 0 ? "None" : "Only " + fitting,
            drawn,
            who,
            fitting <= 1 ? "s" : "",
            words(),
            reason.isEmpty() ? "" : " The first could not be asked: " + reason,
            othersFit ? ", or for " + (sex == Sex.MALE ? "women" : "men") + " alone" : ""));
  }

  /** Someone with a number that no group has. */
  private Person other(Sex sex, int number) {
    int below = -1 - number;
    SplittableRandom ages = new SplittableRandom((seed ^ AGES) + below * 0x9E3779B97F4A7C15L);
    return dressed(Population.person(sex, seed, below), ages);
  }
}
