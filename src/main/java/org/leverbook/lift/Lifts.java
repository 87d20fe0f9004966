package org.leverbook.lift;

import java.util.List;
import java.util.stream.Stream;
import org.leverbook.body.Person;
import org.leverbook.quantity.Ask;

/** The library of lifts. */
public final class Lifts {

  private Lifts() {}

  /**
   * Every lift of the library, each with its usual settings.
   *
   * @param lifter who
   * @return one lift each
   */
  public static List<Lift<?>> all(Person lifter) {
    Ask.present("lifter", lifter, "person(MALE, kg(85), cm(178))");
    return Stream.of(LegLifts.all(), PressLifts.all(), PullLifts.all())
        .flatMap(List::stream)
        .<Lift<?>>map(lift -> lift.apply(lifter))
        .toList();
  }
}
