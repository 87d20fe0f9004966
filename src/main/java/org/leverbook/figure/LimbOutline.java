package org.leverbook.figure;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.twod.Vector2D;

/**
 * The outline of one limb segment: stations along its axis, each so far to the front and to the
 * back.
 *
 * @param from proximal joint centre, metres
 * @param to distal joint centre, metres
 * @param forward roughly the way its front faces, any length
 * @param stations in order from proximal
 */
record LimbOutline(Vector2D from, Vector2D to, Vector2D forward, List<Station> stations) {

  /**
   * A place along the limb.
   *
   * @param along share of the length, 0 proximal, 1 distal
   * @param front axis to front skin, metres
   * @param back axis to back skin, metres
   */
  record Station(double along, double front, double back) {}

  /** The rounded ends reach this share of the end's half-thickness beyond the joint. */
  private static final double CAP = 0.7;

  Path2D path() {
    Vector2D axis = to.subtract(from);
    double length = Math.max(axis.getNorm(), 1e-6);
    Vector2D down = axis.scalarMultiply(1 / length);
    Vector2D across = new Vector2D(-down.getY(), down.getX());
    Vector2D front = across.dotProduct(forward) >= 0 ? across : across.negate();
    List<Vector2D> around = new ArrayList<>();
    for (Station s : stations) {
      around.add(point(axis, front, s.along(), s.front()));
    }
    Station last = stations.get(stations.size() - 1);
    around.add(end(to, down, front, last));
    for (int i = stations.size() - 1; i >= 0; i--) {
      around.add(point(axis, front, stations.get(i).along(), -stations.get(i).back()));
    }
    around.add(end(from, down.negate(), front, stations.get(0)));
    return Curves.closed(around);
  }

  private Vector2D point(Vector2D axis, Vector2D front, double along, double offset) {
    return from.add(axis.scalarMultiply(along)).add(front.scalarMultiply(offset));
  }

  private static Vector2D end(Vector2D joint, Vector2D outward, Vector2D front, Station station) {
    double reach = CAP * (station.front() + station.back()) / 2;
    double middle = (station.front() - station.back()) / 2;
    return joint.add(outward.scalarMultiply(reach)).add(front.scalarMultiply(middle));
  }
}
