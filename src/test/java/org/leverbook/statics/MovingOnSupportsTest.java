package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;
import static org.leverbook.quantity.Units.seconds;

import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.lift.BenchPress;
import org.leverbook.lift.Hinge;
import org.leverbook.lift.LatPulldown;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.support.Pad;

/** Movements of a lifter on pads, benches and seats: inertia and reactions together. */
class MovingOnSupportsTest {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));

  static Stream<Arguments> lifts() {
    Hinge pull = Hinge.of(LIFTER).holding(Barbell.of(kg(60)));
    BenchPress press = BenchPress.of(LIFTER);
    LatPulldown down = LatPulldown.of(LIFTER);
    DoubleFunction<Position> padded =
        share -> pull.hipHeight(cm(66 + 4 * share)).start().on(Pad.chest(deg(30)));
    DoubleFunction<Position> onBench = share -> press.at(percent(100 * (1 - share)));
    DoubleFunction<Position> seated = share -> down.at(percent(100 * share));
    return Stream.of(
        Arguments.of("chest pad", padded),
        Arguments.of("bench", onBench),
        Arguments.of("seat and thigh pad", seated));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("lifts")
  void forces_balance_with_inertia_at_every_instant(String name, DoubleFunction<Position> way) {
    Movement movement = Movement.of(name, Tempo.smooth(seconds(1.5)), way);
    for (double t : new double[] {0.2, 0.75, 1.2}) {
      Position moving = movement.at(seconds(t));
      assertThat(moving.held()).as(moving.holding().sentence()).isTrue();
      Vector3D sum = Gravity.VECTOR.scalarMultiply(moving.body().tree().mass());
      for (Force force : moving.forces()) {
        sum = sum.add(force.force());
      }
      // Rounding of a body's weight, 834 N, over the solver's steps.
      assertThat(sum.getNorm()).isLessThan(1e-6);
    }
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
