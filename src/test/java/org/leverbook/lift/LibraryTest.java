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
import org.leverbook.pose.Placement;
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
      assertThat(Ranges.exceeded(position.placement().pose()))
          .allMatch(beyond -> name.startsWith("push-up") && beyond.contains("wrist"));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("all")
  void moves_smoothly_from_start_to_finish(String name, Lift<?> lift) {
    int steps = 40;
    Placement before = lift.at(percent(0)).placement();
    int count = before.tree().size();
    double[] way = new double[count];
    double[] largest = new double[count];
    for (int i = 1; i <= steps; i++) {
      Placement now = lift.at(percent(100.0 * i / steps)).placement();
      for (int s = 0; s < count; s++) {
        double moved = now.origin(s).distance(before.origin(s));
        way[s] += moved;
        largest[s] = Math.max(largest[s], moved);
      }
      before = now;
    }
    for (int s = 0; s < count; s++) {
      // A steady way has equal parts; one of four times its share, and more than a centimetre, is a
      // jump.
      assertThat(largest[s])
          .as(name + ", " + before.tree().segment(s).name())
          .isLessThan(Math.max(0.01, 4 * way[s] / steps));
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
