package org.leverbook.study;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * An answer with how far it may be off: nine of ten cases lie between {@code low} and {@code high}.
 *
 * @param what the answer, as in "hinge, start: moment at the L5/S1"
 * @param unit its unit
 * @param plain the answer where nothing is off
 * @param low 5 % of the cases that could be held lie below
 * @param median half of them lie below
 * @param high 95 % of them lie below
 * @param deviation their standard deviation
 * @param asked how many cases were asked for
 * @param draws how many were computed: fewer where the user stopped
 * @param left the cases left out because they could not be held, by reason
 */
public record DoubtBand(
    String what,
    String unit,
    double plain,
    double low,
    double median,
    double high,
    double deviation,
    int asked,
    int draws,
    List<Left> left)
    implements Shown {

  /** With fewer cases than this, 5 % are not a case. */
  private static final int FEWEST = 20;

  /**
   * Cases left out.
   *
   * @param cases how many
   * @param reason of the first of them
   */
  public record Left(int cases, String reason) {}

  /** Keeps its own copy of the list. */
  public DoubtBand {
    left = List.copyOf(left);
  }

  /** From the cases. */
  static DoubtBand of(String what, String unit, double plain, Cases cases) {
    double[] sorted = cases.values();
    if (sorted.length < FEWEST) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "Of %d cases only %d could be held: too few to say how far the answer may be off.%s",
              cases.done(),
              sorted.length,
              cases.left().isEmpty() ? "" : " Mostly: " + cases.left().get(0).reason()));
    }
    Arrays.sort(sorted);
    double mean = Arrays.stream(sorted).average().orElseThrow();
    double squares = Arrays.stream(sorted).map(v -> (v - mean) * (v - mean)).sum();
    return new DoubtBand(
        what,
        unit,
        plain,
        quantile(sorted, 0.05),
        quantile(sorted, 0.5),
        quantile(sorted, 0.95),
        Math.sqrt(squares / (sorted.length - 1)),
        cases.asked(),
        cases.done(),
        cases.left());
  }

  /** Between the two values next to it, in a straight line. */
  private static double quantile(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int below = (int) place;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }

  /**
   * How many cases could be held.
   *
   * @return at most the draws
   */
  public int held() {
    return draws - left.stream().mapToInt(Left::cases).sum();
  }

  /**
   * The band in one line.
   *
   * @return as in "312 N·m (5–95 %: 288 to 339)"
   */
  public String sentence() {
    return number(plain)
        + (unit.isEmpty() || unit.equals("°") ? unit : " " + unit)
        + " (5–95 %: "
        + number(low)
        + " to "
        + number(high)
        + ")";
  }

  /**
   * A number with so many decimals that the ends of the band can be told apart.
   *
   * @param value in the band's unit
   * @return without its unit
   * @throws Refused if it is no number
   */
  public String number(double value) {
    Ask.number("number to write", value, -Double.MAX_VALUE, Double.MAX_VALUE);
    String text = String.format(Locale.ROOT, "%." + decimals() + "f", value);
    return text.matches("-0\\.?0*") ? text.substring(1) : text;
  }

  int decimals() {
    double width = high - low;
    return width >= 20 ? 0 : width >= 2 ? 1 : width >= 0.2 ? 2 : 3;
  }

  /**
   * What else is to be known: cases, those left out, the plain answer outside; the caution.
   *
   * @return sentences
   */
  public List<String> notes() {
    StringBuilder cases = new StringBuilder();
    cases.append(String.format(Locale.ROOT, "%,d cases, ", draws));
    if (draws < asked) {
      cases.append(String.format(Locale.ROOT, "stopped before the %,d asked for; ", asked));
    }
    if (left.isEmpty()) {
      cases.append("all could be held.");
    } else {
      cases.append(
          String.format(
              Locale.ROOT,
              "%,d could not be held and %s left out:",
              draws - held(),
              draws - held() == 1 ? "is" : "are"));
      for (Left one : left.subList(0, Math.min(3, left.size()))) {
        String times =
            one.cases() == 1 ? "once" : String.format(Locale.ROOT, "%,d times", one.cases());
        cases.append(" ").append(times).append(" \"").append(one.reason()).append("\"");
      }
      cases.append(left.size() > 3 ? " and others." : ".");
    }
    boolean inside = low <= plain && plain <= high;
    return inside
        ? List.of(cases.toString(), Caution.TEXT)
        : List.of(
            cases.toString(),
            "The plain answer lies outside the band: what may be off pushes it mostly one way.",
            Caution.TEXT);
  }

  @Override
  public String text() {
    return what + " " + sentence() + "\n" + String.join("\n", notes());
  }

  @Override
  public Optional<String> html() {
    int d = decimals();
    return new Sheet(
            what,
            List.of(
                new Column("answer", unit, d),
                new Column("5 %", unit, d),
                new Column("median", unit, d),
                new Column("95 %", unit, d)),
            List.of(List.of(plain, low, median, high)),
            notes())
        .html();
  }

  @Override
  public String toString() {
    return text();
  }
}
