package org.leverbook.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.support.Contact;
import org.leverbook.support.Pad;

/** Where along the sole a sled and a foot plate press. */
class SoleTest {

  private static final Body BODY = Person.of(Sex.MALE, kg(85), cm(178)).body();
  private static final Placement STANDING = Pose.neutral(BODY.tree()).placed();

  private static double forward(Sled sled) {
    return sled.forces(STANDING).get(0).point().getX();
  }

  @Test
  void a_sled_presses_where_the_lifter_presses() {
    Sled sled = Sled.of(kg(150), deg(45));
    double length = BODY.links().footLength();
    double middle = STANDING.at(BODY.place(Site.FOOT, Side.RIGHT)).getX();
    assertThat(forward(sled)).isCloseTo(middle, within(1e-9));
    assertThat(forward(sled.pressedAt(percent(30)))).isCloseTo(middle - 0.2 * length, within(1e-3));
    assertThat(sled.pressedAt(percent(30)).push()).isEqualTo(sled.push());
    assertThatThrownBy(() -> sled.pressedAt(percent(90))).isInstanceOf(Refused.class);
  }

  @Test
  void a_foot_plate_has_heel_ball_and_toes_of_each_sole_to_push_at() {
    // Lying on the back with the soles upright: turn the world instead of the body.
    Pose lying =
        Pose.neutral(BODY.tree())
            .rootAt(
                Vector3D.ZERO,
                new org.leverbook.pose.Frame(Vector3D.PLUS_J, Vector3D.MINUS_I, Vector3D.PLUS_K));
    assertThat(Pad.footPlate(deg(90)).contacts(lying.placed()))
        .extracting(Contact::name)
        .containsExactlyInAnyOrder(
            "right heel",
            "left heel",
            "right ball of the foot",
            "left ball of the foot",
            "right toe tip",
            "left toe tip");
  }
}
