package org.leverbook.solve;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Place;

/** What statements speak of, by the names of one body. */
public final class Features {

  private Features() {}

  /**
   * A point that goes with the body.
   *
   * @param place its segment and where in it
   * @return the feature
   */
  public static Feature.Point point(Place place) {
    return new Feature.Point(place.segment(), place.local());
  }

  /**
   * The centre of a joint.
   *
   * @param body whose
   * @param joint its full name, as in "right hip"
   * @return the feature
   */
  public static Feature.Point joint(Body body, String joint) {
    return new Feature.Point(body.tree().distalOf(joint), Vector3D.ZERO);
  }

  /**
   * A direction that goes with a segment.
   *
   * @param body whose
   * @param segment its full name, as in "right hand"
   * @param local in the segment's frame, of unit length
   * @return the feature
   */
  public static Feature direction(Body body, String segment, Vector3D local) {
    return new Feature.Direction(body.tree().indexOf(segment), local);
  }

  /**
   * A mass that hangs on a point of the body.
   *
   * @param kilograms mass
   * @param point which
   */
  public record Carried(double kilograms, Feature point) {}

  /**
   * A force of given size and direction on a point of the body.
   *
   * @param weight force over gravity, kilograms, in the world: a hanging mass pulls (0, -m, 0)
   * @param point which
   */
  public record Pulled(Vector3D weight, Feature point) {}

  /**
   * How far along a level direction weight and pulls act together past a place on the ground, as a
   * row in metres: their moment about that place over the weight.
   */
  static Row balance(
      Body body, Vector3D along, double place, List<Carried> masses, List<Pulled> pulls) {
    double own = body.tree().mass();
    double all = own + masses.stream().mapToDouble(Carried::kilograms).sum();
    double target = place;
    Row row = new Row().plus(new Feature.CentreOfMass(), along.scalarMultiply(own / all));
    for (Carried carried : masses) {
      row.plus(carried.point(), along.scalarMultiply(carried.kilograms() / all));
    }
    for (Pulled pulled : pulls) {
      Vector3D f = pulled.weight().scalarMultiply(1 / all);
      // A downward pull ahead and a forward pull above the ground both tip forward.
      row.plus(
          pulled.point(), new Vector3D(-f.getY(), along, f.dotProduct(along), Vector3D.PLUS_J));
      target -= f.getY() * place;
    }
    return row.equals(target);
  }
}
