package org.leverbook.muscle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.m;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;

/** What presses discs and bones, where one force or one moment alone is asked: by hand. */
class InsideTest {

  private static final Body MAN = Person.of(Sex.MALE, kg(75), m(1.75)).body();
  private static final Body TALL = Person.of(Sex.MALE, kg(75), m(1.925)).body();
  private static final List<String> QUADS =
      List.of("rectus_femoris", "vastus_lateralis", "vastus_intermedius", "vastus_medialis");

  /** The same force at every joint, and moments at some. */
  private record Asked(Vector3D everywhere, Map<Integer, Vector3D> moments) implements JointLoads {

    @Override
    public double about(int treeAngle) {
      throw new AssertionError("moments are asked as vectors");
    }

    @Override
    public Vector3D force(int segment) {
      return everywhere;
    }

    @Override
    public Vector3D moment(int segment) {
      return moments.getOrDefault(segment, Vector3D.ZERO);
    }
  }

  private static Effort pressed(Body body, Pose pose, Vector3D force) {
    return Effort.of(body, pose.placed(), new Asked(force, Map.of()));
  }

  private static Pose upright(Body body) {
    return Pose.neutral(body.tree());
  }

  /** So many newton metres that bend every level of the low back forward; nothing presses it. */
  private static Effort bowed(Body body, double moment) {
    return bowed(body, upright(body), moment);
  }

  private static Effort bowed(Body body, Pose pose, double moment) {
    Map<Integer, Vector3D> moments = new HashMap<>();
    for (JointId level : Discs.levels()) {
      // Forward is right-handed about the axis to the left.
      moments.put(body.tree().distalOf(level.word()), new Vector3D(0, 0, -moment));
    }
    return Effort.of(body, pose.placed(), new Asked(Vector3D.ZERO, moments));
  }

  private static int flexionOf(Body body) {
    return body.tree().angleOf("L5/S1", "flexion");
  }

  private static double kneeExtended(double degrees, BoneLoad[] found) {
    Pose pose = upright(MAN).with("right knee", Math.toRadians(degrees), 0, 0);
    int shank = MAN.tree().distalOf("right knee");
    // The resistance bends the knee: right-handed about the axis of its flexion.
    Vector3D bends = pose.placed().axis(MAN.tree().angleOf("right knee", "flexion"));
    Map<Integer, Vector3D> moments = Map.of(shank, bends.scalarMultiply(40));
    Effort effort = Effort.of(MAN, pose.placed(), new Asked(Vector3D.ZERO, moments));
    found[0] = Bones.of(effort, MAN).at(JointId.KNEE, Side.RIGHT);
    return effort.pulls().stream()
        .filter(p -> p.strand().side() == Side.RIGHT)
        .filter(p -> QUADS.contains(p.strand().muscle().key()))
        .mapToDouble(Effort.Pull::force)
        .sum();
  }

  @Test
  void a_thousand_newtons_press_and_shear_the_lowest_disc_as_its_tilt_of_34_degrees_tells() {
    Effort effort = pressed(MAN, upright(MAN), new Vector3D(0, -1000, 100));
    DiscLoad disc = Discs.of(effort, MAN).at(JointId.L5_S1);
    double tilt = Math.toRadians(34);
    assertThat(disc.compression()).isCloseTo(1000 * Math.cos(tilt), within(1e-9));
    assertThat(disc.shear()).isCloseTo(1000 * Math.sin(tilt), within(1e-9));
    assertThat(disc.lateral()).isCloseTo(100, within(1e-9));
    assertThat(disc.muscles()).isCloseTo(0, within(1e-9));
    // 18 cm² at 1.75 m; pressure times 0.66 of it is the force.
    assertThat(disc.area()).isCloseTo(18e-4, within(1e-12));
    assertThat(disc.pressure()).isCloseTo(disc.compression() / (0.66 * 18e-4), within(1e-3));
    DiscLoad tall =
        Discs.of(pressed(TALL, upright(TALL), new Vector3D(0, -1000, 0)), TALL).at(JointId.L5_S1);
    assertThat(tall.area()).isCloseTo(1.21 * 18e-4, within(1e-12));
  }

  @Test
  void a_pull_upward_draws_every_disc_apart() {
    for (DiscLoad disc : Discs.of(pressed(MAN, upright(MAN), new Vector3D(0, 500, 0)), MAN).all()) {
      assertThat(disc.compression()).as(disc.level().word()).isNegative();
      assertThat(Math.hypot(disc.compression(), disc.shear())).isCloseTo(500, within(1e-9));
    }
  }

  @Test
  void a_disc_turns_half_with_each_of_its_vertebrae() {
    // Bent by 20 degrees at L5/S1 alone: the disc leans 34 + 10, against gravity as told above.
    Pose bent = upright(MAN).with("L5/S1", Math.toRadians(20), 0, 0);
    DiscLoad disc = Discs.of(pressed(MAN, bent, new Vector3D(0, -1000, 0)), MAN).at(JointId.L5_S1);
    assertThat(disc.weight()).isCloseTo(1000 * Math.cos(Math.toRadians(44)), within(1e-9));
    assertThat(disc.shear()).isCloseTo(1000 * Math.sin(Math.toRadians(44)), within(1e-9));
  }

  @Test
  void what_bends_the_back_is_held_by_tissue_first_and_muscles_press_with_the_rest() {
    // In lordosis tissue holds up to 25 N·m (Dolan et al. 1994), over 67 mm along the disc; it
    // costs
    // next to nothing, so little of it is left.
    Effort effort = bowed(MAN, 60);
    Held lowest = effort.held().get(effort.muscles().row(flexionOf(MAN)));
    DiscLoad disc = Discs.of(effort, MAN).at(JointId.L5_S1);
    assertThat(-lowest.tissue()).isBetween(20.0, 25.0);
    assertThat(disc.tissue()).isCloseTo(-lowest.tissue() / 0.067, within(1e-9));
    // Arms of the extensors there lie between 4 and 9 cm; antagonists could only add.
    double rest = 60 + lowest.tissue();
    assertThat(disc.muscles()).isBetween(rest / 0.09, rest / 0.04);
    assertThat(disc.weight()).isZero();
    Effort tall = bowed(TALL, 60);
    double held = -tall.held().get(tall.muscles().row(flexionOf(TALL))).tissue();
    assertThat(Discs.of(tall, TALL).at(JointId.L5_S1).tissue())
        .isCloseTo(held / (1.1 * 0.067), within(1e-9));
  }

  // McGill et al. 2000 (numbers from memory): the lumbar erectors pull back at 25.7 degrees to the
  // disc in standing, at 10.7 in full flexion; half-way between lies 18.2.
  @ParameterizedTest(name = "bent {0} of the way: lumbar erectors slant by {1} degrees")
  @CsvSource({"0, 25.7", "0.5, 18.2", "1, 10.7", "-0.5, 25.7"})
  void lumbar_erectors_draw_a_vertebra_back_the_less_the_rounder_the_back(
      double share, double slant) {
    Pose pose = upright(MAN);
    for (String level : List.of("L5/S1", "L4/L5", "L3/L4", "L2/L3", "L1/L2")) {
      double full =
          MAN.tree()
              .segment(MAN.tree().distalOf(level))
              .joint()
              .freedom("flexion")
              .orElseThrow()
              .high();
      pose = pose.with(level, share * full, 0, 0);
    }
    Effort effort = bowed(MAN, pose, 300);
    int axis = MAN.tree().angleOf("L4/L5", "flexion");
    double slanting = 0;
    double straight = 0;
    for (Effort.Pull pull : effort.pulls()) {
      for (Crossing crossing : pull.strand().crossings()) {
        if (crossing.axis() == axis) {
          double force = crossing.share() * pull.force();
          String key = pull.strand().muscle().key();
          // What bends the back further rests.
          assertThat(key.endsWith("oblique") ? force : 0).isZero();
          boolean lumbar = key.matches("longissimus_lumborum|iliocostalis_lumborum_lumbar_fibres");
          slanting += lumbar ? force : 0;
          straight += lumbar ? 0 : force;
        }
      }
    }
    assertThat(slanting).isGreaterThan(100);
    DiscLoad disc = Discs.of(effort, MAN).at(JointId.L4_L5);
    double angle = Math.toRadians(slant);
    assertThat(disc.shear()).isCloseTo(-slanting * Math.sin(angle), within(1e-6));
    assertThat(disc.muscles()).isCloseTo(straight + slanting * Math.cos(angle), within(1e-6));
    // At L5/S1 every muscle counts along the disc.
    assertThat(Discs.of(effort, MAN).at(JointId.L5_S1).shear()).isZero();
  }

  @ParameterizedTest(name = "{0}: {1} N along, {2} N up, {3} N outward: pressed with {4} N")
  @CsvSource({
    "HIP, 0, 700, 0, 700",
    "HIP, 0, -80, 0, -80",
    "KNEE, 30, 700, 40, 700",
    "KNEE, 0, -40, 0, -40",
    // The socket of the shoulder looks outward: what pushes the arm inward presses.
    "SHOULDER, 0, -200, -90, 90",
    "SHOULDER, 0, -200, 90, -90"
  })
  void a_joint_without_muscles_at_work_is_pressed_by_what_pushes_its_bones_together(
      JointId joint, double forward, double up, double outward, double along) {
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Vector3D force = new Vector3D(forward, up, side.sign() * outward);
      BoneLoad load = Bones.of(pressed(MAN, upright(MAN), force), MAN).at(joint, side);
      assertThat(load.along()).isCloseTo(along, within(1e-9));
      assertThat(load.net()).isCloseTo(force.getNorm(), within(1e-9));
      assertThat(load.size()).isCloseTo(force.getNorm(), within(1e-9));
      assertThat(load.kneecap()).isZero();
    }
  }

  @ParameterizedTest(name = "knee bent by {0} degrees: tendon turned by {1}")
  @CsvSource({"0, 20", "75, 75", "120, 110"})
  void a_kneecap_is_pressed_by_twice_the_pull_times_the_sine_of_half_the_turn(
      double bend, double turn) {
    // The tendon leans 20 degrees forward of a straight shank, lies along it at 75, 10 back at 120;
    // the quadriceps pulls along the thigh. What is between both is the turn around the kneecap.
    BoneLoad[] found = new BoneLoad[1];
    double pull = kneeExtended(bend, found);
    assertThat(pull).isGreaterThan(500);
    assertThat(found[0].kneecap())
        .isCloseTo(2 * pull * Math.sin(Math.toRadians(turn) / 2), within(1e-6 * pull));
    assertThat(found[0].text()).contains("the kneecap is pressed with");
    // Nothing but muscles presses here: what they pull with, hamstrings' part included.
    assertThat(found[0].net()).isZero();
    assertThat(found[0].size()).isGreaterThan(0.8 * pull);
    assertThat(found[0].along()).isPositive();
  }

  @Test
  void a_side_must_be_said_of_a_joint_that_there_are_two_of() {
    Bones bones = Bones.of(pressed(MAN, upright(MAN), Vector3D.PLUS_J), MAN);
    assertThatThrownBy(() -> bones.at(JointId.HIP, Side.MIDLINE))
        .isInstanceOf(Refused.class)
        .hasMessage("There are two of the hips: say LEFT or RIGHT.");
  }

  @ParameterizedTest
  @EnumSource(
      value = JointId.class,
      names = {"T7_T8", "HIP", "C7_T1"})
  void discs_beyond_the_low_back_are_refused(JointId joint) {
    Discs discs = Discs.of(pressed(MAN, upright(MAN), Vector3D.PLUS_J), MAN);
    assertThatThrownBy(() -> discs.at(joint))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("What presses inside is known for the discs from L5/S1 to T12/L1");
  }

  @Test
  void a_disc_tells_which_way_it_is_sheared() {
    DiscLoad disc = new DiscLoad(JointId.L4_L5, 400, 1000, 100, -20, 0, 18e-4);
    assertThat(disc.text())
        .isEqualTo(
            "L4/L5: pressed with 1500 N (weight and load 400, muscles 1000, stretched tissue 100),"
                + " shear 20 N backward");
    assertThat(new DiscLoad(JointId.L4_L5, 0, 0, 0, 20, 0, 18e-4).text()).endsWith("20 N forward");
  }
}
