package org.leverbook.figure;

import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.load.Force;

/**
 * The line along which a load acts, as it is seen.
 *
 * @param source what acts, as in "bar"
 * @param point a point on the line, metres
 * @param direction unit vector the force points along
 * @param newtons its whole size
 */
record ForceLine(String source, Vector2D point, Vector2D direction, double newtons) {

  /**
   * The line of one source's forces together.
   *
   * @param source which source
   * @param forces all forces on the body
   * @param sight from where
   * @return the line, or empty where the source gives nothing in this plane
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
    Vector2D seen = sight.seen(sum);
    if (seen.getNorm() < 1e-6) {
      return Optional.empty();
    }
    Vector2D point = sight.seen(middle.scalarMultiply(1 / all));
    return Optional.of(new ForceLine(source, point, seen.normalize(), sum.getNorm()));
  }

  /** The foot of the perpendicular from a point. */
  Vector2D foot(Vector2D from) {
    double along = from.subtract(point).dotProduct(direction);
    return point.add(direction.scalarMultiply(along));
  }
}
