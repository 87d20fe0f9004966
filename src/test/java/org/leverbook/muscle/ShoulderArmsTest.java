package org.leverbook.muscle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.m;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;

/** The shoulder in three dimensions, from tables that know three planes. */
class ShoulderArmsTest {

  private static final Body MAN = Person.of(Sex.MALE, kg(75), m(1.75)).body();
  private static final SegmentTree TREE = MAN.tree();
  private static final Musculature MUSCLES = Musculature.of(MAN);

  /** What each muscle of one shoulder turns for each newton, as a vector in the world, metres. */
  private static Map<String, Vector3D> turning(Side side, double... shoulderDegrees) {
    double[] angles = new double[TREE.angles()];
    int first = TREE.firstAngle(TREE.distalOf(JointId.SHOULDER.on(side)));
    for (int k = 0; k < 3; k++) {
      angles[first + k] = Math.toRadians(shoulderDegrees[k]);
    }
    return turning(side, Pose.of(TREE, angles, Vector3D.ZERO, Frame.WORLD));
  }

  private static Map<String, Vector3D> turning(Side side, Pose pose) {
    Placement where = pose.placed();
    Map<String, Vector3D> vectors = new TreeMap<>();
    for (Strand strand : MUSCLES.strands()) {
      if (strand.side() == side) {
        Vector3D sum = Vector3D.ZERO;
        for (Crossing crossing : strand.crossings()) {
          if (crossing instanceof ShoulderCrossing) {
            Vector3D axis = Musculature.axis(crossing.axis(), where);
            sum = sum.add(axis.scalarMultiply(crossing.arm(pose)));
          }
        }
        vectors.put(strand.muscle().key(), sum);
      }
    }
    return vectors;
  }

  private static double listed(String muscle, String axis, double degrees) {
    return ArmTable.SHIPPED.of(muscle).stream()
        .filter(s -> s.joint().equals("shoulder") && s.axis().equals(axis))
        .findFirst()
        .map(s -> s.curve().at(Math.toRadians(degrees)))
        .orElse(0.0);
  }

  @Test
  void raised_forward_every_muscle_has_the_arm_of_the_flexion_table() {
    for (double degrees : List.of(0.0, 30.0, 60.0, 90.0, 110.0)) {
      turning(Side.RIGHT, degrees, 0, 0)
          .forEach(
              (muscle, vector) ->
                  assertThat(vector.getZ())
                      .as("%s at %.0f", muscle, degrees)
                      .isCloseTo(listed(muscle, "flexion_extension", degrees), within(1e-12)));
    }
  }

  @Test
  void raised_to_the_side_every_muscle_has_the_arm_of_the_abduction_table() {
    for (double degrees : List.of(0.0, 30.0, 60.0, 90.0, 110.0)) {
      turning(Side.RIGHT, 0, degrees, 0)
          .forEach(
              (muscle, vector) ->
                  assertThat(-vector.getX())
                      .as("%s at %.0f", muscle, degrees)
                      .isCloseTo(listed(muscle, "abduction_adduction", degrees), within(1e-12)));
    }
  }

  @Test
  void swept_level_every_muscle_has_the_arm_of_the_level_table() {
    // Straight forward (90 degrees of the table), and straight to the side (0).
    turning(Side.RIGHT, 90, 0, 0)
        .forEach(
            (muscle, vector) ->
                assertThat(vector.getY())
                    .as(muscle)
                    .isCloseTo(
                        listed(muscle, "horizontal_adduction_abduction", 90), within(1e-12)));
    turning(Side.RIGHT, 0, 90, 0)
        .forEach(
            (muscle, vector) ->
                assertThat(vector.getY())
                    .as(muscle)
                    .isCloseTo(listed(muscle, "horizontal_adduction_abduction", 0), within(1e-12)));
  }

  @Test
  void hanging_each_muscle_has_all_three_arms_at_once() {
    turning(Side.RIGHT, 0, 0, 0)
        .forEach(
            (muscle, vector) -> {
              Vector3D expected =
                  new Vector3D(
                      -listed(muscle, "abduction_adduction", 0),
                      listed(muscle, "internal_external_rotation", 0),
                      listed(muscle, "flexion_extension", 0));
              assertThat(vector.distance(expected)).as(muscle).isLessThan(1e-12);
            });
  }

  @Test
  void a_turn_of_the_arm_about_itself_changes_no_arm() {
    Map<String, Vector3D> straight = turning(Side.RIGHT, 40, 25, 0);
    turning(Side.RIGHT, 40, 25, 50)
        .forEach(
            (muscle, vector) ->
                assertThat(vector.distance(straight.get(muscle))).as(muscle).isLessThan(1e-12));
  }

  @Test
  void the_left_shoulder_mirrors_the_right() {
    Random random = new Random(7);
    for (int trial = 0; trial < 50; trial++) {
      double[] degrees = {
        200 * random.nextDouble() - 50, 180 * random.nextDouble() - 40, 90 * random.nextDouble()
      };
      Map<String, Vector3D> left = turning(Side.LEFT, degrees);
      turning(Side.RIGHT, degrees)
          .forEach(
              (muscle, right) -> {
                // A turn is mirrored in the middle plane: x and y change sign, z does not.
                Vector3D mirrored = new Vector3D(-right.getX(), -right.getY(), right.getZ());
                assertThat(left.get(muscle).distance(mirrored)).as(muscle).isLessThan(1e-12);
              });
    }
  }

  @Test
  void nothing_jumps_anywhere_not_even_through_the_hanging_and_the_upright_arm() {
    Random random = new Random(11);
    double worst = 0;
    for (int trial = 0; trial < 4000; trial++) {
      double flexion = 240 * random.nextDouble() - 60;
      double abduction = 230 * random.nextDouble() - 45;
      if (trial % 4 == 0) {
        flexion = random.nextDouble() < 0.5 ? 0 : 180;
        abduction = 0;
      }
      Map<String, Vector3D> here = turning(Side.RIGHT, flexion, abduction, 0);
      Map<String, Vector3D> there =
          turning(
              Side.RIGHT,
              flexion + 0.02 * random.nextDouble() - 0.01,
              abduction + 0.02 * random.nextDouble() - 0.01,
              0);
      for (Map.Entry<String, Vector3D> one : here.entrySet()) {
        worst = Math.max(worst, one.getValue().distance(there.get(one.getKey())));
      }
    }
    // A hundredth of a degree (1.7e-4 rad each way): arms change by less than 0.5 m a radian.
    assertThat(worst).isLessThan(1.2e-4);
  }

  @Test
  void a_lifted_shoulder_girdle_counts_as_a_raised_arm() {
    double[] angles = new double[TREE.angles()];
    angles[TREE.angleOf("right shoulder", "abduction")] = Math.toRadians(50);
    angles[TREE.angleOf("right shoulder girdle", "abduction")] = Math.toRadians(20);
    Pose pose = Pose.of(TREE, angles, Vector3D.ZERO, Frame.WORLD);
    turning(Side.RIGHT, pose)
        .forEach(
            (muscle, vector) ->
                assertThat(-vector.getX())
                    .as(muscle)
                    .isCloseTo(listed(muscle, "abduction_adduction", 70), within(1e-12)));
  }

  @Test
  void with_the_arm_level_to_the_side_the_chest_still_pulls_forward() {
    // Where the flexion axis lies along the arm, the axis of the row must not.
    double[] angles = new double[TREE.angles()];
    int flexion = TREE.angleOf("right shoulder", "flexion");
    angles[TREE.angleOf("right shoulder", "abduction")] = Math.PI / 2;
    Pose pose = Pose.of(TREE, angles, Vector3D.ZERO, Frame.WORLD);
    Vector3D axis = Musculature.axis(flexion, pose.placed());
    assertThat(axis.distance(Vector3D.PLUS_J)).isLessThan(1e-12);
    double[] arms = new double[MUSCLES.axes().length * MUSCLES.strands().size()];
    MUSCLES.arms(pose, arms);
    for (int i = 0; i < MUSCLES.strands().size(); i++) {
      Strand strand = MUSCLES.strands().get(i);
      if (strand.fullName().equals("right pectoralis major, sternal part")) {
        assertThat(arms[MUSCLES.row(flexion) * MUSCLES.strands().size() + i])
            .isCloseTo(0.052, within(1e-12));
        return;
      }
    }
    throw new AssertionError("no such muscle");
  }
}
