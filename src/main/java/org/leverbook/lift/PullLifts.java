package org.leverbook.lift;

import java.util.List;
import java.util.function.Function;
import org.leverbook.body.Person;

/** The lifts that pull, and those of the trunk, in the order of the help. */
final class PullLifts {

  private PullLifts() {}

  static List<Function<Person, Lift<?>>> all() {
    return List.of(
        BentOverRow::of,
        OneArmRow::of,
        ChestSupportedRow::of,
        SeatedCableRow::of,
        InvertedRow::of,
        LatPulldown::of,
        PullUp::of,
        FacePull::of,
        RearDeltFly::of,
        Shrug::of,
        Plank::of,
        SidePlank::of,
        SitUp::of,
        CableChop::of,
        FarmersCarry::of);
  }
}
