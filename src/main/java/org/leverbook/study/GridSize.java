package org.leverbook.study;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leverbook.quantity.Refused;

/** How large a grid may be, and what its quantities may be called. */
final class GridSize {

  private GridSize() {}

  /**
   * How many positions a grid has.
   *
   * @param spans what is varied
   * @return how many
   * @throws Refused if they do not fit into memory
   */
  static int of(Span<?>... spans) {
    return within(
        Sweep.MOST,
        "fit",
        " Take fewer values, or write them straight into a file:"
            + " toFile(\"grid.csv\").grid(...).",
        spans);
  }

  /**
   * The same for a file.
   *
   * @throws Refused if there are more than a file should hold
   */
  static int inFile(Span<?>... spans) {
    return within(ToFile.MOST, "go into one file", " Take fewer values.", spans);
  }

  private static int within(int most, String fit, String instead, Span<?>... spans) {
    long all = 1;
    for (Span<?> span : spans) {
      // Three spans of a million fit into a long.
      all *= span.values();
    }
    if (all > most) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A grid of %s values has %,d %s; at most %,d positions %s.%s",
              Arrays.stream(spans)
                  .map(s -> String.format(Locale.ROOT, "%,d", s.values()))
                  .collect(Collectors.joining(" by ")),
              all,
              spans.length == 2 ? "pairs" : "cells",
              most,
              fit,
              instead));
    }
    return (int) all;
  }

  /**
   * Whether table columns can be told apart.
   *
   * @throws Refused if two quantities have one name
   */
  static void namesDiffer(Span<?>... spans) {
    for (int i = 0; i < spans.length; i++) {
      for (int k = 0; k < i; k++) {
        if (spans[i].name().equals(spans[k].name())) {
          throw new Refused(
              (spans.length == 2 ? "Both" : "Two")
                  + " quantities of the grid are called \""
                  + spans[i].name()
                  + "\": give them "
                  + (spans.length == 2 ? "two" : "different")
                  + " names, so that the table's columns can be told apart.");
        }
      }
    }
  }
}
