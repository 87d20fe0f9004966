package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.support.Contact;
import org.leverbook.support.Footing;

/** Upright with plates under the heels, balls of the feet and toes on the floor. */
class PlatesUnderHeelsTest {

  private static final Body BODY = Person.of(Sex.MALE, kg(80), cm(180)).body();

  private static Vector3D sole(String name) {
    return BODY.soles().stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .orElseThrow()
        .place();
  }

  /** How far the foot must be tipped so that the heel's point is so much above the ball's. */
  private static double tip(double height) {
    double ahead = sole("right ball, big toe").getX() - sole("right heel, inner").getX();
    return Math.asin(height / ahead);
  }

  /** Legs straight and upright over tipped feet; the toes bent back flat onto the floor. */
  private static Pose standing(double height) {
    double tip = tip(height);
    Pose pose = Pose.neutral(BODY.tree());
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose = pose.with(JointId.ANKLE.on(side), -tip, 0, 0).with(JointId.BALL.on(side), -tip);
    }
    Placement where = pose.placed();
    int foot = BODY.tree().indexOf("right foot");
    double low = where.toWorld(foot, sole("right ball, big toe")).getY();
    return pose.rootAt(where.origin(0).subtract(new Vector3D(0, low, 0)), Frame.WORLD);
  }

  private static Position on(double height, double plates) {
    return Position.of(
        "raised heels",
        BODY,
        standing(height),
        List.of(Barbell.of(kg(40)).on(org.leverbook.body.Site.UPPER_BACK_HIGH)),
        List.of(Footing.feet(BODY).platesUnderHeels(cm(100 * plates))),
        List.of(),
        List.of());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.025, 0.05})
  void the_heels_press_at_the_height_of_the_plates_and_the_balls_on_the_floor(double height) {
    Position stands = on(height, height);
    Map<String, Double> heights =
        stands.supports().get(0).contacts(stands.placement()).stream()
            .collect(Collectors.toMap(Contact::name, c -> c.point().getY()));
    for (String side : List.of("right", "left")) {
      for (String edge : List.of("outer", "inner")) {
        assertThat(heights.get(side + " heel, " + edge)).isCloseTo(height, within(1e-9));
      }
      assertThat(heights.get(side + " ball, big toe")).isCloseTo(0, within(1e-9));
      // The little toe's ball lies behind the big toe's along a tipped foot, which bends there.
      assertThat(heights.get(side + " ball, little toe")).isBetween(0.0, 0.02);
    }
    assertThat(stands.held()).as(stands.holding().sentence()).isTrue();
    double heels = 0;
    double floor = 0;
    double moment = 0;
    for (Force force : stands.forces()) {
      if (force.kind() == Force.Kind.SUPPORT) {
        boolean plate = force.point().getY() > height / 2;
        heels += plate ? force.force().getY() : 0;
        floor += plate ? 0 : force.force().getY();
        moment +=
            force.point().getX() * force.force().getY()
                - force.point().getY() * force.force().getX();
      }
    }
    assertThat(heels).as("heels on the plates").isGreaterThan(50);
    assertThat(floor).as("balls and toes on the floor").isGreaterThan(50);
    // 80 kg and the bar's 40, to a billionth of a body weight.
    assertThat(heels + floor).isCloseTo(120 * Gravity.STANDARD, within(1e-6));
    double line = 80 * stands.placement().centreOfMass().getX();
    for (Force force : stands.forces()) {
      if (force.kind() == Force.Kind.LOAD) {
        line += force.point().getX() * -force.force().getY() / Gravity.STANDARD;
      }
    }
    assertThat(moment).isCloseTo(line * Gravity.STANDARD, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.005, 0.03, 0.05})
  void the_balance_is_told_of_the_whole_foot(double height) {
    Position stands = on(height, height);
    double carried = 80 * stands.placement().centreOfMass().getX();
    for (Force force : stands.forces()) {
      if (force.kind() == Force.Kind.LOAD) {
        carried += force.point().getX() * -force.force().getY() / Gravity.STANDARD;
      }
    }
    Balance balance = stands.balance();
    // A still body's push passes under the common centre of mass, to a nanometre.
    assertThat(balance.centreOfPressure().getX()).isCloseTo(carried / 120, within(1e-9));
    assertThat(balance.shareOfFoot()).isBetween(0.1, 0.9);
    assertThat(balance.margin()).isPositive();
    assertThat(balance.feet()).isTrue();
  }

  @Test
  void higher_plates_tip_the_ankles_by_as_much_as_the_feet() {
    for (double height : new double[] {0.01, 0.05}) {
      Pose pose = on(height, height).placement().pose();
      assertThat(pose.angle(JointId.ANKLE, Side.RIGHT, "flexion"))
          .isCloseTo(-tip(height), within(1e-12));
      // The sole rises from ball to heel by just the plates.
      Placement where = pose.placed();
      int foot = BODY.tree().indexOf("left foot");
      double rise =
          where.toWorld(foot, sole("left heel, outer")).getY()
              - where.toWorld(foot, sole("left ball, big toe")).getY();
      assertThat(rise).isCloseTo(height, within(1e-9));
    }
  }

  @Test
  void plates_that_do_not_fit_the_posture_are_refused_with_the_amount() {
    assertThatThrownBy(() -> on(0.02, 0.05))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("The right foot is 3.0 cm below its ground");
    // Plates lower than the heels carry nothing: heels in the air, all on balls and toes.
    Position air = on(0.05, 0.02);
    assertThat(air.supports().get(0).contacts(air.placement()))
        .noneMatch(c -> c.name().contains("heel"));
  }
}
