package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.pose.Pose;
import org.leverbook.pose.Ranges;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/** What holds for every lift of the library, for builds that differ. */
class LibraryTest {

  private static final List<Person> LIFTERS =
      List.of(
          Person.of(Sex.MALE, kg(85), cm(178)),
          Person.of(Sex.FEMALE, kg(60), cm(165)),
          Person.of(Sex.MALE, kg(90), cm(185)).longer(Part.THIGH, percent(8)),
          Person.of(Sex.FEMALE, kg(75), cm(172)).longer(Part.UPPER_ARM, percent(5)));

  static Stream<Arguments> all() {
    return LIFTERS.stream()
        .flatMap(who -> Library.of(who).lifts().stream())
        .map(lift -> Arguments.of(lift.name() + ", " + lift.body().person().text(), lift));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("all")
  void starts_finishes_and_stands_in_between(String name, Lift<?> lift) {
    for (Position position : lift.threePositions()) {
      assertThat(position.held()).as(position.name() + position.holding().sentence()).isTrue();
      assertThat(Ranges.exceeded(position.placement().pose())).isEmpty();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("all")
  void moves_smoothly_from_start_to_finish(String name, Lift<?> lift) {
    int steps = 40;
    Pose before = lift.at(percent(0)).placement().pose();
    int angles = before.tree().angles();
    double[] way = new double[angles];
    double[] largest = new double[angles];
    for (int i = 1; i <= steps; i++) {
      Pose now = lift.at(percent(100.0 * i / steps)).placement().pose();
      for (int a = 0; a < angles; a++) {
        double moved = Math.abs(now.angle(a) - before.angle(a));
        way[a] += moved;
        largest[a] = Math.max(largest[a], moved);
      }
      before = now;
    }
    for (int a = 0; a < angles; a++) {
      // A steady way has equal parts; one of six times its share, and more than two degrees, is a
      // jump.
      assertThat(largest[a])
          .as(name + ", angle " + a)
          .isLessThan(Math.max(Math.toRadians(2), 6 * way[a] / steps));
    }
  }

  @Test
  void every_lift_says_what_it_is_for_and_where_its_posture_comes_from() {
    Library library = Library.of(LIFTERS.get(0));
    assertThat(library.lifts()).extracting(Lift::name).doesNotHaveDuplicates();
    for (Lift<?> lift : library) {
      assertThat(lift.purpose()).as(lift.name()).hasSizeBetween(20, 130).endsWith(".");
      assertThat(lift.source()).as(lift.name()).matches(".*(no source|\\d{4}).*");
    }
    assertThat(library.named("Back Squat").name()).isEqualTo("back squat");
    assertThatThrownBy(() -> library.named("sqat"))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("back squat");
  }
}
