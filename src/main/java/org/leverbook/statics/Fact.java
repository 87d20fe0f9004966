package org.leverbook.statics;

import java.util.Locale;

/**
 * Something a position says of itself besides its moments: a setting as it was asked for, or how
 * the posture came out.
 *
 * @param name as in "hip height"
 * @param value in the unit
 * @param unit as in "cm" or "°"
 */
public record Fact(String name, double value, String unit) {

  @Override
  public String toString() {
    String gap = unit.equals("°") ? "" : " ";
    return String.format(Locale.ROOT, "%s %.1f%s%s", name, value, gap, unit);
  }
}
