package org.leverbook.study;

import java.util.function.ToDoubleBiFunction;
import org.leverbook.statics.Position;

/**
 * What a claim says of a position, or of two of one person.
 *
 * @param pair whether it is asked of two
 * @param exact whether it tells by how much, or only yes (1) and no (-1)
 * @param unit of the margin; empty where none was said
 * @param margin more than zero where the claim holds; of one position the second is null
 */
record ClaimTest(
    boolean pair, boolean exact, String unit, ToDoubleBiFunction<Position, Position> margin) {

  /** A margin with its unit. */
  String text(double value) {
    String number = String.format(java.util.Locale.ROOT, "%.4g", value);
    if (number.contains(".") && !number.contains("e")) {
      number = number.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
    return unit.isEmpty() ? number : number + " " + unit;
  }
}
