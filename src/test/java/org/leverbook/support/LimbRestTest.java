package org.leverbook.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;

/** A bench under one hand, or the floor under a forearm. */
class LimbRestTest {

  private static final Placement STANDING =
      Pose.neutral(Person.of(Sex.MALE, kg(85), cm(178)).body().tree()).placed();

  private static final Vector3D ELBOW = STANDING.at(STANDING.tree().place(Site.ELBOW, Side.LEFT));

  private static LimbRest under(double height) {
    return new LimbRest(
        "ledge", List.of(new LimbRest.Spot(Site.ELBOW, Side.LEFT)), height, 0.04, 0.5);
  }

  @Test
  void pushes_up_at_the_skin_of_one_side_alone() {
    List<Contact> contacts = under(ELBOW.getY() - 0.04).contacts(STANDING);
    assertThat(contacts).extracting(Contact::name).containsExactly("left elbow");
    Contact only = contacts.get(0);
    assertThat(only.point().distance(ELBOW)).isCloseTo(0.04, within(1e-12));
    assertThat(only.normal()).isEqualTo(Vector3D.PLUS_J);
    assertThat(only.friction()).isEqualTo(0.5);
    assertThat(only.grips()).isFalse();
  }

  @Test
  void a_limb_that_does_not_reach_it_is_told_by_how_much() {
    assertThatThrownBy(() -> under(ELBOW.getY() - 0.10).contacts(STANDING))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The left elbow is 6.0 cm above the ledge: raise or lower either by that much.");
    assertThatThrownBy(() -> under(ELBOW.getY()).contacts(STANDING))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("4.0 cm inside the ledge");
  }

  @Test
  void is_drawn_a_hand_beyond_what_rests_on_it() {
    List<Vector3D> ends = under(0.5).ends(STANDING);
    assertThat(ends.get(1).getX() - ends.get(0).getX()).isCloseTo(0.20, within(1e-12));
    assertThat(ends).allSatisfy(end -> assertThat(end.getY()).isEqualTo(0.5));
  }
}
