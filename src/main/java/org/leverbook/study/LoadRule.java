package org.leverbook.study;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.leverbook.load.Load;
import org.leverbook.quantity.Refused;

/**
 * How the loads of those compared are chosen.
 *
 * @param words as in "each limiter at 70 % of what it can give"
 * @param times from one of them to how many times its load; refuses where there is no such load
 */
record LoadRule(String words, ToDoubleFunction<Weighed<?>> times) {

  static final LoadRule AS_GIVEN = new LoadRule("loads as given", w -> 1);

  static LoadRule equalLoad(double kilograms) {
    return new LoadRule(
        String.format(Locale.ROOT, "all with %.1f kg", kilograms),
        w -> kilograms == counted(w.mainLoad()) ? 1 : kilograms / counted(w.mainLoad()));
  }

  static LoadRule equalEffort(double share) {
    return new LoadRule(
        "each limiter at " + percent(share) + " of what it can give", w -> w.timesAtEffort(share));
  }

  static LoadRule shareOfLargest(double share) {
    return new LoadRule(
        "each at " + percent(share) + " of its own largest load", w -> share * w.timesAtLargest());
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f", 100 * share).replace(".0", "") + " %";
  }

  /** A load's size; refuses where that is not counted. */
  static double counted(Load load) {
    return load.counted()
        .orElseThrow(
            () ->
                new Refused(
                    "The size of the "
                        + load.description()
                        + " is not counted in kilograms, so it cannot be made equal to another;"
                        + " .atEqualEffort(percent(70)) can be asked for."));
  }
}
