package org.leverbook.figure;

import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.load.Force;

/**
 * The line along which a load acts, in space and as it is seen.
 *
 * @param source what acts, as in "bar"
 * @param point a point on the line as it is seen, metres
 * @param direction unit vector the force is seen to point along; zero where the line is seen end-on
 * @param newtons its whole size
 * @param place the point in the world, metres
 * @param along unit vector in the world the force points along
 */
record ForceLine(
    String source,
    Vector2D point,
    Vector2D direction,
    double newtons,
    Vector3D place,
    Vector3D along) {

  /**
   * The line of one source's forces together.
   *
   * @param source which source
   * @param forces all forces on the body
   * @param sight from where
   * @return the line, or empty where the source gives nothing
   */
  static Optional<ForceLine> of(String source, List<Force> forces, Sight sight) {
    Vector3D sum = Vector3D.ZERO;
    Vector3D middle = Vector3D.ZERO;
    double all = 0;
    for (Force force : forces) {
      if (force.source().equals(source)) {
        double size = force.force().getNorm();
        sum = sum.add(force.force());
        middle = middle.add(force.point().scalarMultiply(size));
        all += size;
      }
    }
    if (sum.getNorm() < 1e-6) {
      return Optional.empty();
    }
    return Optional.of(of(source, middle.scalarMultiply(1 / all), sum, sight));
  }

  /** The line of one force in the world. */
  static ForceLine of(String source, Vector3D place, Vector3D force, Sight sight) {
    Vector2D direction = sight.endOn(force) ? Vector2D.ZERO : sight.seen(force).normalize();
    return new ForceLine(
        source, sight.seen(place), direction, force.getNorm(), place, force.normalize());
  }

  /** Whether it points at the reader or away, so that it is seen as a point. */
  boolean endOn() {
    return direction.getNorm() == 0;
  }

  /** The foot of the perpendicular from a point, in the plane of view. */
  Vector2D foot(Vector2D from) {
    double along = from.subtract(point).dotProduct(direction);
    return point.add(direction.scalarMultiply(along));
  }

  /** The foot of the perpendicular from a point, in space. */
  Vector3D foot(Vector3D from) {
    return place.add(along.scalarMultiply(from.subtract(place).dotProduct(along)));
  }
}
