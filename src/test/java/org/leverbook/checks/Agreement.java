package org.leverbook.checks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import org.hipparchus.geometry.euclidean.threed.Rotation;

/** Every published row beside what Leverbook answers, or the reason why it is not asked. */
record Agreement(List<Line> lines) {

  /** How a row came out. */
  enum Outcome {
    AGREES("agrees"),
    MISSES("misses"),
    NOT_COMPARED("not compared");

    private final String word;

    Outcome(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  /**
   * A published row and what came of it.
   *
   * @param row the row
   * @param answer Leverbook's number in the row's unit; empty where it is not asked
   * @param note what was taken, why it misses, or why it is not asked; may be empty
   */
  record Line(PublishedRow row, OptionalDouble answer, String note) {

    Outcome outcome() {
      if (answer.isEmpty()) {
        return Outcome.NOT_COMPARED;
      }
      return row.accepts(answer.getAsDouble()) ? Outcome.AGREES : Outcome.MISSES;
    }
  }

  static Agreement computed() {
    Map<String, DoubleSupplier> setUps = setUps();
    List<Line> lines = new ArrayList<>();
    for (PublishedRow row : PublishedRow.all()) {
      DoubleSupplier setUp = setUps.remove(row.id());
      if (setUp == null) {
        lines.add(new Line(row, OptionalDouble.empty(), NotCompared.why(row.id())));
      } else {
        String note = Disagreements.REASONS.getOrDefault(row.id(), Taken.of(row.id()));
        lines.add(new Line(row, OptionalDouble.of(setUp.getAsDouble()), note));
      }
    }
    if (!setUps.isEmpty()) {
      throw new AssertionError("set up, but no published row: " + setUps.keySet());
    }
    return new Agreement(List.copyOf(lines));
  }

  private static Map<String, DoubleSupplier> setUps() {
    Map<String, DoubleSupplier> all = new HashMap<>();
    PublishedCasesTest.setUps()
        .forEach((id, setUp) -> all.put(id, () -> setUp.applyAsDouble(Rotation.IDENTITY)));
    for (Map<String, DoubleSupplier> some :
        List.of(MeasuredCases.rows(), FactCases.rows(), TradeCases.rows())) {
      some.forEach(
          (id, setUp) -> {
            if (all.put(id, setUp) != null) {
              throw new AssertionError(id + " is set up twice");
            }
          });
    }
    return all;
  }

  List<Line> with(Outcome outcome) {
    return lines.stream().filter(line -> line.outcome() == outcome).toList();
  }
}
