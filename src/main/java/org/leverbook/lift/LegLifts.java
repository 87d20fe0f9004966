package org.leverbook.lift;

import java.util.List;
import java.util.function.Function;
import org.leverbook.body.Person;

/** The lifts for legs and hips, in the order of the help. */
final class LegLifts {

  private LegLifts() {}

  static List<Function<Person, Lift<?>>> all() {
    return List.of(
        Deadlift::of,
        SumoDeadlift::of,
        TrapBarDeadlift::of,
        StiffLegDeadlift::of,
        RomanianDeadlift::of,
        RackPull::of,
        Hinge::of,
        GoodMorning::of,
        SwingBottom::of,
        BackSquat::of,
        FrontSquat::of,
        GobletSquat::of,
        SplitSquat::of,
        StepUp::of,
        LegPress::of,
        HipThrust::of,
        BackExtension::of,
        LegCurl::of,
        LegExtension::of,
        CalfRaise::of);
  }
}
