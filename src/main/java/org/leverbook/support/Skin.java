package org.leverbook.support;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Place;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;

/**
 * A place of the skin of a placed body.
 *
 * @param site which
 * @param place it on this body
 * @param at where it is in the world, metres
 */
record Skin(Site site, Place place, Vector3D at) {

  /** All places of some sites, both sides of paired ones. */
  static List<Skin> of(List<Site> sites, Placement where) {
    List<Skin> skin = new ArrayList<>();
    for (Site site : sites) {
      for (Side side : site.sides()) {
        Place place = where.tree().place(site, side);
        skin.add(new Skin(site, place, where.at(place)));
      }
    }
    return skin;
  }

  /** The middle of some places. */
  static Vector3D centre(List<Skin> skin) {
    Vector3D sum = Vector3D.ZERO;
    for (Skin one : skin) {
      sum = sum.add(one.at().scalarMultiply(1.0 / skin.size()));
    }
    return sum;
  }
}
