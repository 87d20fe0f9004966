package org.leverbook.load;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Place;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;

/**
 * Where a load takes hold: a site of whoever carries it, or a place of one known body.
 *
 * @param site a site of any body; null where {@code place} tells it
 * @param side of the site
 * @param place a place of one body; null where {@code site} tells it
 */
public record Hold(Site site, Side side, Place place) {

  /**
   * At a site of one side.
   *
   * @param site which
   * @param side left or right; ignored for a site of the midline
   * @return the hold
   */
  public static Hold of(Site site, Side side) {
    return new Hold(site, site.paired() ? side : Side.MIDLINE, null);
  }

  /**
   * At a place of one body, or of a textbook's lever.
   *
   * @param place which
   * @return the hold
   */
  public static Hold of(Place place) {
    return new Hold(null, Side.MIDLINE, place);
  }

  /**
   * At a site of both sides, or once where the site lies in the midline.
   *
   * @param site which
   * @return right and left, or one
   */
  public static List<Hold> both(Site site) {
    return site.paired()
        ? List.of(of(site, Side.RIGHT), of(site, Side.LEFT))
        : List.of(of(site, Side.MIDLINE));
  }

  /**
   * The place on a body.
   *
   * @param where the body as it is placed
   * @return carried by one of its segments
   */
  public Place on(Placement where) {
    return place != null ? place : where.tree().place(site, side);
  }

  /**
   * The point in the world.
   *
   * @param where the body as it is placed
   * @return metres
   */
  public Vector3D point(Placement where) {
    Place there = on(where);
    return where.toWorld(there.segment(), there.local());
  }

  /**
   * In words.
   *
   * @return as in "right hand"
   */
  public String word() {
    return place != null ? place.name() : site.on(side);
  }

  /** A force on the body at this hold. */
  Force force(String source, Placement where, Vector3D newtons) {
    return Force.ofLoad(source, on(where).segment(), point(where), newtons);
  }
}
