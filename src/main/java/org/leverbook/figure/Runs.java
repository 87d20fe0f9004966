package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;

/** Stretches of values without a gap. */
final class Runs {

  private Runs() {}

  /** From each first place to the one after the last, of two values or more. */
  static List<int[]> of(double[] values) {
    List<int[]> runs = new ArrayList<>();
    int from = 0;
    for (int i = 0; i <= values.length; i++) {
      if (i == values.length || !Double.isFinite(values[i])) {
        if (i - from > 1) {
          runs.add(new int[] {from, i});
        }
        from = i + 1;
      }
    }
    return runs;
  }
}
