package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
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
    Map<String, Integer> missed = new ConcurrentSkipListMap<>();
    Map<String, Integer> fell = new ConcurrentSkipListMap<>();
    int lifts = Library.of(Population.person(Sex.MALE, 2026, 0)).lifts().size();
    int people = (CASES + lifts - 1) / lifts;
    int cases = people * lifts;
    IntStream.range(0, people)
        .parallel()
        .forEach(
            i -> {
              Sex sex = i % 2 == 0 ? Sex.MALE : Sex.FEMALE;
              List<Lift<?>> all = Library.of(Population.person(sex, 2026, i)).lifts();
              for (int k = 0; k < all.size(); k++) {
                Lift<?> lift = all.get(k);
                try {
                  Position position = (i + k) % 4 < 2 ? lift.start() : lift.finish();
                  if (!position.held()) {
                    fell.merge(position.name(), 1, Integer::sum);
                  }
                } catch (Refused e) {
                  missed.merge(lift.name() + ": " + e.getMessage(), 1, Integer::sum);
                }
              }
            });
    int misses = missed.values().stream().mapToInt(Integer::intValue).sum();
    int falls = fell.values().stream().mapToInt(Integer::intValue).sum();
    // Asked: 99.5 % where a solution exists; here every miss counts, whether one exists or not.
    assertThat(misses).as(missed.toString()).isLessThanOrEqualTo(cases / 200);
    // Who reaches a usual posture should also stay there.
    assertThat(falls).as("not held: " + fell).isLessThanOrEqualTo(cases / 200);
  }
}
