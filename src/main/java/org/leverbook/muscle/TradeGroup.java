package org.leverbook.muscle;

import java.util.List;
import java.util.Set;
import org.leverbook.body.Side;
import org.leverbook.data.DataTable;

/**
 * Muscles that a coach speaks of as one, on one row of the verdict.
 *
 * @param name as in "hamstrings"
 * @param keys of its muscles
 */
record TradeGroup(String name, Set<String> keys) {

  /** All of them: {@code muscle/verdict_groups.csv}. */
  static final List<TradeGroup> ALL =
      DataTable.read("muscle/verdict_groups.csv").rows().stream()
          .map(
              row ->
                  new TradeGroup(
                      MuscleRow.filled(row, "group"),
                      Set.copyOf(MuscleTable.SHIPPED.keys(row, "muscles"))))
          .toList();

  /** Keeps its own copy. */
  TradeGroup {
    keys = Set.copyOf(keys);
  }

  /** The places of its muscles of one side among the strands. */
  int[] strands(Musculature muscles, Side side) {
    List<Strand> strands = muscles.strands();
    return java.util.stream.IntStream.range(0, strands.size())
        .filter(i -> strands.get(i).side() == side)
        .filter(i -> keys.contains(strands.get(i).muscle().key()))
        .toArray();
  }
}
