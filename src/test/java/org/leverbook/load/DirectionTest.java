package org.leverbook.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.newton;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.Hinge;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/** Forces in a direction instead of towards a point. */
class DirectionTest {

  private static final Position EMPTY =
      Hinge.of(Person.of(Sex.MALE, kg(85), cm(178))).hipHeight(cm(65)).start();

  @Test
  void directions_are_those_of_the_standing_lifter() {
    assertThat(Direction.FORWARD.line()).isEqualTo(new Vector3D(1, 0, 0));
    assertThat(Direction.UPWARD.line()).isEqualTo(new Vector3D(0, 1, 0));
    assertThat(Direction.RIGHTWARD.line()).isEqualTo(new Vector3D(0, 0, 1));
    assertThat(Direction.BACKWARD.line().add(Direction.FORWARD.line())).isEqualTo(Vector3D.ZERO);
    assertThat(Direction.DOWNWARD.line().add(Direction.UPWARD.line())).isEqualTo(Vector3D.ZERO);
    assertThat(Direction.LEFTWARD.line().add(Direction.RIGHTWARD.line())).isEqualTo(Vector3D.ZERO);
  }

  @Test
  void a_direction_can_be_raised_and_lowered_but_not_a_vertical_one() {
    Direction raised = Direction.FORWARD.raisedBy(deg(30));
    assertThat(raised.toString()).isEqualTo("forward, raised by 30°");
    // Rounding of a sine.
    assertThat(raised.line().distance(new Vector3D(Math.sqrt(0.75), 0.5, 0))).isLessThan(1e-15);
    assertThat(Direction.LEFTWARD.raisedBy(deg(-90)).line().distance(Direction.DOWNWARD.line()))
        .isLessThan(1e-15);
    assertThatThrownBy(() -> Direction.UPWARD.raisedBy(deg(10)))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The direction upward is vertical and cannot be raised: begin with FORWARD, BACKWARD,"
                + " LEFTWARD or RIGHTWARD.");
  }

  @Test
  void pulled_downward_by_a_bars_weight_the_hands_feel_a_bar() {
    double weight = 20 * Gravity.STANDARD;
    Position bar = EMPTY.with(Barbell.of(kg(20)));
    Position pulled = EMPTY.with(DirectedForce.of("partner", newton(weight), Direction.DOWNWARD));
    for (JointId joint : JointId.values()) {
      // Rounding of some hundred newton metres.
      assertThat(pulled.moment(joint, Side.RIGHT).signed())
          .as(joint.word())
          .isCloseTo(bar.moment(joint, Side.RIGHT).signed(), within(1e-9));
    }
  }

  @Test
  void a_direction_is_a_point_very_far_away() {
    Vector3D far = new Vector3D(1e9, 0, 0);
    Position towards = EMPTY.with(SteadyForce.of("partner", newton(30), far));
    Position along = EMPTY.with(DirectedForce.of("partner", newton(30), Direction.FORWARD));
    for (JointId joint : JointId.values()) {
      // Over a million kilometres a metre turns the line by 1e-9.
      assertThat(along.moment(joint, Side.LEFT).signed())
          .as(joint.word())
          .isCloseTo(towards.moment(joint, Side.LEFT).signed(), within(1e-5));
    }
  }

  @Test
  void a_force_in_a_direction_tells_itself_and_can_act_elsewhere() {
    DirectedForce pull = DirectedForce.of("partner", newton(200), Direction.BACKWARD);
    assertThat(pull.toString()).isEqualTo("partner 200 N backward");
    assertThat(pull.on(org.leverbook.body.Site.CHEST).forces(EMPTY.placement()))
        .singleElement()
        .satisfies(f -> assertThat(f.force()).isEqualTo(new Vector3D(-200, 0, 0)));
    assertThat(DirectedForce.of("partner", newton(0), Direction.UPWARD).forces(EMPTY.placement()))
        .isEmpty();
    assertThatThrownBy(() -> DirectedForce.of("partner", newton(5), null))
        .isInstanceOf(Refused.class)
        .hasMessage("The direction it pulls in is missing (null): give one, such as FORWARD.");
  }
}
