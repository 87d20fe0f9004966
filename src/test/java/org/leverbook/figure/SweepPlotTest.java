package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.CategorySeries;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.display.Display;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;

class SweepPlotTest {

  private static final Hinge PULL =
      Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178))).holding(Barbell.of(Units.kg(140)));

  /**
   * The first three heights are below the knees of this lifter. Made after the class is ready: a
   * sweep runs its lambda on other threads, which would wait for the class for ever.
   */
  private static Sweep sweep;

  @BeforeAll
  static void sweepOnce() {
    sweep = sweep("hip height");
  }

  private static Sweep sweep(String name) {
    return Sweep.over(name, Units.cm(44), Units.cm(72), 15, h -> PULL.hipHeight(h).start());
  }

  @Test
  void each_joint_is_a_line_of_its_signed_moments_with_a_gap_where_nothing_could_be_held() {
    XYChart chart = Plots.chart(sweep, JointId.HIP, JointId.KNEE);
    XYSeries knee = chart.getSeries("knee (each side)");
    assertThat(sweep.held()).isEqualTo(12);
    for (int i = 0; i < sweep.rows().size(); i++) {
      SweepRow row = sweep.rows().get(i);
      assertThat(knee.getXData()[i]).isEqualTo(row.value());
      if (row.held()) {
        assertThat(knee.getYData()[i]).isEqualTo(row.position().moment(JointId.KNEE).signed());
      } else {
        assertThat(knee.getYData()[i]).as("a gap").isNaN();
      }
    }
    assertThat(knee.getYData()[14]).as("with the hips high the knee is extended").isNegative();
    assertThat(chart.getStyler().getXAxisMin()).as("the gap at the end shows").isEqualTo(44);
  }

  @Test
  void joints_differ_in_colour_dash_and_marker() {
    XYChart chart = Plots.chart(sweep);
    List<XYSeries> lines =
        chart.getSeriesCollection().stream().filter(XYSeries::isShowInLegend).toList();
    assertThat(lines).hasSize(6);
    assertThat(lines).extracting(XYSeries::getLineColor).doesNotHaveDuplicates();
    assertThat(lines).extracting(XYSeries::getMarker).doesNotHaveDuplicates();
    assertThat(lines).extracting(XYSeries::getLineStyle).doesNotHaveDuplicates();
  }

  @Test
  void the_svg_holds_real_text_with_units_reasons_and_caution() {
    SvgReader svg = SvgReader.of(sweep.plot(JointId.HIP, JointId.L5_S1).svgDocument());
    assertThat(svg.words())
        .contains("Moment against hip height")
        .contains("hip height (cm)")
        .contains("moment (N·m), positive: the resistance flexes")
        .contains("hip (each side)")
        .contains("low back (L5/S1)")
        .contains("No position from 44.0 cm to 48.0 cm (3 of 15 values); at 44.0 cm: A hip height")
        .contains("below the knees")
        .contains(Caution.TEXT);
    // A letter as an outline has many curves; lines and markers have none.
    assertThat(svg.all("path")).noneMatch(p -> p.getAttribute("d").contains("Q"));
    assertThat(svg.all("title").get(0).getTextContent()).isEqualTo("Moment against hip height");
    assertThat(svg.all("desc").get(0).getTextContent()).contains("No position from 44.0 cm");
  }

  @Test
  void the_same_sweep_gives_the_same_svg() {
    assertThat(sweep.plot(JointId.HIP).svgDocument())
        .isEqualTo(sweep("hip height").plot(JointId.HIP).svgDocument())
        .hasSizeLessThan(100_000);
  }

  @Test
  void the_png_has_twice_the_size_of_the_svg() throws Exception {
    var plot = sweep.plot(JointId.HIP);
    SvgReader svg = SvgReader.of(plot.svgDocument());
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(plot.pngFile()));
    assertThat(image.getWidth()).isEqualTo((int) (2 * svg.attribute("width")));
    assertThat(image.getHeight()).isEqualTo((int) (2 * svg.attribute("height")));
  }

  @Test
  void a_name_with_signs_of_xml_and_a_joint_asked_twice_do_no_harm() {
    SvgReader svg =
        SvgReader.of(sweep("hips <&> \"high\"").plot(JointId.HIP, JointId.HIP).svgDocument());
    assertThat(svg.words()).contains("Moment against hips <&> \"high\"");
  }

  @Test
  void a_sweep_in_which_nothing_could_be_held_says_why() {
    Sweep none =
        Sweep.over("hip height", Units.cm(30), Units.cm(40), 3, h -> PULL.hipHeight(h).start());
    assertThatThrownBy(() -> none.plot(JointId.HIP))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith(
            "There is nothing to plot: none of the 3 positions could be held. The first says: A hip"
                + " height of 30.0 cm would put the hips below the knees");
  }

  @Test
  void a_restyled_chart_shows_itself_as_a_picture() {
    XYChart chart = Plots.chart(sweep, JointId.HIP);
    chart.setTitle("Lesson 3");
    assertThat(Display.of(chart).svg()).hasValueSatisfying(s -> assertThat(s).contains("Lesson 3"));
    assertThat(Plots.picture(chart, "Drawn for lifter A.").svgDocument())
        .contains("Drawn for lifter A.");
  }

  @Test
  void named_things_are_bars_with_their_names_and_no_bar_where_nothing_could_be_held() {
    Sweep byBar =
        Sweep.over(
            "bar",
            List.of(Units.kg(60), Units.kg(140)),
            mass -> {
              if (mass.getValue().doubleValue() > 100) {
                throw new IllegalStateException("the plates are away");
              }
              return PULL.holding(Barbell.of(mass)).hipHeight(Units.cm(66)).start();
            });
    CategorySeries hip = Plots.bars(byBar, JointId.HIP).getSeries("hip (each side)");
    assertThat(hip.getXData().stream().map(String::valueOf)).containsExactly("60 kg", "140 kg");
    assertThat(hip.getYData()[0]).isEqualTo(byBar.rows().get(0).moment(JointId.HIP));
    SvgReader svg = SvgReader.of(byBar.plot(JointId.HIP, JointId.KNEE).svgDocument());
    assertThat(svg.words())
        .contains("Moment by bar", "60 kg", "140 kg", Caution.TEXT)
        .contains(
            "No position at bar 140 kg: The lambda failed here: Illegal state exception: the");
    assertThatThrownBy(() -> Plots.chart(byBar, JointId.HIP))
        .isInstanceOf(Refused.class)
        .hasMessageContaining(".plot(HIP) draws its moments as bars");
  }
}
