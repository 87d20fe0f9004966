package org.leverbook.figure;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/** Heads of arrows. */
final class Arrows {

  private Arrows() {}

  /**
   * A filled head whose tip lies a little beyond the end of a line.
   *
   * @param from start of the line
   * @param to its end
   * @param length of the head
   * @param halfWidth of the head
   * @return the triangle
   */
  static Path2D head(Point2D from, Point2D to, double length, double halfWidth) {
    double size = from.distance(to);
    double x = (to.getX() - from.getX()) / size;
    double y = (to.getY() - from.getY()) / size;
    double tail = -0.4 * length;
    Path2D head = new Path2D.Double();
    head.moveTo(to.getX() + (length + tail) * x, to.getY() + (length + tail) * y);
    head.lineTo(to.getX() + tail * x - halfWidth * y, to.getY() + tail * y + halfWidth * x);
    head.lineTo(to.getX() + tail * x + halfWidth * y, to.getY() + tail * y - halfWidth * x);
    head.closePath();
    return head;
  }
}
