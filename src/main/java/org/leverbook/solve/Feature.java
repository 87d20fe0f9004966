package org.leverbook.solve;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** A vector of the body that depends on the pose: what statements speak of. */
public sealed interface Feature {

  /**
   * A point that goes with a segment, in the world, metres.
   *
   * @param segment its index
   * @param local in the segment's frame, metres
   */
  record Point(int segment, Vector3D local) implements Feature {}

  /**
   * A direction that goes with a segment, in the world.
   *
   * @param segment its index
   * @param local in the segment's frame, of any length
   */
  record Direction(int segment, Vector3D local) implements Feature {}

  /** The body's centre of mass, in the world, metres. */
  record CentreOfMass() implements Feature {}

  /**
   * From one feature to another.
   *
   * @param from where it begins
   * @param to where it ends
   */
  record Way(Feature from, Feature to) implements Feature {}
}
