package org.leverbook.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.newton;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.load.Force;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.NetLoads;

/** A level forearm, weightless here, with a weight in the hand and muscles at the elbow. */
class OppositionTest {

  private static final SegmentTree TREE = Person.of(Sex.MALE, kg(80), cm(180)).body().tree();
  private static final Placement LEVEL =
      Pose.neutral(TREE).with("right elbow", Math.PI / 2, 0).placed();

  /** A weight on the forearm, so far ahead of the elbow. */
  private static JointMoment weight(double newtons, double ahead) {
    Force force =
        Force.ofLoad(
            "bar",
            TREE.indexOf("right hand"),
            LEVEL.centre("right elbow").add(new Vector3D(ahead, 0, 0)),
            new Vector3D(0, -newtons, 0));
    return JointMoment.of(NetLoads.of(LEVEL, List.of(force), Vector3D.ZERO), "right elbow", "bar");
  }

  /** A muscle straight up from the forearm, so far ahead of the elbow (behind it if negative). */
  private static LineOfPull upright(String name, double ahead) {
    return LineOfPull.towards(
        LEVEL,
        name,
        "right forearm",
        new Vector3D(0, -ahead, 0),
        "right upper arm",
        Vector3D.PLUS_J);
  }

  @Test
  void forty_newtons_at_thirty_centimetres_ask_240_of_a_biceps_at_five_and_200_of_the_joint() {
    JointMoment elbow = weight(40, 0.30);
    MusclePull biceps = Opposition.alone(elbow, LEVEL, upright("biceps", 0.05));
    assertThat(biceps.force()).isCloseTo(240, within(1e-9));
    assertThat(biceps).hasToString("biceps 240 N");
    JointContact contact = JointContact.of(elbow, LEVEL, List.of(biceps));
    assertThat(contact.force().distance(new Vector3D(0, -200, 0))).isLessThan(1e-9);
    assertThat(contact.along(Vector3D.MINUS_J)).isCloseTo(200, within(1e-9));
    assertThat(contact.across(Vector3D.MINUS_J)).isCloseTo(0, within(1e-9));
    assertThat(contact.leftOver().getNorm()).isLessThan(1e-9);
  }

  @Test
  void a_muscle_on_the_wrong_side_would_have_to_push_and_is_refused() {
    assertThatThrownBy(() -> Opposition.alone(weight(40, 0.30), LEVEL, upright("triceps", -0.02)))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The triceps would have to push with 600 N, and a muscle can only pull: the resistance"
                + " tends to extend the right elbow, which the elbow flexors oppose. Ask one of"
                + " them.");
  }

  @Test
  void a_line_through_the_joint_holds_nothing() {
    assertThatThrownBy(() -> Opposition.alone(weight(40, 0.30), LEVEL, upright("any", 0)))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("This line passes 0.0000 mm from the axis of the right elbow");
  }

  @Test
  void what_a_muscle_leaves_of_a_twisting_moment_is_told() {
    Force aside =
        Force.ofLoad(
            "bar",
            TREE.indexOf("right hand"),
            LEVEL.centre("right elbow").add(new Vector3D(0.3, 0, 0.1)),
            new Vector3D(0, -40, 0));
    JointMoment elbow =
        JointMoment.of(NetLoads.of(LEVEL, List.of(aside), Vector3D.ZERO), "right elbow", "bar");
    MusclePull biceps = Opposition.alone(elbow, LEVEL, upright("biceps", 0.05));
    JointContact contact = JointContact.of(elbow, LEVEL, List.of(biceps));
    // 40 N at 10 cm aside: 4 N·m about the forearm's own length.
    assertThat(contact.leftOver().distance(new Vector3D(4, 0, 0))).isLessThan(1e-9);
  }

  @Test
  void muscles_of_equal_arm_share_by_the_square_of_their_strength() {
    Opposition.Shared shared =
        Opposition.shared(
            weight(100, 0.25),
            LEVEL,
            List.of(
                Muscle.of(upright("strong", 0.05), newton(1000)),
                Muscle.of(upright("weak", 0.05), newton(500)),
                Muscle.of(upright("behind", -0.03), newton(900))));
    assertThat(shared.missing()).isZero();
    assertThat(shared.pulls().get(0).force()).isCloseTo(400, within(1e-9));
    assertThat(shared.pulls().get(1).force()).isCloseTo(100, within(1e-9));
    assertThat(shared.pulls().get(2).force()).isZero();
  }

  @Test
  void a_muscle_at_its_limit_stays_there_and_the_others_take_the_rest() {
    Opposition.Shared shared =
        Opposition.shared(
            weight(320, 0.25),
            LEVEL,
            List.of(
                new Muscle(upright("long arm", 0.10), 600),
                new Muscle(upright("short arm", 0.03), 1000)));
    // Of 80 N·m the long arm gives all it has, 600 N x 0.10 m = 60; 20 remain for 0.03 m.
    assertThat(shared.missing()).isZero();
    assertThat(shared.pulls().get(0).force()).isCloseTo(600, within(1e-9));
    assertThat(shared.pulls().get(1).force()).isCloseTo(20 / 0.03, within(1e-9));
  }

  @Test
  void what_all_strength_together_cannot_hold_is_told_in_newton_metres() {
    Opposition.Shared shared =
        Opposition.shared(
            weight(1000, 0.30), LEVEL, List.of(new Muscle(upright("biceps", 0.05), 1000)));
    assertThat(shared.missing()).isCloseTo(250, within(1e-9));
    assertThat(shared.pulls().get(0).force()).isCloseTo(1000, within(1e-9));
  }

  /** No other split that holds the moment costs less: tried along every pair of muscles. */
  @Test
  void shared_pulls_are_the_cheapest_within_the_limits() {
    Random random = new Random(31);
    for (int round = 0; round < 300; round++) {
      List<Muscle> muscles = new ArrayList<>();
      double strongest = 0;
      int count = 2 + random.nextInt(5);
      for (int i = 0; i < count; i++) {
        double arm = 0.01 + 0.05 * random.nextDouble();
        double most = 100 + 1000 * random.nextDouble();
        muscles.add(new Muscle(upright("muscle " + i, arm), most));
        strongest += arm * most;
      }
      double wanted = (0.05 + 0.94 * random.nextDouble()) * strongest;
      JointMoment elbow = weight(wanted / 0.25, 0.25);
      Opposition.Shared shared = Opposition.shared(elbow, LEVEL, muscles);
      assertThat(shared.missing()).isZero();
      assertThat(JointContact.of(elbow, LEVEL, shared.pulls()).leftOver().getNorm())
          .isLessThan(1e-9);
      assertCheapest(muscles, shared.pulls());
    }
  }

  private static void assertCheapest(List<Muscle> muscles, List<MusclePull> pulls) {
    for (int give = 0; give < pulls.size(); give++) {
      double force = pulls.get(give).force();
      assertThat(force).isBetween(0.0, muscles.get(give).maxForce());
      for (int take = 0; take < pulls.size(); take++) {
        // Moving a little moment from one to the other must not make it cheaper.
        double little = 1e-4;
        double less = force - little / arm(muscles.get(give));
        double more = pulls.get(take).force() + little / arm(muscles.get(take));
        if (give != take && less >= 0 && more <= muscles.get(take).maxForce()) {
          double before =
              cost(muscles.get(give), force) + cost(muscles.get(take), pulls.get(take).force());
          double after = cost(muscles.get(give), less) + cost(muscles.get(take), more);
          assertThat(after).isGreaterThan(before - 1e-14);
        }
      }
    }
  }

  private static double arm(Muscle muscle) {
    return muscle.line().arm(LEVEL, "right elbow", "flexion");
  }

  private static double cost(Muscle muscle, double force) {
    return Math.pow(force / muscle.maxForce(), 2);
  }

  @Test
  void a_muscle_without_strength_is_refused() {
    assertThatThrownBy(() -> new Muscle(upright("biceps", 0.05), Double.NaN))
        .isInstanceOf(Refused.class)
        .hasMessage("The greatest force of the biceps is NaN N, but must be a number above zero.");
  }

  @Test
  void twenty_five_square_centimetres_at_thirty_newtons_each_give_750_newtons() {
    var area =
        tech.units.indriya.quantity.Quantities.getQuantity(
            25e-4, tech.units.indriya.unit.Units.SQUARE_METRE);
    var tension =
        tech.units.indriya.quantity.Quantities.getQuantity(
            30e4, tech.units.indriya.unit.Units.PASCAL);
    Muscle muscle = Muscle.ofCrossSection(upright("biceps", 0.05), area, tension);
    assertThat(muscle.maxForce()).isCloseTo(750, within(1e-9));
  }
}
