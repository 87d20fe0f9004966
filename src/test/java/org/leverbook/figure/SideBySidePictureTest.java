package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.language.Vocabulary;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.FrontSquat;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.load.Cable;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.study.Comparison;
import org.leverbook.study.WayComparison;
import org.w3c.dom.Element;

class SideBySidePictureTest {

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private static final Position BENT =
      Hinge.of(LIFTER).holding(Barbell.of(Units.kg(60))).hipHeight(Units.cm(72)).start();

  private static final Position PADDED = BENT.on(Vocabulary.chestPad(Units.deg(30)));

  private static SvgReader read(Comparison comparison, JointId... joints) {
    return SvgReader.of(comparison.picture(joints).svgDocument());
  }

  private static double number(Element of, String name) {
    return Double.parseDouble(of.getAttribute(name));
  }

  @Test
  void all_positions_are_drawn_to_one_scale_and_arms_to_it() {
    Position squat = BackSquat.of(LIFTER).holding(Barbell.of(Units.kg(60))).finish();
    SvgReader page = read(Comparison.of(BENT, PADDED, squat), JointId.HIP, JointId.L5_S1);
    List<Element> panels = page.groups("panel");
    assertThat(panels).hasSize(3);
    double scale = page.attribute("data-scale");
    for (Element panel : panels) {
      assertThat(number(panel, "data-scale")).isEqualTo(scale);
      for (Element group : SvgReader.children(panel, "g")) {
        if (group.getAttribute("class").equals("arm")) {
          double[] ends =
              SvgReader.numbers(SvgReader.children(group, "path").get(0).getAttribute("d"));
          double length = Math.hypot(ends[2] - ends[0], ends[3] - ends[1]);
          // Page units are written to a hundredth.
          assertThat(length).isCloseTo(scale * number(group, "data-arm-m"), within(0.03));
        }
      }
    }
  }

  @Test
  void bars_are_as_long_as_their_moments_by_one_measure() {
    SvgReader page = read(Comparison.of(BENT, PADDED), JointId.HIP, JointId.L5_S1);
    List<Element> bars = page.groups("moment");
    assertThat(bars).hasSize(4);
    double each = number(bars.get(0), "data-length") / number(bars.get(0), "data-moment-nm");
    for (Element bar : bars) {
      // Lengths are written to a hundredth, moments to a thousandth.
      assertThat(number(bar, "data-length"))
          .isCloseTo(each * number(bar, "data-moment-nm"), within(0.03));
    }
    assertThat(number(bars.get(1), "data-moment-nm"))
        .isCloseTo(BENT.moment(JointId.L5_S1).signed(), within(5e-4));
  }

  @Test
  void panels_do_not_overlap_however_long_the_names() {
    Comparison four =
        Comparison.of(BENT, PADDED, BENT, PADDED)
            .called(
                "free, with a name that goes on and on for quite a while",
                "chest on a pad of thirty degrees",
                "again",
                "andagainbutwithoutanyspacethatawordcouldbebrokenatinthemiddle");
    SvgReader page = read(four);
    double width = page.attribute("width");
    double right = 0;
    for (Element panel : page.groups("panel")) {
      double[] ground = SvgReader.numbers(floor(panel).getAttribute("d"));
      assertThat(ground[0]).isGreaterThan(right);
      right = ground[2];
      assertThat(right).isLessThanOrEqualTo(width);
    }
    assertThat(page.all("text"))
        .allSatisfy(
            text -> {
              double size = Double.parseDouble(text.getAttribute("font-size").replace("px", ""));
              boolean bold = !text.getAttribute("font-weight").isEmpty();
              double end = number(text, "x") + TextWidths.of(text.getTextContent(), size, bold);
              assertThat(end).as(text.getTextContent()).isLessThanOrEqualTo(width);
            });
  }

  private static Element floor(Element panel) {
    return SvgReader.children(panel, "g").stream()
        .filter(g -> g.getAttribute("class").equals("floor"))
        .map(g -> SvgReader.children(g, "path").get(0))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void what_is_not_held_says_why_and_lifters_that_differ_are_named() {
    Position tipped = BENT.with(Cable.of(Units.kg(90), new Vector3D(2.0, 0.8, 0)));
    Person other = Person.of(Sex.FEMALE, Units.kg(62), Units.cm(165));
    Position hers =
        Hinge.of(other).holding(Barbell.of(Units.kg(40))).hipHeight(Units.cm(68)).start();
    String svg = Comparison.of(BENT, tipped, hers).picture().svgDocument();
    assertThat(svg)
        .contains("Tips forward")
        .contains("not known")
        .contains("woman, 62.0 kg")
        .contains("The lifters differ")
        .contains(Caution.TEXT);
  }

  @Test
  void a_load_that_cannot_be_leaves_an_empty_place() {
    Comparison comparison =
        Comparison.of(BENT, BackSquat.of(LIFTER).holding(Barbell.of(Units.kg(60))).start())
            .called("bent", "upright")
            .atEqualEffort(Units.percent(3));
    assertThat(comparison.rows().get(0).position()).isNull();
    assertThat(comparison.picture().svgDocument()).contains("Even without the load");
  }

  @Test
  void ways_are_curves_with_their_names() {
    WayComparison squats =
        WayComparison.of(
            BackSquat.of(LIFTER).holding(Barbell.of(Units.kg(60))),
            FrontSquat.of(LIFTER).holding(Barbell.of(Units.kg(40))));
    String svg = squats.plot(JointId.KNEE).svgDocument();
    assertThat(svg)
        .contains("Knee (each side) over the way, loads as given")
        .contains("back squat")
        .contains("front squat")
        .contains("share of the way (%)")
        .contains("The loads differ.")
        .contains(Caution.TEXT);
  }
}
