package org.leverbook.load;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** The pull of the earth. */
public final class Gravity {

  /**
   * Standard acceleration, m/s2 (General Conference on Weights and Measures, 3rd meeting, 1901).
   */
  public static final double STANDARD = 9.80665;

  /** Standard gravity in the world's axes: downward, m/s2. */
  public static final Vector3D VECTOR = new Vector3D(0, -STANDARD, 0);

  private Gravity() {}
}
