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
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.load.Barbell;
import org.leverbook.load.HandWeights;
import org.leverbook.load.Load;
import org.leverbook.muscle.DiscLoad;
import org.leverbook.muscle.Effort;
import org.leverbook.muscle.Held;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.support.Floor;
import org.leverbook.support.Footing;

/** Who pulls how hard in a position, what stays uncovered, what then presses inside. */
class EffortTest {

  private static final Body BODY = Person.of(Sex.MALE, kg(80), cm(178)).body();

  /** Straight legs, trunk and hanging arms; the trunk leaned at the hips. */
  private static Pose leaned(double degrees) {
    double up = BODY.links().footHeight() + BODY.links().thigh() + BODY.links().shank();
    double lean = Math.toRadians(degrees);
    Pose pose = Pose.neutral(BODY.tree()).rootAt(new Vector3D(0, up, 0), Frame.leanedForward(lean));
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose =
          pose.with(JointId.HIP.on(side), lean, 0, 0).with(JointId.SHOULDER.on(side), lean, 0, 0);
    }
    return pose;
  }

  private static Position held(double degrees, Load... loads) {
    return Position.of(
        "leaned",
        BODY,
        leaned(degrees),
        List.of(loads),
        List.of(Footing.feet(BODY)),
        List.of(),
        List.of());
  }

  @Test
  void at_every_axis_what_is_asked_is_given_or_told_as_uncovered() {
    // At 30 degrees straight knees are asked for more than their flexors give: the capsule's work.
    for (double degrees : new double[] {0, 10, 20}) {
      Effort effort = held(degrees, HandWeights.pair("dumbbell", kg(10))).effort();
      for (Held axis : effort.held()) {
        // Rounding of a sum of 150 products of some hundred newton metres.
        assertThat(axis.asked() + axis.tissue() + axis.muscles() + axis.uncovered())
            .isCloseTo(0, within(1e-9));
      }
      assertThat(effort.uncovered()).allMatch(axis -> !axis.notKnown().isEmpty());
    }
  }

  @Test
  void muscles_only_pull_and_no_harder_than_they_can() {
    for (Effort.Pull pull : held(30, HandWeights.pair("dumbbell", kg(10))).effort().pulls()) {
      assertThat(pull.stress()).isBetween(0.0, 1.0);
      assertThat(pull.force()).isEqualTo(pull.stress() * pull.strand().maxForce());
    }
  }

  @Test
  void both_sides_pull_alike_in_a_symmetrical_lift() {
    List<Effort.Pull> pulls = held(30, HandWeights.pair("dumbbell", kg(10))).effort().pulls();
    int half = pulls.size() / 2;
    for (int i = 0; i < half; i++) {
      assertThat(pulls.get(i + half).strand().muscle()).isEqualTo(pulls.get(i).strand().muscle());
      // The solver's tolerance and the rounding of two mirrored placements.
      assertThat(pulls.get(i + half).stress()).isCloseTo(pulls.get(i).stress(), within(1e-6));
    }
  }

  @Test
  void mirrored_loads_mirror_the_muscles() {
    Random random = new Random(51);
    for (int round = 0; round < 5; round++) {
      double kilograms = 2 + 8 * random.nextDouble();
      var right = held(10, HandWeights.one("dumbbell", kg(kilograms), Side.RIGHT)).effort().pulls();
      var left = held(10, HandWeights.one("dumbbell", kg(kilograms), Side.LEFT)).effort().pulls();
      int half = right.size() / 2;
      for (int i = 0; i < right.size(); i++) {
        assertThat(left.get((i + half) % right.size()).stress())
            .isCloseTo(right.get(i).stress(), within(1e-5));
      }
    }
  }

  @Test
  void the_same_position_gives_the_same_numbers_whatever_was_asked_before() {
    List<Effort.Pull> first = held(30, HandWeights.pair("dumbbell", kg(10))).effort().pulls();
    held(0).effort();
    List<Effort.Pull> again = held(30, HandWeights.pair("dumbbell", kg(10))).effort().pulls();
    for (int i = 0; i < first.size(); i++) {
      assertThat(again.get(i).stress()).isEqualTo(first.get(i).stress());
    }
  }

  @Test
  void bending_forward_wakes_the_erectors_and_the_hip_extensors() {
    double upright = stress(held(0), "spinal erectors");
    assertThat(upright).isLessThan(0.1);
    assertThat(stress(held(30), "spinal erectors")).isGreaterThan(3 * upright);
    assertThat(stress(held(30), "hamstrings")).isGreaterThan(stress(held(0), "hamstrings"));
  }

  private static double stress(Position position, String group) {
    return position.effort().pulls().stream()
        .filter(pull -> pull.strand().muscle().group().equals(group))
        .mapToDouble(Effort.Pull::stress)
        .average()
        .orElseThrow();
  }

  @Test
  void a_load_beyond_all_muscles_is_told_as_a_shortfall_with_joint_and_direction() {
    // No spine of this size holds 300 kg so far ahead; the feet, glued to the floor, would.
    Pose pose = leaned(30);
    Position position =
        Position.of(
            "too much",
            BODY,
            pose,
            List.of(HandWeights.pair("dumbbell", kg(150))),
            List.of(new Floor(BODY)),
            List.of(),
            List.of());
    if (!position.held()) {
      assertThatThrownBy(position::effort)
          .isInstanceOf(Refused.class)
          .hasMessageStartingWith(
              "Which muscles pull is not known, because the supports cannot hold this position.");
    }
    Position upright = held(0, HandWeights.pair("dumbbell", kg(150)));
    assertThat(upright.effort().uncovered())
        .filteredOn(axis -> axis.notKnown().isEmpty())
        .extracting(Held::sentence)
        .anyMatch(s -> s.matches("\\d+ N·m of right shoulder girdle elevation uncovered"));
  }

  @Test
  void cubed_stress_spreads_the_work_further() {
    Position position = held(30, HandWeights.pair("dumbbell", kg(10)));
    Effort squared = position.effort();
    Effort cubed = Effort.cubed(BODY, position.placement(), squared.loads());
    assertThat(cubed.pulls().stream().filter(p -> p.stress() > 0.01).count())
        .isGreaterThan(squared.pulls().stream().filter(p -> p.stress() > 0.01).count());
  }

  @Test
  void who_opposes_tells_arm_part_and_what_a_two_joint_muscle_does_elsewhere() {
    Sheet sheet = held(30, HandWeights.pair("dumbbell", kg(10))).opposing(JointId.HIP, Side.RIGHT);
    double parts = 0;
    for (List<Object> row : sheet.rows()) {
      parts += (Double) row.get(6);
    }
    Held hip =
        held(30, HandWeights.pair("dumbbell", kg(10))).effort().held().stream()
            .filter(axis -> axis.joint().fullName().equals("right hip"))
            .findFirst()
            .orElseThrow();
    // Muscles that work against it are not in the table, so its parts are as much or more.
    assertThat(parts).isGreaterThanOrEqualTo(hip.asked() - 1e-6);
    assertThat(sheet.rows())
        .filteredOn(row -> row.get(1).equals("hamstrings") && (Double) row.get(4) > 50)
        .isNotEmpty()
        .allMatch(row -> row.get(8).toString().contains("knee flexion"));
    assertThat(sheet.notes()).contains(Caution.TEXT);
  }

  @Test
  void a_joint_without_muscles_in_the_data_is_refused_in_words() {
    assertThatThrownBy(() -> held(0, Barbell.of(kg(20))).opposing(JointId.GRIP, Side.RIGHT))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The data hold no muscle that turns the right grip this way, so who opposes is not"
                + " known.");
  }

  @Test
  void tissue_holds_25_newton_metres_in_lordosis_and_more_the_rounder_the_back() {
    Position flat = held(30, HandWeights.pair("dumbbell", kg(10)));
    Held low = flat.effort().held().get(0);
    assertThat(low.joint().name()).isEqualTo("L5/S1");
    assertThat(-low.tissue()).isBetween(0.0, 25 + 1e-9);
  }

  @Test
  void disc_compression_is_weight_muscles_and_tissue_and_grows_with_the_load() {
    DiscLoad light = held(20, HandWeights.pair("dumbbell", kg(2))).disc(JointId.L5_S1);
    DiscLoad heavy = held(20, HandWeights.pair("dumbbell", kg(8))).disc(JointId.L5_S1);
    assertThat(light.compression())
        .isCloseTo(light.weight() + light.muscles() + light.tissue(), within(1e-9));
    assertThat(heavy.compression()).isGreaterThan(light.compression());
    assertThat(heavy.shear()).isGreaterThan(light.shear());
  }

  @Test
  void upright_the_disc_l5_s1_takes_the_weight_above_as_its_tilt_of_34_degrees_tells() {
    Position position = held(0);
    Vector3D force = position.moment(JointId.L5_S1).force();
    DiscLoad disc = position.disc(JointId.L5_S1);
    double tilt = Math.toRadians(34);
    // Muscles count along the disc there, so weight alone shears it.
    assertThat(disc.weight()).isCloseTo(-force.getY() * Math.cos(tilt), within(1e-6));
    assertThat(disc.shear()).isCloseTo(-force.getY() * Math.sin(tilt), within(1e-6));
  }

  @Test
  void muscles_press_the_bones_together_harder_than_weight_alone() {
    Position position = held(30);
    for (JointId joint : List.of(JointId.HIP, JointId.KNEE)) {
      assertThat(position.boneLoad(joint, Side.RIGHT).size())
          .isGreaterThan(position.boneLoad(joint, Side.RIGHT).net());
      assertThat(position.boneLoad(joint, Side.LEFT).size())
          .isCloseTo(position.boneLoad(joint, Side.RIGHT).size(), within(0.1));
    }
    assertThat(position.boneLoads().rows()).hasSize(6);
    assertThat(position.discs().rows()).hasSize(6);
    assertThat(position.heldBy().notes()).contains(Caution.TEXT);
    assertThat(position.muscles().notes()).contains(Caution.TEXT);
  }

  @Test
  void what_presses_in_other_joints_is_refused_with_those_that_are_known() {
    assertThatThrownBy(() -> held(0).boneLoad(JointId.ELBOW, Side.RIGHT))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("known for HIP, KNEE and SHOULDER");
    assertThatThrownBy(() -> held(0).disc(JointId.T7_T8))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("from L5/S1 to T12/L1");
  }
}
