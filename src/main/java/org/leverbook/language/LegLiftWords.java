package org.leverbook.language;

import org.leverbook.body.Person;
import org.leverbook.lift.BackSquat;

/** The words for lifts of legs and hips: a theme of {@link Vocabulary}, which sessions import. */
public abstract sealed class LegLiftWords extends MovementWords permits PressLiftWords {

  LegLiftWords() {}

  /**
   * A squat with a bar on the upper back.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static BackSquat backSquat(Person lifter) {
    return BackSquat.of(lifter);
  }
}
