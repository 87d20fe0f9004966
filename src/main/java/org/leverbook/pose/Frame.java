package org.leverbook.pose;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * The orientation of a segment: the world directions of its own axes.
 *
 * @param x its forward axis, unit
 * @param y its upward axis, unit
 * @param z its axis to the person's right, unit
 */
public record Frame(Vector3D x, Vector3D y, Vector3D z) {

  /** Longer arrows lose their direction to rounding. */
  private static final double FARTHEST = 1e12;

  /** A part of a unit vector, with room for rounding. */
  private static final double LONGEST = 1 + 1e-6;

  /** The world's own axes. */
  public static final Frame WORLD = new Frame(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K);

  /**
   * A frame turned about the world's vertical.
   *
   * @param angle radians, from X towards -Z (right-handed about Y)
   * @return the frame
   * @throws Refused if the angle is no number
   */
  public static Frame aboutVertical(double angle) {
    finite(angle);
    return new Frame(
        new Vector3D(Math.cos(angle), 0, -Math.sin(angle)),
        Vector3D.PLUS_J,
        new Vector3D(Math.sin(angle), 0, Math.cos(angle)));
  }

  /**
   * A frame leaned forward in the sagittal plane.
   *
   * @param angle radians, top forward (right-handed about -Z)
   * @return the frame
   * @throws Refused if the angle is no number
   */
  public static Frame leanedForward(double angle) {
    finite(angle);
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return new Frame(new Vector3D(c, -s, 0), new Vector3D(s, c, 0), Vector3D.PLUS_K);
  }

  /**
   * A frame from its long axis and a forward direction.
   *
   * @param up the frame's Y, any length
   * @param forward where X should point as nearly as it can; not along {@code up}
   * @return the frame
   * @throws Refused if one is missing or has no length, or both point along one line
   */
  public static Frame of(Vector3D up, Vector3D forward) {
    Ask.vector("long axis of the frame", up, FARTHEST, "");
    Ask.vector("direction ahead of the frame", forward, FARTHEST, "");
    if (up.crossProduct(forward).getNorm() == 0) {
      throw new Refused("A frame needs a long axis and a direction ahead that is not along it.");
    }
    Vector3D y = up.normalize();
    Vector3D x = forward.subtract(y.scalarMultiply(forward.dotProduct(y))).normalize();
    return new Frame(x, y, x.crossProduct(y));
  }

  /**
   * Checks the axes.
   *
   * @throws Refused if one is missing, or no direction
   */
  public Frame {
    direction(x);
    direction(y);
    direction(z);
  }

  private static void direction(Vector3D axis) {
    if (axis == null || !(axis.getNormInf() <= LONGEST)) {
      throw new Refused(
          "An axis of a frame is "
              + axis
              + ": give three directions of length 1, square to each other.");
    }
  }

  private static void finite(double angle) {
    if (!Double.isFinite(angle)) {
      throw new Refused("A body cannot be turned by " + angle + ": give a number of radians.");
    }
  }

  /**
   * A vector of this frame in world components.
   *
   * @param local components along x, y, z
   * @return world components
   */
  public Vector3D toWorld(Vector3D local) {
    return new Vector3D(local.getX(), x, local.getY(), y, local.getZ(), z);
  }

  /**
   * A vector in this frame's components.
   *
   * @param world world components
   * @return components along x, y, z
   */
  public Vector3D toLocal(Vector3D world) {
    return new Vector3D(world.dotProduct(x), world.dotProduct(y), world.dotProduct(z));
  }

  /**
   * Another frame turned as this one is turned from the world's.
   *
   * @param other any frame
   * @return the images of its axes
   */
  public Frame turning(Frame other) {
    return new Frame(toWorld(other.x()), toWorld(other.y()), toWorld(other.z()));
  }

  /**
   * This frame seen from another: the rotation of the joint between them.
   *
   * @param proximal the other frame
   * @return this frame's axes in the other's components
   */
  public Frame relativeTo(Frame proximal) {
    return new Frame(proximal.toLocal(x), proximal.toLocal(y), proximal.toLocal(z));
  }

  /** Writes the nine entries of its matrix, row by row, to the start of an array. */
  void writeTo(double[] rows) {
    rows[0] = x.getX();
    rows[1] = y.getX();
    rows[2] = z.getX();
    rows[3] = x.getY();
    rows[4] = y.getY();
    rows[5] = z.getY();
    rows[6] = x.getZ();
    rows[7] = y.getZ();
    rows[8] = z.getZ();
  }
}
