package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.leverbook.quantity.Refused;

/** The search for the best, on ground whose lowest place is known. */
class SearchTest {

  private static Optimum<Double> lowest(DoubleUnaryOperator ground) {
    return Optimum.over(
        "height",
        cm(0),
        cm(10),
        h -> h.getValue().doubleValue(),
        h -> ground.applyAsDouble(h),
        true);
  }

  private static Optimum<double[]> lowest(DoubleBinaryOperator ground) {
    return Optimum.over(
        Span.of("height", cm(0), cm(10), 2),
        Span.of("angle", deg(-5), deg(5), 2),
        (h, a) -> new double[] {h.getValue().doubleValue(), a.getValue().doubleValue()},
        p -> ground.applyAsDouble(p[0], p[1]),
        true);
  }

  private static double setting(Optimum<?> optimum, int which) {
    return optimum.settings().get(which).getValue().doubleValue();
  }

  /** Near a lowest place a cost hardly changes: its square root of rounding is what can be had. */
  private static final double FINE = 1e-5;

  @Test
  void one_valley_is_found_to_a_millionth_of_the_range() {
    Optimum<Double> best = lowest(h -> 5 + Math.pow(h - Math.PI, 2));
    assertThat(setting(best, 0)).isCloseTo(Math.PI, within(FINE));
    assertThat(best.value()).isCloseTo(5, within(1e-9));
    assertThat(best.best()).isEqualTo(setting(best, 0));
    // 5 % of 1 is the square of the way that one may stray.
    double way = Math.sqrt(0.05);
    assertThat(best.notes())
        .containsExactly(
            String.format(
                "Within one per cent of the best: height %.2f cm to %.2f cm.",
                Math.PI - way, Math.PI + way));
  }

  @Test
  void the_highest_is_the_lowest_upside_down() {
    Optimum<Double> best =
        Optimum.over(
            "height",
            cm(0),
            cm(10),
            h -> h.getValue().doubleValue(),
            h -> 5 - h * h + 6 * h,
            false);
    assertThat(setting(best, 0)).isCloseTo(3, within(FINE));
    assertThat(best.value()).isCloseTo(14, within(1e-9));
    assertThat(best.text())
        .startsWith("highest quantity over height (0.0 cm to 10.0 cm): 14 at height 3.00 cm\n");
  }

  @Test
  void of_many_valleys_the_deepest_is_taken_and_the_next_is_told() {
    // Valleys a wave of 2 cm apart on a slope; the lowest near 9, the next near 7.
    Optimum<Double> best = lowest(h -> 20 - 0.1 * h + Math.cos(Math.PI * h));
    double slope = Math.asin(-0.1 / Math.PI) / Math.PI;
    assertThat(setting(best, 0)).isCloseTo(9 - slope, within(FINE));
    assertThat(best.notes().get(1))
        .isEqualTo(
            String.format(
                "The next best of its own kind lies at height %.2f cm: %.1f.",
                7 - slope, 20 - 0.7 + 0.1 * slope + Math.cos(Math.PI * (7 - slope))));
    assertThat(best.sheet().rows().stream().filter(r -> !r.get(2).equals("")))
        .extracting(r -> r.get(2))
        .containsExactly("next best", "next best", "next best", "next best", "best");
  }

  @Test
  void ground_that_is_level_all_over_says_that_nothing_is_to_be_chosen() {
    Optimum<Double> best = lowest(h -> 7);
    assertThat(setting(best, 0)).as("the middle").isEqualTo(5);
    assertThat(best.notes())
        .containsExactly(
            "The quantity is the same everywhere in the range: nothing is to be chosen here.");
  }

  @Test
  void of_a_level_stretch_the_middle_is_taken() {
    Optimum<Double> best = lowest(h -> 3 + Math.max(0, Math.abs(h - 4) - 1));
    assertThat(setting(best, 0)).isCloseTo(4, within(0.21));
    assertThat(best.notes())
        .containsExactly("Within one per cent of the best: height 2.97 cm to 5.03 cm.");
  }

  @Test
  void the_best_at_a_limit_of_the_range_says_so() {
    Optimum<Double> low = lowest(h -> 1 + h);
    assertThat(setting(low, 0)).isZero();
    assertThat(low.notes())
        .containsExactly(
            "At the lower limit of the range, height 0.0 cm: lower may be better still.",
            "Within one per cent of the best: height 0.00 cm to 0.01 cm.");
    Optimum<Double> high = lowest(h -> 100 - h);
    assertThat(setting(high, 0)).isEqualTo(10);
    assertThat(high.notes().get(0))
        .isEqualTo("At the upper limit of the range, height 10.0 cm: higher may be better still.");
    Optimum<Double> backwards =
        Optimum.over("height", cm(10), cm(0), h -> h.getValue().doubleValue(), h -> 1 + h, true);
    assertThat(setting(backwards, 0)).isZero();
    assertThat(backwards.notes()).isEqualTo(low.notes());
  }

  @Test
  void a_limit_that_hardly_matters_is_not_called_a_promise() {
    Optimum<Double> nearlyLevel = lowest(h -> 5 + 1e-5 * h + Math.max(0, h - 6));
    assertThat(setting(nearlyLevel, 0)).isZero();
    assertThat(nearlyLevel.notes())
        .containsExactly(
            "At the lower limit of the range, height 0.0 cm, but nearby it hardly matters.",
            "Within one per cent of the best: height 0.00 cm to 6.05 cm.");
  }

  @Test
  void the_best_against_a_limit_that_was_set_lies_on_it_and_says_so() {
    Optimum<Double> best = lowest(h -> 1 + h).where("height at least 2.5", h -> h >= 2.5);
    assertThat(setting(best, 0)).isBetween(2.5, 2.5 + 1e-6);
    assertThat(best.notes().get(0))
        .isEqualTo(
            "On the edge of what was asked for; with the height a little lower: Breaks the limit \"height at"
                + " least 2.5\".");
    Optimum<Double> second = lowest(h -> 1 + h).atLeast("reach", "cm", 12, h -> 3 * h);
    assertThat(setting(second, 0)).isBetween(4.0, 4 + 1e-6);
    assertThat(second.notes().get(0))
        .startsWith(
            "On the edge of what was asked for; with the height a little lower: The reach is ")
        .endsWith(" at least 12 cm was asked.");
    assertThat(second.text()).contains("\nLimit: reach at least 12 cm.\n");
  }

  @Test
  void what_cannot_be_done_is_a_wall_with_its_reason_wherever_it_stands() {
    Optimum<Double> best =
        Optimum.over(
            "height",
            cm(0),
            cm(10),
            h -> {
              double at = h.getValue().doubleValue();
              if (at > 4 && at < 6.3) {
                throw new Refused("At " + at + " cm the bar is in the way.");
              }
              if (at > 9) {
                throw new ArithmeticException("of the coach");
              }
              return at;
            },
            h -> 2 + Math.pow(h - 6, 2),
            true);
    assertThat(setting(best, 0)).isBetween(6.3, 6.3 + 1e-6);
    assertThat(best.notes())
        .satisfiesExactly(
            n ->
                assertThat(n)
                    .startsWith(
                        "On the edge of what can be done; with the height a little lower: At 6.29")
                    .endsWith(" cm the bar is in the way."),
            n -> assertThat(n).startsWith("Within one per cent of the best: height 6.30 cm to 6.3"),
            n ->
                assertThat(n)
                    .startsWith("The next best of its own kind lies at height 4.00 cm: 6."),
            n -> assertThat(n).startsWith("Left out: 11 of 49, as at height 4.17 cm: At 4.1"),
            n ->
                assertThat(n)
                    .isEqualTo(
                        "Left out: 5 of 49, as at height 9.17 cm: The lambda failed"
                            + " here: Arithmetic exception: of the coach."));
  }

  @Test
  void where_nothing_can_be_done_the_most_frequent_reason_is_told() {
    Optimum<Double> none =
        Optimum.over(
            "height",
            cm(0),
            cm(10),
            h -> {
              double at = h.getValue().doubleValue();
              throw new Refused(at < 3 ? "Too low by " + (3 - at) : "Too near: " + at + " cm.");
            },
            h -> 1,
            true);
    assertThatThrownBy(none::value)
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith(
            "None of the 49 settings of height gives anything to choose from. Most, 34, say: Too"
                + " near: 3.12");
    assertThatThrownBy(() -> lowest(h -> h).where("never", h -> false).value())
        .hasMessage(
            "None of the 49 settings of height gives anything to choose from. Each says: Breaks the"
                + " limit \"never\".");
  }

  @Test
  void a_quantity_that_is_no_number_is_left_out() {
    Optimum<Double> best = lowest(h -> h < 2 ? Double.NaN : 10 + h);
    assertThat(setting(best, 0)).isBetween(2.0, 2 + 1e-6);
    assertThat(best.notes().get(0)).endsWith("The quantity is no finite number here: NaN.");
  }

  @Test
  void a_limited_quantity_that_is_no_number_keeps_no_limit() {
    Optimum<Double> best =
        lowest(h -> 10 + h).atMost("reach", "cm", 12, h -> h < 2 ? Double.NaN : h);
    assertThat(setting(best, 0)).isBetween(2.0, 2 + 1e-6);
    assertThat(best.notes().get(0))
        .endsWith("The reach is no finite number; at most 12 cm was asked.");
  }

  @Test
  void next_to_zero_one_per_cent_is_of_all_values_seen() {
    Optimum<Double> best = lowest(h -> Math.abs(h - 4));
    assertThat(best.value()).isCloseTo(0, within(1e-6));
    assertThat(best.notes())
        .containsExactly(
            "Within one per cent of all values seen (the best is next to zero): height 3.94 cm to"
                + " 4.06 cm.");
  }

  @Test
  void two_settings_find_a_bent_valley_and_its_end() {
    // A bent narrow valley whose lowest place is (6, 1).
    Optimum<double[]> best =
        lowest(
            (h, a) ->
                4 + Math.pow((h - 6) / 5, 2) + 10 * Math.pow(a - 1 - (h - 6) * (h - 6) / 9, 2));
    assertThat(setting(best, 0)).isCloseTo(6, within(1e-3));
    assertThat(setting(best, 1)).isCloseTo(1, within(1e-3));
    assertThat(best.value()).isCloseTo(4, within(1e-7));
    assertThat(best.notes())
        .allSatisfy(
            n ->
                assertThat(n)
                    .startsWith("Within one per cent of the best with the other setting kept: "));
  }

  @Test
  void two_settings_find_the_deepest_of_many_valleys() {
    Optimum<double[]> best =
        lowest(
            (h, a) ->
                30
                    + 0.05 * (Math.pow(h - 6.2, 2) + Math.pow(a + 2.1, 2))
                    + Math.sin(2 * h) * Math.cos(2 * a));
    double lowest = Double.POSITIVE_INFINITY;
    double[] at = new double[2];
    for (int i = 0; i <= 1000; i++) {
      for (int k = 0; k <= 1000; k++) {
        double h = 0.01 * i;
        double a = -5 + 0.01 * k;
        double here =
            30
                + 0.05 * (Math.pow(h - 6.2, 2) + Math.pow(a + 2.1, 2))
                + Math.sin(2 * h) * Math.cos(2 * a);
        if (here < lowest) {
          lowest = here;
          at = new double[] {h, a};
        }
      }
    }
    assertThat(best.value()).isLessThanOrEqualTo(lowest);
    assertThat(setting(best, 0)).isCloseTo(at[0], within(0.01));
    assertThat(setting(best, 1)).isCloseTo(at[1], within(0.01));
  }

  @Test
  void two_settings_at_a_corner_and_against_a_slanting_limit() {
    Optimum<double[]> corner = lowest((h, a) -> 100 - h + 2 * a);
    assertThat(corner.settings()).hasToString("[10 cm, -5 °]");
    assertThat(corner.notes())
        .contains(
            "At the upper limit of the range, height 10.0 cm: higher may be better still.",
            "At the lower limit of the range, angle -5.0°: lower may be better still.");
    // On the line h + a = 8 the cost 10 + h² + a² is least at (4, 4).
    Optimum<double[]> slanting =
        lowest((h, a) -> 10 + h * h + a * a).where("sum at least 8", p -> p[0] + p[1] >= 8);
    assertThat(slanting.value()).isCloseTo(42, within(0.01));
    assertThat(slanting.notes().get(0)).startsWith("On the edge of what was asked for; with the ");
    assertThat(slanting.notes().get(0)).endsWith("Breaks the limit \"sum at least 8\".");
  }

  @Test
  void one_core_and_three_find_the_same_to_the_last_digit() throws Exception {
    List<String> told = new ArrayList<>();
    for (int cores : List.of(1, 3)) {
      ForkJoinPool pool = new ForkJoinPool(cores);
      told.add(
          pool.submit(
                  () -> {
                    Optimum<double[]> two =
                        lowest((h, a) -> Math.sin(h) + Math.cos(3 * a) + 0.01 * h * a);
                    Optimum<Double> one = lowest(h -> Math.sin(3 * h) + 0.1 * h);
                    return two.settings() + " " + two.value() + two.text() + one.settings();
                  })
              .get());
      pool.shutdown();
    }
    assertThat(told.get(0)).isEqualTo(told.get(1));
  }

  @Test
  void a_finer_scan_finds_a_narrower_valley() {
    DoubleUnaryOperator narrow = h -> 10 - 3 * Math.exp(-Math.pow((h - 7.4) / 0.02, 2)) + 0.1 * h;
    assertThat(setting(lowest(narrow), 0)).isZero();
    assertThat(setting(lowest(narrow).scanned(801), 0)).isCloseTo(7.4, within(0.001));
    assertThatThrownBy(() -> lowest(narrow).scanned(2))
        .hasMessage("A scan takes 3 to 10,000 values of each setting, not 2.");
    assertThatThrownBy(() -> lowest((h, a) -> h).scanned(101))
        .hasMessage("A scan takes 3 to 100 values of each setting, not 101.");
  }

  @Test
  void a_search_that_is_asked_to_stop_stops() throws Exception {
    ForkJoinPool pool = new ForkJoinPool(2);
    List<String> told = new ArrayList<>();
    pool.submit(
            () -> {
              Thread.currentThread().interrupt();
              try {
                lowest(h -> h).value();
              } catch (Refused e) {
                told.add(e.getMessage());
              }
            })
        .get();
    pool.shutdown();
    assertThat(told).containsExactly("Stopped before the search was done.");
  }
}
