package org.leverbook.pose;

import org.leverbook.body.FlatTree;

/**
 * Sums of forces and of their moments about the world's origin, six numbers a segment: force
 * forward, up, right (newtons), then moment about the same axes (newton metres). Nothing is
 * allocated.
 */
public final class ForceSums {

  private ForceSums() {}

  /**
   * Adds one force to sums of force and of moment about the world's origin.
   *
   * @param sums six a segment; added to
   * @param segment which one it acts on
   * @param x where, forward, metres
   * @param y where, upward, metres
   * @param z where, to the right, metres
   * @param forceX newtons forward
   * @param forceY newtons upward
   * @param forceZ newtons to the right
   */
  public static void add(
      double[] sums,
      int segment,
      double x,
      double y,
      double z,
      double forceX,
      double forceY,
      double forceZ) {
    int i = 6 * segment;
    sums[i] += forceX;
    sums[i + 1] += forceY;
    sums[i + 2] += forceZ;
    sums[i + 3] += y * forceZ - z * forceY;
    sums[i + 4] += z * forceX - x * forceZ;
    sums[i + 5] += x * forceY - y * forceX;
  }

  /**
   * Turns the sums of single segments into sums over everything distal to each joint, in place: one
   * pass from the tips to the root.
   *
   * @param flat whose sums
   * @param sums six a segment
   */
  public static void gather(FlatTree flat, double[] sums) {
    int[] parents = flat.parents();
    for (int i = parents.length - 1; i > 0; i--) {
      int from = 6 * i;
      int to = 6 * parents[i];
      sums[to] += sums[from];
      sums[to + 1] += sums[from + 1];
      sums[to + 2] += sums[from + 2];
      sums[to + 3] += sums[from + 3];
      sums[to + 4] += sums[from + 4];
      sums[to + 5] += sums[from + 5];
    }
  }
}
