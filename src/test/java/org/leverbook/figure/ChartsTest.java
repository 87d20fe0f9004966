package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategorySeries;
import org.knowm.xchart.HorizontalBarSeries;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.Hinge;
import org.leverbook.lift.LargestLoad;
import org.leverbook.load.Barbell;
import org.leverbook.muscle.Discs;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.study.Doubt;
import org.leverbook.study.DoubtBand;
import org.leverbook.study.DrawnPeople;
import org.leverbook.study.Span;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;

class ChartsTest {

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private static final Hinge PULL = Hinge.of(LIFTER).holding(Barbell.of(Units.kg(100)));

  /** Numbers are handed on, not computed anew; stacks add up what was split. */
  private static final double ROUNDING = 1e-6;

  /** The first height is below the knees of this lifter. */
  private static Sweep sweep;

  @BeforeAll
  static void sweepOnce() {
    sweep = Sweep.over("hip height", Units.cm(46), Units.cm(74), 8, h -> PULL.hipHeight(h).start());
  }

  @Test
  void arms_and_net_forces_are_the_numbers_of_the_rows() {
    XYChart arms = Charts.arms(sweep, JointId.HIP, JointId.KNEE).chart();
    XYChart forces = Charts.forces(sweep, JointId.L5_S1).chart();
    double[] knee = arms.getSeries("knee (each side)").getYData();
    double[] force = forces.getSeries("low back (L5/S1)").getYData();
    assertThat(arms.getYAxisTitle()).isEqualTo("arm of the load (cm), positive: the load flexes");
    assertThat(arms.getXAxisTitle()).isEqualTo("hip height (cm)");
    int held = 0;
    for (int i = 0; i < knee.length; i++) {
      SweepRow row = sweep.rows().get(i);
      if (row.held()) {
        held++;
        assertThat(knee[i]).isEqualTo(100 * row.arm(JointId.KNEE));
        assertThat(force[i]).isEqualTo(row.position().moment(JointId.L5_S1).force().getNorm());
      } else {
        assertThat(knee[i]).as("a gap").isNaN();
      }
    }
    assertThat(held).isBetween(5, 7);
  }

  @Test
  void effort_is_the_share_of_the_strength_table_and_a_joint_without_one_is_named() {
    CurvePlot plot = Charts.effort(sweep, JointId.HIP, JointId.T7_T8);
    double[] hip = plot.chart().getSeries("hip (each side)").getYData();
    Position last = sweep.rows().get(7).position();
    double asked =
        last.demands().all().stream()
            .filter(d -> d.joint() == JointId.HIP && d.effort().isPresent())
            .mapToDouble(d -> d.effort().getAsDouble())
            .max()
            .orElseThrow();
    assertThat(hip[7]).isCloseTo(100 * asked, within(ROUNDING));
    assertThat(plot.notes()).contains("Not known: the effort at T7/T8.").endsWith(Caution.TEXT);
    assertThatThrownBy(() -> Charts.effort(sweep, JointId.T7_T8))
        .isInstanceOf(Refused.class)
        .hasMessage("There is nothing to plot: the effort of these joints is not known anywhere.");
  }

  @Test
  void any_quantity_is_plotted_against_any_other() {
    Sweep byLean = sweep.against("trunk lean", "°", p -> p.fact("trunk lean"));
    XYChart chart =
        Charts.of(byLean, "bar to hip", "cm", p -> 100 * p.moment(JointId.HIP).arm()).chart();
    double[] x = chart.getSeries("bar to hip").getXData();
    double[] y = chart.getSeries("bar to hip").getYData();
    assertThat(chart.getXAxisTitle()).isEqualTo("trunk lean (°)");
    assertThat(chart.getYAxisTitle()).isEqualTo("bar to hip (cm)");
    for (int i = 0; i < x.length; i++) {
      Position position = byLean.rows().get(i).position();
      assertThat(x[i]).isEqualTo(position.fact("trunk lean"));
      assertThat(y[i]).isEqualTo(100 * position.moment(JointId.HIP).arm());
    }
    assertThatThrownBy(() -> Charts.of(sweep, "root", "", p -> Math.sqrt(-1)))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("The root is no number (NaN)");
  }

  @Test
  void stacked_parts_add_up_to_the_moment_at_every_joint() {
    Position start = PULL.start();
    List<JointId> joints = Plots.usual();
    CategoryChart chart = Charts.parts(start).chart();
    for (int i = 0; i < joints.size(); i++) {
      double sum = 0;
      for (CategorySeries part : chart.getSeriesCollection()) {
        sum += part.getYData()[i];
      }
      // Sources below half a newton metre everywhere are left out.
      assertThat(sum).isCloseTo(start.moment(joints.get(i)).signed(), within(0.5));
    }
    assertThat(chart.getSeries("bar")).isNotNull();
    assertThat(chart.getSeries("body weight")).isNotNull();
  }

  @Test
  void stacked_areas_reach_from_one_sum_to_the_next_and_their_ends_make_the_moment() {
    XYChart chart = Charts.parts(sweep, JointId.KNEE).chart();
    double[] whole = chart.getSeries("the whole moment").getYData();
    int last = whole.length - 1;
    assertThat(whole[last]).isEqualTo(sweep.rows().get(last).moment(JointId.KNEE));
    double high = 0;
    double low = 0;
    for (XYSeries area : chart.getSeriesCollection()) {
      if (area.getXYSeriesRenderStyle().isPresent()) {
        double end = sweep.rows().get(last).value();
        for (int i = 0; i < area.getXData().length; i++) {
          if (area.getXData()[i] == end) {
            high = Math.max(high, area.getYData()[i]);
            low = Math.min(low, area.getYData()[i]);
          }
        }
      }
    }
    assertThat(low).as("the bar extends the knee there").isNegative();
    assertThat(high + low).isCloseTo(whole[last], within(0.5));
  }

  @Test
  void the_spine_stands_upright_with_every_level_and_what_presses_in_its_discs() {
    Position start = PULL.start();
    RowPlot plot = Charts.spine(start);
    HorizontalBarSeries moments = plot.chart().getSeries("moment");
    List<Object> levels = new ArrayList<>(moments.getYData());
    assertThat(levels).hasSize(JointId.spine().size()).startsWith("C7/T1").endsWith("L5/S1");
    Number lowest = new ArrayList<Number>(moments.getXData()).get(levels.size() - 1);
    assertThat(lowest.doubleValue()).isEqualTo(start.moment(JointId.L5_S1).signed());
    HorizontalBarSeries discs = plot.charts().get(1).getSeries("compression");
    List<Number> pressed = new ArrayList<>(discs.getXData());
    assertThat(pressed.get(pressed.size() - 1).doubleValue())
        .isCloseTo(start.disc(JointId.L5_S1).compression(), within(ROUNDING));
    assertThat(pressed).hasSize(Discs.levels().size());
    String words = SvgReader.of(plot.svgDocument()).words();
    JointId.spine().forEach(level -> assertThat(words).contains(level.word()));
  }

  @Test
  void the_largest_load_stands_against_the_load_held_with_the_sticking_region_around_its_least() {
    BackSquat squat = BackSquat.of(LIFTER).holding(Barbell.of(Units.kg(60)));
    LargestLoad largest = squat.largest();
    XYChart chart = Charts.strength(squat).chart();
    double[] most = chart.getSeries("largest load").getYData();
    for (int i = 0; i < most.length; i++) {
      assertThat(most[i]).isEqualTo(largest.points().get(i).kilograms().orElse(Double.NaN));
    }
    assertThat(chart.getSeries("load held (60 kg)").getYData()).containsOnly(60);
    double[] region = chart.getSeries("sticking region").getXData();
    double sticks = 100 * largest.sticking().orElseThrow().share();
    assertThat(Arrays.stream(region).min().orElseThrow()).isLessThanOrEqualTo(sticks);
    assertThat(Arrays.stream(region).max().orElseThrow()).isGreaterThanOrEqualTo(sticks);
  }

  @Test
  void a_joints_strength_and_what_is_asked_of_it_are_those_of_its_demands() {
    Sweep byHip = sweep.against(JointId.HIP);
    XYChart chart = Charts.strength(byHip, JointId.HIP).chart();
    var demand =
        byHip.rows().get(3).position().demands().all().stream()
            .filter(d -> d.joint() == JointId.HIP && d.action().equals("extend"))
            .findFirst()
            .orElseThrow();
    assertThat(chart.getSeries("asked").getYData()[3]).isCloseTo(demand.needed(), within(1e-3));
    assertThat(chart.getSeries("can give").getYData()[3])
        .isCloseTo(demand.canGive().orElseThrow(), within(1e-3));
    assertThat(chart.getXAxisTitle()).isEqualTo("hip flexion (°)");
    assertThatThrownBy(() -> Charts.strength(byHip, JointId.T7_T8))
        .hasMessageContaining("nothing of known strength is asked of the T7/T8");
  }

  @Test
  void the_band_around_a_curve_is_that_of_the_doubt_at_each_value() {
    Span<javax.measure.quantity.Length> span = Span.of("hip height", Units.cm(56), Units.cm(66), 2);
    XYChart chart =
        Charts.doubt(span, h -> Doubt.of(PULL.hipHeight(h), Hinge::start).draws(100), JointId.HIP)
            .chart();
    DoubtBand band =
        Doubt.of(PULL.hipHeight(Units.cm(56)), Hinge::start).draws(100).band(JointId.HIP);
    double[] around = chart.getSeries("5 to 95 % of cases").getYData();
    assertThat(around[0]).isCloseTo(band.high(), within(ROUNDING));
    assertThat(around[3]).isCloseTo(band.low(), within(ROUNDING));
    assertThat(chart.getSeries("plain answer").getYData()[0])
        .isCloseTo(band.plain(), within(ROUNDING));
    assertThatThrownBy(
            () ->
                Charts.doubt(
                    Span.of("hip height", Units.cm(20), Units.cm(30), 2),
                    h -> Doubt.of(PULL.hipHeight(h), Hinge::start).draws(100),
                    JointId.HIP))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("There is nothing to plot. No answer at 20:");
  }

  @Test
  void a_histogram_counts_everybody_once_in_steps_of_round_width() {
    DrawnPeople people = DrawnPeople.of(Sex.FEMALE, 60, 1);
    CurvePlot plot =
        Charts.histogram(
            "thigh length", "cm", people, p -> 100 * p.body().links().lengthOf(Part.THIGH));
    double counted = 0;
    for (XYSeries bar : plot.chart().getSeriesCollection()) {
      if (bar.getName().startsWith("step")) {
        counted += Arrays.stream(bar.getYData()).max().orElseThrow();
      }
    }
    assertThat(counted).isEqualTo(60);
    assertThat(plot.chart().getTitle()).isEqualTo("Thigh length of 60 people");
    assertThatThrownBy(() -> Charts.histogram("mass", "kg", List.of(LIFTER), p -> 85))
        .isInstanceOf(Refused.class);
    assertThat(Charts.histogram("mass", "kg", List.of(LIFTER, LIFTER), p -> 85).pngFile())
        .as("all alike")
        .isNotEmpty();
  }

  @Test
  void what_a_user_changes_in_the_chart_shows_and_another_style_begins_anew() {
    CurvePlot plot = Charts.moments(sweep, JointId.HIP);
    plot.chart().setTitle("Lesson 3");
    assertThat(SvgReader.of(plot.svgDocument()).words()).contains("Lesson 3", "hip (each side)");
    CurvePlot slide = plot.styled(FigureStyle.SLIDE);
    assertThat(slide.chart().getTitle()).isEqualTo("Moment against hip height");
    assertThat(slide.chart().getStyler().getAxisTickLabelsFont().getSize2D()).isEqualTo(16f);
    assertThat(Charts.moments(sweep, JointId.HIP).svgDocument())
        .isEqualTo(Charts.moments(sweep, JointId.HIP).svgDocument());
  }

  @Test
  void titles_end_inside_the_page_also_on_a_slide_with_a_wide_legend() {
    CurvePlot slide = Charts.parts(sweep, JointId.KNEE).styled(FigureStyle.SLIDE);
    double size = slide.chart().getStyler().getChartTitleFont().getSize2D();
    assertThat(TextWidths.of(slide.chart().getTitle(), size, true)).isLessThan(900 - 150);
    assertThat(size).as("still larger than labels").isGreaterThan(18);
  }

  @Test
  void a_sweep_over_named_things_is_refused_with_what_works() {
    Sweep named = Sweep.over("lifter", List.of(LIFTER), l -> PULL.start());
    assertThatThrownBy(() -> Charts.arms(named))
        .isInstanceOf(Refused.class)
        .hasMessageContaining(".plot(HIP) draws its moments as bars");
  }
}
