package org.leverbook.display;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The units that stand in the headings of tables, in brackets at the end: a column that has one
 * holds numbers.
 */
public final class ColumnUnits {

  private static final Set<String> KNOWN =
      Set.of(
          "kg",
          "lb",
          "g",
          "m",
          "cm",
          "mm",
          "in",
          "N",
          "kN",
          "N·m",
          "Nm",
          "N m",
          "°",
          "deg",
          "rad",
          "s",
          "ms",
          "%",
          "m/s",
          "m/s²",
          "rad/s",
          "°/s",
          "N/m",
          "N/mm",
          "kPa",
          "MPa",
          "J",
          "W",
          "cm²",
          "m²",
          "kg·m²",
          "years",
          "% of foot from heel",
          "times body mass",
          "px");

  private static final Pattern UNIT = Pattern.compile(".*\\S\\s*\\(([^()]+)\\)\\s*");

  private ColumnUnits() {}

  /**
   * Whether a heading names a unit, and so promises numbers.
   *
   * @param heading as in {@code moment (N·m)}
   * @return true for that, false for {@code comment (in English)}
   */
  public static boolean promised(String heading) {
    Matcher unit = UNIT.matcher(heading);
    return unit.matches()
        && (KNOWN.contains(unit.group(1).strip()) || unit.group(1).startsWith("% of "));
  }
}
