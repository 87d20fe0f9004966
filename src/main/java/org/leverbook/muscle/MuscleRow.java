package org.leverbook.muscle;

import java.util.List;
import java.util.OptionalDouble;
import org.leverbook.data.DataRow;
import org.leverbook.quantity.Refused;

/**
 * One muscle, or a part of one that acts for itself, of the reference man: a row of {@code
 * muscle/muscles.csv}.
 *
 * @param key its name in the tables, as in "gluteus_maximus"
 * @param name its name for readers, as in "gluteus maximus"
 * @param group what coaches call it, as in "glutes"
 * @param region trunk, neck, shoulder girdle, shoulder, arm, forearm, hip, thigh or leg
 * @param area physiological cross-section of one side, m²
 * @param stress greatest pull for each area, Pa; belongs to this area only, for both come from one
 *     way of measuring
 * @param slowFibres share of slow fibres, 0 to 1, from memory
 * @param crosses the joints it crosses, in words
 * @param actions what it mainly does, in words
 * @param spine whether it can extend the spine, in words
 * @param source of the published number behind the area
 * @param status "found" where that number was read in its source, else "from memory"
 * @param confidence high, medium or low
 * @param note what else is to be known
 */
public record MuscleRow(
    String key,
    String name,
    String group,
    String region,
    double area,
    double stress,
    OptionalDouble slowFibres,
    String crosses,
    List<String> actions,
    String spine,
    String source,
    String status,
    String confidence,
    String note) {

  private static final double SQUARE_CENTIMETRE = 1e-4;

  /** Keeps its own copy of the list. */
  public MuscleRow {
    actions = List.copyOf(actions);
  }

  /**
   * Reads one row.
   *
   * @param row the row
   * @param name the muscle's name for readers
   * @return the muscle
   * @throws Refused if a cell is missing or impossible; names file, line and column
   */
  static MuscleRow of(DataRow row, String name) {
    return new MuscleRow(
        filled(row, "name"),
        name,
        filled(row, "group"),
        filled(row, "region"),
        SQUARE_CENTIMETRE * positive(row, "pcsa_cm2"),
        positive(row, "sigma_n_per_cm2") / SQUARE_CENTIMETRE,
        share(row, "type1_fibre_pct"),
        filled(row, "joints_crossed"),
        List.of(filled(row, "main_actions").split("; *")),
        filled(row, "can_extend_spine"),
        filled(row, "pcsa_source"),
        status(row),
        filled(row, "confidence"),
        row.text("notes"));
  }

  /**
   * The greatest pull of one side.
   *
   * @return newtons
   */
  public double maxForce() {
    return area * stress;
  }

  static String status(DataRow row) {
    String status = row.text("status");
    if (!status.equals("found") && !status.equals("from memory")) {
      throw bad(row, "status", "must be \"found\" or \"from memory\", but is \"" + status + "\"");
    }
    return status;
  }

  static String filled(DataRow row, String column) {
    String text = row.text(column);
    if (text.isEmpty()) {
      throw bad(row, column, "a text is missing");
    }
    return text;
  }

  static Refused bad(DataRow row, String column, String what) {
    return new Refused(
        row.table() + ", line " + row.line() + ", column " + column + ": " + what + ".");
  }

  private static double positive(DataRow row, String column) {
    double number = row.number(column);
    if (number <= 0) {
      throw bad(row, column, "must be above zero, but is " + number);
    }
    return number;
  }

  private static OptionalDouble share(DataRow row, String column) {
    OptionalDouble percent = row.optionalNumber(column);
    if (percent.isPresent() && (percent.getAsDouble() < 0 || percent.getAsDouble() > 100)) {
      throw bad(row, column, "must lie between 0 and 100, but is " + percent.getAsDouble());
    }
    return percent.isPresent() ? OptionalDouble.of(percent.getAsDouble() / 100) : percent;
  }
}
