package org.leverbook.lift;

import java.util.List;
import java.util.function.Function;
import org.leverbook.body.Person;

/** The lifts that pull, and those of the trunk, in the order of the help. */
final class PullLifts {

  private PullLifts() {}

  static List<Function<Person, Lift<?>>> all() {
    return List.of(LatPulldown::of);
  }
}
