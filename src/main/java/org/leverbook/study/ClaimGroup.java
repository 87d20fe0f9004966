package org.leverbook.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.leverbook.study.ClaimInputs.Input;
import org.leverbook.study.ClaimOutcome.Kind;

/**
 * Cases of a claim that lie together in one input.
 *
 * @param input as in "thigh (% of stature)"
 * @param name as in "24.6 to 25.1", "a woman"
 * @param from least value of the input
 * @param to greatest value of the input
 * @param tested cases tested
 * @param holding those in which the claim holds
 */
public record ClaimGroup(
    String input, String name, double from, double to, int tested, int holding) {

  private static final int GROUPS = 10;

  /**
   * The share in which the claim holds.
   *
   * @return 0 to 1
   */
  public double share() {
    return holding / (double) tested;
  }

  /** Tenths of the tested cases by an input, or its few values. */
  static List<ClaimGroup> of(Input input, ClaimLedger ledger) {
    double[] values = new double[ledger.tested()];
    int size = 0;
    for (int number = 0; number < ledger.done(); number++) {
      if (ledger.kind(number).tested()) {
        values[size++] = input.of(number);
      }
    }
    Arrays.sort(values);
    double[] ends = ends(values);
    int[][] counts = new int[ends.length][2];
    for (int number = 0; number < ledger.done(); number++) {
      if (ledger.kind(number).tested()) {
        int at = Arrays.binarySearch(ends, input.of(number));
        counts[at >= 0 ? at : -at - 1][ledger.kind(number) == Kind.HOLDS ? 1 : 0]++;
      }
    }
    List<ClaimGroup> groups = new ArrayList<>();
    double from = values[0];
    for (int g = 0; g < ends.length; g++) {
      int tested = counts[g][0] + counts[g][1];
      groups.add(
          new ClaimGroup(
              ClaimSplit.Condition.heading(input),
              name(input, from, ends[g], ends),
              from,
              ends[g],
              tested,
              counts[g][1]));
      from = ends[g];
    }
    return groups;
  }

  /** Upper ends of the groups, each the greatest value in it. */
  private static double[] ends(double[] sorted) {
    double[] few = Arrays.stream(sorted).distinct().limit(GROUPS + 1L).toArray();
    if (few.length <= GROUPS) {
      return few;
    }
    double[] ends = new double[GROUPS];
    for (int g = 0; g < GROUPS; g++) {
      ends[g] = sorted[(int) ((g + 1L) * sorted.length / GROUPS) - 1];
    }
    return Arrays.stream(ends).distinct().toArray();
  }

  private static String name(Input input, double from, double to, double[] ends) {
    if (input.yesOrNo()) {
      return to > 0.5 ? input.yes() : input.no();
    }
    double spread = ends[ends.length - 1] - ends[0];
    int decimals = spread > 30 ? 0 : spread > 3 ? 1 : 2;
    return String.format(Locale.ROOT, "%." + decimals + "f", to);
  }
}
