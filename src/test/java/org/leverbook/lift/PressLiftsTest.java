package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.pose.Ranges;
import org.leverbook.statics.Position;

/** What a coach can count on in every lift that presses, raises or curls, for three builds. */
class PressLiftsTest {

  /** Contacts hold to what the solver promises, 1e-7, with room for rounding. */
  private static final double EXACT = 1e-6;

  private static final List<Person> LIFTERS =
      List.of(
          Person.of(Sex.MALE, kg(85), cm(178)),
          Person.of(Sex.FEMALE, kg(60), cm(165)),
          Person.of(Sex.MALE, kg(85), cm(178)).longer(Part.THIGH, percent(8)));

  /** Those whose feet do not stand flat: toes only, or none. */
  private static final Set<String> NOT_ON_SOLES = Set.of("push-up", "dip");

  static Stream<Arguments> lifts() {
    return PressLifts.all().stream()
        .flatMap(of -> LIFTERS.stream().map(of::apply))
        .map(lift -> Arguments.of(lift.name() + ", " + lift.body().person().text(), lift));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lifts")
  void start_middle_and_finish_are_held_within_the_joints_ranges(String name, Lift<?> lift) {
    for (Position position : lift.threePositions()) {
      assertThat(position.held()).as(position.holding().sentence()).isTrue();
      assertThat(Ranges.exceeded(position.placement().pose()))
          .as(position.name())
          .allMatch(beyond -> position.name().startsWith("push-up") && beyond.contains("wrist"));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lifts")
  void hands_keep_the_width_that_was_asked(String name, Lift<?> lift) {
    for (Position position : lift.threePositions()) {
      if (position.facts().stream().anyMatch(f -> f.name().equals("grip width"))) {
        double width = position.fact("grip width") / 100;
        Vector3D right = at(position, Site.HAND, Side.RIGHT);
        Vector3D left = at(position, Site.HAND, Side.LEFT);
        assertThat(right.getZ() - left.getZ()).isCloseTo(width, within(EXACT));
        assertThat(right.getX()).isCloseTo(left.getX(), within(EXACT));
        assertThat(right.getY()).isCloseTo(left.getY(), within(EXACT));
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lifts")
  void soles_lie_flat_on_the_floor(String name, Lift<?> lift) {
    for (Position position : lift.threePositions()) {
      for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
        if (!NOT_ON_SOLES.contains(lift.name())) {
          assertThat(at(position, Site.HEEL, side).getY()).isCloseTo(0, within(EXACT));
          assertThat(at(position, Site.BALL_OF_FOOT, side).getY()).isCloseTo(0, within(EXACT));
        }
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lifts")
  void elbows_never_bend_backward_nor_knees(String name, Lift<?> lift) {
    for (Position position : lift.threePositions()) {
      Pose pose = position.placement().pose();
      for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
        assertThat(pose.angle(JointId.ELBOW, side, "flexion")).isGreaterThanOrEqualTo(-1e-9);
        assertThat(pose.angle(JointId.KNEE, side, "flexion")).isGreaterThanOrEqualTo(-1e-9);
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lifts")
  void no_joint_jumps_on_the_way(String name, Lift<?> lift) {
    int parts = 20;
    int count = lift.body().tree().angles();
    double[] way = new double[count];
    double[] largest = new double[count];
    Pose before = lift.start().placement().pose();
    for (int i = 1; i <= parts; i++) {
      Placement now = lift.at(percent(100.0 * i / parts)).placement();
      for (int a = 0; a < count; a++) {
        double step = Math.abs(now.pose().angle(a) - before.angle(a));
        way[a] += step;
        largest[a] = Math.max(largest[a], step);
      }
      before = now.pose();
    }
    for (int a = 0; a < count; a++) {
      // A hand that goes evenly turns an elbow fast where it is nearly straight: three times the
      // mean step is a movement, and less than three degrees is no jump of anything.
      assertThat(Math.toDegrees(largest[a]))
          .as(name + ", angle " + a + ", mean step " + Math.toDegrees(way[a] / parts))
          .isLessThan(Math.max(3, 3 * Math.toDegrees(way[a] / parts)));
    }
  }

  private static Vector3D at(Position position, Site site, Side side) {
    Placement where = position.placement();
    return where.at(where.tree().place(site, side));
  }
}
