package org.leverbook.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.BenchPress;
import org.leverbook.lift.Hinge;
import org.leverbook.lift.LateralRaise;
import org.leverbook.load.Barbell;
import org.leverbook.muscle.Effort;
import org.leverbook.muscle.MusclePath;
import org.leverbook.muscle.Strand;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.statics.PositionDrawing;
import org.leverbook.statics.View;
import org.w3c.dom.Element;

/** Any view, and what a picture shows at wish. */
class DrawingTest {

  private static final Person MAN = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
  private static final Position PULL =
      Hinge.of(MAN).holding(Barbell.of(Units.kg(140))).hipHeight(Units.cm(58)).start();

  /** Page numbers have three decimals, attributes three or six. */
  private static final double ROUNDING = 0.01;

  @Test
  void from_above_ahead_is_to_the_right_and_the_lifters_left_up_the_page() {
    Scene top = Scene.of(PULL.seenFrom(View.TOP), Scene.USUAL);
    assertThat(top.seen(new Vector3D(1, 2, 3))).isEqualTo(new Vector2D(1, -3));
    Scene back = Scene.of(PULL.seenFrom(View.BACK), Scene.USUAL);
    assertThat(back.seen(new Vector3D(1, 2, 3))).isEqualTo(new Vector2D(3, 2));
    assertThat(back.sight().depth(new Vector3D(-1, 0, 0))).as("nearer when behind").isEqualTo(1);
  }

  @Test
  void a_view_by_angles_is_the_view_by_name_where_they_are_the_same() {
    assertThat(View.of(Units.deg(90), Units.deg(0))).isEqualTo(View.SIDE);
    assertThat(View.of(Units.deg(360), Units.deg(0))).isEqualTo(View.FRONT);
    assertThat(View.of(Units.deg(-180), Units.deg(0))).isEqualTo(View.BACK);
    assertThat(View.of(Units.deg(90), Units.deg(90))).isEqualTo(View.TOP);
    assertThat(View.of(Units.deg(50), Units.deg(20)))
        .hasToString("view from 50° around, 20° above");
    assertThatThrownBy(() -> PULL.seenFrom(Units.deg(0), Units.deg(-10)))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "A view from 10° below the level looks through the floor; 0° is level, 90° looks"
                + " straight down.");
    assertThatThrownBy(() -> PULL.seenFrom(Units.deg(0), null)).isInstanceOf(Refused.class);
  }

  @Test
  void a_view_along_the_force_shows_it_as_a_ring_with_the_arms_at_full_length() {
    SvgReader svg = SvgReader.of(PULL.seenFrom(View.TOP).picture().svgDocument());
    assertThat(svg.groups("line-of-force").get(0).getAttribute("data-end-on")).isEqualTo("true");
    assertThat(words(svg)).contains("seen end-on as a ring").contains(Caution.TEXT);
    assertThat(svg.groups("arm")).isNotEmpty();
  }

  @Test
  void a_view_along_an_arm_says_that_it_points_at_the_reader() {
    SvgReader svg = SvgReader.of(PULL.fromFront().picture().svgDocument());
    assertThat(words(svg))
        .containsPattern("rm to the L5/S1 points at the reader: 30\\.\\d cm in space")
        .contains("Another view shows it.");
  }

  @Test
  void every_view_around_the_lifter_gives_a_picture() {
    for (Position position :
        List.of(PULL, LateralRaise.of(MAN).finish(), BenchPress.of(MAN).start())) {
      for (int around = 0; around < 360; around += 75) {
        for (int above : new int[] {0, 35, 90}) {
          SvgReader svg =
              SvgReader.of(
                  position.seenFrom(Units.deg(around), Units.deg(above)).picture().svgDocument());
          assertThat(svg.groups("arm")).as("%d, %d", around, above).isNotEmpty();
          assertThat(svg.all("path")).noneMatch(p -> p.getAttribute("d").contains("NaN"));
        }
      }
    }
  }

  @Test
  void arcs_turn_the_trunk_forward_over_a_bar_that_hangs_ahead() {
    Scene side = Scene.of(PULL, List.of(JointId.HIP, JointId.L5_S1));
    assertThat(side.arms()).hasSize(2);
    for (DrawnArm arm : side.arms()) {
      assertThat(arm.turn()).as("%s, clockwise from the right", arm.id()).isNegative();
      assertThat(arm.turns()).isTrue();
    }
  }

  @Test
  void reactions_are_as_long_as_their_scale_says() {
    SvgReader svg = SvgReader.of(PULL.drawing().withReactions().svgDocument());
    List<Element> arrows = svg.groups("reaction-to-scale");
    assertThat(arrows).as("both feet look alike from the side").hasSize(1);
    double perNewton = Double.parseDouble(arrows.get(0).getAttribute("data-per-newton"));
    double newtons = Double.parseDouble(arrows.get(0).getAttribute("data-newtons"));
    // Feet also push a little outward, so both together give up to half a percent more.
    double weight = (85 + 140) * 9.80665;
    assertThat(2 * newtons).isBetween(weight - 0.01, 1.005 * weight);
    double[] head = numbers(arrows.get(0), 2);
    double[] shaft = numbers(arrows.get(0), 0);
    // What the foot pushes outward, up to half a percent, is hidden from the side.
    assertThat(shaft[1] - head[1])
        .isBetween(0.995 * newtons * perNewton, newtons * perNewton + ROUNDING);
    Element bar = svg.groups("force-scale").get(0);
    double[] ends = numbers(bar, 0);
    assertThat(ends[6] - ends[4])
        .isCloseTo(
            Double.parseDouble(bar.getAttribute("data-newtons")) * perNewton, within(ROUNDING));
    assertThat(words(svg)).contains("floor: each foot");
  }

  @Test
  void muscles_are_told_by_their_effort_and_levels_by_their_moment() {
    Position squat = BackSquat.of(MAN).finish();
    PositionDrawing drawing = squat.drawing().withMuscles().withSpine().armsTo(JointId.KNEE);
    SvgReader svg = SvgReader.of(drawing.svgDocument());
    Effort effort = squat.effort();
    assertThat(svg.groups("muscle")).hasSizeGreaterThan(10);
    for (Element muscle : svg.groups("muscle")) {
      String name = muscle.getAttribute("data-muscle");
      double most =
          effort.pulls().stream()
              .filter(p -> p.strand().fullName().equals(name))
              .mapToDouble(Effort.Pull::stress)
              .findFirst()
              .orElseThrow();
      assertThat(Double.parseDouble(muscle.getAttribute("data-effort")))
          .as(name)
          .isCloseTo(most, within(1e-4))
          .isGreaterThanOrEqualTo(0.05);
    }
    assertThat(svg.groups("level")).hasSize(JointId.spine().size());
    for (int i = 0; i < JointId.spine().size(); i++) {
      assertThat(Double.parseDouble(svg.groups("level").get(i).getAttribute("data-moment-nm")))
          .isCloseTo(squat.moment(JointId.spine().get(i)).signed(), within(1e-3));
    }
    assertThat(svg.groups("legend")).hasSize(2);
    assertThat(svg.groups("arm"))
        .extracting(a -> a.getAttribute("data-joint"))
        .containsExactly("knee");
    assertThat(drawing.svgDocument()).isEqualTo(drawing.svgDocument());
  }

  /** The one-joint muscles at the front of the thigh turn the knee alone, about its side axis. */
  @Test
  void a_muscles_line_passes_the_knee_at_its_arm() {
    Position squat = BackSquat.of(MAN).finish();
    Effort effort = squat.effort();
    int row = effort.muscles().row(squat.body().tree().angleOf("right knee", "flexion"));
    int looked = 0;
    for (int i = 0; i < effort.pulls().size(); i++) {
      Strand strand = effort.pulls().get(i).strand();
      if (strand.side() == Side.RIGHT && strand.muscle().key().startsWith("vast")) {
        List<Vector3D> path = MusclePath.of(effort, squat.placement(), i);
        Vector3D knee = squat.placement().centre("right knee");
        assertThat(path.get(1).distance(knee))
            .as(strand.fullName())
            .isCloseTo(Math.abs(effort.arm(row, i)), within(1e-3));
        looked++;
      }
    }
    assertThat(looked).isPositive();
  }

  private static String words(SvgReader svg) {
    return svg.words().replaceAll("\\s+", " ");
  }

  private static double[] numbers(Element group, int path) {
    return SvgReader.numbers(SvgReader.children(group, "path").get(path).getAttribute("d"));
  }
}
