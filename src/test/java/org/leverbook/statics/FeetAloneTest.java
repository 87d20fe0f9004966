package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.load.Cable;
import org.leverbook.load.HandWeights;
import org.leverbook.support.Floor;

/** Two feet on a level floor: how they share the weight, by the principle that rules all else. */
class FeetAloneTest {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));
  private static final Position SQUAT = BackSquat.of(LIFTER).at(percent(0));
  private static final List<JointId> LEG = List.of(JointId.HIP, JointId.KNEE, JointId.ANKLE);

  private static Reaction foot(Position position, String side) {
    return position.supportForces().stream()
        .filter(r -> r.on().equals(side + " foot"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void the_slightest_sideways_pull_changes_next_to_nothing() {
    Position pulled = SQUAT.with(Cable.of(kg(0.001), new Vector3D(2, 0.8, 0)));
    for (JointId joint : LEG) {
      for (Side side : joint.sides()) {
        // A pull of 0.01 N at some metre: a hundredth of a newton metre, and as much again for the
        // feet's answer to it.
        assertThat(pulled.moment(joint, side).moment())
            .satisfies(
                m -> assertThat(m.distance(SQUAT.moment(joint, side).moment())).isLessThan(0.05));
      }
    }
  }

  @Test
  void a_squatters_feet_press_outward_alike_on_both_sides() {
    Reaction right = foot(SQUAT, "right");
    Reaction left = foot(SQUAT, "left");
    // Newtons: the solver's rounding of 1e-12 body weights, over its steps.
    double rounding = 1e-6;
    assertThat(right.force().getZ()).as("the floor pushes the right foot inward").isLessThan(-10);
    assertThat(left.force().getZ()).isCloseTo(-right.force().getZ(), within(rounding));
    assertThat(left.push()).isCloseTo(right.push(), within(rounding));
    assertThat(left.point().getX()).isCloseTo(right.point().getX(), within(rounding));
    assertThat(left.point().getZ()).isCloseTo(-right.point().getZ(), within(rounding));
  }

  @Test
  void on_ice_they_press_straight_down_and_the_hips_must_do_more() {
    Position ice = SQUAT.without("floor").on(new Floor(SQUAT.body(), 0));
    assertThat(foot(ice, "right").along()).isZero();
    assertThat(foot(ice, "right").frictionUsed()).isEmpty();
    assertThat(ice.moment(JointId.HIP).size3d())
        .isGreaterThan(1.2 * SQUAT.moment(JointId.HIP).size3d());
  }

  @Test
  void what_goes_to_the_right_for_one_goes_to_the_left_for_the_mirrored_other() {
    Position rightHand = SQUAT.with(new HandWeights("dumbbell", 10, 0));
    Position leftHand = SQUAT.with(new HandWeights("dumbbell", 0, 10));
    assertThat(foot(rightHand, "right").push()).isGreaterThan(foot(rightHand, "left").push() + 20);
    for (JointId joint : LEG) {
      assertThat(rightHand.moment(joint, Side.RIGHT).signed())
          .isCloseTo(leftHand.moment(joint, Side.LEFT).signed(), within(1e-6));
      assertThat(rightHand.moment(joint, Side.LEFT).signed())
          .isCloseTo(leftHand.moment(joint, Side.RIGHT).signed(), within(1e-6));
    }
  }

  @Test
  void the_friction_used_is_that_of_the_whole_foot_not_of_its_most_strained_point() {
    Position start = Hinge.of(LIFTER).holding(Barbell.of(kg(140))).hipHeight(cm(58)).start();
    for (String side : List.of("right", "left")) {
      Reaction foot = foot(start, side);
      double used = foot.frictionUsed().orElseThrow();
      // At least what the foot holds across as a whole; points that strain against each other add.
      assertThat(used).isGreaterThanOrEqualTo(foot.along() / (0.6 * foot.push()) - 1e-9);
      assertThat(used).isBetween(0.01, 0.5);
    }
  }
}
