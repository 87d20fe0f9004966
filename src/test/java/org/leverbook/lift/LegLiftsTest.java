package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.body.Body;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Pose;
import org.leverbook.pose.Ranges;
import org.leverbook.statics.Position;

/** Every lift for legs and hips, done by three builds. */
class LegLiftsTest {

  private static final Person MAN = Person.of(Sex.MALE, kg(85), cm(178));
  private static final Person WOMAN = Person.of(Sex.FEMALE, kg(60), cm(165));
  private static final Person LONG_THIGHS = MAN.longer(Part.THIGH, percent(8));

  /** What a solver leaves of a condition that counts as met, metres, with room for rounding. */
  private static final double EXACT = 1e-6;

  /** Shares of the way at which the movement is looked at. */
  private static final int STEPS = 20;

  /**
   * Steps this small are no jump whatever the mean, degrees: once a bar has passed the knees, they
   * and the arms come forward within two steps, by 2.5 and 4.3 degrees at the most, in an unloaded
   * hinge of long thighs by 5.2.
   */
  private static final double SMALL = 5;

  /** Pulls of a straight bar, whose hands stay on one upright line. */
  private static final Set<String> PULLS =
      Set.of(
          "conventional deadlift",
          "sumo deadlift",
          "trap-bar deadlift",
          "stiff-leg deadlift",
          "Romanian deadlift",
          "rack pull");

  /** Both feet flat on the floor all the way. */
  private static final Set<String> FLAT =
      Set.of("hinge", "good morning", "kettlebell swing, bottom", "back squat", "front squat");

  static Stream<Arguments> everyLiftOfEveryBuild() {
    return LegLifts.all().stream()
        .flatMap(
            lift ->
                Stream.of(MAN, WOMAN, LONG_THIGHS)
                    .map(who -> Arguments.of(lift.apply(who).name(), lift.apply(who))));
  }

  @Test
  void there_are_twenty_lifts_each_with_its_own_name_purpose_and_source() {
    List<? extends Lift<?>> all = LegLifts.all().stream().map(l -> l.apply(MAN)).toList();
    assertThat(all).hasSize(20);
    assertThat(all).extracting(Lift::name).doesNotHaveDuplicates();
    assertThat(all).extracting(Lift::purpose).doesNotHaveDuplicates().doesNotContain("");
    assertThat(all)
        .extracting(Lift::source)
        .allMatch(s -> s.contains("no source") || s.contains(" et al. "));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("everyLiftOfEveryBuild")
  void it_can_be_held_at_start_middle_and_finish(String name, Lift<?> lift) {
    for (Position position : List.of(lift.start(), lift.middle(), lift.finish())) {
      assertThat(position.held()).as(position.name() + position.holding().sentence()).isTrue();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("everyLiftOfEveryBuild")
  void it_moves_smoothly_and_no_joint_leaves_its_range(String name, Lift<?> lift) {
    List<double[]> way = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      Pose pose = lift.at(percent(100.0 * i / STEPS)).placement().pose();
      assertThat(Ranges.exceeded(pose)).isEmpty();
      way.add(angles(pose));
    }
    for (int k = 0; k < way.get(0).length; k++) {
      double[] steps = new double[STEPS];
      for (int i = 0; i < STEPS; i++) {
        steps[i] = Math.toDegrees(Math.abs(way.get(i + 1)[k] - way.get(i)[k]));
      }
      double mean = Arrays.stream(steps).average().orElseThrow();
      double most = Arrays.stream(steps).max().orElseThrow();
      assertThat(most).as("angle %d of %s", k, name).isLessThan(Math.max(SMALL, 3 * mean));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("everyLiftOfEveryBuild")
  void what_touches_touches_exactly(String name, Lift<?> lift) {
    for (Position position : List.of(lift.start(), lift.middle(), lift.finish())) {
      if (PULLS.contains(name)) {
        double ahead = name.startsWith("trap") ? 0 : 0.03;
        Vector3D right = hand(position, lift.body(), Side.RIGHT);
        Vector3D left = hand(position, lift.body(), Side.LEFT);
        assertThat(right.getX()).isCloseTo(ahead, within(EXACT));
        assertThat(left.getX()).isCloseTo(ahead, within(EXACT));
        assertThat(right.getY()).isCloseTo(left.getY(), within(EXACT));
        double width = fact(position, "grip width") / 100;
        assertThat(right.getZ() - left.getZ()).isCloseTo(width, within(EXACT));
      }
      if (PULLS.contains(name) || FLAT.contains(name)) {
        for (Body.SolePoint sole : lift.body().soles()) {
          Vector3D point = position.placement().toWorld(sole.segment(), sole.place());
          assertThat(point.getY()).as(sole.name()).isCloseTo(0, within(EXACT));
        }
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("everyLiftOfEveryBuild")
  void left_and_right_go_alike_unless_one_side_works(String name, Lift<?> lift) {
    if (lift.bothSidesAlike()) {
      Position middle = lift.middle();
      for (Site site : List.of(Site.HAND, Site.THIGH, Site.ANKLE)) {
        Vector3D right = middle.placement().at(lift.body().place(site, Side.RIGHT));
        Vector3D left = middle.placement().at(lift.body().place(site, Side.LEFT));
        assertThat(new Vector3D(left.getX(), left.getY(), -left.getZ()).distance(right))
            .isLessThan(EXACT);
      }
    } else {
      assertThat(name).isIn("split squat", "step-up");
    }
  }

  @Test
  void the_bar_is_in_front_of_the_legs_when_it_passes_the_knees() {
    for (Function<Person, Lift<?>> lift :
        List.<Function<Person, Lift<?>>>of(Deadlift::of, SumoDeadlift::of, RackPull::of)) {
      for (int i = 0; i <= STEPS; i++) {
        Position position = lift.apply(MAN).at(percent(100.0 * i / STEPS));
        Vector3D hand = hand(position, position.body(), Side.RIGHT);
        Vector3D knee = position.placement().centre("right knee");
        if (Math.abs(hand.getY() - knee.getY()) < 0.03) {
          // A lower thigh is some 13 cm thick: half of it, less what cushions.
          assertThat(hand.getX() - knee.getX()).isGreaterThan(0.05);
        }
      }
    }
  }

  private static double[] angles(Pose pose) {
    double[] angles = new double[pose.tree().angles()];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = pose.angle(i);
    }
    return angles;
  }

  private static Vector3D hand(Position position, Body body, Side side) {
    return position.placement().at(body.place(Site.HAND, side));
  }

  private static double fact(Position position, String name) {
    return position.facts().stream()
        .filter(f -> f.name().equals(name))
        .findFirst()
        .orElseThrow()
        .value();
  }
}
