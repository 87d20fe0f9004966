package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Area;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.CableChop;
import org.leverbook.lift.CableLateralRaise;
import org.leverbook.lift.Deadlift;
import org.leverbook.lift.FarmersCarry;
import org.leverbook.lift.LatPulldown;
import org.leverbook.lift.LateralRaise;
import org.leverbook.lift.LegCurl;
import org.leverbook.lift.LegExtension;
import org.leverbook.lift.LegPress;
import org.leverbook.lift.Lift;
import org.leverbook.lift.SidePlank;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.statics.View;
import org.w3c.dom.Element;

/** From where a lift is drawn, and what stands around it. */
class ViewPictureTest {

  private static final Person MAN = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
  private static final Person SHORT_WOMAN =
      Person.of(Sex.FEMALE, Units.kg(58), Units.cm(158)).longer(Part.THIGH, Units.percent(5));

  /** Page numbers have three decimals. */
  private static final double PAGE_ROUNDING = 0.002;

  private static List<Lift<?>> ofTheFrontalPlane(Person lifter) {
    return List.of(
        LateralRaise.of(lifter),
        CableLateralRaise.of(lifter),
        SidePlank.of(lifter),
        FarmersCarry.of(lifter),
        CableChop.of(lifter));
  }

  private static List<Position> positions(Lift<?> lift) {
    return List.of(lift.start(), lift.middle(), lift.finish());
  }

  @Test
  void lifts_of_the_frontal_plane_are_drawn_from_the_front_and_others_from_the_side() {
    for (Lift<?> lift : ofTheFrontalPlane(MAN)) {
      assertThat(lift.middle().view()).as(lift.name()).isEqualTo(View.FRONT);
      assertThat(lift.middle().picture().svgDocument()).contains("Front view, drawn to scale");
      assertThat(lift.middle().fromSide().picture().svgDocument()).contains("Side view, drawn to");
    }
    assertThat(Deadlift.of(MAN).start().view()).isEqualTo(View.SIDE);
    assertThat(Deadlift.of(MAN).start().fromFront().picture().svgDocument())
        .contains("Front view, drawn to scale");
  }

  @Test
  void from_the_front_the_lifters_right_is_to_the_left_of_the_page() {
    Position position = LateralRaise.of(MAN).finish();
    Scene scene = Scene.of(position, Scene.USUAL);
    assertThat(scene.seen(new Vector3D(1, 2, 3))).isEqualTo(new Vector2D(-3, 2));
    Vector2D right = scene.seen(position.placement().centre(JointId.GRIP.on(Side.RIGHT)));
    Vector2D left = scene.seen(position.placement().centre(JointId.GRIP.on(Side.LEFT)));
    assertThat(left.getX() - right.getX()).as("hands apart, m").isGreaterThan(1.4);
    Scene side = Scene.of(position.fromSide(), Scene.USUAL);
    assertThat(
            side.seen(position.placement().centre(JointId.GRIP.on(Side.RIGHT)))
                .distance(side.seen(position.placement().centre(JointId.GRIP.on(Side.LEFT)))))
        .as("the side view hides them behind each other")
        .isLessThan(0.01);
  }

  @Test
  void the_view_changes_no_number() {
    Position front = CableLateralRaise.of(MAN).middle();
    Position side = front.fromSide();
    assertThat(side.moments().text()).isEqualTo(front.moments().text());
    assertThat(side.facts()).isEqualTo(front.facts());
    assertThat(side.notes()).isEqualTo(front.notes());
    assertThatThrownBy(() -> front.seenFrom(null))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("view");
  }

  /** Arm times force is the load's moment about the line of sight, as a reader would reckon. */
  @Test
  void arms_meet_the_line_of_force_square_and_times_its_pull_give_the_loads_moment() {
    int arms = 0;
    for (Lift<?> lift : ofTheFrontalPlane(MAN)) {
      Position position = lift.middle();
      Scene scene = Scene.of(position, Scene.USUAL);
      for (DrawnArm arm : scene.arms()) {
        arms++;
        Vector2D drawn = arm.foot().subtract(arm.joint());
        assertThat(drawn.dotProduct(scene.line().direction())).isCloseTo(0, within(1e-12));
        Vector3D load = arm.moment().parts().get(scene.line().source()).moment();
        Vector3D force = arm.moment().parts().get(scene.line().source()).force();
        double told = Math.abs(load.dotProduct(scene.sight().towards()));
        // Each hand of two on one handle has a line of its own, up to 2 cm from the one drawn.
        double apart = lift instanceof CableChop ? 0.02 * force.getNorm() : 1e-6;
        assertThat(arm.length() * scene.seen(force).getNorm())
            .as("%s, %s", lift.name(), arm.name())
            .isCloseTo(told, within(apart));
      }
    }
    assertThat(arms).as("raise 1, carry 4; cable raise and chop 3, without the hips").isEqualTo(11);
  }

  @Test
  void the_drawn_page_has_the_right_angle_too() {
    SvgReader svg = SvgReader.of(CableLateralRaise.of(MAN).middle().picture().svgDocument());
    double[] line = numbers(svg.groups("line-of-force").get(0), 0);
    double length = Math.hypot(line[2] - line[0], line[3] - line[1]);
    assertThat(svg.groups("arm")).hasSize(3);
    assertThat(svg.words()).contains("No arm to: hip; what it carries");
    for (Element group : svg.groups("arm")) {
      double[] arm = numbers(group, 1);
      double long1 = Math.hypot(arm[2] - arm[0], arm[3] - arm[1]);
      double cosine =
          ((arm[2] - arm[0]) * (line[2] - line[0]) + (arm[3] - arm[1]) * (line[3] - line[1]))
              / long1
              / length;
      assertThat(cosine).isCloseTo(0, within(PAGE_ROUNDING / long1));
      assertThat(long1 / svg.attribute("data-scale"))
          .isCloseTo(
              Double.parseDouble(group.getAttribute("data-arm-m")), within(PAGE_ROUNDING / 100));
    }
  }

  @Test
  void a_raise_to_the_side_tells_its_whole_arm_and_what_the_weight_tends_to_do() {
    Position position = LateralRaise.of(MAN).finish();
    SvgReader svg = SvgReader.of(position.picture().svgDocument());
    Element arm = svg.groups("arm").get(0);
    double hand = position.placement().centre(JointId.GRIP.on(Side.RIGHT)).getZ();
    double shoulder = position.placement().centre(JointId.SHOULDER.on(Side.RIGHT)).getZ();
    // The weight is held within 2 cm of the centre of the grip.
    assertThat(Double.parseDouble(arm.getAttribute("data-arm-m")))
        .isCloseTo(hand - shoulder, within(0.02))
        .isGreaterThan(0.5);
    assertThat(arm.getAttribute("data-tends-to")).isEqualTo("adduct");
    assertThat(svg.words()).contains("right shoulder").doesNotContain("(each side)");
  }

  @Test
  void the_side_planks_trunk_is_seen_at_its_full_breadth() {
    for (Person lifter : List.of(MAN, SHORT_WOMAN)) {
      for (Side down : List.of(Side.RIGHT, Side.LEFT)) {
        Position position = SidePlank.of(lifter).working(down).middle();
        Scene scene = Scene.of(position, Scene.USUAL);
        Area trunk = scene.body().get(0).area();
        Vector3D pelvis = position.placement().origin(0);
        Vector3D aside = position.placement().frame(0).z().scalarMultiply(0.12);
        for (Vector3D flank : List.of(pelvis.add(aside), pelvis.subtract(aside))) {
          Vector2D seen = scene.seen(flank);
          assertThat(trunk.contains(seen.getX(), seen.getY())).as("%s down", down).isTrue();
        }
        assertThat(scene.joints()).as("both sides").hasSize(12);
      }
    }
  }

  @Test
  void labels_stay_on_the_page_and_apart_from_each_other() {
    int boxes = 0;
    for (Person lifter : List.of(MAN, SHORT_WOMAN)) {
      List<Lift<?>> lifts = new ArrayList<>(ofTheFrontalPlane(lifter));
      lifts.addAll(
          List.of(
              LegPress.of(lifter),
              LegCurl.of(lifter),
              LegExtension.of(lifter),
              LatPulldown.of(lifter)));
      for (Lift<?> lift : lifts) {
        for (Position position : positions(lift)) {
          boxes += labelsInside(SvgReader.of(position.picture().svgDocument()), position.name());
        }
      }
    }
    assertThat(boxes).as("labels looked at").isGreaterThan(180);
  }

  private static int labelsInside(SvgReader svg, String name) {
    Rectangle2D page =
        new Rectangle2D.Double(0, 0, svg.attribute("width"), svg.attribute("data-floor-y"));
    List<Rectangle2D> boxes = new ArrayList<>();
    for (Element label : svg.groups("label")) {
      double[] b = SvgReader.numbers(label.getAttribute("data-box"));
      Rectangle2D box = new Rectangle2D.Double(b[0], b[1], b[2], b[3]);
      assertThat(page.contains(box)).as("%s in %s", box, name).isTrue();
      assertThat(boxes).as(name).noneMatch(box::intersects);
      boxes.add(box);
    }
    return boxes.size();
  }

  @Test
  void machines_are_drawn_with_what_holds_them() {
    assertThat(marks(LatPulldown.of(MAN).start(), "machine", "cable")).isTrue();
    assertThat(marks(CableChop.of(MAN).start(), "machine", "cable")).isTrue();
    assertThat(marks(CableChop.of(MAN).start().fromSide(), "machine", "cable"))
        .as("a column beside the lifter is not to be seen from the side")
        .isFalse();
    assertThat(marks(LegPress.of(MAN).start(), "machine", "sled")).isTrue();
    assertThat(marks(LegCurl.of(MAN).start(), "load", "machine")).isTrue();
    assertThat(marks(LegExtension.of(MAN).start(), "load", "machine")).isTrue();
    assertThat(marks(BackSquat.of(MAN).finish(), "stand", "floor")).isFalse();
    assertThat(marks(BackSquat.of(MAN).heelHeight(Units.cm(3)).finish(), "stand", "floor"))
        .isTrue();
  }

  private static boolean marks(Position position, String kind, String source) {
    return SvgReader.of(position.picture().svgDocument()).groups(kind).stream()
        .anyMatch(g -> g.getAttribute("data-source").equals(source));
  }

  @Test
  void a_machine_for_the_legs_has_its_arm_to_the_knee() {
    SvgReader svg = SvgReader.of(LegExtension.of(MAN).middle().picture().svgDocument());
    assertThat(svg.groups("arm"))
        .extracting(a -> a.getAttribute("data-joint"))
        .containsExactly("knee", "hip");
  }

  private static double[] numbers(Element group, int path) {
    return SvgReader.numbers(SvgReader.children(group, "path").get(path).getAttribute("d"));
  }
}
