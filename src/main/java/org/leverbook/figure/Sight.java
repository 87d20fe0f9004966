package org.leverbook.figure;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.pose.Placement;
import org.leverbook.statics.View;

/**
 * A plane of view in the world; what lies across it is not seen.
 *
 * <p>Worked case: from the side a point at (1, 2, 3) is seen at (1, 2). From the front of a lifter
 * who stands facing x the lifter's right is to the left of the page, so it is seen at (−3, 2). From
 * straight above it is seen at (1, −3): ahead to the right, the lifter's left up the page.
 *
 * @param view which
 * @param across unit vector in the world that runs to the right of the page
 * @param up unit vector in the world that runs up the page
 * @param towards unit vector in the world from what is seen to the eye
 */
record Sight(View view, Vector3D across, Vector3D up, Vector3D towards) {

  /** From the right. */
  static final Sight SIDE = new Sight(View.SIDE, Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K);

  /** Who faces the ceiling or the floor more than this lies, and is seen from the feet. */
  private static final double LYING = 0.3;

  /** A direction that is seen shorter than this share of its length is seen end-on. */
  private static final double END_ON = 1e-3;

  /**
   * For a placed body: from the side and from above the world's own axes; else the front is along
   * the axis of the world that the pelvis faces most, or where it lies, that its feet point to.
   */
  static Sight of(View view, Placement where) {
    if (view.equals(View.SIDE)) {
      return SIDE;
    }
    Vector3D ahead = view.equals(View.TOP) ? Vector3D.PLUS_I : front(where);
    Vector3D right = ahead.crossProduct(Vector3D.PLUS_J);
    Vector3D level =
        exact(Math.cos(view.around()), ahead).add(exact(Math.sin(view.around()), right));
    Vector3D towards =
        exact(Math.cos(view.above()), level).add(exact(Math.sin(view.above()), Vector3D.PLUS_J));
    Vector3D across = Vector3D.PLUS_J.crossProduct(level);
    return new Sight(view, across, towards.crossProduct(across), towards);
  }

  /** Cosines of right angles are nothing, so that views along an axis are exactly so. */
  private static Vector3D exact(double share, Vector3D along) {
    return Math.abs(share) < 1e-12 ? Vector3D.ZERO : along.scalarMultiply(share);
  }

  private static Vector3D front(Placement where) {
    Vector3D faces = where.frame(0).x();
    if (Math.hypot(faces.getX(), faces.getZ()) < LYING) {
      faces = where.frame(0).y().negate();
    }
    boolean ahead = Math.abs(faces.getX()) >= Math.abs(faces.getZ());
    double sign = Math.signum(ahead ? faces.getX() : faces.getZ());
    return (ahead ? Vector3D.PLUS_I : Vector3D.PLUS_K).scalarMultiply(sign);
  }

  /** Whether it is the sagittal plane. */
  boolean fromSide() {
    return view.equals(View.SIDE);
  }

  /** Whether moments are told about the line of sight: in the frontal plane. */
  boolean frontal() {
    return view.equals(View.FRONT) || view.equals(View.BACK);
  }

  /** Whether it looks along an axis of the lifter, so that a plane of the body is seen flat. */
  boolean flat() {
    return fromSide() || frontal() || view.equals(View.TOP);
  }

  /** Whether the floor is a line. */
  boolean level() {
    return view.level();
  }

  /** A point, or a direction, of the world on the plane of view. */
  Vector2D seen(Vector3D point) {
    return new Vector2D(point.dotProduct(across), point.dotProduct(up));
  }

  /** How near to the eye a point is, metres. */
  double depth(Vector3D point) {
    return point.dotProduct(towards);
  }

  /** Whether a direction points at the reader, or away, and is seen as a point. */
  boolean endOn(Vector3D direction) {
    return seen(direction).getNorm() < END_ON * direction.getNorm();
  }
}
