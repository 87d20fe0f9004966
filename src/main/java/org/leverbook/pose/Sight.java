package org.leverbook.pose;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A line of sight as two planes: places p with {@code across · p = acrossAt} and {@code up · p =
 * upAt}. What a place misses them by is, in metres, how far it appears beside the line in the
 * picture's two directions.
 *
 * @param across about along the picture's width
 * @param acrossAt metres
 * @param up about along the picture's height
 * @param upAt metres
 */
public record Sight(Vector3D across, double acrossAt, Vector3D up, double upAt) {

  /**
   * How far a place is beside the line.
   *
   * @param place in the world, metres
   * @return metres
   */
  public double miss(Vector3D place) {
    return Math.hypot(across.dotProduct(place) - acrossAt, up.dotProduct(place) - upAt);
  }
}
