package org.leverbook.language;

import org.leverbook.body.Person;
import org.leverbook.lift.BenchPress;

/**
 * The words for lifts that press, and of the front of arm and shoulder: a theme of {@link
 * Vocabulary}, which sessions import.
 */
public abstract sealed class PressLiftWords extends LegLiftWords permits PullLiftWords {

  PressLiftWords() {}

  /**
   * A press lying on a bench, flat or inclined.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static BenchPress benchPress(Person lifter) {
    return BenchPress.of(lifter);
  }
}
