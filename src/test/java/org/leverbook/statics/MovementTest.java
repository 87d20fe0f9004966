package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.seconds;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.quantity.Refused;

/** A bar pulled from the floor upward: the same lift held still, slow and fast. */
class MovementTest {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));

  /** Hips from 66 to 72 cm, the bar rising with them from 22.5 to 34.5 cm. */
  private static Position held(double share) {
    return Hinge.of(LIFTER)
        .holding(Barbell.of(kg(100)))
        .hipHeight(cm(66 + 6 * share))
        .barHeight(cm(22.5 + 12 * share))
        .start();
  }

  private static Movement pull(double duration) {
    return Movement.of("pull", Tempo.smooth(seconds(duration)), MovementTest::held);
  }

  @Test
  void at_rest_the_moments_are_those_of_the_still_position_to_the_last_digit() {
    Movement pull = pull(1);
    for (double t : new double[] {0, 1}) {
      Position moving = pull.at(seconds(t));
      Position still = pull.still(seconds(t));
      for (JointId joint : JointId.values()) {
        assertThat(moving.moment(joint).signed()).isEqualTo(still.moment(joint).signed());
      }
    }
  }

  @Test
  void a_slow_pull_comes_close_to_holding_still() {
    Position still = pull(1).still(seconds(0.25));
    double fast = pull(1).at(seconds(0.25)).moment(JointId.L5_S1).size();
    double slow = pull(10).at(seconds(2.5)).moment(JointId.L5_S1).size();
    double extra = fast - still.moment(JointId.L5_S1).size();
    assertThat(extra).isGreaterThan(5);
    // Inertia falls with the square of the duration: ten times slower is a hundredth.
    assertThat(slow - still.moment(JointId.L5_S1).size()).isCloseTo(extra / 100, within(1e-6));
  }

  @Test
  void the_bar_is_heavier_while_it_speeds_up_by_its_mass_times_its_acceleration() {
    Movement pull = pull(1);
    double t = 0.25;
    double h = 1e-3;
    double rise =
        (grip(pull, t + h).getY() + grip(pull, t - h).getY() - 2 * grip(pull, t).getY()) / h / h;
    Vector3D inertia = Vector3D.ZERO;
    for (Force force : pull.at(seconds(t)).forces()) {
      if (force.source().equals("bar inertia")) {
        inertia = inertia.add(force.force());
      }
    }
    assertThat(rise).isGreaterThan(0.5);
    // Second differences of this test: an error of the step squared, and rounding over it.
    assertThat(inertia.getY()).isCloseTo(-100 * rise, within(0.02));
  }

  private static Vector3D grip(Movement pull, double t) {
    return pull.still(seconds(t)).placement().centre("right grip");
  }

  @Test
  void the_floor_pushes_with_the_weight_and_with_what_the_masses_ask() {
    Position moving = pull(0.8).at(seconds(0.2));
    Vector3D floor = Vector3D.ZERO;
    Vector3D inertia = Vector3D.ZERO;
    for (Force force : moving.forces()) {
      if (force.kind() == Force.Kind.SUPPORT) {
        floor = floor.add(force.force());
      } else if (force.kind() == Force.Kind.INERTIA) {
        inertia = inertia.add(force.force());
      }
    }
    Vector3D weight = Gravity.VECTOR.scalarMultiply(185);
    assertThat(inertia.getY()).isLessThan(-40);
    assertThat(Math.abs(inertia.getX())).as("forward part, taken by friction").isGreaterThan(1);
    assertThat(floor.add(weight).add(inertia).getNorm()).isLessThan(1e-6);
    assertThat(moving.held()).isTrue();
  }

  @Test
  void parts_add_up_and_tell_movement_from_weight() {
    Position moving = pull(0.8).at(seconds(0.2));
    for (JointMoment joint : moving.all()) {
      Vector3D sum = Vector3D.ZERO;
      for (JointMoment.Part part : joint.parts().values()) {
        sum = sum.add(part.moment());
      }
      assertThat(sum.distance(joint.moment())).isLessThan(1e-9);
    }
    JointMoment back = moving.moment(JointId.L5_S1);
    assertThat(back.from("bar inertia")).isGreaterThan(5);
    // The trunk comes back as it rises, which pulls the other way.
    assertThat(back.from("body inertia")).isLessThan(-5);
    assertThat(back.mainLoad()).isEqualTo("bar");
    assertThat(moving.text()).contains("pull, 0.20 s").contains("Inertia of body and load");
  }

  @Test
  void what_cannot_be_run_through_is_refused_in_a_sentence() {
    assertThatThrownBy(() -> pull(1).at(seconds(1.5)))
        .isInstanceOf(Refused.class)
        .hasMessage("The movement lasts from 0 to 1 s; there is nothing at 1.5 s.");
    assertThatThrownBy(() -> Movement.of("pull", null, MovementTest::held))
        .isInstanceOf(Refused.class)
        .hasMessage("The tempo is missing (null): give one, such as smooth(seconds(1.5)).");
    assertThatThrownBy(
            () -> Movement.of("pull", Tempo.smooth(seconds(1)), share -> null).at(seconds(0.5)))
        .isInstanceOf(Refused.class)
        .hasMessage("The lambda's position is missing (null): give one, such as pull.start().");
  }
}
