package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;

/** Signs worked by hand: a force at a known place near a joint of a man who stands upright. */
class NetLoadsTest {

  private static final SegmentTree TREE = Person.of(Sex.MALE, kg(80), cm(180)).body().tree();
  private static final Placement UPRIGHT = Pose.neutral(TREE).placed();

  /** One force on a segment, so far ahead of, above and to the right of a joint; no weights. */
  private static JointMoment at(String joint, String segment, Vector3D away, Vector3D force) {
    Force one = Force.ofLoad("bar", TREE.indexOf(segment), UPRIGHT.centre(joint).add(away), force);
    return JointMoment.of(NetLoads.of(UPRIGHT, List.of(one), Vector3D.ZERO), joint, "bar");
  }

  @Test
  void a_bar_in_front_of_an_upright_trunk_flexes_the_low_back_with_force_times_arm() {
    JointMoment back =
        at("L5/S1", "right hand", new Vector3D(0.3, 0.4, 0), new Vector3D(0, -1000, 0));
    assertThat(back.tendsTo()).isEqualTo("flex");
    assertThat(back.opposedBy()).isEqualTo("trunk extensors");
    assertThat(back.size()).isCloseTo(300, within(1e-9));
    assertThat(back.signed()).isCloseTo(300, within(1e-9));
    assertThat(back.arm()).isCloseTo(0.3, within(1e-12));
    assertThat(back.arm3d()).isCloseTo(0.3, within(1e-12));
    assertThat(back.moment().distance(new Vector3D(0, 0, -300))).isLessThan(1e-9);
    assertThat(back.force().distance(new Vector3D(0, -1000, 0))).isLessThan(1e-9);
    assertThat(back.text())
        .isEqualTo("L5/S1: 300 N·m, tends to flex it, opposed by the trunk extensors");
  }

  @ParameterizedTest(name = "{0}: {2} N up at {1} m ahead tends to {3}, {4} N·m, against {5}")
  @CsvSource({
    "L5/S1, 0.3, -1000, flex, 300, trunk extensors, right hand",
    "L5/S1, -0.1, -1000, extend, 100, trunk flexors, right hand",
    "T7/T8, 0.25, -400, flex, 100, trunk extensors, left hand",
    "C7/T1, 0.03, -50, flex, 1.5, neck extensors, head",
    "right shoulder, 0.3, -200, extend, 60, shoulder flexors, right hand",
    "left shoulder, 0.3, -200, extend, 60, shoulder flexors, left hand",
    "right shoulder, -0.1, -200, flex, 20, shoulder extensors, right hand",
    "right elbow, 0.3, -200, extend, 60, elbow flexors, right hand",
    "left elbow, 0.3, -200, extend, 60, elbow flexors, left hand",
    "left elbow, -0.2, -200, flex, 40, elbow extensors, left hand",
    "right wrist, 0.08, -200, extend, 16, wrist flexors, right hand",
    "left wrist, 0.08, -200, extend, 16, wrist flexors, left fingers",
    // Below, the force is the floor's: upward, on the foot.
    "right hip, 0.2, 800, flex, 160, hip extensors, right foot",
    "left hip, 0.2, 800, flex, 160, hip extensors, left foot",
    "right hip, -0.1, 800, extend, 80, hip flexors, right toes",
    "right knee, -0.1, 800, flex, 80, knee extensors, right foot",
    "left knee, -0.1, 800, flex, 80, knee extensors, left foot",
    "left knee, 0.05, 800, extend, 40, knee flexors, left foot",
    "right ankle, 0.12, 800, dorsiflex, 96, ankle plantarflexors, right foot",
    "left ankle, 0.12, 800, dorsiflex, 96, ankle plantarflexors, left toes",
    "left ankle, -0.04, 800, plantarflex, 32, ankle dorsiflexors, left foot",
    "right ball of the foot, 0.05, 400, extend, 20, toe flexors, right toes"
  })
  void a_vertical_force_ahead_or_behind(
      String joint,
      double ahead,
      double up,
      String verb,
      double size,
      String muscles,
      String segment) {
    JointMoment moment = at(joint, segment, new Vector3D(ahead, -0.2, 0), new Vector3D(0, up, 0));
    assertThat(moment.tendsTo()).isEqualTo(verb);
    assertThat(moment.opposedBy()).isEqualTo(muscles);
    assertThat(moment.size()).isCloseTo(size, within(1e-9));
    assertThat(moment.arm()).isCloseTo(Math.abs(ahead), within(1e-12));
    assertThat(moment.about("abduction")).isCloseTo(0, within(1e-9));
    assertThat(moment.about("rotation")).isCloseTo(0, within(1e-9));
  }

  @ParameterizedTest(name = "{0}: from {1} m to the right, force ({2}, {3}, 0): {4} {5} N·m")
  @CsvSource({
    // A weight to the right of the joint.
    "L5/S1, 0.2, 0, -500, abduction, 100, right hand",
    "L5/S1, -0.2, 0, -500, abduction, -100, left hand",
    "right shoulder, 0.3, 0, -100, abduction, -30, right hand",
    "left shoulder, -0.3, 0, -100, abduction, -30, left hand",
    // The floor's push inside of the hip adducts it.
    "right hip, -0.1, 0, 700, abduction, -70, right foot",
    "left hip, 0.1, 0, 700, abduction, -70, left foot",
    // A forward pull on one hand turns the trunk away from it.
    "L5/S1, 0.3, 100, 0, rotation, 30, right hand",
    "L5/S1, -0.3, 100, 0, rotation, -30, left hand",
    // A forward pull on the outside of the foot turns the leg inward.
    "right hip, 0.05, 100, 0, rotation, 5, right foot",
    "left hip, -0.05, 100, 0, rotation, 5, left foot"
  })
  void a_force_aside(
      String joint, double right, double fx, double fy, String axis, double about, String segment) {
    JointMoment moment = at(joint, segment, new Vector3D(0, 0, right), new Vector3D(fx, fy, 0));
    assertThat(moment.about(axis)).isCloseTo(about, within(1e-9));
    assertThat(moment.about("flexion")).isCloseTo(0, within(1e-9));
  }

  @Test
  void a_force_on_the_inner_side_of_a_joint_does_nothing_there() {
    JointMoment elbow =
        at("right elbow", "right upper arm", new Vector3D(0.3, 0, 0), new Vector3D(0, -500, 0));
    assertThat(elbow.size3d()).isZero();
    assertThat(elbow.tendsTo()).isEqualTo("nothing");
    assertThat(elbow.opposedBy()).isEqualTo("nothing");
  }

  @Test
  void hanging_limbs_load_no_joint_above_them_and_weigh_their_weight() {
    NetLoads weights = NetLoads.of(UPRIGHT, List.of(), Gravity.VECTOR);
    JointMoment elbow = JointMoment.of(weights, "left elbow", "");
    // De Leva: forearm 1.62 %, hand 0.61 % of 80 kg, of a sum of 100.00 %.
    assertThat(elbow.force().getY()).isCloseTo(-0.0223 * 80 * 9.80665, within(1e-3));
    assertThat(elbow.size3d()).isLessThan(1e-9);
  }

  @Test
  void parts_keep_the_order_of_the_loads_with_body_weight_last() {
    Force band = Force.ofLoad("band", 3, Vector3D.ZERO, Vector3D.PLUS_I);
    Force bar = Force.ofLoad("bar", 4, Vector3D.ZERO, Vector3D.PLUS_I);
    NetLoads net = NetLoads.of(UPRIGHT, List.of(band, bar, band), Gravity.VECTOR);
    assertThat(net.sources()).containsExactly("band", "bar", "body weight");
  }
}
