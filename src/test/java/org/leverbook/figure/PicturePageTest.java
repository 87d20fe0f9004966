package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYChart;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.display.Picture;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.study.Comparison;
import org.leverbook.study.Sweep;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Several pictures on one page. */
class PicturePageTest {

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private static final Hinge PULL =
      Hinge.of(LIFTER).holding(Barbell.of(Units.kg(140))).hipHeight(Units.cm(58));

  private static final Position START = PULL.start();

  /** No constant: its threads would wait for the class that waits for them. */
  private static Sweep heights() {
    return Sweep.over("hip height", Units.cm(52), Units.cm(70), 4, h -> PULL.hipHeight(h).start());
  }

  private static Position squat(Person who) {
    return BackSquat.of(who).holding(Barbell.of(Units.kg(80))).finish();
  }

  private static PicturePage builds() {
    return PicturePage.beside(
            squat(LIFTER),
            squat(LIFTER.longer(Part.THIGH, Units.percent(10))),
            squat(LIFTER.longer(Part.TRUNK, Units.percent(10))),
            squat(LIFTER.longer(Part.SHANK, Units.percent(10))))
        .called("usual", "long thighs", "long trunk", "long shanks");
  }

  private static SvgReader read(Picture page) {
    return SvgReader.of(page.svgDocument());
  }

  private static double number(Element of, String name) {
    return Double.parseDouble(of.getAttribute(name));
  }

  private static double[] floor(Element panel) {
    return SvgReader.children(panel, "g").stream()
        .filter(g -> g.getAttribute("class").equals("floor"))
        .map(g -> SvgReader.numbers(SvgReader.children(g, "path").get(0).getAttribute("d")))
        .findFirst()
        .orElseThrow();
  }

  /** The size of a text's letters on the whole page. */
  static double letters(Element text) {
    double size = 0;
    double scale = 1;
    for (Node at = text; at instanceof Element element; at = at.getParentNode()) {
      String own = element.getAttribute("font-size").replace("px", "");
      size = size == 0 && !own.isEmpty() ? Double.parseDouble(own) : size;
      if (element.getTagName().equals("svg") && at.getParentNode() instanceof Element) {
        double box = SvgReader.numbers(element.getAttribute("viewBox"))[2];
        scale *= number(element, "width") / box;
      }
    }
    return size * scale;
  }

  private static int count(String of, String in) {
    return in.split(Pattern.quote(of), -1).length - 1;
  }

  @Test
  void four_builds_stand_on_one_ground_line_to_one_scale_and_arms_keep_to_it() {
    SvgReader page = read(builds().sameScale());
    List<Element> panels = page.groups("panel");
    assertThat(panels).hasSize(4);
    double scale = page.attribute("data-scale");
    double ground = floor(panels.get(0))[1];
    for (Element panel : panels) {
      assertThat(number(panel, "data-scale")).isEqualTo(scale);
      assertThat(floor(panel)[1]).isEqualTo(ground);
      for (Element group : SvgReader.children(panel, "g")) {
        if (group.getAttribute("class").equals("arm")) {
          double[] ends =
              SvgReader.numbers(SvgReader.children(group, "path").get(0).getAttribute("d"));
          // Page units are written to a thousandth.
          assertThat(Math.hypot(ends[2] - ends[0], ends[3] - ends[1]))
              .isCloseTo(scale * number(group, "data-arm-m"), within(0.03));
        }
      }
    }
    assertThat(page.groups("legend")).hasSize(1);
    assertThat(page.groups("ruler")).hasSize(1);
  }

  @Test
  void without_one_scale_each_position_is_as_large_as_it_can_be_and_has_its_own_ruler() {
    SvgReader page = read(PicturePage.beside(START, PULL.finish()));
    List<Double> scales =
        page.groups("panel").stream().map(panel -> number(panel, "data-scale")).toList();
    assertThat(scales.get(0)).isGreaterThan(scales.get(1));
    assertThat(page.groups("ruler")).hasSize(2);
  }

  @Test
  void bars_below_the_bodies_tell_the_moments_by_one_measure() {
    // Below each other and beside each other the places have different widths.
    SvgReader page = read(PicturePage.below(builds(), squat(LIFTER)));
    List<Element> bars = page.groups("moment");
    double each = number(bars.get(0), "data-length") / number(bars.get(0), "data-moment-nm");
    for (Element bar : bars) {
      // Lengths and moments are written to a thousandth.
      assertThat(number(bar, "data-length"))
          .isCloseTo(Math.abs(each * number(bar, "data-moment-nm")), within(0.01));
    }
    Element hip =
        bars.stream()
            .filter(bar -> bar.getAttribute("data-joint").equals(JointId.HIP.word()))
            .findFirst()
            .orElseThrow();
    assertThat(number(hip, "data-moment-nm"))
        .isCloseTo(squat(LIFTER).moment(JointId.HIP).signed(), within(5e-4));
  }

  @Test
  void caution_and_sources_stand_once_whatever_is_on_the_page() {
    PicturePage page =
        PicturePage.below(
            PicturePage.beside(START, heights()),
            Comparison.of(START, PULL.hipHeight(Units.cm(66)).start()),
            heights().plot(JointId.KNEE));
    String words = read(page).words();
    assertThat(count(Caution.TEXT, words)).isEqualTo(1);
    assertThat(count("Sources:", words)).isEqualTo(1);
    assertThat(words.strip()).endsWith(Caution.TEXT);
  }

  @Test
  void no_letter_is_smaller_than_a_ninetieth_of_the_width() {
    List<PicturePage> pages =
        List.of(
            builds(),
            PicturePage.beside(START, heights(), START),
            PicturePage.beside(
                Comparison.of(START, PULL.finish()), Comparison.of(START, PULL.finish())),
            PicturePage.strip(BackSquat.of(LIFTER), 12));
    for (PicturePage page : pages) {
      SvgReader svg = read(page);
      double least = svg.attribute("width") / 90;
      assertThat(svg.all("text"))
          .allSatisfy(
              text ->
                  assertThat(letters(text))
                      .as(text.getTextContent())
                      .isGreaterThanOrEqualTo(least - 1e-6));
    }
  }

  @Test
  void on_a_phone_letters_are_a_fortieth_of_the_width() {
    SvgReader svg = read(builds().forPhone());
    assertThat(svg.all("text"))
        .allSatisfy(
            text ->
                assertThat(letters(text))
                    .isGreaterThanOrEqualTo(svg.attribute("width") / 40 - 1e-6));
    assertThat(svg.attribute("data-across")).isEqualTo(2);
  }

  @Test
  void names_inside_the_pictures_do_not_collide_and_all_they_refer_to_is_there() {
    String svg = PicturePage.beside(heights(), heights(), heights().plot()).svgDocument();
    List<String> ids = found(svg, " id=\"([^\"]+)\"");
    assertThat(ids).doesNotHaveDuplicates().isNotEmpty();
    assertThat(ids).containsAll(found(svg, "url\\(#([^)]+)\\)"));
  }

  private static List<String> found(String svg, String pattern) {
    List<String> found = new ArrayList<>();
    Matcher matcher = Pattern.compile(pattern).matcher(svg);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  @Test
  void a_plot_beside_a_body_has_its_letters_in_full_size_and_is_left_as_it_was() {
    XYChart chart = Plots.chart(heights(), JointId.HIP, JointId.KNEE);
    String before = Plots.picture(chart).svgDocument();
    SvgReader page = read(PicturePage.beside(START, chart));
    assertThat(page.attribute("data-across")).isEqualTo(2);
    assertThat(page.words()).contains("hip height (cm)", "knee (each side)", chart.getTitle());
    assertThat(page.all("text"))
        .allSatisfy(text -> assertThat(letters(text)).isGreaterThanOrEqualTo(12));
    assertThat(Plots.picture(chart).svgDocument()).isEqualTo(before);
  }

  @Test
  void the_page_reads_out_all_its_pictures_in_order() {
    SvgReader page = read(builds().titled("One squat, four builds"));
    assertThat(SvgReader.children(page.root(), "title")).hasSize(1);
    assertThat(page.all("title").get(0).getTextContent()).isEqualTo("One squat, four builds");
    String told = page.all("desc").get(0).getTextContent();
    assertThat(told)
        .containsSubsequence("1 of 4: usual", "2 of 4: long thighs", "4 of 4: long shanks")
        .contains("Arm to the hip");
    assertThat(read(builds()).all("title").get(0).getTextContent())
        .isEqualTo("usual, long thighs, long trunk, long shanks");
  }

  @Test
  void pages_nest_with_names_titles_and_captions() {
    PicturePage left =
        PicturePage.below(START, PULL.finish()).called("low", "high").titled("The pull");
    PicturePage page = PicturePage.beside(left.captioned("From low to high."), heights());
    SvgReader svg = read(page.titled("A lesson").captioned("Look at the hips."));
    assertThat(svg.words())
        .contains("A lesson", "The pull", "low", "high", "From low to high.", "Look at the hips.");
    assertThat(svg.groups("panel")).hasSize(2);
    assertThat(svg.all("desc").get(0).getTextContent()).contains("1 of 2: The pull. 1 of 2: low");
  }

  @Test
  void the_same_page_has_the_same_bytes_and_its_png_twice_its_size() throws Exception {
    PicturePage page = PicturePage.beside(START, heights().plot(JointId.HIP));
    String svg = page.svgDocument();
    assertThat(page.svgDocument()).isEqualTo(svg);
    BufferedImage png = ImageIO.read(new ByteArrayInputStream(page.pngFile()));
    assertThat(png.getWidth()).isEqualTo((int) (2 * SvgReader.of(svg).attribute("width")));
    assertThat(png.getHeight()).isEqualTo((int) (2 * SvgReader.of(svg).attribute("height")));
  }
}
