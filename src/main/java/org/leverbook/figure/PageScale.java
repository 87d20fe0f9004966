package org.leverbook.figure;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.hipparchus.geometry.euclidean.twod.Vector2D;

/**
 * From metres to the page, one scale for both directions.
 *
 * @param perMetre page units for one metre
 * @param originX where x = 0 is
 * @param floor where y = 0 is: the floor, in a level view
 * @param top where the drawing begins
 * @param seen what is to be seen, metres
 */
record PageScale(double perMetre, double originX, double floor, double top, Rectangle2D seen) {

  /** Room at both sides for labels, page units. */
  private static final double LABELS = 165;

  private static final double TALLEST = 590;
  private static final double LARGEST = 620;

  /** Of the line of force above the highest point, metres. */
  private static final double ABOVE = 0.14;

  /** Around a floor that is seen as an area, metres. */
  private static final double AROUND = 0.05;

  static PageScale fitted(Scene view, double width, double top) {
    return fitted(view, width, top, 0);
  }

  /** The same with more room above for labels, page units. */
  static PageScale fitted(Scene view, double width, double top, double more) {
    Rectangle2D seen = new Rectangle2D.Double(view.line().point().getX(), 0, 0, 0);
    for (Silhouette piece : view.body()) {
      seen.add(piece.area().getBounds2D());
    }
    view.arms().forEach(arm -> seen.add(arm.foot().getX(), arm.foot().getY()));
    view.bar().ifPresent(bar -> bar.corners().forEach(p -> seen.add(p.getX(), p.getY())));
    LoadInk.extent(view).forEach(point -> seen.add(point.getX(), point.getY()));
    MachineInk.extent(view).forEach(point -> seen.add(point.getX(), point.getY()));
    if (!view.sight().level()) {
      FloorPatch.corners(view).forEach(point -> seen.add(point.getX(), point.getY()));
      return whole(seen, width, top, seen.getMinY(), seen.getMaxY() + AROUND).taller(more);
    }
    // Toes and soles of a curve may dip below the floor by less than a line's width.
    return whole(seen, width, top, 0, seen.getMaxY() + ABOVE).taller(more);
  }

  private PageScale taller(double more) {
    Rectangle2D whole =
        new Rectangle2D.Double(
            seen.getX(), seen.getY(), seen.getWidth(), seen.getHeight() + more / perMetre);
    return new PageScale(perMetre, originX, floor + more, top, whole);
  }

  private static PageScale whole(
      Rectangle2D seen, double width, double top, double low, double high) {
    double scale =
        Math.min(LARGEST, Math.min((width - 2 * LABELS) / seen.getWidth(), TALLEST / (high - low)));
    double originX = width / 2 - scale * seen.getCenterX();
    Rectangle2D whole = new Rectangle2D.Double(seen.getX(), low, seen.getWidth(), high - low);
    return new PageScale(scale, originX, top + scale * high, top, whole);
  }

  /** Where the drawing ends: at the floor, or below the floor's nearest corner. */
  double bottom() {
    return floor - perMetre * seen.getMinY();
  }

  Point2D onPage(Vector2D point) {
    Vector2D page = centred(point);
    return new Point2D.Double(page.getX(), page.getY());
  }

  /** A point on the page as a vector, for what is drawn around it. */
  Vector2D centred(Vector2D point) {
    return new Vector2D(originX + perMetre * point.getX(), floor - perMetre * point.getY());
  }

  Area onPage(Area area) {
    return area.createTransformedArea(
        new AffineTransform(perMetre, 0, 0, -perMetre, originX, floor));
  }

  /** The corners of what is to be seen, metres. */
  List<Vector2D> corners() {
    return List.of(
        new Vector2D(seen.getMinX(), seen.getMinY()),
        new Vector2D(seen.getMaxX(), seen.getMinY()),
        new Vector2D(seen.getMinX(), seen.getMaxY()),
        new Vector2D(seen.getMaxX(), seen.getMaxY()));
  }
}
