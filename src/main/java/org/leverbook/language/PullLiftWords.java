package org.leverbook.language;

import org.leverbook.body.Person;
import org.leverbook.lift.LatPulldown;

/**
 * The words for lifts that pull, and of the trunk: a theme of {@link Vocabulary}, which sessions
 * import.
 */
public abstract sealed class PullLiftWords extends PressLiftWords permits Vocabulary {

  PullLiftWords() {}

  /**
   * A pulldown at a high pulley, thighs under a pad.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static LatPulldown latPulldown(Person lifter) {
    return LatPulldown.of(lifter);
  }
}
