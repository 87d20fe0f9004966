package org.leverbook.pose;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.FlatTree;
import org.leverbook.body.SegmentTree;

/**
 * How fast every segment of a moving pose moves and speeds up: the outward pass of the recursive
 * Newton-Euler method, in the world's axes.
 *
 * <p>With w and a' the angular velocity and acceleration of the parent, d from its origin to the
 * joint and A its origin's acceleration, the joint's centre accelerates with A + a' x d + w x (w x
 * d). Each freedom, axis e, rate q' and acceleration q'', then adds q' e to w and q'' e + w x q' e
 * to a': its axis is carried around by all that turns before it.
 *
 * <p>Worked case: a weight at the end of a level arm of 0.5 m that swings at 2 rad/s and gains 3
 * rad/s2: 0.5 · 3 = 1.5 m/s2 across the arm and 0.5 · 2² = 2 m/s2 towards the joint.
 */
public final class Accelerations {

  private final MovingPose moving;
  private final Placement where;
  private final double[] velocities;
  private final double[] turning;
  private final double[] turningUp;
  private final double[] accelerations;

  private Accelerations(MovingPose moving) {
    this.moving = moving;
    where = moving.pose().placed();
    int size = 3 * where.tree().size();
    velocities = new double[size];
    turning = new double[size];
    turningUp = new double[size];
    accelerations = new double[size];
  }

  static Accelerations of(MovingPose moving) {
    Accelerations result = new Accelerations(moving);
    result.pass();
    return result;
  }

  private void pass() {
    SegmentTree tree = where.tree();
    MovingPose.Root root = moving.root();
    store(velocities, 0, root.velocity());
    store(accelerations, 0, root.acceleration());
    store(turning, 0, root.turning());
    store(turningUp, 0, root.turningUp());
    FlatTree flat = tree.flat();
    for (int i = 1; i < tree.size(); i++) {
      int parent = flat.parents()[i];
      store(velocities, i, velocity(parent, where.origin(i)));
      store(accelerations, i, acceleration(parent, where.origin(i)));
      Vector3D w = angularVelocity(parent);
      Vector3D up = angularAcceleration(parent);
      for (int angle = flat.firstAngles()[i]; angle < flat.firstAngles()[i + 1]; angle++) {
        Vector3D axis = where.axis(angle);
        Vector3D spin = axis.scalarMultiply(moving.rate(angle));
        up = up.add(axis.scalarMultiply(moving.acceleration(angle))).add(w.crossProduct(spin));
        w = w.add(spin);
      }
      store(turning, i, w);
      store(turningUp, i, up);
    }
  }

  private static void store(double[] into, int segment, Vector3D vector) {
    into[3 * segment] = vector.getX();
    into[3 * segment + 1] = vector.getY();
    into[3 * segment + 2] = vector.getZ();
  }

  private static Vector3D read(double[] from, int segment) {
    return new Vector3D(from[3 * segment], from[3 * segment + 1], from[3 * segment + 2]);
  }

  /**
   * Where everything is at this instant.
   *
   * @return the placement
   */
  public Placement where() {
    return where;
  }

  /**
   * The angular velocity of a segment.
   *
   * @param segment its index
   * @return in the world, rad/s
   */
  public Vector3D angularVelocity(int segment) {
    return read(turning, segment);
  }

  /**
   * The angular acceleration of a segment.
   *
   * @param segment its index
   * @return in the world, rad/s2
   */
  public Vector3D angularAcceleration(int segment) {
    return read(turningUp, segment);
  }

  /**
   * The velocity of a point that goes with a segment.
   *
   * @param segment its index
   * @param point in the world, metres
   * @return in the world, m/s
   */
  public Vector3D velocity(int segment, Vector3D point) {
    Vector3D arm = point.subtract(where.origin(segment));
    return read(velocities, segment).add(angularVelocity(segment).crossProduct(arm));
  }

  /**
   * The acceleration of a point that goes with a segment.
   *
   * @param segment its index
   * @param point in the world, metres
   * @return in the world, m/s2
   */
  public Vector3D acceleration(int segment, Vector3D point) {
    Vector3D arm = point.subtract(where.origin(segment));
    Vector3D w = angularVelocity(segment);
    return read(accelerations, segment)
        .add(angularAcceleration(segment).crossProduct(arm))
        .add(w.crossProduct(w.crossProduct(arm)));
  }

  /**
   * The force that a segment's own mass sets against its acceleration, at its centre of mass.
   *
   * @param segment its index
   * @return -m a, in the world, newtons
   */
  public Vector3D inertiaForce(int segment) {
    double mass = where.tree().segment(segment).mass();
    return acceleration(segment, where.centreOfMass(segment)).scalarMultiply(-mass);
  }

  /**
   * The moment that a segment's spread of mass sets against its turning, about its centre of mass.
   *
   * @param segment its index
   * @return -(I a' + w x I w), in the world, newton metres
   */
  public Vector3D inertiaMoment(int segment) {
    double mass = where.tree().segment(segment).mass();
    Vector3D radii = where.tree().segment(segment).radii();
    if (mass == 0 || radii.getNormSq() == 0) {
      return Vector3D.ZERO;
    }
    Frame frame = where.frame(segment);
    Vector3D w = frame.toLocal(angularVelocity(segment));
    Vector3D up = frame.toLocal(angularAcceleration(segment));
    Vector3D spin = times(radii, w);
    Vector3D local = times(radii, up).add(w.crossProduct(spin));
    return frame.toWorld(local).scalarMultiply(-mass);
  }

  /** Squared radii times a vector, part by part: I/m in the segment's own frame. */
  private static Vector3D times(Vector3D radii, Vector3D vector) {
    return new Vector3D(
        radii.getX() * radii.getX() * vector.getX(),
        radii.getY() * radii.getY() * vector.getY(),
        radii.getZ() * radii.getZ() * vector.getZ());
  }
}
