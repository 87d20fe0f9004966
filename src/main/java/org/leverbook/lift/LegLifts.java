package org.leverbook.lift;

import java.util.List;
import java.util.function.Function;
import org.leverbook.body.Person;

/** The lifts for legs and hips, in the order of the help. */
final class LegLifts {

  private LegLifts() {}

  static List<Function<Person, Lift<?>>> all() {
    return List.of(BackSquat::of);
  }
}
