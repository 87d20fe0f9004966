package org.leverbook.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;

/**
 * What people measured on lifters (section B), and what is common practice on supports (section E):
 * every row that asks for moments, supports, equipment, and what presses inside; and which rows are
 * left.
 */
final class MeasuredCases {

  /**
   * Rows of section B that are not compared yet: effort against strength, peaks of moving lifts,
   * sideways pushes of the hands, loads beyond what our muscles hold, and lifts whose postures
   * nothing prints.
   */
  static final Set<String> NEEDS_MUSCLES =
      Set.of(
          "B15c", "B17", "B22a", "B22b", "B23a", "B23b", "B23c", "B24a", "B24b", "B25a", "B25b",
          "B25c", "B25d", "B28a", "B28b", "B37a", "B37b", "B41c", "B42a", "B42b", "B42c");

  /** Rows of section B that a set-up is given, so that comparing them would compare nothing. */
  static final Set<String> GIVEN_TO_THE_SET_UP =
      Set.of(
          "B04a", "B04c", "B04e", "B05a", "B05b", "B10a", "B10b", "B23d", "B23e", "B39b", "B43a");

  private MeasuredCases() {}

  /** The rows that are compared, by id. */
  static Map<String, DoubleSupplier> rows() {
    Map<String, DoubleSupplier> all = new TreeMap<>();
    for (Map<String, DoubleSupplier> some :
        List.of(
            SupportCases.rows(),
            DeadliftCases.rows(),
            SquatCases.rows(),
            StrapCases.rows(),
            BenchCases.rows(),
            PostureCases.rows(),
            MuscleCases.rows())) {
      some.forEach(
          (id, setUp) -> {
            if (all.put(id, setUp) != null) {
              throw new AssertionError(id + " is set up twice");
            }
          });
    }
    return new LinkedHashMap<>(all);
  }
}
