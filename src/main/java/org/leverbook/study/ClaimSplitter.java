package org.leverbook.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.leverbook.study.ClaimInputs.Input;
import org.leverbook.study.ClaimOutcome.Kind;
import org.leverbook.study.ClaimSplit.Condition;

/**
 * Looks for what separates holders of a claim from its exceptions.
 *
 * <p>1. People are put into two halves by a fixed scrambling of their numbers, all cases of one
 * person into the same half. 2. On one half every limit of every input is tried, and of two inputs
 * every corner that limits at their quantiles cut off; the one of greatest balanced accuracy is
 * taken, of equals the first. 3. Its limit is rounded to what a coach reads, and its accuracy
 * measured on the other half. Nothing is drawn at random, so the same cases give the same rule.
 */
final class ClaimSplitter {

  /** With fewer holders or exceptions than this there is nothing to be said. */
  static final int FEWEST = 10;

  /** Two inputs are told only where they separate so much better than one. */
  private static final double WORTH = 0.02;

  private final ClaimCases cases;
  private final ClaimLedger ledger;
  private final List<Input> inputs;
  private final int[] found;
  private final int[] measured;
  private final boolean apart;

  private ClaimSplitter(ClaimCases cases, ClaimLedger ledger) {
    this.cases = cases;
    this.ledger = ledger;
    this.inputs = ClaimInputs.of(cases, ledger);
    int[] one = half(true);
    int[] other = half(false);
    apart = enough(one) && enough(other);
    found = apart ? one : all();
    measured = apart ? other : all();
  }

  /**
   * What separates them.
   *
   * @return the best rule of one input, then a clearly better one of two where there is one; empty
   *     where there is nothing to separate
   */
  static List<ClaimSplit> of(ClaimCases cases, ClaimLedger ledger) {
    if (Math.min(ledger.count(Kind.HOLDS), ledger.count(Kind.FAILS)) < FEWEST) {
      return List.of();
    }
    ClaimSplitter splitter = new ClaimSplitter(cases, ledger);
    List<ClaimSplit> splits = new ArrayList<>();
    Optional<ClaimSplit> one = splitter.single();
    one.ifPresent(splits::add);
    splitter
        .pair()
        .filter(two -> one.isEmpty() || two.balanced() > one.get().balanced() + WORTH)
        .ifPresent(splits::add);
    return List.copyOf(splits);
  }

  private boolean holds(int number) {
    return ledger.kind(number) == Kind.HOLDS;
  }

  private int[] all() {
    return cases(number -> true);
  }

  private int[] half(boolean first) {
    return cases(number -> scrambled(cases.personOf(number)) == first);
  }

  private int[] cases(java.util.function.IntPredicate wanted) {
    int[] some = new int[ledger.tested()];
    int size = 0;
    for (int number = 0; number < ledger.done(); number++) {
      if (ledger.kind(number).tested() && wanted.test(number)) {
        some[size++] = number;
      }
    }
    return Arrays.copyOf(some, size);
  }

  /** Even and odd would part men from women where they take turns in a group. */
  private static boolean scrambled(int person) {
    return ((person + 1) * 0x9E3779B97F4A7C15L >>> 40 & 1) == 0;
  }

  private boolean enough(int[] some) {
    int holding = 0;
    for (int number : some) {
      holding += holds(number) ? 1 : 0;
    }
    return Math.min(holding, some.length - holding) >= FEWEST;
  }

  private Optional<ClaimSplit> single() {
    double best = 0.5;
    Input chosen = null;
    double limit = 0;
    for (Input input : inputs) {
      double[] tried = bestLimit(input);
      if (tried[0] > best + 1e-9) {
        best = tried[0];
        chosen = input;
        limit = tried[1];
      }
    }
    if (chosen == null) {
      return Optional.empty();
    }
    Input input = chosen;
    double rounded = chosen.yesOrNo() ? 0.5 : ClaimBins.rounded(input, found, limit);
    return Optional.of(
        told(List.of(Condition.of(input, rounded, true)), number -> input.of(number) > rounded));
  }

  /** Greatest balanced accuracy of all limits of one input, and that limit. */
  private double[] bestLimit(Input input) {
    // Value and class in one number, so that primitives can be sorted.
    long[] sorted = new long[found.length];
    long holders = 0;
    for (int i = 0; i < found.length; i++) {
      int bits = Float.floatToIntBits((float) input.of(found[i]) + 0f);
      long ordered = bits >= 0 ? bits : Integer.MIN_VALUE - bits;
      sorted[i] = ordered << 1 | (holds(found[i]) ? 1 : 0);
      holders += sorted[i] & 1;
    }
    Arrays.sort(sorted);
    double exceptions = found.length - holders;
    double best = 0;
    double limit = 0;
    long holdersBelow = 0;
    for (int i = 0; i + 1 < sorted.length; i++) {
      holdersBelow += sorted[i] & 1;
      if (sorted[i] >> 1 == sorted[i + 1] >> 1) {
        continue;
      }
      double failsBelow = (i + 1 - holdersBelow) / exceptions;
      double balanced = 0.5 + 0.5 * Math.abs(holdersBelow / (double) holders - failsBelow);
      if (balanced > best + 1e-12) {
        best = balanced;
        limit = 0.5 * (value(sorted[i] >> 1) + value(sorted[i + 1] >> 1));
      }
    }
    return new double[] {best, limit};
  }

  private static double value(long ordered) {
    int bits = (int) (ordered >= 0 ? ordered : Integer.MIN_VALUE - ordered);
    return Float.intBitsToFloat(bits);
  }

  private Optional<ClaimSplit> pair() {
    ClaimBins bins = new ClaimBins(inputs, found, this::holds);
    return bins.bestCorner().map(corner -> told(corner.conditions(), corner::inside));
  }

  private ClaimSplit told(List<Condition> conditions, java.util.function.IntPredicate inside) {
    int[][] train = counts(found, inside);
    boolean insideHolds =
        train[1][1] / (double) Math.max(1, train[1][0] + train[1][1])
            > train[0][1] / (double) Math.max(1, train[0][0] + train[0][1]);
    int[][] test = counts(measured, inside);
    int in = insideHolds ? 1 : 0;
    int rightHolders = test[in][1];
    int rightExceptions = test[1 - in][0];
    double holders = test[0][1] + test[1][1];
    double exceptions = test[0][0] + test[1][0];
    int[][] whole = counts(all(), inside);
    return new ClaimSplit(
        conditions,
        insideHolds,
        whole[1][0] + whole[1][1],
        whole[1][1],
        whole[0][0] + whole[0][1],
        whole[0][1],
        (rightHolders + rightExceptions) / (holders + exceptions),
        0.5 * (rightHolders / holders + rightExceptions / exceptions),
        Math.max(holders, exceptions) / (holders + exceptions),
        apart);
  }

  /** Cases by outside (0) or inside (1) and exception (0) or holder (1). */
  private int[][] counts(int[] some, java.util.function.IntPredicate inside) {
    int[][] counts = new int[2][2];
    for (int number : some) {
      counts[inside.test(number) ? 1 : 0][holds(number) ? 1 : 0]++;
    }
    return counts;
  }
}
