package org.leverbook.figure;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
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

  /** The part of a line inside a box; the line itself where none is. */
  static Line2D within(Line2D line, Rectangle2D box) {
    double dx = line.getX2() - line.getX1();
    double dy = line.getY2() - line.getY1();
    double[] towards = {-dx, dx, -dy, dy};
    double[] room = {
      line.getX1() - box.getMinX(),
      box.getMaxX() - line.getX1(),
      line.getY1() - box.getMinY(),
      box.getMaxY() - line.getY1()
    };
    double from = 0;
    double to = 1;
    for (int i = 0; i < 4; i++) {
      if (towards[i] < 0) {
        from = Math.max(from, room[i] / towards[i]);
      } else if (towards[i] > 0) {
        to = Math.min(to, room[i] / towards[i]);
      }
    }
    return from >= to
        ? line
        : new Line2D.Double(
            line.getX1() + from * dx,
            line.getY1() + from * dy,
            line.getX1() + to * dx,
            line.getY1() + to * dy);
  }
}
