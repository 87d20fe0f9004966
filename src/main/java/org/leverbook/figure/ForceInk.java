package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;

/**
 * Draws a load's line of force and the perpendicular arms to it.
 *
 * @param view what is seen
 * @param style colours and sizes
 * @param scale from metres to the page
 * @param room where on the page the line may run
 * @param arrow how long the force's arrow is, page units
 */
record ForceInk(Scene view, FigureStyle style, PageScale scale, Rectangle2D room, double arrow) {

  /** Radius of a line of force that is seen end-on, page units. */
  private static final double RING = 8;

  /** The line of force, with an arrow at the point where the load acts. */
  Group line() {
    ForceLine force = view.line();
    if (force.endOn()) {
      return new Group(attributes(force), endOn(force));
    }
    Pen dashed = new Pen(style.ink(), 1.4, List.of(7.0, 4.0));
    List<Ink> content = new ArrayList<>();
    Line2D whole = whole();
    content.add(Form.line(whole, dashed));
    Point2D from = scale.onPage(force.point());
    Point2D to =
        new Point2D.Double(
            from.getX() + arrow * force.direction().getX(),
            from.getY() - arrow * force.direction().getY());
    content.add(Form.line(new Line2D.Double(from, to), Pen.solid(style.ink(), 3)));
    content.add(Form.filled(Arrows.head(from, to, 13, 5.5), style.ink()));
    return new Group(attributes(force), content);
  }

  private static Map<String, String> attributes(ForceLine force) {
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", "line-of-force");
    attributes.put("data-source", force.source());
    attributes.put("data-newtons", String.format(Locale.ROOT, "%.3f", force.newtons()));
    if (force.endOn()) {
      attributes.put("data-end-on", "true");
    }
    return attributes;
  }

  /** A ring: with a cross where the force points away from the reader, with a dot towards. */
  private List<Ink> endOn(ForceLine force) {
    Vector2D at = scale.centred(force.point());
    List<Ink> content = new ArrayList<>();
    content.add(new Form(Curves.disc(at, RING), style.paper(), 1, Pen.solid(style.ink(), 2)));
    if (view.sight().depth(force.along()) > 0) {
      content.add(Form.filled(Curves.disc(at, RING / 3), style.ink()));
      return content;
    }
    double reach = RING * Math.sqrt(0.5);
    for (double slope : new double[] {-1, 1}) {
      content.add(
          Form.line(
              new Line2D.Double(
                  at.getX() - reach,
                  at.getY() - slope * reach,
                  at.getX() + reach,
                  at.getY() + slope * reach),
              Pen.solid(style.ink(), 2)));
    }
    return content;
  }

  /** From above everything to below, along the force. */
  Line2D whole() {
    ForceLine force = view.line();
    if (force.endOn()) {
      return new Line2D.Double(scale.onPage(force.point()), scale.onPage(force.point()));
    }
    double up = 0;
    double down = 0;
    for (Vector2D corner : scale.corners()) {
      double along = corner.subtract(force.point()).dotProduct(force.direction());
      up = Math.min(up, along);
      down = Math.max(down, along);
    }
    Line2D whole =
        new Line2D.Double(
            scale.onPage(force.point().add(force.direction().scalarMultiply(up))),
            scale.onPage(force.point().add(force.direction().scalarMultiply(down))));
    return Curves.within(whole, room);
  }

  /** One arm, with the mark of its right angle. */
  Group arm(DrawnArm arm, FigureStyle.Accent accent) {
    Point2D joint = scale.onPage(arm.joint());
    Point2D foot = scale.onPage(arm.foot());
    List<Ink> content = new ArrayList<>();
    Line2D line = new Line2D.Double(joint, foot);
    content.add(Form.line(line, Pen.solid(style.paper(), 5)));
    content.add(Form.line(line, new Pen(accent.colour(), 2.6, accent.dash())));
    Vector2D along = arm.line().direction();
    double square = Math.min(9, joint.distance(foot) / 2);
    if (square > 2 && !arm.line().endOn()) {
      content.add(Form.line(corner(joint, foot, along, square), Pen.solid(accent.colour(), 1.3)));
    }
    content.add(
        new Form(
            Curves.disc(new Vector2D(joint.getX(), joint.getY()), 4.6),
            accent.colour(),
            1,
            Pen.solid(style.paper(), 1.4)));
    if (arm.onLineOfItsOwn(view.line())) {
      content.add(part(arm));
    }
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", "arm");
    attributes.put("data-joint", arm.id().word());
    attributes.put("data-arm-m", String.format(Locale.ROOT, "%.6f", arm.told()));
    attributes.put("data-arm-3d-m", String.format(Locale.ROOT, "%.6f", arm.moment().arm3d()));
    attributes.put("data-moment-nm", String.format(Locale.ROOT, "%.3f", arm.newtonMetres()));
    attributes.put("data-drawn-m", String.format(Locale.ROOT, "%.6f", arm.length()));
    attributes.put("data-tends-to", arm.tendsTo().orElse(""));
    return new Group(attributes, content);
  }

  /** The line of a joint's own part of the load, thin: a piece of it, or a small ring. */
  private Group part(DrawnArm arm) {
    Pen thin = new Pen(style.ink(), 1, List.of(4.0, 3.0));
    if (arm.line().endOn()) {
      return new Group(
          Map.of("class", "own-ring"),
          List.of(
              new Form(
                  Curves.disc(scale.centred(arm.foot()), 4.5),
                  style.paper(),
                  1,
                  Pen.solid(style.ink(), 1))));
    }
    Vector2D half = arm.line().direction().scalarMultiply(0.12);
    Line2D piece =
        new Line2D.Double(
            scale.onPage(arm.foot().subtract(half)), scale.onPage(arm.foot().add(half)));
    return new Group(Map.of("class", "own-line"), List.of(Form.line(piece, thin)));
  }

  /** The arc at an arm's joint that shows which way the resistance tends to turn it. */
  Group arc(DrawnArm arm, FigureStyle.Accent accent) {
    Point2D joint = scale.onPage(arm.joint());
    Point2D foot = scale.onPage(arm.foot());
    Point2D below = new Point2D.Double(joint.getX(), joint.getY() + 1);
    return TurnArc.of(joint, joint.distance(foot) > 1 ? foot : below, arm, accent.colour(), style);
  }

  /** The mark of a right angle where the arm meets the line of force. */
  private static Path2D corner(Point2D joint, Point2D foot, Vector2D along, double size) {
    double length = joint.distance(foot);
    double ax = size * (joint.getX() - foot.getX()) / length;
    double ay = size * (joint.getY() - foot.getY()) / length;
    // Towards where the load comes from, so that the mark stays clear of the arrow.
    double bx = -size * along.getX();
    double by = size * along.getY();
    Path2D mark = new Path2D.Double();
    mark.moveTo(foot.getX() + ax, foot.getY() + ay);
    mark.lineTo(foot.getX() + ax + bx, foot.getY() + ay + by);
    mark.lineTo(foot.getX() + bx, foot.getY() + by);
    return mark;
  }
}
