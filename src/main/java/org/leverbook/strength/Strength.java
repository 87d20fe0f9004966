package org.leverbook.strength;

import java.util.OptionalDouble;

/**
 * The greatest moment of one joint in one direction, for one person.
 *
 * @param law the moment against angle and speed
 * @param knowsSpeed whether speed was measured; otherwise the law holds for a joint held still
 * @param from the lowest angle measured, radians
 * @param to the highest angle measured, radians; beyond both ends the nearest value is kept
 * @param evidence where it comes from
 */
public record Strength(Law law, boolean knowsSpeed, double from, double to, Evidence evidence) {

  /** A moment against angle and speed. */
  public interface Law {

    /**
     * The greatest moment.
     *
     * @param angle radians, positive as the joint's angle is
     * @param speed radians a second, positive where the acting muscles shorten
     * @return newton metres, zero or more
     */
    double at(double angle, double speed);
  }

  /**
   * Held still.
   *
   * @param angle radians
   * @return newton metres, zero or more
   */
  public double at(double angle) {
    return law.at(angle, 0);
  }

  /**
   * In motion.
   *
   * @param angle radians
   * @param speed radians a second, positive where the acting muscles shorten
   * @return newton metres; empty where the speed's effect was not measured
   */
  public OptionalDouble at(double angle, double speed) {
    return speed == 0 || knowsSpeed
        ? OptionalDouble.of(law.at(angle, speed))
        : OptionalDouble.empty();
  }

  /**
   * Where it is greatest, held still, among whole degrees.
   *
   * @return radians
   */
  public double best() {
    double best = from;
    for (double angle = from; angle <= to; angle += Math.toRadians(1)) {
      best = at(angle) > at(best) ? angle : best;
    }
    return best;
  }

  /** The same for someone weaker or stronger at every angle. */
  Strength times(double factor) {
    return new Strength((a, v) -> factor * law.at(a, v), knowsSpeed, from, to, evidence);
  }
}
