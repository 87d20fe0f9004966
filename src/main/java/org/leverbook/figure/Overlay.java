package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.marks.Fit;
import org.leverbook.pose.Placement;

/**
 * Places of a fitted lifter on the page of a photo: from the world through the camera to pixels,
 * and from pixels to page units.
 *
 * @param fit what is drawn
 * @param where the fitted body
 * @param left edge of the photo on the page
 * @param top edge of the photo on the page
 * @param perPixel page units for one pixel
 */
record Overlay(Fit fit, Placement where, double left, double top, double perPixel) {

  Point2D at(Vector3D place) {
    return at(fit.camera().project(place));
  }

  Point2D at(Vector2D pixel) {
    return new Point2D.Double(left + perPixel * pixel.getX(), top + perPixel * pixel.getY());
  }

  /** A place of the sagittal plane, on the side that is seen, so far from the midline. */
  Point2D at(Vector2D sagittal, double aside) {
    return at(new Vector3D(sagittal.getX(), sagittal.getY(), fit.shown().sign() * Math.abs(aside)));
  }

  /** A leg from toe to hip. */
  List<Point2D> leg(Side side) {
    List<Point2D> leg = new ArrayList<>();
    fit.body().soles().stream()
        .filter(s -> s.name().equals(side.of("toe tip")) || s.name().equals(side.of("heel, outer")))
        .sorted((a, b) -> b.name().compareTo(a.name()))
        .forEach(s -> leg.add(at(where.toWorld(s.segment(), s.place()))));
    for (JointId joint : List.of(JointId.ANKLE, JointId.KNEE, JointId.HIP)) {
      leg.add(at(where.centre(joint.on(side))));
    }
    return leg;
  }

  /** An arm from shoulder to grip. */
  List<Point2D> arm(Side side) {
    List<Point2D> arm = new ArrayList<>();
    for (JointId joint : List.of(JointId.SHOULDER, JointId.ELBOW, JointId.WRIST)) {
      arm.add(at(where.centre(joint.on(side))));
    }
    arm.add(at(where.at(fit.body().place(Site.HAND, side))));
    return arm;
  }

  /** The spine from L5/S1 to the head. */
  List<Point2D> spine() {
    List<Point2D> spine = new ArrayList<>();
    JointId.spine().forEach(j -> spine.add(at(where.centre(j.word()))));
    spine.add(at(where.centre(JointId.HEAD.word())));
    return spine;
  }

  /** A box around the head, from the crown to the chin. */
  Rectangle2D head() {
    int head = where.tree().distalOf(JointId.HEAD.word());
    double crown = fit.body().links().head();
    Point2D middle = at(where.toWorld(head, new Vector3D(0, 0.3 * crown, 0)));
    double reach = middle.distance(at(where.toWorld(head, new Vector3D(0, crown, 0))));
    return new Rectangle2D.Double(
        middle.getX() - reach, middle.getY() - reach, 2 * reach, 2 * reach);
  }

  /** The line through two points, as far as the photo goes. */
  Line2D across(Point2D a, Point2D b) {
    double far = 10_000 / Math.max(1e-9, a.distance(b));
    double dx = far * (b.getX() - a.getX());
    double dy = far * (b.getY() - a.getY());
    return new Line2D.Double(a.getX() - dx, a.getY() - dy, a.getX() + dx, a.getY() + dy);
  }
}
