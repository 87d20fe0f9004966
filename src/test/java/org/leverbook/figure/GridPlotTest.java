package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.List;
import java.util.Set;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.HeatMapChart;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.study.Cell;
import org.leverbook.study.Grid;
import org.leverbook.study.GridOfThree;
import org.leverbook.study.Span;
import org.leverbook.support.Floor;

class GridPlotTest {

  private static final Hinge PULL = Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178)));

  private static Grid<Length, Mass> grid;

  /**
   * The lowest height is below the knees; with the hips high and a heavy bar knees are extended.
   */
  @BeforeAll
  static void gridOnce() {
    grid =
        Grid.over(
            Span.of("hip height", Units.cm(48), Units.cm(72), 3),
            Span.of("bar mass", Units.kg(40), Units.kg(200), 5),
            (h, m) -> PULL.holding(Barbell.of(m)).hipHeight(h).start());
  }

  @Test
  void each_field_is_the_moment_of_its_pair_and_empty_where_nothing_could_be_held() {
    HeatMapChart chart = Plots.chart(grid, JointId.KNEE);
    List<Number[]> fields = List.copyOf(chart.getHeatMapSeries().getHeatData());
    assertThat(fields).hasSize(10);
    for (Number[] field : fields) {
      Cell cell = grid.cells().get(5 * field[1].intValue() + field[0].intValue());
      assertThat(field[2].doubleValue()).isEqualTo(cell.moment(JointId.KNEE));
    }
    assertThat(fields).noneMatch(field -> field[1].intValue() == 0);
    assertThat(chart.getHeatMapSeries().getYData()).asString().isEqualTo("[48, 60, 72]");
    assertThat(chart.getHeatMapSeries().getXData()).asString().isEqualTo("[40, 80, 120, 160, 200]");
  }

  @Test
  void the_svg_holds_real_text_numbers_scale_reasons_and_caution() {
    SvgReader svg = SvgReader.of(grid.plot(JointId.KNEE).svgDocument());
    assertThat(svg.words())
        .contains("Moment (N·m): knee (each side); positive: the resistance flexes")
        .contains("hip height (cm)")
        .contains("bar mass (kg)")
        .contains("0 ~ 20")
        .contains("−20 ~ 0")
        .contains("Empty fields have no position.")
        .contains("No position for 5 of 15 pairs, as at hip height 48.0 cm, bar mass 40.0 kg: A")
        .contains(Caution.TEXT);
    String strongest = String.format("−%.0f", -grid.cells().get(14).moment(JointId.KNEE));
    assertThat(svg.words()).as("numbers in the fields").contains(strongest);
    assertThat(svg.all("path")).noneMatch(p -> p.getAttribute("d").contains("Q"));
  }

  @Test
  void a_pad_is_named_below_the_map_and_the_plot_is_the_same_each_time() {
    Grid<?, ?> padded =
        Grid.over(
            Span.of("pad angle", Units.deg(40), Units.deg(60), 2),
            Span.of("bar mass", Units.kg(20), Units.kg(60), 2),
            (a, m) ->
                PULL.holding(Barbell.of(m))
                    .trunkLean(Units.deg(60))
                    .start()
                    .on(org.leverbook.support.Pad.chest(a)));
    String svg = padded.plot(JointId.L5_S1).svgDocument();
    assertThat(SvgReader.of(svg).words()).contains("barbell 20.0 kg, chest pad.");
    assertThat(padded.plot(JointId.L5_S1).svgDocument()).isEqualTo(svg);
  }

  @Test
  void what_is_nothing_but_rounding_has_one_colour() {
    Body body = PULL.body();
    Pose upright =
        Pose.neutral(body.tree())
            .rootAt(new Vector3D(0, body.links().standingHipHeight(), 0), Frame.WORLD);
    Grid<Length, Mass> hanging =
        Grid.over(
            Span.of("hip height", Units.cm(58), Units.cm(64), 5),
            Span.of("bar mass", Units.kg(40), Units.kg(41), 2),
            (h, m) ->
                Position.of(
                    "standing",
                    body,
                    upright,
                    List.of(Barbell.of(m)),
                    List.of(new Floor(body)),
                    List.of(),
                    List.of()));
    // Arms that hang straight down: the shoulder's moment is zero but for rounding.
    assertThat(hanging.cells())
        .allSatisfy(c -> assertThat(c.moment(JointId.SHOULDER)).isCloseTo(0, within(1e-6)));
    HeatMapChart chart = Plots.chart(hanging, JointId.SHOULDER);
    assertThat(Set.copyOf(List.of(chart.getStyler().getRangeColors()))).hasSize(1);
    List<Number[]> fields = List.copyOf(chart.getHeatMapSeries().getHeatData());
    assertThat(fields).allMatch(f -> f[2].doubleValue() == 0);
    assertThat(hanging.plot(JointId.SHOULDER).png()).as("it can be painted").isPresent();
  }

  @Test
  void a_grid_of_which_nothing_could_be_held_says_why() {
    Grid<?, ?> none =
        Grid.over(
            Span.of("hip height", Units.cm(30), Units.cm(40), 2),
            Span.of("bar mass", Units.kg(40), Units.kg(41), 2),
            (h, m) -> PULL.holding(Barbell.of(m)).hipHeight(h).start());
    assertThatThrownBy(() -> none.plot(JointId.HIP))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith(
            "There is nothing to plot: none of the 4 positions could be held. The first says: A"
                + " hip height of 30.0 cm would put the hips below the knees");
  }

  @Test
  void bands_are_round_hold_all_values_and_never_mix_flexing_with_extending() {
    Bands bands = Bands.over(-57, 163, true, FigureStyle.ARTICLE);
    assertThat(bands.step()).isEqualTo(50);
    assertThat(bands.low()).isEqualTo(-100);
    assertThat(bands.high()).isEqualTo(200);
    assertThat(bands.colours()).hasSize(6).doesNotHaveDuplicates();
    assertThat(isBlue(bands.of(0.1))).isTrue();
    assertThat(isBlue(bands.of(-0.1))).isFalse();
    assertThat(Bands.over(3, 3, false, FigureStyle.ARTICLE).colours()).hasSize(1);
    assertThat(Bands.over(0.2, 900, false, FigureStyle.ARTICLE).colours()).hasSizeBetween(5, 10);
  }

  @Test
  void stronger_moments_are_darker_and_dark_numbers_stay_readable_on_them() {
    for (double[] range : new double[][] {{-800, 800}, {0, 90}, {-12, 3}}) {
      Bands bands = Bands.over(range[0], range[1], true, FigureStyle.ARTICLE);
      double before = 1;
      for (double m = 0.01; m < bands.high(); m += bands.step()) {
        double light = lightness(bands.of(m));
        assertThat(light).isLessThan(before);
        before = light;
        // Contrast of 4.5 to 1 with the ink: WCAG 2.1, success criterion 1.4.3.
        assertThat((light + 0.05) / (lightness(Color.decode(FigureStyle.ARTICLE.ink())) + 0.05))
            .isGreaterThan(4.5);
      }
    }
  }

  private static boolean isBlue(Color colour) {
    return colour.getBlue() > colour.getRed();
  }

  /** Relative luminance after WCAG 2.1. */
  private static double lightness(Color colour) {
    double[] parts = {colour.getRed() / 255.0, colour.getGreen() / 255.0, colour.getBlue() / 255.0};
    for (int i = 0; i < 3; i++) {
      parts[i] = parts[i] <= 0.03928 ? parts[i] / 12.92 : Math.pow((parts[i] + 0.055) / 1.055, 2.4);
    }
    return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
  }

  @Test
  void three_quantities_are_small_maps_side_by_side_in_one_scale_also_where_one_is_empty() {
    // The lowest hip height is below the knees: there is no map of it.
    var three =
        GridOfThree.over(
            Span.of("hip height", Units.cm(46), Units.cm(70), 3),
            Span.of("grip width", Units.cm(45), Units.cm(85), 3),
            Span.of("bar mass", Units.kg(40), Units.kg(200), 3),
            (h, g, m) -> PULL.gripWidth(g).holding(Barbell.of(m)).hipHeight(h).start());
    SvgReader svg = SvgReader.of(three.plot(JointId.L5_S1).svgDocument());
    assertThat(svg.words())
        .contains("Moment (N·m): low back (L5/S1); positive: the resistance flexes")
        .contains("hip height 58.0 cm", "hip height 70.0 cm")
        .contains("No map where nothing could be held: hip height 46.0 cm.")
        .contains("grip width (cm)", "bar mass (kg)")
        .contains("At hip height 58.0 cm, grip width 45.0 cm, bar mass 40.0 kg: man, 85.0 kg")
        .contains("No position for 9 of 27 cells")
        .contains(Caution.TEXT);
    assertThat(three.plot(JointId.L5_S1).pngFile()).isNotEmpty();
    var none =
        GridOfThree.over(
            Span.of("a", Units.cm(1), Units.cm(2), 2),
            Span.of("b", Units.cm(1), Units.cm(2), 2),
            Span.of("c", Units.cm(1), Units.cm(2), 2),
            (a, b, c) -> null);
    assertThatThrownBy(() -> none.plot(JointId.HIP))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "There is nothing to plot: none of the 8 positions could be held. The first says: The"
                + " lambda gave no position (null).");
  }
}
