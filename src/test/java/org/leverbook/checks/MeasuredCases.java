package org.leverbook.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;

/**
 * What people measured on lifters (section B) and on strength and spines (section C), and what is
 * common practice on supports (section E): every row that asks for moments, supports, equipment,
 * strength, and what presses inside.
 */
final class MeasuredCases {

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
            MuscleCases.rows(),
            DiscCases.rows(),
            StrengthCases.rows())) {
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
