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
    return List.of(
        BenchPress::of,
        PushUp::of,
        Dip::of,
        OverheadPress::of,
        LateralRaise::of,
        CableLateralRaise::of,
        FrontRaise::of,
        Pullover::of,
        BarbellCurl::of,
        PreacherCurl::of,
        InclineCurl::of,
        TricepsPushdown::of,
        OverheadTriceps::of,
        WristCurl::of,
        UprightRow::of);
  }
}
