package org.leverbook.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.body.Body;
import org.leverbook.body.Condition;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Units;

class ShoulderStrengthTest {

  /** Sines and products of them. */
  private static final double ROUNDING = 1e-9;

  private static final Body BODY = Person.of(Sex.MALE, Units.kg(75), Units.cm(175)).body();

  private static final Map<String, Strength> STRENGTHS = new LinkedHashMap<>();

  static {
    ArmStrengths.into(STRENGTHS, new Who(Sex.MALE, 75, 1.75, Condition.USUAL));
  }

  private final ShoulderStrength shoulder = new ShoulderStrength(STRENGTHS);

  private static RaisedArm arm(Side side, double flexion, double abduction) {
    return RaisedArm.of(placed(side, flexion, abduction), side);
  }

  private static Placement placed(Side side, double flexion, double abduction) {
    return Pose.neutral(BODY.tree())
        .with(JointId.SHOULDER.on(side), Math.toRadians(flexion), Math.toRadians(abduction), 0)
        .placed();
  }

  private static double tested(String action, double degrees) {
    return STRENGTHS.get("shoulder " + action).at(Math.toRadians(degrees));
  }

  /** In the planes that were tested the tests themselves come back. */
  @ParameterizedTest
  @CsvSource({"30", "60", "90", "120"})
  void in_the_tested_planes_the_tests_come_back(double degrees) {
    for (Side side : new Side[] {Side.RIGHT, Side.LEFT}) {
      RaisedArm ahead = arm(side, degrees, 0);
      assertThat(Math.toDegrees(ahead.height())).isCloseTo(degrees, within(ROUNDING));
      assertThat(Math.toDegrees(ahead.plane())).isCloseTo(90, within(ROUNDING));
      assertThat(shoulder.raise(ahead)).isCloseTo(tested("flex", degrees), within(ROUNDING));
      assertThat(shoulder.lower(ahead)).isCloseTo(tested("extend", degrees), within(ROUNDING));
      RaisedArm aside = arm(side, 0, degrees);
      assertThat(Math.toDegrees(aside.plane())).isCloseTo(0, within(ROUNDING));
      assertThat(shoulder.raise(aside)).isCloseTo(tested("abduct", degrees), within(ROUNDING));
      assertThat(shoulder.lower(aside)).isCloseTo(tested("adduct", degrees), within(ROUNDING));
    }
  }

  @Test
  void an_arm_level_at_the_side_meets_the_tests_of_horizontal_adduction() {
    RaisedArm aside = arm(Side.RIGHT, 0, 90);
    assertThat(shoulder.across(aside))
        .isCloseTo(tested("adduct horizontally", 0), within(ROUNDING))
        .as("Stobbe's 92 N·m at the size of those measured")
        .isCloseTo(92, within(ROUNDING));
    assertThat(shoulder.apart(aside)).isCloseTo(67, within(ROUNDING));
  }

  /** Hanging, "across" is abduction or flexion, whichever is square to the plane. */
  @Test
  void a_hanging_arm_has_the_strengths_of_a_hanging_arm_in_any_plane() {
    RaisedArm ahead = arm(Side.RIGHT, 1e-3, 0);
    assertThat(shoulder.across(ahead)).isCloseTo(tested("adduct", 0), within(0.01));
    assertThat(shoulder.apart(ahead)).isCloseTo(tested("abduct", 0), within(0.01));
    RaisedArm aside = arm(Side.RIGHT, 0, 1e-3);
    assertThat(shoulder.across(aside)).isCloseTo(tested("flex", 0), within(0.01));
    assertThat(shoulder.apart(aside)).isCloseTo(tested("extend", 0), within(0.01));
  }

  /**
   * Worked by hand: the right arm straight out to the side; a push up at the elbow raises, one
   * forward brings it across.
   */
  @Test
  void pushes_at_the_elbow_turn_the_arm_the_way_the_words_say() {
    for (Side side : new Side[] {Side.RIGHT, Side.LEFT}) {
      RaisedArm aside = arm(side, 0, 90);
      Vector3D out = new Vector3D(0, 0, 0.3 * side.sign());
      Vector3D up = out.crossProduct(new Vector3D(0, 10, 0));
      assertThat(up.dotProduct(aside.raise())).isCloseTo(3, within(ROUNDING));
      Vector3D forward = out.crossProduct(new Vector3D(10, 0, 0));
      assertThat(forward.dotProduct(aside.across())).isCloseTo(3, within(ROUNDING));
    }
  }

  @Test
  void the_three_axes_are_square_and_inward_is_the_joint_s_own_rotation() {
    Random random = new Random(20265);
    for (int i = 0; i < 200; i++) {
      Side side = random.nextBoolean() ? Side.RIGHT : Side.LEFT;
      double flexion = -40 + 200 * random.nextDouble();
      double abduction = -20 + 150 * random.nextDouble();
      Placement where = placed(side, flexion, abduction);
      RaisedArm arm = RaisedArm.of(where, side);
      assertThat(arm.raise().getNorm()).isCloseTo(1, within(ROUNDING));
      assertThat(arm.across().getNorm()).isCloseTo(1, within(ROUNDING));
      assertThat(arm.raise().dotProduct(arm.across())).isCloseTo(0, within(ROUNDING));
      assertThat(arm.raise().dotProduct(arm.inward())).isCloseTo(0, within(ROUNDING));
      assertThat(arm.across().dotProduct(arm.inward())).isCloseTo(0, within(ROUNDING));
      int rotation = BODY.tree().angleOf(JointId.SHOULDER.on(side), "rotation");
      assertThat(arm.inward().distance(where.axis(rotation))).isLessThan(1e-9);
      RaisedArm other =
          RaisedArm.of(
              placed(side == Side.RIGHT ? Side.LEFT : Side.RIGHT, flexion, abduction),
              side == Side.RIGHT ? Side.LEFT : Side.RIGHT);
      assertThat(shoulder.raise(other)).isCloseTo(shoulder.raise(arm), within(ROUNDING));
      assertThat(shoulder.across(other)).isCloseTo(shoulder.across(arm), within(ROUNDING));
    }
  }
}
