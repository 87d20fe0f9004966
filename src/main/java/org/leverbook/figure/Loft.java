package org.leverbook.figure;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;

/**
 * The silhouette of a part of the body from any side: elliptic sections along it, each joined to
 * the next by the hull of both as they are seen.
 *
 * @param sight from where
 */
record Loft(Sight sight) {

  private static final int POINTS = 28;

  /**
   * A section.
   *
   * @param centre in the world, metres
   * @param one half-axis in the world, metres
   * @param other half-axis in the world, metres
   */
  record Section(Vector3D centre, Vector3D one, Vector3D other) {}

  /** Sections in order along the part. */
  Area through(List<Section> sections) {
    Area area = new Area();
    for (int i = 0; i + 1 < sections.size(); i++) {
      List<Vector2D> points = new ArrayList<>(around(sections.get(i)));
      points.addAll(around(sections.get(i + 1)));
      area.add(new Area(hull(points)));
    }
    return area;
  }

  /** A ball of flesh. */
  Section ball(Vector3D centre, double radius) {
    return new Section(
        centre, sight.across().scalarMultiply(radius), sight.up().scalarMultiply(radius));
  }

  private List<Vector2D> around(Section section) {
    List<Vector2D> points = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      double angle = 2 * Math.PI * i / POINTS;
      points.add(
          sight.seen(
              section
                  .centre()
                  .add(section.one().scalarMultiply(Math.cos(angle)))
                  .add(section.other().scalarMultiply(Math.sin(angle)))));
    }
    return points;
  }

  /** The smallest convex shape around points: lower and upper chain of the sorted points. */
  static Path2D hull(List<Vector2D> points) {
    List<Vector2D> sorted =
        points.stream()
            .sorted(Comparator.comparingDouble(Vector2D::getX).thenComparing(Vector2D::getY))
            .toList();
    List<Vector2D> chain = new ArrayList<>();
    for (int pass = 0; pass < 2; pass++) {
      int from = chain.size();
      for (int i = 0; i < sorted.size(); i++) {
        Vector2D next = sorted.get(pass == 0 ? i : sorted.size() - 1 - i);
        while (chain.size() >= from + 2 && !turnsLeft(chain, next)) {
          chain.remove(chain.size() - 1);
        }
        chain.add(next);
      }
      chain.remove(chain.size() - 1);
    }
    Path2D path = new Path2D.Double();
    for (Vector2D corner : chain) {
      if (path.getCurrentPoint() == null) {
        path.moveTo(corner.getX(), corner.getY());
      } else {
        path.lineTo(corner.getX(), corner.getY());
      }
    }
    if (!chain.isEmpty()) {
      path.closePath();
    }
    return path;
  }

  private static boolean turnsLeft(List<Vector2D> chain, Vector2D next) {
    Vector2D last = chain.get(chain.size() - 1);
    Vector2D before = chain.get(chain.size() - 2);
    Vector2D one = last.subtract(before);
    Vector2D two = next.subtract(last);
    return one.getX() * two.getY() - one.getY() * two.getX() > 0;
  }
}
