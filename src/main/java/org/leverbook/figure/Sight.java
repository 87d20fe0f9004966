package org.leverbook.figure;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.pose.Placement;
import org.leverbook.statics.View;

/**
 * A plane of view in the world; what lies across it is not seen.
 *
 * <p>Worked case: from the side a point at (1, 2, 3) is seen at (1, 2). From the front of a lifter
 * who stands facing x the lifter's right is to the left of the page, so it is seen at (−3, 2).
 *
 * @param view which
 * @param across unit vector in the world that runs to the right of the page
 * @param towards unit vector in the world from what is seen to the eye
 */
record Sight(View view, Vector3D across, Vector3D towards) {

  /** From the right. */
  static final Sight SIDE = new Sight(View.SIDE, Vector3D.PLUS_I, Vector3D.PLUS_K);

  /**
   * For a placed body: from the front is along the axis of the world that the pelvis faces most.
   */
  static Sight of(View view, Placement where) {
    if (view == View.SIDE) {
      return SIDE;
    }
    Vector3D faces = where.frame(0).x();
    boolean ahead = Math.abs(faces.getX()) >= Math.abs(faces.getZ());
    double sign = Math.signum(ahead ? faces.getX() : faces.getZ());
    Vector3D towards = (ahead ? Vector3D.PLUS_I : Vector3D.PLUS_K).scalarMultiply(sign);
    return new Sight(view, Vector3D.PLUS_J.crossProduct(towards), towards);
  }

  boolean fromFront() {
    return view == View.FRONT;
  }

  /** A point, or a direction, of the world on the plane of view. */
  Vector2D seen(Vector3D point) {
    return new Vector2D(point.dotProduct(across), point.getY());
  }
}
