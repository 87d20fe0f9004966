package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.List;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;

/** Arms, lines of force and forces in joints, worked by hand; the quick sums against the plain. */
class PlainMomentsTest {

  private static final SegmentTree TREE = Person.of(Sex.MALE, kg(80), cm(180)).body().tree();
  private static final Placement UPRIGHT = Pose.neutral(TREE).placed();

  /** One force on a segment, so far from a joint; no weights. */
  private static JointMoment at(String joint, String segment, Vector3D away, Vector3D force) {
    Force one = Force.ofLoad("bar", TREE.indexOf(segment), UPRIGHT.centre(joint).add(away), force);
    return JointMoment.of(NetLoads.of(UPRIGHT, List.of(one), Vector3D.ZERO), joint, "bar");
  }

  private static LineOfForce line(String joint, Vector3D away, Vector3D way) {
    int segment = TREE.distalOf(joint);
    return new LineOfForce(segment, UPRIGHT.centre(joint).add(away), way);
  }

  @Test
  void ten_newton_metres_on_a_line_at_four_centimetres_take_250_newtons() {
    // 100 N down, 10 cm ahead of the elbow, extends it with 10 N·m; the line points up.
    JointMoment elbow =
        at("right elbow", "right hand", new Vector3D(0.1, 0, 0), new Vector3D(0, -100, 0));
    Vector3D ahead = new Vector3D(0.04, 0.7, 0);
    LineOfForce up = line("right elbow", ahead, new Vector3D(0, 3, 0));
    assertThat(up.direction()).isEqualTo(Vector3D.PLUS_J);
    assertThat(up.arm(elbow.centre(), Vector3D.PLUS_K)).isCloseTo(0.04, within(1e-12));
    assertThat(up.sizeAgainst(elbow)).isCloseTo(250, within(1e-9));
    LineOfForce down = line("right elbow", ahead, Vector3D.MINUS_J);
    assertThat(down.sizeAgainst(elbow)).isCloseTo(-250, within(1e-9));
  }

  @Test
  void a_line_through_the_joint_or_without_direction_is_refused() {
    JointMoment elbow =
        at("right elbow", "right hand", new Vector3D(0.1, 0, 0), new Vector3D(0, -100, 0));
    LineOfForce through = line("right elbow", new Vector3D(0, 0.3, 0.1), Vector3D.PLUS_J);
    assertThatThrownBy(() -> through.sizeAgainst(elbow))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "This line passes 0.0000 mm from the axis of the right elbow, so no force along it can"
                + " hold 10.0 N·m. Choose a line at least a millimetre away.");
    for (Vector3D no : new Vector3D[] {Vector3D.ZERO, Vector3D.NaN, Vector3D.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> line("right elbow", Vector3D.ZERO, no))
          .isInstanceOf(Refused.class)
          .hasMessageStartingWith("A line of force needs a direction");
    }
  }

  @Test
  void an_arm_has_the_sign_of_the_way_the_load_turns_the_joint() {
    Vector3D down = new Vector3D(0, -200, 0);
    JointMoment ahead = at("right elbow", "right hand", new Vector3D(0.3, 0, 0), down);
    assertThat(ahead.signedArm()).isCloseTo(-0.3, within(1e-12));
    assertThat(ahead.from("bar")).isCloseTo(60, within(1e-9));
    JointMoment behind = at("right elbow", "right hand", new Vector3D(-0.2, 0, 0), down);
    assertThat(behind.signedArm()).isCloseTo(0.2, within(1e-12));
    assertThat(behind.from("bar")).isCloseTo(40, within(1e-9));
    assertThat(behind.from("cable")).isZero();
    // A weight out to the side has no arm about flexion, but one in the room.
    JointMoment aside = at("right elbow", "right hand", new Vector3D(0, 0, 0.25), down);
    assertThat(aside.arm()).isCloseTo(0, within(1e-12));
    assertThat(aside.arm3d()).isCloseTo(0.25, within(1e-12));
  }

  @ParameterizedTest(name = "{0}: {1} N·m ahead and {2} to the side, told about {3}")
  @CsvSource({
    "right shoulder, 100, 151, abduction",
    "right shoulder, 100, 149, ''",
    "right shoulder, 4, 15, abduction",
    "right shoulder, 4, 13, ''",
    // What is asked of a knee sideways, bone and ligament hold.
    "right knee, 10, 300, ''"
  })
  void another_axis_is_told_where_it_takes_half_as_much_again_and_ten_more(
      String joint, double ahead, double aside, String axis) {
    String segment = joint.contains("knee") ? "right foot" : "right hand";
    JointMoment moment = at(joint, segment, new Vector3D(ahead, 0, aside), new Vector3D(0, -1, 0));
    assertThat(moment.elsewhere().map(o -> o.motion().axis()).orElse("")).isEqualTo(axis);
    if (!axis.isEmpty()) {
      assertThat(moment.elsewhere().orElseThrow().size()).isCloseTo(aside, within(1e-9));
      assertThat(moment.text()).contains("; more about abduction: " + Math.round(aside) + " N·m");
    }
  }

  @ParameterizedTest(name = "{1} with ({2}, {3}, {4}) N: {5} together, {6} forward, {7} outward")
  @CsvSource({
    "right hip, right foot, 0, 700, 0, 700, 0, 0",
    "left hip, left foot, 0, 700, 0, 700, 0, 0",
    "right hip, right foot, 40, 0, 60, 0, 40, 60",
    "left hip, left foot, 40, 0, 60, 0, 40, -60",
    // The spine stands up from its joint: what weighs on it presses it.
    "L5/S1, right hand, 30, -500, 20, 500, 30, 20",
    "C7/T1, head, 0, -50, 0, 50, 0, 0",
    // The collar bone lies across: what pushes the shoulder inward presses it.
    "right shoulder girdle, right hand, 5, -300, -80, 80, 5, -300",
    "left shoulder girdle, left hand, 5, -300, 80, 80, 5, -300"
  })
  void a_joint_is_pressed_and_sheared_as_hands_would_feel_it(
      String joint,
      String segment,
      double x,
      double y,
      double z,
      double together,
      double forward,
      double outward) {
    JointMoment moment = at(joint, segment, Vector3D.ZERO, new Vector3D(x, y, z));
    ContactForce force = ContactForce.of(moment, UPRIGHT);
    assertThat(force.compression()).isCloseTo(together, within(1e-9));
    assertThat(force.forward()).isCloseTo(forward, within(1e-9));
    assertThat(force.outward()).isCloseTo(outward, within(1e-9));
    assertThat(force.size()).isCloseTo(Math.sqrt(x * x + y * y + z * z), within(1e-9));
  }

  @Test
  void a_force_in_a_joint_is_told_with_its_ways() {
    assertThat(new ContactForce("right knee", 12, -3, 4).text())
        .isEqualTo("right knee: 12 N together, shear 3 N backward, 4 N outward, before muscles");
    assertThat(new ContactForce("right knee", -12, 3, -4).text())
        .isEqualTo("right knee: 12 N apart, shear 3 N forward, 4 N inward, before muscles");
    assertThat(new ContactForce("right knee", 12, -3, 4).size()).isCloseTo(13, within(1e-12));
  }

  @Test
  void the_quick_sums_are_the_plain_ones() {
    Random random = new Random(9);
    QuickMoments quick = new QuickMoments(TREE);
    for (int round = 0; round < 5; round++) {
      Frame frame = Frame.aboutVertical(round).turning(Frame.leanedForward(0.4));
      double[] angles = random.doubles(TREE.angles(), -1, 1).toArray();
      Pose pose = Pose.of(TREE, angles, new Vector3D(1, 0.8, -0.5), frame);
      Placement where = pose.placed();
      int hand = TREE.indexOf("left hand");
      Force push =
          new Force(
              "box",
              Force.Kind.LOAD,
              hand,
              where.origin(hand),
              new Vector3D(10, -90, 35),
              new Vector3D(2, -3, 5));
      NetLoads plain = NetLoads.of(where, List.of(push), Gravity.VECTOR);
      quick.at(pose);
      Vector3D at = push.point();
      quick.push(hand, at.getX(), at.getY(), at.getZ(), 10, -90, 35);
      quick.twist(hand, 2, -3, 5);
      quick.gather();
      for (int i = 1; i < TREE.size(); i++) {
        for (int k = 0; k < 3; k++) {
          assertThat(quick.moment(i, k)).isCloseTo(plain.moment(i).toArray()[k], within(1e-9));
          assertThat(quick.force(i, k)).isCloseTo(plain.force(i).toArray()[k], within(1e-9));
        }
        for (int angle = TREE.firstAngle(i); angle < TREE.firstAngle(i + 1); angle++) {
          assertThat(quick.about(i, angle))
              .isCloseTo(plain.moment(i).dotProduct(where.axis(angle)), within(1e-9));
        }
      }
      assertThat(quick.where().origin(hand, 1)).isEqualTo(where.origin(hand).getY());
    }
  }

  @Test
  void the_levels_of_the_low_back_cost_together_what_the_trunk_costs_alone() {
    double[] costs = Capacities.costs(TREE);
    // At 80 kg, the table's mass: hip (185 + 190) / 2, knee (111 + 255) / 2.
    assertThat(1 / costs[TREE.angleOf("right hip", "flexion")]).isCloseTo(187.5, within(1e-9));
    assertThat(1 / costs[TREE.angleOf("left knee", "flexion")]).isCloseTo(183, within(1e-9));
    assertThat(costs[TREE.angleOf("left knee", "abduction")]).isZero();
    double low = 0;
    for (String level : List.of("L5/S1", "L4/L5", "L3/L4", "L2/L3", "L1/L2")) {
      low += Math.pow(costs[TREE.angleOf(level, "flexion")], 2);
    }
    // Seated trunk flexion 143, extension 234.
    assertThat(1 / Math.sqrt(low)).isCloseTo((143 + 234) / 2.0, within(1e-9));
    double neck = 0;
    double chest = 0;
    for (int i = 1; i < TREE.size(); i++) {
      String name = TREE.segment(i).joint().name();
      double own = Math.pow(costs[TREE.firstAngle(i)], 2);
      neck += name.matches("C\\d/.*") ? own : 0;
      chest += name.matches("T\\d+/.*") ? own : 0;
    }
    assertThat(1 / Math.sqrt(neck)).isCloseTo((15 + 38) / 2.0, within(1e-9));
    assertThat(1 / Math.sqrt(chest)).isCloseTo((143 + 234) / 2.0, within(1e-9));
    SegmentTree light = Person.of(Sex.MALE, kg(60), cm(180)).body().tree();
    assertThat(Capacities.costs(light)[light.angleOf("right hip", "flexion")])
        .isCloseTo(80 / 60.0 / 187.5, within(1e-12));
  }
}
