package org.leverbook.lift;

import java.util.List;
import java.util.function.Function;
import org.leverbook.body.Person;

/**
 * The lifts that press, and those of the front of the arm and shoulder, in the order of the help.
 */
final class PressLifts {

  private PressLifts() {}

  static List<Function<Person, Lift<?>>> all() {
    return List.of(BenchPress::of);
  }
}
