package org.leverbook.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.leverbook.study.ClaimInputs.Input;
import org.leverbook.study.ClaimSplit.Condition;

/**
 * The cases of a claim counted in small fields of two inputs each, so that every corner that two
 * limits cut off can be judged at once.
 */
final class ClaimBins {

  /** Limits tried of each input: at its quantiles. */
  private static final int LIMITS = 31;

  /** A corner with fewer cases than this is left alone. */
  private static final int FEWEST_INSIDE = 10;

  private final List<Input> inputs;
  private final int[] some;
  private final IntPredicate holds;
  private final double[][] limits;
  private final byte[][] binOf;

  ClaimBins(List<Input> inputs, int[] some, IntPredicate holds) {
    this.inputs = inputs;
    this.some = some;
    this.holds = holds;
    limits = new double[inputs.size()][];
    binOf = new byte[inputs.size()][some.length];
    for (int i = 0; i < inputs.size(); i++) {
      limits[i] = limits(inputs.get(i));
      for (int c = 0; c < some.length; c++) {
        int at = Arrays.binarySearch(limits[i], inputs.get(i).of(some[c]));
        // A value that equals a limit is "up to" it.
        binOf[i][c] = (byte) (at >= 0 ? at : -at - 1);
      }
    }
  }

  /**
   * A corner: above or below a limit of one input and above or below one of another.
   *
   * @param first input
   * @param firstLimit of the first input
   * @param firstOver whether above it
   * @param second input; may be the same
   * @param secondLimit of the second input
   * @param secondOver whether above it
   */
  record Corner(
      Input first,
      double firstLimit,
      boolean firstOver,
      Input second,
      double secondLimit,
      boolean secondOver) {

    boolean inside(int number) {
      return first.of(number) > firstLimit == firstOver
          && second.of(number) > secondLimit == secondOver;
    }

    List<Condition> conditions() {
      if (first == second) {
        return List.of(
            Condition.between(
                first, Math.min(firstLimit, secondLimit), Math.max(firstLimit, secondLimit)));
      }
      return List.of(
          Condition.of(first, firstLimit, firstOver),
          Condition.of(second, secondLimit, secondOver));
    }
  }

  private double[] limits(Input input) {
    if (input.yesOrNo()) {
      return new double[] {0.5};
    }
    double[] sorted = Arrays.stream(some).mapToDouble(input::of).sorted().toArray();
    double[] few = Arrays.stream(sorted).distinct().limit(LIMITS + 2L).toArray();
    if (few.length <= LIMITS + 1) {
      // Half-way between neighbouring values, as a coach would put it between two settings.
      double[] between = new double[few.length - 1];
      Arrays.setAll(between, i -> 0.5 * (few[i] + few[i + 1]));
      return between;
    }
    double[] cuts = new double[LIMITS];
    for (int i = 0; i < LIMITS; i++) {
      int at = (int) ((i + 1L) * sorted.length / (LIMITS + 1));
      int before = Math.max(0, at - 1);
      cuts[i] = rounded(input, some, 0.5 * (sorted[before] + sorted[at]));
    }
    return Arrays.stream(cuts).distinct().sorted().toArray();
  }

  /** A limit with as many decimals as its input's spread deserves: some 300 steps. */
  static double rounded(Input input, int[] some, double limit) {
    double least = Arrays.stream(some).mapToDouble(input::of).min().orElse(limit);
    double most = Arrays.stream(some).mapToDouble(input::of).max().orElse(limit);
    double step = (most - least) / 100;
    int decimals = (int) Math.max(0, Math.min(4, Math.ceil(-Math.log10(Math.max(step, 1e-6)))));
    double scale = Math.pow(10, decimals);
    double near = Math.round(limit * scale) / scale;
    return near >= least && near < most ? near : limit;
  }

  Optional<Corner> bestCorner() {
    Best best = new Best();
    for (int i = 0; i < inputs.size(); i++) {
      for (int j = i; j < inputs.size(); j++) {
        look(i, j, best);
      }
    }
    return Optional.ofNullable(best.corner);
  }

  /** The best so far. */
  private static final class Best {
    private double balanced = 0.5;
    private Corner corner;
  }

  private void look(int i, int j, Best best) {
    int wide = limits[i].length + 1;
    int high = limits[j].length + 1;
    int[][] below = new int[wide * high][2];
    for (int c = 0; c < some.length; c++) {
      below[binOf[i][c] * high + binOf[j][c]][holds.test(some[c]) ? 1 : 0]++;
    }
    for (int k = 0; k < 2; k++) {
      for (int a = 0; a < wide; a++) {
        for (int b = 0; b < high; b++) {
          below[a * high + b][k] +=
              (a > 0 ? below[(a - 1) * high + b][k] : 0)
                  + (b > 0 ? below[a * high + b - 1][k] : 0)
                  - (a > 0 && b > 0 ? below[(a - 1) * high + b - 1][k] : 0);
        }
      }
    }
    for (int a = 0; a + 1 < wide; a++) {
      for (int b = i == j ? a + 1 : 0; b + 1 < high; b++) {
        for (int side = i == j ? 2 : 0; side < (i == j ? 3 : 4); side++) {
          judge(i, j, a, b, side, below, best);
        }
      }
    }
  }

  /** Sides: 0 both up to, 1 second over, 2 first over, 3 both over. */
  private void judge(int i, int j, int a, int b, int side, int[][] below, Best best) {
    int high = limits[j].length + 1;
    int[] both = below[a * high + b];
    int[] first = below[a * high + high - 1];
    int[] second = below[(below.length / high - 1) * high + b];
    int[] total = below[below.length - 1];
    double[] inside = new double[2];
    for (int k = 0; k < 2; k++) {
      inside[k] =
          switch (side) {
            case 0 -> both[k];
            case 1 -> first[k] - both[k];
            case 2 -> second[k] - both[k];
            default -> total[k] - first[k] - second[k] + both[k];
          };
    }
    if (inside[0] + inside[1] < FEWEST_INSIDE) {
      return;
    }
    double balanced = 0.5 + 0.5 * Math.abs(inside[1] / total[1] - inside[0] / total[0]);
    if (balanced > best.balanced + 1e-9) {
      best.balanced = balanced;
      best.corner =
          new Corner(
              inputs.get(i), limits[i][a], side >= 2, inputs.get(j), limits[j][b], side % 2 == 1);
    }
  }
}
