package org.leverbook.marks;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;
import org.leverbook.pose.Sight;

/**
 * Where a landmark was seen: on planes that meet in a line (one camera), or in a point (places in
 * space).
 *
 * @param landmark which place of the body
 * @param side left, right or midline
 * @param normals of the planes, of about unit length
 * @param offsets of the planes, metres: normal · place = offset
 */
record Sighting(Landmark landmark, Side side, List<Vector3D> normals, List<Double> offsets) {

  /** Keeps its own copies. */
  Sighting {
    normals = List.copyOf(normals);
    offsets = List.copyOf(offsets);
  }

  static Sighting of(Mark mark, Sight sight) {
    return new Sighting(
        mark.landmark(),
        mark.side(),
        List.of(sight.across(), sight.up()),
        List.of(sight.acrossAt(), sight.upAt()));
  }

  static Sighting at(Landmark landmark, Side side, Vector3D place) {
    return new Sighting(
        landmark,
        side,
        List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K),
        List.of(place.getX(), place.getY(), place.getZ()));
  }

  String name() {
    return side.of(landmark.word());
  }

  /** How far a place is from it, metres. */
  double miss(Vector3D place) {
    double sum = 0;
    for (int i = 0; i < normals.size(); i++) {
      double off = normals.get(i).dotProduct(place) - offsets.get(i);
      sum += off * off;
    }
    return Math.sqrt(sum);
  }

  /** A place on all planes, near the world's origin. */
  Vector3D somewhere() {
    Vector3D place = Vector3D.ZERO;
    // Planes are nearly square to each other: a few rounds of stepping onto each settle.
    for (int round = 0; round < 20; round++) {
      for (int i = 0; i < normals.size(); i++) {
        Vector3D n = normals.get(i);
        double off = offsets.get(i) - n.dotProduct(place);
        place = place.add(n.scalarMultiply(off / n.getNormSq()));
      }
    }
    return place;
  }
}
