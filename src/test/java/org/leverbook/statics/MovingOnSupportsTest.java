package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.seconds;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.body.JointId;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.support.Contact;

/**
 * Movements of a lifter on pads, benches, seats, plates and bars: inertia and reactions together.
 */
class MovingOnSupportsTest {

  static Stream<Arguments> lifts() {
    return SupportedMovements.all().entrySet().stream()
        .map(way -> Arguments.of(way.getKey(), way.getValue()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lifts")
  void forces_balance_with_inertia_at_every_instant(String name, DoubleFunction<Position> way) {
    Movement movement = Movement.of(name, Tempo.smooth(seconds(1.5)), way);
    for (double t : new double[] {0.2, 0.75, 1.2}) {
      Position moving = movement.at(seconds(t));
      assertThat(moving.held()).as(moving.holding().sentence()).isTrue();
      Vector3D sum = Gravity.VECTOR.scalarMultiply(moving.body().tree().mass());
      Vector3D turning = moving.placement().centreOfMass().crossProduct(sum);
      for (Force force : moving.forces()) {
        sum = sum.add(force.force());
        turning = turning.add(force.momentAbout(Vector3D.ZERO));
      }
      // Rounding of a body's weight, 834 N, over the solver's steps, and as much over a metre.
      assertThat(sum.getNorm()).isLessThan(1e-6);
      assertThat(turning.getNorm()).isLessThan(1e-6);
    }
  }

  @Test
  void on_bench_or_seat_with_feet_on_the_floor_the_balance_is_that_of_the_feet() {
    for (String way : List.of("bench", "seat and thigh pad")) {
      Balance balance = SupportedMovements.all().get(way).apply(0).balance();
      assertThat(balance.feet()).isTrue();
      assertThat(balance.centreOfPressure().getY()).isCloseTo(0, within(1e-6));
      assertThat(balance.shareOfFoot()).isBetween(0.0, 1.0);
    }
  }

  @Test
  void on_hands_and_toes_no_foot_is_spoken_of() {
    List<Contact> hands =
        List.of(
            Contact.smooth("right hand", 1, new Vector3D(1, 0, 0.2), Vector3D.PLUS_J),
            Contact.smooth("left hand", 2, new Vector3D(1, 0, -0.2), Vector3D.PLUS_J),
            Contact.smooth("knees", 3, Vector3D.ZERO, Vector3D.PLUS_J));
    assertThat(Balance.of(hands, new Vector3D(0.6, 0, 0), 0, 1, false).text())
        .startsWith("balance at 60 % of what carries, from behind, ");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lifts")
  void at_its_ends_it_is_the_still_position(String name, DoubleFunction<Position> way) {
    Movement movement = Movement.of(name, Tempo.smooth(seconds(1.5)), way);
    Position moving = movement.at(seconds(0));
    Position still = movement.still(seconds(0));
    for (JointId joint : JointId.values()) {
      assertThat(moving.moment(joint).signed()).isEqualTo(still.moment(joint).signed());
    }
    assertThat(moving.supportForces()).isEqualTo(still.supportForces());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lifts")
  void ten_times_slower_inertia_is_a_hundredth(String name, DoubleFunction<Position> way) {
    Movement fast = Movement.of(name, Tempo.smooth(seconds(1)), way);
    Movement slow = fast.at(Tempo.smooth(seconds(10)));
    double quick = inertia(fast.at(seconds(0.2)));
    assertThat(quick).isGreaterThan(1);
    assertThat(inertia(slow.at(seconds(2)))).isCloseTo(quick / 100, within(1e-6 * quick));
  }

  private static double inertia(Position moving) {
    return moving.forces().stream()
        .filter(f -> f.source().contains("inertia"))
        .mapToDouble(f -> f.force().getNorm())
        .sum();
  }
}
