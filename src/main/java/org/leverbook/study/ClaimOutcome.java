package org.leverbook.study;

import org.leverbook.body.Person;
import org.leverbook.display.FailureWording;
import org.leverbook.load.Load;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/**
 * What came of one case of a claim: numbers alone, so that many fit.
 *
 * @param kind what came of it
 * @param margin more than zero where the claim holds; 0 where it was not tested
 * @param load kilograms as they are counted in the gym, of the first position; 0 where there is
 *     none
 * @param person the person's numbers where this case was asked for them; null otherwise
 * @param reason why it was not tested; empty where it was
 */
record ClaimOutcome(Kind kind, double margin, float load, float[] person, String reason) {

  /** What can come of a case. */
  enum Kind {
    /** The claim holds. */
    HOLDS("yes"),
    /** An exception. */
    FAILS("no"),
    /** Nobody gets there, or the supports do not hold it. */
    NOT_HELD("cannot be held"),
    /** The claim's test, or a lambda, gave no answer. */
    NOT_TESTED("cannot be tested");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }

    boolean tested() {
      return this == HOLDS || this == FAILS;
    }
  }

  /** Asks one case. */
  static ClaimOutcome of(ClaimTest test, ClaimCases cases, int number) {
    float[] measures = null;
    float load = 0;
    try {
      Person who = cases.person(number);
      if (cases.firstOfPerson(number)) {
        measures = ClaimInputs.measures(who);
      }
      Position first = cases.position(number, 0);
      String lacking = lacking(first);
      Position second = null;
      if (lacking.isEmpty() && test.pair()) {
        second = cases.position(number, 1);
        lacking = lacking(second);
      }
      if (!lacking.isEmpty()) {
        return new ClaimOutcome(Kind.NOT_HELD, 0, load, measures, lacking);
      }
      load = load(first);
      return tested(test, first, second, load, measures);
    } catch (Refused e) {
      return new ClaimOutcome(Kind.NOT_HELD, 0, load, measures, sentence(e));
    } catch (RuntimeException e) {
      String reason = "A lambda failed: " + FailureWording.of(e);
      return new ClaimOutcome(Kind.NOT_TESTED, 0, load, measures, reason);
    }
  }

  private static ClaimOutcome tested(
      ClaimTest test, Position first, Position second, float load, float[] measures) {
    double margin;
    try {
      margin = test.margin().applyAsDouble(first, second);
    } catch (Refused e) {
      return new ClaimOutcome(
          Kind.NOT_TESTED, 0, load, measures, "The test was refused: " + sentence(e));
    } catch (RuntimeException e) {
      String reason = "The test failed: " + FailureWording.of(e);
      return new ClaimOutcome(Kind.NOT_TESTED, 0, load, measures, reason);
    }
    if (!Double.isFinite(margin)) {
      String what = Double.isNaN(margin) ? "no number" : "an infinite number";
      String reason = "The margin came out as " + what + ": is something divided by zero?";
      return new ClaimOutcome(Kind.NOT_TESTED, 0, load, measures, reason);
    }
    return new ClaimOutcome(margin > 0 ? Kind.HOLDS : Kind.FAILS, margin, load, measures, "");
  }

  private static String lacking(Position position) {
    return position == null
        ? "The lambda gave no position (null)."
        : position.held() ? "" : position.holding().sentence();
  }

  private static float load(Position position) {
    double sum = 0;
    for (Load load : position.loads()) {
      sum += load.counted().orElse(load.mass());
    }
    return (float) sum;
  }

  private static String sentence(Refused refused) {
    return String.valueOf(refused.getMessage());
  }
}
