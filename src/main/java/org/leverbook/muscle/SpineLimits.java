package org.leverbook.muscle;

import java.util.List;
import java.util.Optional;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;

/** What muscles cannot do at the spine, or hardly: {@code muscle/limits.csv}. */
final class SpineLimits {

  private static final DataTable TABLE = DataTable.read("muscle/limits.csv");

  private SpineLimits() {}

  /** Every limit of some muscle of a group, with its source. */
  static List<String> of(MuscleGroup group) {
    return TABLE.rows().stream()
        .map(row -> sentence(row, group))
        .flatMap(Optional::stream)
        .toList();
  }

  /** The published limit of a muscle's extension of the lumbar spine in a few words, or nothing. */
  static String beside(MuscleRow muscle) {
    return TABLE.rows().stream()
        .filter(row -> keys(row).contains(muscle.key()))
        .map(row -> row.text("short"))
        .filter(text -> !text.isEmpty())
        .findFirst()
        .orElse("");
  }

  private static Optional<String> sentence(DataRow row, MuscleGroup group) {
    List<String> own =
        group.parts().stream()
            .filter(p -> keys(row).contains(p.key()))
            .map(MuscleRow::name)
            .toList();
    if (own.isEmpty()) {
      return Optional.empty();
    }
    String who = own.size() == group.parts().size() ? group.name() : Naming.together(own);
    return Optional.of(
        "Limit: "
            + who
            + ": "
            + row.text("limit")
            + " ("
            + row.text("source")
            + "; "
            + row.text("status")
            + ").");
  }

  private static List<String> keys(DataRow row) {
    return MuscleTable.SHIPPED.keys(row, "muscles");
  }
}
