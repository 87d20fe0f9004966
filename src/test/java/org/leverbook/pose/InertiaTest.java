package org.leverbook.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.body.Freedom;
import org.leverbook.body.Joint;
import org.leverbook.body.Motion;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.quantity.Refused;

/** What masses resist with when they are sped up or whirled around: textbook cases by hand. */
class InertiaTest {

  private static final SegmentTree TREE = Person.of(Sex.MALE, kg(80), cm(180)).body().tree();

  private static final Vector3D ZERO = Vector3D.ZERO;

  /** A person with straight joints whose pelvis moves as told. */
  private static Accelerations upright(MovingPose.Root root) {
    double[] still = new double[TREE.angles()];
    return MovingPose.of(Pose.neutral(TREE), still, still, root).accelerations();
  }

  /** A post and a forearm of 2 kg, level ahead, its mass 0.5 m from the joint. */
  private static Accelerations forearm(double rate, double gain) {
    Freedom bend = new Freedom(Motion.FLEXION, Vector3D.PLUS_K, -4, 4);
    Joint elbow = new Joint("elbow", Side.MIDLINE, "elbow", ZERO, List.of(bend));
    SegmentTree tree =
        SegmentTree.root("post", 0, ZERO)
            .segment("post", elbow, "forearm", 2, new Vector3D(0.5, 0, 0))
            .build();
    double[] rates = {rate};
    double[] gains = {gain};
    return MovingPose.of(Pose.neutral(tree), rates, gains, MovingPose.Root.STILL).accelerations();
  }

  /** A brick of 2 kg, known by its radii of gyration, that turns about its own centre. */
  private static Vector3D brick(Frame lies, Vector3D turning, Vector3D turningUp) {
    SegmentTree tree = SegmentTree.root("brick", 2, ZERO, new Vector3D(1, 2, 3)).build();
    Pose pose = Pose.neutral(tree).rootAt(ZERO, lies);
    MovingPose.Root root = new MovingPose.Root(ZERO, ZERO, turning, turningUp);
    return MovingPose.of(pose, new double[0], new double[0], root).accelerations().inertiaMoment(0);
  }

  @Test
  void a_body_sped_up_as_a_whole_resists_with_its_mass_and_does_not_resist_turning() {
    Vector3D gain = new Vector3D(0.5, 2, -1);
    Accelerations up = upright(new MovingPose.Root(new Vector3D(3, 0, 1), gain, ZERO, ZERO));
    Vector3D sum = ZERO;
    for (int i = 0; i < TREE.size(); i++) {
      sum = sum.add(up.inertiaForce(i));
      assertThat(up.inertiaMoment(i).getNorm()).isZero();
    }
    assertThat(sum.distance(new Vector3D(-40, -160, 80))).isLessThan(1e-9);
  }

  @Test
  void a_weight_on_a_whirling_arm_pulls_outward_with_mass_times_arm_times_speed_squared() {
    // 2 kg at 0.5 m, 2 rad/s, 3 rad/s2 upward: 2 · 0.5 · 4 = 4 N outward, 2 · 0.5 · 3 = 3 N down.
    Vector3D force = forearm(2, 3).inertiaForce(1);
    assertThat(force.distance(new Vector3D(4, -3, 0))).isLessThan(1e-12);
  }

  @Test
  void who_spins_upright_is_pulled_apart_sideways_only() {
    double speed = 4;
    Accelerations spin = upright(new MovingPose.Root(ZERO, ZERO, new Vector3D(0, speed, 0), ZERO));
    for (String hand : List.of("right hand", "left hand")) {
      int i = TREE.indexOf(hand);
      Vector3D centre = spin.where().centreOfMass(i);
      Vector3D outward = new Vector3D(centre.getX(), 0, centre.getZ());
      Vector3D pull = outward.scalarMultiply(TREE.segment(i).mass() * speed * speed);
      assertThat(spin.inertiaForce(i).distance(pull)).isLessThan(1e-9);
    }
  }

  @Test
  void a_brick_resists_a_gain_of_turning_about_each_axis_with_its_own_radius() {
    // Mass times radius squared times gain: 2 · 1, 2 · 4, 2 · 9, each against the gain.
    Vector3D moment = brick(Frame.WORLD, ZERO, new Vector3D(1, 1, 1));
    assertThat(moment.distance(new Vector3D(-2, -8, -18))).isLessThan(1e-12);
  }

  @Test
  void a_brick_that_turns_steadily_askew_wants_to_wobble_as_euler_tells() {
    // Euler: the third moment needed is (I2 - I1) w1 w2 = (8 - 2) · 3 · 5 = 90; it resists.
    Vector3D moment = brick(Frame.WORLD, new Vector3D(3, 5, 0), ZERO);
    assertThat(moment.distance(new Vector3D(0, 0, -90))).isLessThan(1e-12);
    assertThat(brick(Frame.WORLD, new Vector3D(0, 5, 0), ZERO).getNorm()).isZero();
  }

  @Test
  void a_brick_laid_down_differently_resists_with_the_radius_that_lies_along_the_turning() {
    // Laid on its face, its own upward axis points forward.
    Frame lies = Frame.leanedForward(Math.PI / 2);
    Vector3D moment = brick(lies, ZERO, new Vector3D(1, 0, 0));
    assertThat(moment.distance(new Vector3D(-8, 0, 0))).isLessThan(1e-12);
  }

  @Test
  void a_body_held_still_resists_nothing() {
    Accelerations still = MovingPose.still(Pose.neutral(TREE)).accelerations();
    for (int i = 0; i < TREE.size(); i++) {
      assertThat(still.inertiaForce(i).getNorm()).isZero();
      assertThat(still.inertiaMoment(i).getNorm()).isZero();
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
  void a_speed_that_is_no_number_is_refused_wherever_it_comes(double bad) {
    Pose pose = Pose.neutral(TREE);
    double[] good = new double[TREE.angles()];
    double[] wrong = good.clone();
    wrong[5] = bad;
    assertThatThrownBy(() -> MovingPose.of(pose, wrong, good, MovingPose.Root.STILL))
        .isInstanceOf(Refused.class)
        .hasMessage("Among the rates of the joints is " + bad + ": give a finite number.");
    assertThatThrownBy(() -> MovingPose.of(pose, good, wrong, MovingPose.Root.STILL))
        .isInstanceOf(Refused.class)
        .hasMessage("Among the accelerations of the joints is " + bad + ": give a finite number.");
    for (int k = 0; k < 4; k++) {
      Vector3D[] parts = {ZERO, ZERO, ZERO, ZERO};
      parts[k] = new Vector3D(0, bad, 0);
      MovingPose.Root root = new MovingPose.Root(parts[0], parts[1], parts[2], parts[3]);
      assertThatThrownBy(() -> MovingPose.of(pose, good, good, root))
          .isInstanceOf(Refused.class)
          .hasMessage("The pelvis moves with " + bad + ": give finite numbers.");
    }
  }

  @Test
  void rates_for_another_number_of_joints_are_refused_with_both_numbers() {
    double[] good = new double[TREE.angles()];
    assertThatThrownBy(
            () ->
                MovingPose.of(
                    Pose.neutral(TREE), Arrays.copyOf(good, 2), good, MovingPose.Root.STILL))
        .isInstanceOf(Refused.class)
        .hasMessage("This body has " + TREE.angles() + " joint angles, but 2 rates were given.");
  }

  @Test
  void twice_the_pace_is_twice_the_speed_of_the_pelvis_and_four_times_its_gains() {
    MovingPose.Root root =
        new MovingPose.Root(
            new Vector3D(1, 2, 3),
            new Vector3D(0, 1, 0),
            new Vector3D(0, 0.5, 0),
            new Vector3D(2, 0, 0));
    double[] still = new double[TREE.angles()];
    MovingPose way = MovingPose.of(Pose.neutral(TREE), still, still, root);
    MovingPose.Root twice = way.paced(2, 0).root();
    assertThat(twice.velocity()).isEqualTo(new Vector3D(2, 4, 6));
    assertThat(twice.acceleration()).isEqualTo(new Vector3D(0, 4, 0));
    assertThat(twice.turning()).isEqualTo(new Vector3D(0, 1, 0));
    assertThat(twice.turningUp()).isEqualTo(new Vector3D(8, 0, 0));
    // A pace that itself grows by 10 adds ten times the speed.
    MovingPose.Root growing = way.paced(1, 10).root();
    assertThat(growing.velocity()).isEqualTo(root.velocity());
    assertThat(growing.acceleration()).isEqualTo(new Vector3D(10, 21, 30));
    assertThat(growing.turningUp()).isEqualTo(new Vector3D(2, 5, 0));
  }

  @Test
  void the_whole_body_s_centre_of_mass_lies_where_its_parts_balance() {
    Placement where = Pose.neutral(TREE).rootAt(new Vector3D(1, 2, 3), Frame.WORLD).placed();
    double tilt = 0;
    for (int i = 0; i < TREE.size(); i++) {
      double away = where.centreOfMass(i).subtract(where.centreOfMass()).getY();
      tilt += TREE.segment(i).mass() * away;
    }
    assertThat(tilt).isCloseTo(0, within(1e-12));
    // A straight man's centre of mass lies near his hips, a little above; left and right alike.
    assertThat(where.centreOfMass().getZ()).isCloseTo(3, within(1e-12));
    assertThat(where.centreOfMass().distance(where.centre("L5/S1"))).isLessThan(0.15);
  }
}
