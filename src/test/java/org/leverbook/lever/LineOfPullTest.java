package org.leverbook.lever;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Freedom;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;

/** A straight muscle on the whole body: its arm, its action, and what it cannot do. */
class LineOfPullTest {

  private static final SegmentTree TREE = Person.of(Sex.MALE, kg(80), cm(180)).body().tree();

  private static Vector3D at(double x, double y, double z) {
    return new Vector3D(x, y, z);
  }

  @Test
  void a_front_muscle_flexes_the_elbow_and_a_back_one_extends_it() {
    Placement bent = Pose.neutral(TREE).with("right elbow", Math.PI / 2, 0).placed();
    LineOfPull front =
        LineOfPull.between(
            TREE, "front", "right upper arm", at(0.04, -0.05, 0), "right forearm", at(0, -0.04, 0));
    LineOfPull back =
        LineOfPull.between(
            TREE, "back", "right upper arm", at(-0.02, -0.05, 0), "right forearm", at(0, 0.02, 0));
    assertThat(front.action(bent, "right elbow", "flexion")).isEqualTo("flex");
    assertThat(back.action(bent, "right elbow", "flexion")).isEqualTo("extend");
    // Level forearm, insertion 4 cm along it, origin straight above: the arm is those 4 cm.
    assertThat(front.arm(bent, "right elbow", "flexion")).isCloseTo(0.04, within(1e-12));
  }

  @Test
  void the_arm_about_every_axis_it_crosses_is_the_shortening_for_each_radian() {
    Random random = new Random(21);
    double step = 1e-5;
    int compared = 0;
    for (int round = 0; round < 60; round++) {
      double[] angles = new double[TREE.angles()];
      for (int i = 0; i < angles.length; i++) {
        angles[i] = random.nextDouble() - 0.5;
      }
      int one = random.nextInt(TREE.size());
      int other = random.nextInt(TREE.size());
      LineOfPull line =
          new LineOfPull("any", one, at(0.05, 0.02, -0.03), other, at(-0.04, 0.06, 0.02));
      Placement where = placed(angles);
      for (int segment = 1; segment < TREE.size(); segment++) {
        if (!line.crosses(TREE, segment)) {
          continue;
        }
        String joint = TREE.segment(segment).joint().fullName();
        for (Freedom freedom : TREE.segment(segment).joint().freedoms()) {
          String axis = freedom.motion().axis();
          int angle = TREE.angleOf(joint, axis);
          double[] more = angles.clone();
          double[] less = angles.clone();
          more[angle] += step;
          less[angle] -= step;
          double shortening = (line.length(placed(less)) - line.length(placed(more))) / (2 * step);
          // Central difference: step² of a metre, and rounding of 1e-16 / step.
          assertThat(line.arm(where, joint, axis)).isCloseTo(shortening, within(1e-8));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(1000);
  }

  private static Placement placed(double[] angles) {
    return Pose.of(TREE, angles, Vector3D.ZERO, Frame.WORLD).placed();
  }

  @Test
  void a_muscle_that_does_not_cross_the_joint_is_refused_by_name() {
    LineOfPull thigh =
        LineOfPull.between(
            TREE, "quadriceps", "right thigh", at(0.05, -0.1, 0), "right shank", at(0.03, 0, 0));
    Placement standing = Pose.neutral(TREE).placed();
    assertThatThrownBy(() -> thigh.arm(standing, "right hip", "flexion"))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The quadriceps does not cross the right hip, so it cannot hold it. Name a muscle with"
                + " one end on each side of the joint.");
  }

  @Test
  void both_ends_on_one_segment_are_refused() {
    assertThatThrownBy(
            () ->
                LineOfPull.between(TREE, "any", "pelvis", Vector3D.ZERO, "pelvis", Vector3D.PLUS_I))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The any has both ends on the pelvis and moves no joint. Put one end on another"
                + " segment.");
  }

  @Test
  void a_direction_without_length_is_refused() {
    Placement standing = Pose.neutral(TREE).placed();
    assertThatThrownBy(
            () ->
                LineOfPull.towards(
                    standing, "any", "right shank", Vector3D.ZERO, "right thigh", Vector3D.ZERO))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("needs a direction");
  }
}
