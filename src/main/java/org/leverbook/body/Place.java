package org.leverbook.body;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.quantity.Refused;

/**
 * A place on one body (or on a textbook's lever) that moves with one of its segments.
 *
 * <p>{@code lifter.body().place(Site.HAND, Side.RIGHT)} is the centre of a bar gripped by the right
 * hand.
 *
 * @param name as in "right hand"
 * @param segment index of the segment that carries it
 * @param local in that segment's frame, metres
 */
public record Place(String name, int segment, Vector3D local) {

  /**
   * Checks where it is.
   *
   * @throws Refused if a coordinate is no finite number
   */
  public Place {
    if (local.isNaN() || local.isInfinite()) {
      throw new Refused(
          "The place \"" + name + "\" needs three finite numbers of metres, not " + local + ".");
    }
  }

  /**
   * A place beside this one.
   *
   * @param offset in the segment's frame, metres
   * @return the place moved by it
   */
  public Place movedBy(Vector3D offset) {
    return new Place(name, segment, local.add(offset));
  }
}
