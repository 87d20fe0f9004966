package org.leverbook.muscle;

import java.util.Locale;

/**
 * One word for what a lift or position asks of a trade group: a scale of our own, defined by
 * numbers, not by taste.
 *
 * <p>The stress is the group's mean, weighted by cross-section, of the side that pulls harder, at
 * the hardest point of the way. Its muscles change length by as much as if one joint turned by so
 * many degrees on their longest arm.
 *
 * <table>
 *   <caption>The scale, the first line that fits counts</caption>
 *   <tr><th>word</th><th>stress</th><th>length</th></tr>
 *   <tr><td>limiter</td><td>30 % or more, and the first to reach its full pull as all that is
 *   asked grows alike, or no more than a tenth behind the first</td><td>any</td></tr>
 *   <tr><td>worked</td><td>30 % or more</td><td>changes, 15° or more</td></tr>
 *   <tr><td>helps</td><td>10 to 30 %</td><td>changes, 15° or more</td></tr>
 *   <tr><td>holds</td><td>10 % or more</td><td>stays, or not known (one position)</td></tr>
 *   <tr><td>idle</td><td>below 10 %</td><td>any</td></tr>
 * </table>
 */
public enum VerdictWord {
  /** Gives out first. */
  LIMITER,
  /** Pulls hard while it changes length. */
  WORKED,
  /** Pulls a little while it changes length. */
  HELPS,
  /** Pulls at one length. */
  HOLDS,
  /** Pulls next to nothing. */
  IDLE;

  /** From this stress on a group pulls hard. */
  public static final double HARD = 0.3;

  /** Below this stress a group is idle. */
  public static final double LITTLE = 0.1;

  /** Groups whose stress is this share of that of the first, or more, limit together with it. */
  public static final double NEAR = 0.9;

  /** From this turn on, radians, a group changes length. */
  public static final double TURN = Math.toRadians(15);

  /**
   * The word for one group.
   *
   * @param stress the group's, 0 to 1
   * @param first whether it is the first to reach its full pull, or near it
   * @param turn how far its muscles change length, as a turn on their longest arm, radians
   * @return the word
   */
  public static VerdictWord of(double stress, boolean first, double turn) {
    if (stress < LITTLE) {
      return IDLE;
    }
    if (stress >= HARD && first) {
      return LIMITER;
    }
    if (turn < TURN) {
      return HOLDS;
    }
    return stress >= HARD ? WORKED : HELPS;
  }

  /**
   * The word as tables show it.
   *
   * @return as in "worked"
   */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
