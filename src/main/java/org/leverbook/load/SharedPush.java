package org.leverbook.load;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Place;
import org.leverbook.pose.Placement;

/**
 * A push of known size and way that the body may take up at several places in any shares, as soles
 * do on the plate of a sled: more with the heels or more with the toes, more left or more right.
 * The shares, each zero or more, come with the reactions of the supports.
 *
 * @param way unit vector in the world, as it acts on the body
 * @param places where it can act
 * @param parts what the push is made of, told apart in tables; together more than nothing
 */
public record SharedPush(Vector3D way, List<Place> places, List<Part> parts) {

  /**
   * One part of the push.
   *
   * @param source what a table calls it
   * @param kind whether it is of a load or of its inertia
   * @param newtons along the way; of inertia it may be negative
   */
  public record Part(String source, Force.Kind kind, double newtons) {}

  /** Keeps its own copies. */
  public SharedPush {
    places = List.copyOf(places);
    parts = List.copyOf(parts);
  }

  /** Its whole size, newtons. */
  public double newtons() {
    return parts.stream().mapToDouble(Part::newtons).sum();
  }

  /**
   * The forces on the body once the shares are known.
   *
   * @param where where the body is
   * @param shares one for each place, zero or more, together one
   * @return a force for each part and each place that takes any of it
   */
  public List<Force> forces(Placement where, double[] shares) {
    List<Force> forces = new ArrayList<>();
    for (Part part : parts) {
      for (int k = 0; k < shares.length; k++) {
        if (shares[k] > 0 && part.newtons() != 0) {
          Vector3D push = way.scalarMultiply(shares[k] * part.newtons());
          Place place = places.get(k);
          forces.add(
              new Force(
                  part.source(),
                  part.kind(),
                  place.segment(),
                  where.at(place),
                  push,
                  Vector3D.ZERO));
        }
      }
    }
    return forces;
  }
}
