package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import javax.imageio.ImageIO;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.display.Illustrator;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Band;
import org.leverbook.load.Barbell;
import org.leverbook.load.Worn;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.statics.Tempo;
import org.w3c.dom.Element;

class PositionPictureTest {

  /** Page numbers have three decimals, so a length read back from two points is good to this. */
  private static final double PAGE_ROUNDING = 0.002;

  private static final Person MAN = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private static Position lesson() {
    return Hinge.of(MAN).holding(Barbell.of(Units.kg(140))).hipHeight(Units.cm(58)).start();
  }

  @Test
  void the_caption_names_everything_that_a_moment_is_made_of() {
    Hinge pull = Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178)));
    Position start = pull.holding(Barbell.of(Units.kg(60))).trunkLean(Units.deg(60)).start();
    assertThat(words(start))
        .contains("each moment is that of the bar and of the body's own weight together, in N·m.");

    Position more =
        start
            .with(Worn.vest(Units.kg(10)), slackBand())
            .on(org.leverbook.support.Pad.chest(Units.deg(45)));
    assertThat(words(more))
        .as("the band is slack and pulls nothing")
        .contains("is that of everything together, in N·m: bar, vest, chest pad and body weight.");

    Movement moving =
        Movement.of(
            "pull",
            Tempo.smooth(Units.seconds(1)),
            s -> pull.holding(Barbell.of(Units.kg(60))).hipHeight(Units.cm(62 + 6 * s)).start());
    String words = words(moving.at(Units.seconds(0.2)));
    assertThat(words)
        .contains("Pull, 0.20 s: barbell 60.0 kg")
        .contains(
            "together, in N·m: bar, body weight and inertia, which is what masses set against")
        .doesNotContain("inertia at this instant");
  }

  @Test
  void a_long_list_of_loads_stands_below_the_title_and_all_of_it_on_the_page() {
    Position start =
        Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178)))
            .holding(Barbell.of(Units.kg(60)))
            .trunkLean(Units.deg(60))
            .start()
            .with(slackBand(), Worn.vest(Units.kg(10)), Worn.belt(Units.kg(5)));
    SvgReader svg = SvgReader.of(start.picture().svgDocument());
    assertThat(svg.words()).contains("Barbell 60.0 kg, band 30 cm long").contains("belt 5.0 kg");
    assertThat(svg.all("text").get(0).getTextContent()).isEqualTo("Hinge, start");
    assertThat(svg.all("title").get(0).getTextContent()).contains("barbell 60.0 kg, band 30 cm");
  }

  private static Band slackBand() {
    return Band.of(Vector3D.ZERO, Units.cm(30), Units.newton(150), Units.cm(60));
  }

  /** The words of a picture with their line breaks as spaces. */
  private static String words(Position position) {
    return SvgReader.of(position.picture().svgDocument()).words().replaceAll("\\s+", " ");
  }

  @Test
  void every_drawn_arm_has_the_length_that_is_computed() {
    Position position = lesson();
    SvgReader svg = SvgReader.of(position.picture().svgDocument());
    double scale = svg.attribute("data-scale");
    List<Element> arms = svg.groups("arm");
    assertThat(arms)
        .extracting(a -> a.getAttribute("data-joint"))
        .containsExactly("hip", "L5/S1", "T7/T8", "shoulder");
    List<JointId> joints = Scene.USUAL;
    for (int i = 0; i < joints.size(); i++) {
      double[] ends = armLine(arms.get(i));
      double drawn = Math.hypot(ends[2] - ends[0], ends[3] - ends[1]) / scale;
      double arm = position.moment(joints.get(i)).arm();
      assertThat(drawn).isCloseTo(level(position, joints.get(i)), within(PAGE_ROUNDING / scale));
      // The shoulder's own axis follows the shoulder girdle, some degrees off the line of sight.
      assertThat(drawn).isCloseTo(arm, within(0.02 * arm));
      assertThat(Double.parseDouble(arms.get(i).getAttribute("data-arm-m")))
          .isCloseTo(arm, within(1e-6));
      assertThat(Double.parseDouble(arms.get(i).getAttribute("data-moment-nm")))
          .isCloseTo(position.moment(joints.get(i)).size(), within(1e-3));
    }
  }

  /** How far the bar is ahead of or behind a joint, metres. */
  private static double level(Position position, JointId joint) {
    Side side = joint.paired() ? Side.RIGHT : Side.MIDLINE;
    return Math.abs(
        position.placement().centre("right grip").getX()
            - position.placement().centre(joint.on(side)).getX());
  }

  @Test
  void every_arm_meets_the_line_of_force_at_a_right_angle() {
    SvgReader svg = SvgReader.of(lesson().picture().svgDocument());
    double[] line = firstLine(svg.groups("line-of-force").get(0));
    double fx = line[2] - line[0];
    double fy = line[3] - line[1];
    for (Element group : svg.groups("arm")) {
      double[] arm = armLine(group);
      double ax = arm[2] - arm[0];
      double ay = arm[3] - arm[1];
      double length = Math.hypot(ax, ay);
      double cosine = (ax * fx + ay * fy) / length / Math.hypot(fx, fy);
      assertThat(cosine).isCloseTo(0, within(PAGE_ROUNDING / length));
      double off = ((arm[2] - line[0]) * fy - (arm[3] - line[1]) * fx) / Math.hypot(fx, fy);
      assertThat(off).as("foot of the arm on the line").isCloseTo(0, within(PAGE_ROUNDING));
    }
  }

  @Test
  void the_line_of_force_runs_through_the_middle_of_the_bar() {
    Position position = lesson();
    Scene view = Scene.of(position, Scene.USUAL);
    double bar = position.placement().centre("right grip").getX();
    assertThat(view.line().point().getX()).isCloseTo(bar, within(1e-6));
    assertThat(view.line().newtons()).isCloseTo(140 * 9.80665, within(1e-6));
    assertThat(view.bar().orElseThrow().centre().getY()).isCloseTo(0.225, within(1e-6));
  }

  @Test
  void labels_never_overlap_nor_leave_the_page_whoever_lifts_what() {
    Random random = new Random(20260125);
    int drawn = 0;
    for (int i = 0; i < 150; i++) {
      Position position;
      try {
        position = anyHinge(random);
      } catch (Refused e) {
        continue;
      }
      drawn++;
      SvgReader svg = SvgReader.of(position.picture().svgDocument());
      double width = svg.attribute("width");
      double floor = svg.attribute("data-floor-y");
      List<Rectangle2D> boxes = new ArrayList<>();
      for (Element label : svg.groups("label")) {
        double[] b = SvgReader.numbers(label.getAttribute("data-box"));
        Rectangle2D box = new Rectangle2D.Double(b[0], b[1], b[2], b[3]);
        assertThat(new Rectangle2D.Double(0, 0, width, floor).contains(box))
            .as("%s on the page, above the floor, in %s", box, position.text())
            .isTrue();
        assertThat(boxes).as("in %s", position.text()).noneMatch(box::intersects);
        boxes.add(box);
      }
      assertThat(boxes).hasSizeGreaterThanOrEqualTo(svg.groups("arm").size() + 1);
      everyTextFits(svg);
    }
    assertThat(drawn).as("hinges that can be held, of 150").isGreaterThan(60);
  }

  private static Position anyHinge(Random random) {
    Sex sex = random.nextBoolean() ? Sex.MALE : Sex.FEMALE;
    double stature = 150 + 45 * random.nextDouble();
    double mass = (19 + 14 * random.nextDouble()) * stature * stature / 1e4;
    Person person = Person.of(sex, Units.kg(mass), Units.cm(stature));
    if (random.nextBoolean()) {
      person = person.longer(Part.THIGH, Units.percent(8 * random.nextDouble()));
    }
    double standing = 100 * person.body().links().standingHipHeight();
    double height = standing * (0.58 + 0.35 * random.nextDouble());
    return Hinge.of(person)
        .holding(Barbell.of(Units.kg(2.2 * mass * random.nextDouble())))
        .hipHeight(Units.cm(height))
        .start();
  }

  private static void everyTextFits(SvgReader svg) {
    for (Element text : svg.all("text")) {
      double x = Double.parseDouble(text.getAttribute("x"));
      double y = Double.parseDouble(text.getAttribute("y"));
      double size = Double.parseDouble(text.getAttribute("font-size"));
      boolean bold = text.getAttribute("font-weight").equals("bold");
      assertThat(x).isNotNegative();
      assertThat(x + TextWidths.of(text.getTextContent(), size, bold))
          .as(text.getTextContent())
          .isLessThanOrEqualTo(svg.attribute("width"));
      assertThat(y).isBetween(size, svg.attribute("height"));
    }
  }

  @Test
  void what_the_side_view_hides_is_told() {
    Position position = lesson();
    double hidden = position.moment(JointId.HIP).arm3d() - position.moment(JointId.HIP).arm();
    assertThat(hidden).as("the hand is further out than the hip").isGreaterThan(0.005);
    String words = SvgReader.of(position.picture().svgDocument()).words();
    assertThat(words)
        .contains("The side view hides what runs sideways")
        .contains(String.format(Locale.ROOT, "(%.1f cm more than", 100 * hidden));
  }

  @Test
  void posture_sources_and_caution_stand_below() {
    Position position = lesson();
    String words = SvgReader.of(position.picture().svgDocument()).words();
    assertThat(words)
        .contains("Hip height 58.0 cm, stance width")
        .contains("de Leva 1996")
        .contains("ANSUR II")
        .contains("20 cm")
        .contains(Caution.TEXT);
    position.notes().forEach(note -> assertThat(words).contains(note));
  }

  @Test
  void the_mark_on_the_floor_is_the_centre_of_pressure() {
    Position position = lesson();
    SvgReader svg = SvgReader.of(position.picture().svgDocument());
    double force = firstLine(svg.groups("line-of-force").get(0))[0];
    double mark =
        Double.parseDouble(svg.groups("balance").get(0).getAttribute("data-centre-of-pressure-x"));
    double bar = position.placement().centre("right grip").getX();
    assertThat((mark - force) / svg.attribute("data-scale") + bar)
        .isCloseTo(position.balance().centreOfPressure().getX(), within(1e-5));
  }

  @Test
  void with_nothing_held_there_are_no_arms_and_the_picture_says_so() {
    Position position = Hinge.of(MAN).hipHeight(Units.cm(70)).start();
    SvgReader svg = SvgReader.of(position.picture().svgDocument());
    assertThat(svg.groups("arm")).isEmpty();
    assertThat(svg.groups("line-of-force").get(0).getAttribute("data-source"))
        .isEqualTo("body weight");
    assertThat(svg.words()).contains("Nothing is held, so no arms are drawn");
  }

  @Test
  void arms_can_be_asked_for_and_those_that_do_not_exist_are_told() {
    List<JointId> asked = List.of(JointId.KNEE, JointId.HEAD);
    SvgReader svg = SvgReader.of(Illustrator.pictureOf(lesson(), asked).svgDocument());
    assertThat(svg.groups("arm"))
        .extracting(a -> a.getAttribute("data-joint"))
        .containsExactly("knee");
    assertThat(svg.words()).contains("No arm to: C0/C1; the bar does not act beyond.");
  }

  @Test
  void a_reader_who_listens_hears_title_and_arms() {
    SvgReader svg = SvgReader.of(lesson().picture().svgDocument());
    assertThat(svg.all("title").get(0).getTextContent()).contains("barbell 140.0 kg");
    assertThat(svg.all("desc").get(0).getTextContent())
        .contains(
            String.format(
                Locale.ROOT,
                "low back (L5/S1): %.1f cm",
                100 * lesson().moment(JointId.L5_S1).arm()));
  }

  @Test
  void the_same_position_gives_the_same_svg_in_every_language() {
    String here = lesson().picture().svgDocument();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(lesson().picture().svgDocument()).isEqualTo(here);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void the_png_is_the_same_page_at_twice_the_size() throws Exception {
    var picture = lesson().picture();
    SvgReader svg = SvgReader.of(picture.svgDocument());
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture.pngFile()));
    assertThat(image.getWidth()).isEqualTo((int) (2 * svg.attribute("width")));
    assertThat(image.getHeight()).isEqualTo((int) (2 * svg.attribute("height")));
    double[] arm = armLine(svg.groups("arm").get(0));
    // The hip's arm is a solid line, so its middle shows its colour.
    int middle = image.getRGB((int) Math.round(arm[0] + arm[2]), (int) Math.round(arm[1] + arm[3]));
    assertThat(String.format("#%06x", middle & 0xffffff))
        .isEqualTo(FigureStyle.ARTICLE.accent(JointId.HIP).colour());
  }

  @Test
  void signs_of_xml_in_a_text_do_no_harm() {
    assertThat(SvgWriter.escaped("a<b & \"c\">\u0001"))
        .isEqualTo("a&lt;b &amp; &quot;c&quot;&gt; ");
    assertThat(SvgWriter.number(-0.0001)).isEqualTo("0");
    assertThat(SvgWriter.number(1234567.8912)).isEqualTo("1234567.891");
  }

  /** The second line of a group of arms; the first is the paper-coloured edge below it. */
  private static double[] armLine(Element group) {
    return SvgReader.numbers(SvgReader.children(group, "path").get(1).getAttribute("d"));
  }

  private static double[] firstLine(Element group) {
    return SvgReader.numbers(SvgReader.children(group, "path").get(0).getAttribute("d"));
  }
}
