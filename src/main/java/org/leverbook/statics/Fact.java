package org.leverbook.statics;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leverbook.quantity.Refused;

/**
 * Something a position says of itself besides its moments: a setting as it was asked for, or how
 * the posture came out.
 *
 * @param name as in "hip height"
 * @param value in the unit
 * @param unit as in "cm" or "°"
 */
public record Fact(String name, double value, String unit) {

  /** The value of the fact of a name; refused with the names that exist. */
  static double named(List<Fact> facts, String name) {
    return facts.stream()
        .filter(f -> f.name().equals(name))
        .mapToDouble(Fact::value)
        .findFirst()
        .orElseThrow(
            () ->
                new Refused(
                    "This position has no \""
                        + name
                        + "\"; it has "
                        + facts.stream().map(Fact::name).collect(Collectors.joining(", "))
                        + "."));
  }

  @Override
  public String toString() {
    String gap = unit.equals("°") ? "" : " ";
    // Rounding must not leave a minus before zero.
    double shown = Math.abs(value) < 0.05 ? 0 : value;
    return String.format(Locale.ROOT, "%s %.1f%s%s", name, shown, gap, unit);
  }
}
