package org.leverbook.study;

import java.util.List;

/**
 * What a search found.
 *
 * @param scan every setting of the first look, in order
 * @param best the best of all
 * @param valleys the best of each valley, the best first; nearly equal ones once
 */
record Sought(List<Trial> scan, Trial best, List<Trial> valleys) {

  /** Keeps its own copies of the lists. */
  Sought {
    scan = List.copyOf(scan);
    valleys = List.copyOf(valleys);
  }

  /** From the lowest to the highest cost of the scan. */
  double spread() {
    double[] costs = scan.stream().filter(Trial::free).mapToDouble(Trial::cost).sorted().toArray();
    return costs.length == 0 ? 0 : costs[costs.length - 1] - Math.min(costs[0], best.cost());
  }
}
