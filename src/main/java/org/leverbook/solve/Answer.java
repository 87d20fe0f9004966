package org.leverbook.solve;

import java.util.List;
import org.leverbook.pose.Pose;

/**
 * What the solver found.
 *
 * @param pose the pose; where conditions miss, the one that misses least
 * @param misses the conditions that are not met, each with its amount in words; empty where all are
 * @param stops the joints at the end of their range that keep them from being met
 * @param worst the largest miss of a condition, metres or radians
 * @param steps how many steps it took
 * @param values the coordinates, to start a neighbour from
 * @param holds how hard each condition had to hold, to start a neighbour from
 */
public record Answer(
    Pose pose,
    List<String> misses,
    List<String> stops,
    double worst,
    int steps,
    double[] values,
    double[] holds) {

  /** Keeps its own copies. */
  public Answer {
    misses = List.copyOf(misses);
    stops = List.copyOf(stops);
    values = values.clone();
    holds = holds.clone();
  }

  /**
   * Whether every condition is met.
   *
   * @return true if none misses
   */
  public boolean met() {
    return misses.isEmpty();
  }

  /**
   * What misses and what stops it, in one text.
   *
   * @return as in "the right hand ends 6.0 cm below the bar; the ankle is at the end of its range
   *     (35° of flexion)"
   */
  public String sentence() {
    String missed = String.join("; ", misses);
    return stops.isEmpty()
        ? missed
        : missed + ". At the end of their range: " + String.join("; ", stops);
  }
}
