package org.leverbook.study;

import java.util.OptionalDouble;
import org.leverbook.body.Person;
import org.leverbook.display.Picture;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/** One case of a claim; its positions are made anew when asked for. */
public final class ClaimCase implements Shown {

  private final ClaimTest test;
  private final ClaimCases cases;
  private final ClaimLedger ledger;
  private final int number;

  ClaimCase(ClaimTest test, ClaimCases cases, ClaimLedger ledger, int number) {
    this.test = test;
    this.cases = cases;
    this.ledger = ledger;
    this.number = number;
  }

  /**
   * Its number in the answer's table.
   *
   * @return from 1
   */
  public int number() {
    return number + 1;
  }

  /**
   * Who.
   *
   * @return the person
   */
  public Person person() {
    return cases.person(number);
  }

  /**
   * Whether the claim holds here.
   *
   * @return true if so
   */
  public boolean holds() {
    return ledger.kind(number) == ClaimOutcome.Kind.HOLDS;
  }

  /**
   * By how much the claim holds.
   *
   * @return in the claim's unit, negative where it does not hold; empty where the claim says only
   *     yes or no, or could not be tested here
   */
  public OptionalDouble margin() {
    return test.exact() && ledger.kind(number).tested()
        ? OptionalDouble.of(ledger.margin(number))
        : OptionalDouble.empty();
  }

  /**
   * The position, or the first of two.
   *
   * @return ready to draw
   * @throws Refused if there is none; says why
   */
  public Position position() {
    return present(cases.position(number, 0));
  }

  /**
   * The second position of a claim about two.
   *
   * @return ready to draw
   * @throws Refused if the claim is about one, or there is none
   */
  public Position second() {
    if (!test.pair()) {
      throw new Refused("This claim looks at one position only: it is .position().");
    }
    return present(cases.position(number, 1));
  }

  /**
   * The position, or the first of two, drawn.
   *
   * @return the picture
   */
  public Picture picture() {
    return position().picture();
  }

  private static Position present(Position position) {
    if (position == null) {
      throw new Refused("There is no position in this case: the lambda gave none (null).");
    }
    return position;
  }

  @Override
  public String text() {
    String reason = ledger.reason(number);
    return "case "
        + String.format(java.util.Locale.ROOT, "%,d", number())
        + ", "
        + cases.words(number)
        + ": "
        + (reason.isEmpty() ? holds() ? "holds" : "does not hold" : reason)
        + (margin().isPresent() ? ", margin " + test.text(margin().getAsDouble()) : "");
  }

  @Override
  public String toString() {
    return text();
  }
}
