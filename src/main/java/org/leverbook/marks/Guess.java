package org.leverbook.marks;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a search begins: which way the lifter is turned, and for each part of the near limbs
 * whether its lower end is nearer to the camera or farther away than its upper end.
 *
 * @param turned about the vertical from square on, radians
 * @param armsOut how far the upper arms are raised sideways, radians
 * @param knee 1 where it is nearer than the hip, -1 where farther, 0 where that is left open
 * @param elbow the same beside the shoulder
 * @param wrist the same beside the elbow
 */
record Guess(double turned, double armsOut, int knee, int elbow, int wrist) {

  private static final double CLOSE = Math.toRadians(10);
  private static final double WIDE = Math.toRadians(60);

  /** Nothing said of the limbs but how far the arms are raised. */
  static List<Guess> plain(double turned) {
    return List.of(new Guess(turned, CLOSE, 0, 0, 0), new Guess(turned, WIDE, 0, 0, 0));
  }

  /**
   * Every way in which parts that look short may be turned out of the picture.
   *
   * @param turns about the vertical, radians
   * @param knee whether the thigh looks short
   * @param elbow whether the upper arm does
   * @param wrist whether the forearm does
   */
  static List<Guess> every(double[] turns, boolean knee, boolean elbow, boolean wrist) {
    List<Guess> all = new ArrayList<>();
    for (double turned : turns) {
      for (int k : signs(knee)) {
        for (int e : signs(elbow)) {
          for (int w : signs(wrist)) {
            all.add(new Guess(turned, e > 0 ? WIDE : CLOSE, k, e, w));
          }
        }
      }
    }
    return all;
  }

  private static int[] signs(boolean both) {
    return both ? new int[] {1, -1} : new int[] {0};
  }
}
