package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.List;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.load.Barbell;
import org.leverbook.load.Cable;
import org.leverbook.load.Force;
import org.leverbook.load.Grasp;
import org.leverbook.load.Gravity;
import org.leverbook.load.Load;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.support.Contact;

/** Whether a person stands, with how much to spare, and what is said of one who tips. */
class BalanceTest {

  private static final Body BODY = Person.of(Sex.MALE, kg(80), cm(180)).body();

  /** A foot of 30 cm by 20 cm with its back left corner at the origin. */
  private static final List<Contact> CORNERS =
      List.of(corner(0, 0), corner(0.3, 0), corner(0.3, 0.2), corner(0, 0.2));

  private static Contact corner(double x, double z) {
    return Contact.smooth("corner", 0, new Vector3D(x, 0, z), Vector3D.PLUS_J);
  }

  @ParameterizedTest(name = "pressure at ({0}, {1}): margin {2} m, {3} of the foot, held {4}")
  @CsvSource({
    "0.15, 0.10, 0.10, 0.5, true",
    "0.28, 0.10, 0.02, 0.9333333333, true",
    "0.15, 0.19, 0.01, 0.5, true",
    "0.30, 0.10, 0, 1, true",
    "0.32, 0.10, -0.02, 1.0666666667, false",
    "-0.05, 0.10, -0.05, -0.1666666667, false",
    "0.33, 0.24, -0.05, 1.1, false"
  })
  void the_margin_is_the_distance_to_the_nearest_edge_and_negative_outside(
      double x, double z, double margin, double share, boolean held) {
    Balance balance = Balance.of(CORNERS, new Vector3D(x, 0, z), 0, 0.3, true);
    assertThat(balance.margin()).isCloseTo(margin, within(1e-12));
    assertThat(balance.shareOfFoot()).isCloseTo(share, within(1e-9));
    assertThat(balance.held()).isEqualTo(held);
    assertThat(balance.polygon()).hasSize(4);
  }

  @Test
  void the_balance_is_told_in_per_cent_of_the_foot_and_centimetres() {
    Balance balance = Balance.of(CORNERS, new Vector3D(0.12, 0, 0.1), 0, 0.3, true);
    assertThat(balance.text())
        .isEqualTo("balance at 40 % of the foot from the heel, 10.0 cm inside the edge of support");
  }

  /** Upright on flat feet, both arms level to the front. */
  private static Pose armsOut() {
    Pose pose =
        Pose.neutral(BODY.tree())
            .rootAt(new Vector3D(0, BODY.links().standingHipHeight(), 0), Frame.WORLD);
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose = pose.with(JointId.SHOULDER.on(side), Math.PI / 2, 0, 0);
    }
    return pose;
  }

  private static Position stand(Pose pose, Load... loads) {
    return Standing.position(
        "test", BODY, pose, List.of(loads), List.of(), Notes.ofPosture(List.of()));
  }

  @Test
  void a_light_bar_at_arms_length_moves_the_balance_forward_by_its_share_of_the_weight() {
    Position light = stand(armsOut(), Barbell.of(kg(10)));
    Placement where = armsOut().placed();
    double hands = where.centre("right grip").getX();
    double body = where.centreOfMass().getX();
    assertThat(light.balance().centreOfPressure().getX())
        .isCloseTo((80 * body + 10 * hands) / 90, within(1e-12));
  }

  @Test
  void a_heavy_bar_at_arms_length_tips_the_lifter_forward_by_so_many_centimetres() {
    Placement where = armsOut().placed();
    double pressure =
        (80 * where.centreOfMass().getX() + 80 * where.centre("right grip").getX()) / 160;
    double toes = 0;
    for (Body.SolePoint sole : BODY.soles()) {
      toes = Math.max(toes, where.toWorld(sole.segment(), sole.place()).getX());
    }
    String ahead = String.format(Locale.ROOT, "%.1f cm", 100 * (pressure - toes));
    assertThatThrownBy(() -> stand(armsOut(), Barbell.of(kg(80))))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "Tips forward: the weight of lifter and bar together falls "
                + ahead
                + " ahead of the toes. Bring the load or the hips back.");
  }

  @Test
  void leaning_back_tips_backward() {
    Pose back = armsOut().with("L5/S1", -1.2, 0, 0);
    Pose noArms = back.with("right shoulder", -1, 0, 0).with("left shoulder", -1, 0, 0);
    assertThatThrownBy(() -> stand(noArms))
        .isInstanceOf(Refused.class)
        .hasMessageMatching(
            "Tips backward: the weight of the lifter falls \\d+\\.\\d cm behind the heels' support\\. .*");
  }

  @Test
  void a_weight_far_to_one_side_tips_sideways() {
    Pose aside = armsOut().with("right shoulder", 0, Math.PI / 2, 0);
    Load bell = handWeight("right", 80);
    assertThatThrownBy(() -> stand(aside, bell))
        .isInstanceOf(Refused.class)
        .hasMessageMatching(
            "Tips sideways: the weight of lifter and bell together falls \\d+\\.\\d cm outside the feet\\. .*");
  }

  private static Load handWeight(String side, double kilograms) {
    return new Load() {
      @Override
      public String source() {
        return "bell";
      }

      @Override
      public String description() {
        return "bell";
      }

      @Override
      public double mass() {
        return kilograms;
      }

      @Override
      public List<Force> forces(Placement where) {
        int hand = where.tree().indexOf(side + " fingers");
        Vector3D weight = Gravity.VECTOR.scalarMultiply(kilograms);
        return List.of(Force.ofLoad("bell", hand, where.origin(hand), weight));
      }
    };
  }

  private static Position pulledForward(double kilograms) {
    int hand = BODY.tree().indexOf("right fingers");
    int other = BODY.tree().indexOf("left fingers");
    Vector3D grip = armsOut().placed().origin(hand);
    Vector3D pulley = new Vector3D(grip.getX() - 5, grip.getY(), 0);
    Cable cable =
        new Cable(
            kilograms,
            1,
            pulley,
            List.of(Grasp.fixed(hand, Vector3D.ZERO), Grasp.fixed(other, Vector3D.ZERO)));
    return stand(armsOut(), cable);
  }

  @Test
  void what_pulls_aside_is_named_when_it_tips_the_lifter() {
    assertThatThrownBy(() -> pulledForward(30))
        .isInstanceOf(Refused.class)
        .hasMessageMatching(
            "Tips backward: the line of force of lifter and cable together falls .*");
  }

  @Test
  void a_level_cable_is_held_by_friction_under_the_feet() {
    Position pulled = pulledForward(3);
    double forward = 0;
    double up = 0;
    for (Reaction reaction : pulled.supportForces()) {
      forward += reaction.force().getX();
      up += reaction.force().getY();
      assertThat(reaction.frictionUsed().orElseThrow()).isBetween(0.0, 1.0 + 1e-9);
    }
    assertThat(forward).isCloseTo(3 * Gravity.STANDARD, within(1e-9));
    assertThat(up).isCloseTo(80 * Gravity.STANDARD, within(1e-9));
    assertThat(pulled.balance().held()).isTrue();
  }
}
