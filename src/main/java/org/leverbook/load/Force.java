package org.leverbook.load;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A force on one segment.
 *
 * @param source what it comes from, as in "bar" or "floor"
 * @param kind whether a load or a support gives it
 * @param segment index of the segment it acts on
 * @param point where, in the world, metres
 * @param force in the world, newtons, as it acts on the body
 * @param moment a free moment besides, in the world, newton metres
 */
public record Force(
    String source, Kind kind, int segment, Vector3D point, Vector3D force, Vector3D moment) {

  /** Who gives a force. */
  public enum Kind {
    /** A load: known from the pose. */
    LOAD,
    /** A support: found from equilibrium. */
    SUPPORT,
    /** A mass that is being sped up, slowed down or turned: -m a, known from the movement. */
    INERTIA
  }

  /**
   * A pure force of a load.
   *
   * @param source what it comes from
   * @param segment index of the segment it acts on
   * @param point where, in the world, metres
   * @param force in the world, newtons
   * @return the force, without free moment
   */
  public static Force ofLoad(String source, int segment, Vector3D point, Vector3D force) {
    return new Force(source, Kind.LOAD, segment, point, force, Vector3D.ZERO);
  }

  /**
   * A pure force of a support.
   *
   * @param source what it comes from
   * @param segment index of the segment it acts on
   * @param point where, in the world, metres
   * @param force in the world, newtons
   * @return the force, without free moment
   */
  public static Force ofSupport(String source, int segment, Vector3D point, Vector3D force) {
    return new Force(source, Kind.SUPPORT, segment, point, force, Vector3D.ZERO);
  }

  /**
   * The moment of this force about a point.
   *
   * @param about in the world, metres
   * @return (point - about) x force + free moment, newton metres
   */
  public Vector3D momentAbout(Vector3D about) {
    return point.subtract(about).crossProduct(force).add(moment);
  }

  /**
   * The perpendicular distance from a point to this force's line.
   *
   * @param from in the world, metres
   * @return metres, in 3D; zero where there is no force
   */
  public double armFrom(Vector3D from) {
    double size = force.getNorm();
    return size == 0 ? 0 : point.subtract(from).crossProduct(force).getNorm() / size;
  }
}
