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
  public static Feature point(Place place) {
    return new Feature.Point(place.segment(), place.local());
  }

  /**
   * The centre of a joint.
   *
   * @param body whose
   * @param joint its full name, as in "right hip"
   * @return the feature
   */
  public static Feature joint(Body body, String joint) {
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

  /** How far the common centre of body and masses is ahead of a place, as a row. */
  static Row balance(Body body, double forward, List<Carried> masses) {
    double own = body.tree().mass();
    double all = own + masses.stream().mapToDouble(Carried::kilograms).sum();
    Row row =
        new Row()
            .plus(new Feature.CentreOfMass(), Vector3D.PLUS_I.scalarMultiply(own / all))
            .equals(forward);
    for (Carried carried : masses) {
      row.plus(carried.point(), Vector3D.PLUS_I.scalarMultiply(carried.kilograms() / all));
    }
    return row;
  }
}
