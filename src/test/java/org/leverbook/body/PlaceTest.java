package org.leverbook.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;

/** Where loads and pads take hold of a standing man of 85 kg and 1.78 m. */
class PlaceTest {

  private static final Body MAN = Person.of(Sex.MALE, kg(85), cm(178)).body();
  private static final Placement STANDING = Pose.neutral(MAN.tree()).placed();

  private static Vector3D at(Site site, Side side) {
    Place place = MAN.place(site, side);
    return STANDING.toWorld(place.segment(), place.local());
  }

  @Test
  void every_site_has_a_place_on_each_side() {
    for (Site site : Site.values()) {
      if (site.paired()) {
        Vector3D right = at(site, Side.RIGHT);
        Vector3D left = at(site, Side.LEFT);
        // Rounding of sums along the tree.
        assertThat(left.distance(new Vector3D(right.getX(), right.getY(), -right.getZ())))
            .as(site.word())
            .isLessThan(1e-12);
        assertThat(right.getZ()).as(site.word()).isPositive();
      } else {
        assertThat(at(site, Side.MIDLINE).getZ()).as(site.word()).isZero();
      }
    }
  }

  @Test
  void the_places_lie_in_the_order_a_coach_expects() {
    Vector3D neck = STANDING.centre("C7/T1");
    Vector3D high = at(Site.UPPER_BACK_HIGH, Side.RIGHT);
    Vector3D low = at(Site.UPPER_BACK_LOW, Side.RIGHT);
    Vector3D front = at(Site.FRONT_OF_SHOULDER, Side.RIGHT);
    assertThat(high.getY()).isLessThan(neck.getY()).isGreaterThan(low.getY());
    assertThat(neck.getX() - high.getX()).isBetween(0.03, 0.12);
    assertThat(front.getX()).isGreaterThan(STANDING.centre("right shoulder").getX() + 0.03);
    assertThat(at(Site.HIP_CREASE, Side.RIGHT).getX()).isBetween(0.06, 0.12);
    assertThat(at(Site.CHEST, Side.MIDLINE).getX()).isGreaterThan(neck.getX());
    assertThat(at(Site.HAND, Side.LEFT).distance(STANDING.centre("left grip"))).isZero();
  }

  @Test
  void a_paired_site_without_side_and_a_lever_without_hands_are_refused() {
    assertThatThrownBy(() -> MAN.place(Site.HAND, Side.MIDLINE))
        .isInstanceOf(Refused.class)
        .hasMessage("There are two of the hand: say LEFT or RIGHT.");
    SegmentTree lever = SegmentTree.root("lever", 1, Vector3D.ZERO).build();
    assertThatThrownBy(() -> lever.place(Site.HAND, Side.LEFT))
        .isInstanceOf(Refused.class)
        .hasMessage("This body has no place called \"left hand\".");
  }
}
