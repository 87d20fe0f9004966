package org.leverbook.study;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leverbook.display.Shown;
import org.leverbook.study.ClaimInputs.Input;

/**
 * A rule of one or two conditions that tells exceptions of a claim from cases in which it holds.
 *
 * <p>It was found on one half of the cases and measured on the other. Accuracy is the share of
 * cases it tells rightly; balanced accuracy is the mean of that share among holders and that among
 * exceptions, so that a rule that always says "holds" gets 50 %.
 *
 * @param conditions all of them must be met to be inside
 * @param insideHolds whether the rule expects the claim to hold inside; it expects the contrary
 *     outside
 * @param inside cases inside
 * @param insideHolding those of them in which the claim holds
 * @param outside cases outside
 * @param outsideHolding those of them in which the claim holds
 * @param accuracy 0 to 1
 * @param balanced balanced accuracy, 0 to 1
 * @param base accuracy of always saying what most cases do, 0 to 1
 * @param apart whether it was measured on cases it was not found on
 */
public record ClaimSplit(
    List<Condition> conditions,
    boolean insideHolds,
    int inside,
    int insideHolding,
    int outside,
    int outsideHolding,
    double accuracy,
    double balanced,
    double base,
    boolean apart)
    implements Shown {

  /** Below this balanced accuracy a rule separates badly: by eye. */
  static final double GOOD = 0.65;

  /** Keeps its own copy. */
  public ClaimSplit {
    conditions = List.copyOf(conditions);
  }

  /**
   * One condition.
   *
   * @param input as in "thigh (% of stature)"
   * @param words as in "thigh over 25.4 % of stature"
   */
  public record Condition(String input, String words) {

    static Condition of(Input input, double limit, boolean over) {
      if (input.yesOrNo()) {
        String name =
            input.name().contains(":")
                ? input.name().substring(0, input.name().indexOf(':'))
                : input.name();
        return new Condition(name, over ? input.yes() : input.no());
      }
      return new Condition(
          heading(input), input.name() + (over ? " over " : " up to ") + amount(input, limit));
    }

    static Condition between(Input input, double low, double high) {
      return new Condition(
          heading(input),
          input.name() + " over " + amount(input, low) + " and up to " + amount(input, high));
    }

    static String heading(Input input) {
      return input.unit().isEmpty() ? input.name() : input.name() + " (" + input.unit() + ")";
    }

    private static String amount(Input input, double limit) {
      String number =
          String.format(Locale.ROOT, "%.4f", limit).replaceAll("0+$", "").replaceAll("\\.$", "");
      String gap = input.unit().isEmpty() || input.unit().equals("°") ? "" : " ";
      return number + gap + input.unit();
    }
  }

  /** Whether it tells holders from exceptions well enough to speak of. */
  public boolean good() {
    return balanced >= GOOD;
  }

  /** The inputs it looks at, as in "thigh (% of stature), body mass (kg)". */
  public String inputs() {
    return conditions.stream().map(Condition::input).distinct().collect(Collectors.joining(", "));
  }

  /** The conditions, as in "thigh over 25.4 % of stature and a woman". */
  public String rule() {
    return conditions.stream().map(Condition::words).collect(Collectors.joining(" and "));
  }

  @Override
  public String text() {
    return String.format(
        Locale.ROOT,
        "%s: holds in %s of %,d cases there, in %s of the other %,d. Right in %.1f %% of cases"
            + " (always saying what most do: %.1f %%), balanced accuracy %.1f %%, measured on %s.",
        rule(),
        ClaimText.percent(insideHolding, inside),
        inside,
        ClaimText.percent(outsideHolding, outside),
        outside,
        100 * accuracy,
        100 * base,
        100 * balanced,
        apart ? "other cases than it was found on" : "the cases it was found on");
  }

  @Override
  public String toString() {
    return text();
  }
}
