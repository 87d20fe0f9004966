package org.leverbook.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * The radius at which a machine's belt leaves its cam, against the angle of the handle's arm:
 * straight lines between given points, the end values kept beyond them.
 *
 * @param points by rising angle, at least one
 */
public record Cam(List<Point> points) {

  /**
   * A given radius.
   *
   * @param angle of the handle's arm above straight ahead, radians
   * @param radius metres
   */
  public record Point(double angle, double radius) {}

  /**
   * Checks the order and keeps its own copy.
   *
   * @throws Refused if there is no point, or the angles do not rise
   */
  public Cam {
    if (points.isEmpty()) {
      throw new Refused("A cam needs a radius: begin with Cam.round(cm(10)).");
    }
    for (int i = 1; i < points.size(); i++) {
      if (!(points.get(i).angle() > points.get(i - 1).angle())) {
        throw new Refused(
            String.format(
                Locale.ROOT,
                "A cam's angles must rise, but %.1f° follows %.1f°.",
                Math.toDegrees(points.get(i).angle()),
                Math.toDegrees(points.get(i - 1).angle())));
      }
    }
    points = List.copyOf(points);
  }

  /**
   * A round cam.
   *
   * @param radius 1 to 100 cm
   * @return the cam
   * @throws Refused if the radius is missing or outside
   */
  public static Cam round(Quantity<Length> radius) {
    return new Cam(List.of(new Point(-Math.PI, Ask.length("cam's radius", radius, 0.01, 1))));
  }

  /**
   * A cam by its first point.
   *
   * @param angle of the handle's arm above straight ahead
   * @param radius 1 to 100 cm
   * @return the cam; add points by {@code and}
   * @throws Refused if a value is missing or outside
   */
  public static Cam at(Quantity<Angle> angle, Quantity<Length> radius) {
    return new Cam(List.of(point(angle, radius)));
  }

  /**
   * The same cam with one more point.
   *
   * @param angle greater than those before
   * @param radius 1 to 100 cm
   * @return the longer cam
   * @throws Refused if a value is missing or outside, or the angle does not rise
   */
  public Cam and(Quantity<Angle> angle, Quantity<Length> radius) {
    List<Point> longer = new ArrayList<>(points);
    longer.add(point(angle, radius));
    return new Cam(longer);
  }

  /**
   * The radius at an angle.
   *
   * @param angle radians
   * @return metres
   */
  public double radius(double angle) {
    Point first = points.get(0);
    if (angle <= first.angle()) {
      return first.radius();
    }
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      Point to = points.get(i);
      if (angle <= to.angle()) {
        double share = (angle - from.angle()) / (to.angle() - from.angle());
        return from.radius() + share * (to.radius() - from.radius());
      }
    }
    return points.get(points.size() - 1).radius();
  }

  /**
   * How the radius changes with the angle.
   *
   * @param angle radians
   * @return metres per radian; zero beyond the given points
   */
  double slope(double angle) {
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      Point to = points.get(i);
      if (angle >= from.angle() && angle < to.angle()) {
        return (to.radius() - from.radius()) / (to.angle() - from.angle());
      }
    }
    return 0;
  }

  private static Point point(Quantity<Angle> angle, Quantity<Length> radius) {
    return new Point(
        Ask.angle("cam's angle", angle, -Math.PI, Math.PI),
        Ask.length("cam's radius", radius, 0.01, 1));
  }
}
