package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;

import org.junit.jupiter.api.Test;
import org.leverbook.display.Caution;
import org.leverbook.display.Picture;
import org.leverbook.study.Optimum;
import org.leverbook.study.Span;

/** The scan of a search with its best marked. */
class SearchPlotTest {

  private static final Optimum<Double> WAVES =
      Optimum.over(
              "height",
              cm(0),
              cm(10),
              h -> h.getValue().doubleValue(),
              h -> 20 - 0.1 * h + Math.cos(Math.PI * h),
              true)
          .called("moment", "N·m")
          .where("not in the middle", h -> h < 3.6 || h > 4.7);

  @Test
  void one_setting_is_a_curve_with_the_best_the_next_best_and_what_was_left_out() {
    SvgReader svg = SvgReader.of(WAVES.plot().svgDocument());
    assertThat(svg.words())
        .contains(
            "Lowest moment", "height (cm)", "moment (N·m)", "all settings", "next best", "best")
        .contains("Lowest moment over height (0.0 cm to 10.0 cm): 18.1 N·m at height 9.01 cm.")
        .contains("Left out: 5 of 49, as at height 3.75 cm: Breaks the limit")
        .contains(Caution.TEXT);
    assertThat(svg.all("path")).noneMatch(p -> p.getAttribute("d").contains("Q"));
    assertThat(WAVES.plot().pngFile()).isNotEmpty();
  }

  @Test
  void two_settings_are_fields_in_bands_of_round_numbers() {
    Picture plot =
        Optimum.over(
                Span.of("height", cm(0), cm(10), 2),
                Span.of("angle", deg(-5), deg(5), 2),
                (h, a) ->
                    Math.hypot(h.getValue().doubleValue() - 4, a.getValue().doubleValue() - 1),
                d -> 10 + d,
                true)
            .plot();
    assertThat(SvgReader.of(plot.svgDocument()).words())
        .contains("Lowest quantity", "angle (°)", "height (cm)", "10 to 11", "17 to 18", "best")
        .contains("10 at height 4.00 cm, angle 1.00°.")
        .contains(Caution.TEXT);
  }

  @Test
  void a_scan_without_any_slope_can_be_drawn() {
    Optimum<Double> level =
        Optimum.over("height", cm(0), cm(10), h -> h.getValue().doubleValue(), h -> 0.0, true);
    assertThat(SvgReader.of(level.plot().svgDocument()).words())
        .contains("nothing is to be chosen");
  }

  @Test
  void a_trade_off_is_a_front_with_its_middle_and_what_is_beaten() {
    Picture plot =
        Optimum.over(
                "height",
                cm(0),
                cm(10),
                h -> h.getValue().doubleValue(),
                h -> (h - 2) * (h - 2),
                true)
            .called("first", "")
            .andLowest("second", "N", h -> (h - 8) * (h - 8))
            .plot();
    assertThat(SvgReader.of(plot.svgDocument()).words())
        .contains("Low first against low second", "first", "second (N)", "front")
        .contains("beaten by another", "middle", Caution.TEXT);
  }
}
