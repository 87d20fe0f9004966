package org.leverbook.study;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.leverbook.body.Person;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.display.Saved;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Refused;
import org.leverbook.study.ClaimInputs.Input;
import org.leverbook.study.ClaimOutcome.Kind;
import tech.tablesaw.api.Table;

/**
 * What came of testing a claim: how often it holds, where it is closest, where it fails worst, and
 * what separates the exceptions.
 *
 * <p>It keeps numbers, not positions: {@link #closest()} and {@link #worst()} make theirs anew.
 */
public final class ClaimAnswer implements Shown {

  private final String words;
  private final ClaimTest test;
  private final ClaimCases cases;
  private final ClaimLedger ledger;
  private final double seconds;
  private final List<ClaimSplit> splits;

  ClaimAnswer(String words, ClaimTest test, ClaimCases cases, ClaimLedger ledger, double seconds) {
    this.words = words;
    this.test = test;
    this.cases = cases;
    this.ledger = ledger;
    this.seconds = seconds;
    this.splits = ClaimSplitter.of(cases, ledger);
  }

  /**
   * What was claimed.
   *
   * @return the sentence
   */
  public String words() {
    return words;
  }

  /**
   * On whom it was tested.
   *
   * @return everybody, in order
   */
  public List<Person> people() {
    return cases.people();
  }

  /**
   * How many cases were asked for: people times lifts times settings.
   *
   * @return all of them, also those that could not be tested
   */
  public int cases() {
    return ledger.done();
  }

  /**
   * How many could be tested.
   *
   * @return those that can be held and in which the test gave an answer
   */
  public int tested() {
    return ledger.tested();
  }

  /**
   * In how many it holds.
   *
   * @return cases
   */
  public int holding() {
    return ledger.count(Kind.HOLDS);
  }

  /**
   * In how many it does not.
   *
   * @return cases
   */
  public int exceptions() {
    return ledger.count(Kind.FAILS);
  }

  /**
   * The share of the cases tested in which it holds.
   *
   * @return 0 to 1
   * @throws Refused if no case could be tested; says why
   */
  public double share() {
    someTested();
    return holding() / (double) tested();
  }

  /**
   * How long it took.
   *
   * @return seconds by the clock
   */
  public double seconds() {
    return seconds;
  }

  /**
   * The share in which it holds, in words.
   *
   * @return as in "97.4 %"; never 0 or 100 % where it is not
   */
  public String shareText() {
    return ClaimText.percent(holding(), tested());
  }

  /**
   * Whether the test tells by how much the claim holds.
   *
   * @return false where it says only yes or no
   */
  public boolean tellsMargins() {
    return test.exact();
  }

  /**
   * The case in which it is decided most narrowly.
   *
   * @return the case of the smallest margin, whether it holds there or not
   * @throws Refused if the test says only yes or no, or no case could be tested
   */
  public ClaimCase closest() {
    return least(true);
  }

  /**
   * The case of the least margin: the worst exception, or where there is none the case nearest to
   * one.
   *
   * @return the case
   * @throws Refused if the test says only yes or no, or no case could be tested
   */
  public ClaimCase worst() {
    return least(false);
  }

  private ClaimCase least(boolean size) {
    someTested();
    if (!test.exact()) {
      throw new Refused(
          "Which cases are closest or worst is not known, because the test of \""
              + words
              + "\" says only yes or no. Give a margin, as in .margin(\"N·m\", p ->"
              + " p.moment(HIP).size() - 200); .exception() is the first exception.");
    }
    int found = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int number = 0; number < ledger.done(); number++) {
      if (ledger.kind(number).tested()) {
        double margin = size ? Math.abs(ledger.margin(number)) : ledger.margin(number);
        if (margin < least) {
          least = margin;
          found = number;
        }
      }
    }
    return at(found + 1);
  }

  /**
   * The first exception.
   *
   * @return empty where there is none
   */
  public Optional<ClaimCase> exception() {
    for (int number = 0; number < ledger.done(); number++) {
      if (ledger.kind(number) == Kind.FAILS) {
        return Optional.of(at(number + 1));
      }
    }
    return Optional.empty();
  }

  /**
   * A case by its number in the table.
   *
   * @param number from 1
   * @return the case
   * @throws Refused if there is none of that number
   */
  public ClaimCase at(int number) {
    if (number < 1 || number > ledger.done()) {
      throw new Refused(
          String.format(
              Locale.ROOT, "There is no case %,d: the cases are 1 to %,d.", number, ledger.done()));
    }
    return new ClaimCase(test, cases, ledger, number - 1);
  }

  /**
   * The margin that a share of the tested cases does not exceed.
   *
   * @param share 0 to 1
   * @return in the claim's unit
   * @throws Refused if the test says only yes or no, or no case could be tested
   */
  public double margin(double share) {
    double[] sorted = margins();
    Arrays.sort(sorted);
    int at = (int) Math.round(Math.max(0, Math.min(1, share)) * (sorted.length - 1));
    return sorted[at];
  }

  /**
   * The margins of all tested cases.
   *
   * @return in the claim's unit, in the order of the table
   * @throws Refused if the test says only yes or no, or no case could be tested
   */
  public double[] margins() {
    worst();
    double[] margins = new double[ledger.tested()];
    int size = 0;
    for (int number = 0; number < ledger.done(); number++) {
      if (ledger.kind(number).tested()) {
        margins[size++] = ledger.margin(number);
      }
    }
    return margins;
  }

  /** A margin with its unit. */
  String marginText(double margin) {
    return test.text(margin);
  }

  /**
   * The margin's unit.
   *
   * @return empty where none was said
   */
  public String unit() {
    return test.unit();
  }

  /**
   * What separates holders from exceptions: the best rule of one input, then a clearly better one
   * of two where there is one.
   *
   * @return empty where all or nearly all cases agree, or nothing separates them
   */
  public List<ClaimSplit> splits() {
    return splits;
  }

  /**
   * How the share that holds goes with the input that separates best.
   *
   * @return groups of about equal size, or the two of a yes or no; empty where nothing separates
   */
  public List<ClaimGroup> groups() {
    if (splits.isEmpty()) {
      return List.of();
    }
    String best = splits.get(0).inputs();
    return ClaimInputs.of(cases, ledger).stream()
        .filter(input -> names(input, best))
        .findFirst()
        .map(input -> ClaimGroup.of(input, ledger))
        .orElse(List.of());
  }

  private static boolean names(Input input, String asked) {
    return ClaimSplit.Condition.heading(input).equals(asked);
  }

  /**
   * One row a case: who, lift, setting, load, whether it holds, margin, reason.
   *
   * @return a Tablesaw table, units in the column names
   */
  public Table table() {
    return ClaimTable.table(words, test, cases, ledger);
  }

  /**
   * Saves one row a case as CSV, written row by row.
   *
   * @param file a name that ends in {@code .csv}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public Saved save(String file) {
    return ClaimTable.save(file, words, test, cases, ledger);
  }

  /**
   * How the margins spread around zero, or, of a yes or no, how the share that holds goes with the
   * input that separates best.
   *
   * @return the picture
   * @throws Refused if no case could be tested
   */
  public Picture picture() {
    someTested();
    return Illustrator.pictureOf(this, List.of());
  }

  /**
   * How the share that holds goes with the input that separates best.
   *
   * @return the picture
   * @throws Refused if nothing separates holders from exceptions
   */
  public Picture sharesPicture() {
    someTested();
    if (splits.isEmpty()) {
      throw new Refused(
          "There is no picture of what separates holders from exceptions of \""
              + words
              + "\": "
              + holding()
              + " of "
              + tested()
              + " cases hold, and no input tells them apart.");
    }
    return Illustrator.pictureOf(this, List.of("shares"));
  }

  private void someTested() {
    if (ledger.tested() == 0) {
      ClaimLedger.Reason held = ledger.most(Kind.NOT_HELD);
      ClaimLedger.Reason most = held == null ? ledger.most(Kind.NOT_TESTED) : held;
      throw new Refused(
          "The claim \""
              + words
              + "\" could be tested in no case."
              + (most == null ? "" : " Most frequent reason: " + most.sentence()));
    }
  }

  @Override
  public String text() {
    return ClaimText.of(this, ledger, cases.count());
  }

  @Override
  public String toString() {
    return text();
  }
}
