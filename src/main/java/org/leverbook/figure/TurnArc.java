package org.leverbook.figure;

import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Map;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;

/**
 * The arc with an arrow head around a joint that shows which way the resistance tends to turn the
 * part on the load's side of it. It bulges away from the arm, so that it never covers it.
 */
final class TurnArc {

  /** Page units; labels keep clear of it. */
  static final double RADIUS = 13;

  private static final double HALF_SWEEP = 105;
  private static final double HEAD = 8;

  private TurnArc() {}

  /**
   * The arc.
   *
   * @param joint its centre on the page
   * @param away an end of the arm, from which the arc bulges away
   * @param arm whose turning it shows
   * @param colour as #rrggbb
   * @param style colour of the paper
   */
  static Group of(Point2D joint, Point2D away, DrawnArm arm, String colour, FigureStyle style) {
    double sense = Math.signum(arm.turn());
    double middle =
        180 + Math.toDegrees(Math.atan2(joint.getY() - away.getY(), away.getX() - joint.getX()));
    double end = middle + sense * HALF_SWEEP;
    Arc2D arc =
        new Arc2D.Double(
            joint.getX() - RADIUS,
            joint.getY() - RADIUS,
            2 * RADIUS,
            2 * RADIUS,
            middle - sense * HALF_SWEEP,
            sense * 2 * HALF_SWEEP,
            Arc2D.OPEN);
    Path2D head =
        Arrows.head(at(joint, end - sense * 28), at(joint, end + sense * 4), HEAD, 0.55 * HEAD);
    return new Group(
        Map.of("class", "turn"),
        List.of(
            Form.line(arc, Pen.solid(style.paper(), 4)),
            new Form(head, style.paper(), 1, Pen.solid(style.paper(), 2.4)),
            Form.line(arc, Pen.solid(colour, 1.8)),
            Form.filled(head, colour)));
  }

  private static Point2D at(Point2D joint, double degrees) {
    double angle = Math.toRadians(degrees);
    return new Point2D.Double(
        joint.getX() + RADIUS * Math.cos(angle), joint.getY() - RADIUS * Math.sin(angle));
  }
}
