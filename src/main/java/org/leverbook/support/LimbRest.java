package org.leverbook.support;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Place;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;

/**
 * A firm level face under parts of the limbs of one side or both: a bench under one hand, the floor
 * under the forearms, or under the edge of one foot. It pushes up and holds by friction.
 *
 * @param source what tables call it
 * @param spots the parts that rest on it, at least one
 * @param height of the face above the floor, metres
 * @param flesh from a part's place in the limb down to its skin, metres
 * @param friction coefficient of friction, zero or more
 */
public record LimbRest(
    String source, List<Spot> spots, double height, double flesh, double friction)
    implements Support {

  /** How far a part may be off the face and still rest on it, metres: rounding of a solver. */
  private static final double TOUCHES = 1e-3;

  /** How far a face is drawn beyond the parts that rest on it, metres. */
  private static final double BESIDE = 0.10;

  /**
   * A part of a limb.
   *
   * @param site which
   * @param side left or right
   */
  public record Spot(Site site, Side side) {}

  /** Keeps its own copy. */
  public LimbRest {
    spots = List.copyOf(spots);
  }

  /**
   * The two ends of its face, seen from the side, as far as it is drawn.
   *
   * @param where where the body is
   * @return a hand's breadth ahead of and behind the parts that rest on it, in the world, metres
   */
  public List<Vector3D> ends(Placement where) {
    DoubleSummaryStatistics along =
        spots.stream()
            .mapToDouble(s -> where.at(where.tree().place(s.site(), s.side())).getX())
            .summaryStatistics();
    return List.of(
        new Vector3D(along.getMin() - BESIDE, height, 0),
        new Vector3D(along.getMax() + BESIDE, height, 0));
  }

  @Override
  public String source() {
    return source;
  }

  @Override
  public String description() {
    return String.format(Locale.ROOT, "%s, friction %.2f", source, friction);
  }

  @Override
  public List<Contact> contacts(Placement where) {
    List<Contact> contacts = new ArrayList<>();
    for (Spot spot : spots) {
      Place place = where.tree().place(spot.site(), spot.side());
      Vector3D skin = where.at(place).subtract(new Vector3D(0, flesh, 0));
      double off = skin.getY() - height;
      if (Math.abs(off) > TOUCHES) {
        throw new Refused(
            String.format(
                Locale.ROOT,
                "The %s is %.1f cm %s the %s: raise or lower either by that much.",
                place.name(),
                100 * Math.abs(off),
                off > 0 ? "above" : "inside",
                source));
      }
      contacts.add(
          new Contact(place.name(), place.segment(), skin, Vector3D.PLUS_J, friction, false));
    }
    return contacts;
  }
}
