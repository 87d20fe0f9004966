package org.leverbook.figure;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.List;
import org.hipparchus.geometry.euclidean.twod.Vector2D;

/** Smooth outlines through given points. */
final class Curves {

  private Curves() {}

  /**
   * A closed curve through points (Catmull-Rom, as cubic Bézier pieces).
   *
   * @param points at least three, in order around
   * @return the curve
   */
  static Path2D closed(List<Vector2D> points) {
    int n = points.size();
    Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
    path.moveTo(points.get(0).getX(), points.get(0).getY());
    for (int i = 0; i < n; i++) {
      Vector2D before = points.get((i + n - 1) % n);
      Vector2D from = points.get(i);
      Vector2D to = points.get((i + 1) % n);
      Vector2D after = points.get((i + 2) % n);
      piece(path, before, from, to, after);
    }
    path.closePath();
    return path;
  }

  /**
   * An open curve through points.
   *
   * @param points at least two
   * @return the curve
   */
  static Path2D open(List<Vector2D> points) {
    int n = points.size();
    Path2D path = new Path2D.Double();
    path.moveTo(points.get(0).getX(), points.get(0).getY());
    for (int i = 0; i + 1 < n; i++) {
      piece(
          path,
          points.get(Math.max(0, i - 1)),
          points.get(i),
          points.get(i + 1),
          points.get(Math.min(n - 1, i + 2)));
    }
    return path;
  }

  private static void piece(
      Path2D path, Vector2D before, Vector2D from, Vector2D to, Vector2D after) {
    Vector2D first = from.add(to.subtract(before).scalarMultiply(1 / 6.0));
    Vector2D second = to.subtract(after.subtract(from).scalarMultiply(1 / 6.0));
    path.curveTo(first.getX(), first.getY(), second.getX(), second.getY(), to.getX(), to.getY());
  }

  static Ellipse2D disc(Vector2D centre, double radius) {
    return new Ellipse2D.Double(
        centre.getX() - radius, centre.getY() - radius, 2 * radius, 2 * radius);
  }
}
