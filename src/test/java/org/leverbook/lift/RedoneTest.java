package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.load.Barbell;
import org.leverbook.load.Load;
import org.leverbook.statics.Position;

/** A lift done again with nothing changed is the same lift; with something changed, only that. */
class RedoneTest {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));

  static Stream<Arguments> all() {
    return Library.of(LIFTER).lifts().stream().map(lift -> Arguments.of(lift.name(), lift));
  }

  /** What varies about a setting must not jump because the usual value is said aloud. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("all")
  void saying_the_usual_settings_aloud_changes_nothing(String name, Lift<?> lift) {
    Map<Setting, Double> settings = Redone.settings(lift);
    Lift<?> again = lift.changed(Redone.set(lift, LIFTER, settings));
    for (JointId joint : List.of(JointId.L5_S1, JointId.HIP, JointId.KNEE, JointId.SHOULDER)) {
      // 1e-4 N·m: both are answers of the pose solver, whose conditions hold to 1e-7 m.
      assertThat(size(again.start(), joint))
          .as(joint + ", " + settings)
          .isCloseTo(size(lift.start(), joint), within(1e-4));
    }
  }

  private static double size(Position position, JointId joint) {
    return position.moment(joint).size();
  }

  @Test
  void another_person_keeps_what_was_said() {
    Hinge pull = Hinge.of(LIFTER).holding(Barbell.of(kg(140))).hipHeight(cm(58));
    Person longer = LIFTER.longer(Part.THIGH, percent(5));
    Hinge again = Redone.of(pull, longer, Map.of(), Map.of());
    Hinge anew = Hinge.of(longer).holding(Barbell.of(kg(140))).hipHeight(cm(58));
    assertThat(size(again.start(), JointId.HIP)).isEqualTo(size(anew.start(), JointId.HIP));
  }

  @Test
  void a_heavier_bar_is_the_bar_of_that_mass() {
    Hinge pull = Hinge.of(LIFTER).holding(Barbell.of(kg(140))).hipHeight(cm(58));
    Load bar = Redone.loads(pull).get(0);
    assertThat(Redone.loads(pull)).hasSize(1);
    Hinge again = Redone.of(pull, LIFTER, Map.of(), Map.of(bar, 1.1));
    assertThat(size(again.start(), JointId.HIP))
        .isCloseTo(size(pull.holding(Barbell.of(kg(154))).start(), JointId.HIP), within(1e-6));
  }
}
