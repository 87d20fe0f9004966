package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
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
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.support.Contact;
import org.leverbook.support.Floor;
import org.leverbook.support.Footing;
import org.leverbook.support.Pad;
import org.leverbook.support.Support;

/** People who lean, sit, slip and tip: what the supports give, and what is said where they fail. */
class LeaningTest {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(80), cm(180));
  private static final Body BODY = LIFTER.body();

  /** Trunk bent forward over straight legs that lean back, arms hanging. */
  private static Pose bentOver(double degrees) {
    double lean = Math.toRadians(degrees);
    double back = lean * 0.2;
    double leg = BODY.links().thigh() + BODY.links().shank();
    Vector3D hips =
        new Vector3D(-leg * Math.sin(back), BODY.links().footHeight() + leg * Math.cos(back), 0);
    Pose pose = Pose.neutral(BODY.tree()).rootAt(hips, Frame.leanedForward(lean));
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose =
          pose.with(JointId.HIP.on(side), lean + back, 0, 0)
              .with(JointId.ANKLE.on(side), -back, 0, 0)
              .with(JointId.SHOULDER.on(side), lean, 0, 0);
    }
    return pose;
  }

  private static Position row(double degrees, Support... supports) {
    return Position.of(
        "row",
        BODY,
        bentOver(degrees),
        List.of(Barbell.of(kg(20))),
        List.of(supports),
        List.of(),
        List.of());
  }

  private static void assertBalanced(Position position) {
    Vector3D force = Gravity.VECTOR.scalarMultiply(BODY.tree().mass());
    Vector3D moment = position.placement().centreOfMass().crossProduct(force);
    for (Force one : position.forces()) {
      force = force.add(one.force());
      moment = moment.add(one.momentAbout(Vector3D.ZERO));
    }
    // 1e-12 body weights of 785 N, and as much over a metre.
    assertThat(force.getNorm()).isLessThan(1e-9);
    assertThat(moment.getNorm()).isLessThan(1e-9);
  }

  private static void assertWithinLimits(Position position) {
    for (Support support : position.supports()) {
      for (Contact contact : support.contacts(position.placement())) {
        for (Force force : position.forces()) {
          if (force.source().equals(support.source()) && force.point().equals(contact.point())) {
            double push = force.force().dotProduct(contact.normal());
            double across = force.force().subtract(contact.normal().scalarMultiply(push)).getNorm();
            assertThat(push).isNotNegative();
            assertThat(across).isLessThanOrEqualTo(contact.friction() * push + 1e-9);
          }
        }
      }
    }
  }

  @Test
  void a_chest_on_a_pad_takes_half_the_load_off_the_low_back_and_the_hips() {
    Position free = row(60, new Floor(BODY));
    Position padded = free.on(Pad.chest(deg(30)));
    assertThat(padded.held()).isTrue();
    assertBalanced(padded);
    assertWithinLimits(padded);
    for (JointId joint : List.of(JointId.L5_S1, JointId.HIP)) {
      assertThat(padded.moment(joint).size()).isLessThan(0.5 * free.moment(joint).size());
    }
    // The arms hang freely: no pad reaches them.
    assertThat(padded.moment(JointId.SHOULDER).size3d())
        .isCloseTo(free.moment(JointId.SHOULDER).size3d(), within(1e-9));
    Reaction pad =
        padded.supportForces().stream()
            .filter(r -> r.source().equals("chest pad"))
            .findFirst()
            .orElseThrow();
    assertThat(pad.on()).isEqualTo("trunk");
    assertThat(pad.push()).isBetween(100.0, 600.0);
    assertThat(pad.point().getZ()).isCloseTo(0, within(1e-6));
  }

  @Test
  void a_pad_left_untouched_changes_nothing_and_half_leaning_is_half_way() {
    Position free = row(60, new Floor(BODY));
    Position padded = free.on(Pad.chest(deg(30)));
    Position untouched = padded.leaning(percent(0));
    Position half = padded.leaning(percent(50));
    assertBalanced(half);
    assertWithinLimits(half);
    double none = free.moment(JointId.L5_S1).signed();
    double full = padded.moment(JointId.L5_S1).signed();
    assertThat(untouched.moment(JointId.L5_S1).signed()).isCloseTo(none, within(1e-6));
    assertThat(half.moment(JointId.L5_S1).signed()).isCloseTo((none + full) / 2, within(1e-6));
    assertThat(padded.bothEnds().text())
        .contains("Untouched: no pad is touched.", "Relaxed: chest");
    assertThatThrownBy(() -> padded.leaning(percent(150)))
        .isInstanceOf(Refused.class)
        .hasMessage("The leaning is 150 %, but must lie between 0 and 100 %.");
  }

  @Test
  void the_parts_of_every_joint_add_up_with_pads_and_friction() {
    Position padded = row(60, new Floor(BODY)).on(Pad.chest(deg(30)));
    for (JointMoment moment : padded.all()) {
      Vector3D sum = Vector3D.ZERO;
      for (JointMoment.Part part : moment.parts().values()) {
        sum = sum.add(part.moment());
      }
      assertThat(sum.distance(moment.moment())).isLessThan(1e-9);
    }
  }

  @Test
  void a_pad_that_the_body_does_not_touch_is_refused_with_the_distance() {
    Position free = row(60, new Floor(BODY));
    assertThatThrownBy(() -> free.on(Pad.chest(deg(30)).middleAt(cm(60), cm(40))))
        .isInstanceOf(Refused.class)
        .hasMessageMatching(
            "The chest pad is \\d+\\.\\d cm away from the \\w+ \\w+ chest: move the pad or the body"
                + " by that much along the way it faces, or leave out its place to set it against"
                + " the body\\.");
    assertThatThrownBy(() -> Pad.chest(deg(30)).friction(-0.1))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The friction of the chest pad is -0.1, but must be zero or more: about 0.4 for"
                + " clothing on a vinyl cushion.");
    assertThatThrownBy(() -> new Floor(BODY, -1).contacts(free.placement()))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The friction of the ground is -1.0, but must lie between 0 and 10: about 0.6 for a"
                + " shoe on a gym floor, 0 for ice.");
  }

  /** Both hands pulled level by a cable from a pulley far behind. */
  private static Load pull(Position position, double kilograms) {
    int right = BODY.tree().indexOf("right fingers");
    int left = BODY.tree().indexOf("left fingers");
    Vector3D grip = position.placement().origin(right);
    return new Cable(
        kilograms,
        1,
        new Vector3D(grip.getX() - 50, grip.getY(), 0),
        List.of(Grasp.fixed(right, Vector3D.ZERO), Grasp.fixed(left, Vector3D.ZERO)));
  }

  @Test
  void too_strong_a_level_pull_slips_and_says_which_friction_it_needs() {
    Position standing = row(60, new Floor(BODY, 0.10));
    Position slips = standing.with(pull(standing, 12));
    assertThat(slips.held()).isFalse();
    assertThat(slips.holding().verdict()).isEqualTo(Holding.Verdict.SLIPS);
    // Lifter and bar are 100 kg, so a level pull of 12 kg needs friction 0.12.
    assertThat(slips.holding().neededFriction()).isCloseTo(0.12, within(1e-3));
    assertThat(slips.holding().sentence())
        .isEqualTo("Slips at the feet: needs friction 0.12, the floor gives 0.10.");
    assertThat(slips.knows(JointId.L5_S1, Side.MIDLINE)).isTrue();
    assertThat(slips.knows(JointId.KNEE, Side.RIGHT)).isFalse();
    assertThatThrownBy(() -> slips.moment(JointId.KNEE))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The moment at the right knee is not known, because the supports cannot hold this"
                + " position. Slips at the feet: needs friction 0.12, the floor gives 0.10.");
    assertThat(slips.moments().notes()).anyMatch(n -> n.startsWith("Slips at the feet"));
    assertThat(slips.text()).contains("Slips at the feet");
    assertThat(slips.worksheet().text()).contains("\"held\" : false");
  }

  @Test
  void just_less_than_the_friction_is_held() {
    Position standing = row(60, new Floor(BODY, 0.10));
    Position holds = standing.with(pull(standing, 9.9));
    assertThat(holds.held()).isTrue();
    assertBalanced(holds);
    assertWithinLimits(holds);
  }

  @Test
  void without_any_support_the_weight_is_lacking() {
    Position falls = row(60);
    assertThat(falls.holding().verdict()).isEqualTo(Holding.Verdict.NOT_HELD);
    assertThat(falls.holding().sentence())
        .isEqualTo(
            "Cannot be held: nothing gives the 981 N upward that are lacking. Add a support or a"
                + " grip that does, or take the pull away.");
  }

  @Test
  void one_foot_carries_what_two_did_and_a_foot_in_the_air_is_refused() {
    Pose pose = bentOver(0);
    Pose aside = pose.rootAt(pose.rootPlace(), Frame.WORLD);
    Position one =
        Position.of(
            "one foot",
            BODY,
            aside,
            List.of(),
            List.of(Footing.foot(BODY, Side.RIGHT)),
            List.of(),
            List.of());
    assertThat(one.holding().verdict()).isEqualTo(Holding.Verdict.TIPS);
    assertThat(one.holding().sentence()).startsWith("Tips sideways: ");
    Footing step = Footing.feet(BODY).step(Side.LEFT, cm(20));
    assertThatThrownBy(() -> step.contacts(aside.placed()))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The left foot is 20.0 cm below its ground: raise or lower the foot, or say how high"
                + " its ground is.");
  }

  @Test
  void eight_edges_give_friction_on_the_diagonal_that_four_leave_out() {
    Position standing = row(60, new Floor(BODY, 0.10));
    int right = BODY.tree().indexOf("right fingers");
    int left = BODY.tree().indexOf("left fingers");
    Vector3D grip = standing.placement().origin(right);
    // A level pull of 7 % of the weight, half back and half to the side, with some twist: less
    // than 0.10 on a cone, but more on four edges.
    Load cord =
        new Cable(
            7.15,
            1,
            new Vector3D(grip.getX() - 500, grip.getY(), -500),
            List.of(Grasp.fixed(right, Vector3D.ZERO), Grasp.fixed(left, Vector3D.ZERO)));
    Position four = standing.with(cord);
    assertThat(four.holding().verdict()).isEqualTo(Holding.Verdict.SLIPS);
    Position eight = four.finerFriction();
    assertThat(eight.holding().sentence()).isEmpty();
    assertBalanced(eight);
    assertWithinLimits(eight);
  }

  @Test
  void left_and_right_share_alike_on_a_pad() {
    Position padded = row(60, new Floor(BODY)).on(Pad.chest(deg(30)));
    for (JointId joint : List.of(JointId.HIP, JointId.KNEE, JointId.ANKLE)) {
      double right = padded.moment(joint, Side.RIGHT).signed();
      assertThat(padded.moment(joint, Side.LEFT).signed()).isCloseTo(right, within(1e-6));
    }
  }

  @Test
  void compression_and_shear_have_the_signs_of_their_worked_cases() {
    Position upright = row(0, new Floor(BODY));
    double above = 100 * Gravity.STANDARD - 2 * belowKnee() * Gravity.STANDARD;
    assertThat(upright.contactForce(JointId.KNEE, Side.RIGHT).compression())
        .isCloseTo(above / 2, within(1e-6));
    assertThat(upright.contactForce(JointId.ELBOW, Side.RIGHT).compression()).isNegative();
    Position level = row(60, new Floor(BODY));
    ContactForce disc = level.contactForce(JointId.L5_S1, Side.MIDLINE);
    assertThat(disc.forward()).isPositive();
    assertThat(disc.compression()).isPositive();
    assertThat(disc.size()).isCloseTo(level.moment(JointId.L5_S1).force().getNorm(), within(1e-9));
    assertThat(disc.text()).matches("L5/S1: \\d+ N together, shear \\d+ N forward, .*");
  }

  private static double belowKnee() {
    return BODY.tree().segment(BODY.tree().indexOf("right shank")).mass()
        + BODY.tree().segment(BODY.tree().indexOf("right foot")).mass();
  }
}
