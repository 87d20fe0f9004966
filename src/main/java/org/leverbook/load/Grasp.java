package org.leverbook.load;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Place;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.quantity.Ask;

/** Where a load takes hold: a named site of any body, or a fixed place of one tree. */
public sealed interface Grasp {

  /**
   * The place on one tree.
   *
   * @param tree whose
   * @return segment and point
   */
  Place on(SegmentTree tree);

  /**
   * A named site.
   *
   * @param site which
   * @param side left or right; ignored for a site of the midline
   * @return the grasp
   */
  static Grasp at(Site site, Side side) {
    return new Named(Ask.present("site", site, "Site.HAND"), Ask.present("side", side, "RIGHT"));
  }

  /**
   * A point of one segment.
   *
   * @param segment its index
   * @param local in its frame, metres
   * @return the grasp
   */
  static Grasp fixed(int segment, Vector3D local) {
    return new Fixed(new Place("segment " + segment, segment, local));
  }

  /**
   * A named site.
   *
   * @param site which
   * @param side which side
   */
  record Named(Site site, Side side) implements Grasp {
    @Override
    public Place on(SegmentTree tree) {
      return tree.place(site, side);
    }

    @Override
    public String toString() {
      return site.on(side);
    }
  }

  /**
   * A fixed place.
   *
   * @param place which
   */
  record Fixed(Place place) implements Grasp {
    @Override
    public Place on(SegmentTree tree) {
      return place;
    }

    @Override
    public String toString() {
      return place.name();
    }
  }
}
