package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.body.Population;
import org.leverbook.body.Sex;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/** The library on people of a survey's spread. */
class ManyPeopleTest {

  /** Persons times lifts; start and finish in turn. */
  private static final int CASES = 10_000;

  @Test
  void nearly_everybody_gets_into_every_lift_and_is_held_there() {
    Map<String, Integer> missed = new TreeMap<>();
    Map<String, Integer> fell = new TreeMap<>();
    String example = "";
    int cases = 0;
    for (int i = 0; cases < CASES; i++) {
      Sex sex = i % 2 == 0 ? Sex.MALE : Sex.FEMALE;
      Person person = Population.person(sex, 2026, i);
      for (Lift<?> lift : Library.of(person)) {
        cases++;
        try {
          Position position = cases % 2 == 0 ? lift.start() : lift.finish();
          if (!position.held()) {
            fell.merge(position.name(), 1, Integer::sum);
          }
        } catch (Refused e) {
          missed.merge(lift.name(), 1, Integer::sum);
          example = e.getMessage();
        }
      }
    }
    int misses = missed.values().stream().mapToInt(Integer::intValue).sum();
    int falls = fell.values().stream().mapToInt(Integer::intValue).sum();
    // Asked: 99.5 % where a solution exists; here every miss counts, whether one exists or not.
    assertThat(misses).as(missed + " " + example).isLessThanOrEqualTo(cases / 200);
    // Who reaches a usual posture should also stay there.
    assertThat(falls).as("not held: " + fell).isLessThanOrEqualTo(cases / 200);
  }
}
