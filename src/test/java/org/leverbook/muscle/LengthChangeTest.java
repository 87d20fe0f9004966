package org.leverbook.muscle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.m;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.pose.Pose;

/** How far muscles change length as joints turn. */
class LengthChangeTest {

  private static final Body BODY = Person.of(Sex.MALE, kg(75), m(1.75)).body();
  private static final String HIP = JointId.HIP.on(Side.RIGHT);
  private static final String KNEE = JointId.KNEE.on(Side.RIGHT);
  private static final String SHOULDER = JointId.SHOULDER.on(Side.RIGHT);

  /** Nothing is asked of any joint. */
  private record Nothing() implements JointLoads {

    @Override
    public double about(int treeAngle) {
      return 0;
    }

    @Override
    public Vector3D force(int segment) {
      return Vector3D.ZERO;
    }

    @Override
    public Vector3D moment(int segment) {
      return Vector3D.ZERO;
    }
  }

  private static LengthChange along(int steps, DoubleFunction<Pose> way) {
    List<Effort> efforts = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      Pose pose = way.apply((double) i / steps);
      efforts.add(Effort.of(BODY, pose.placed(), new Nothing()));
    }
    return LengthChange.along(efforts);
  }

  private static int right(String key) {
    List<Strand> strands = Musculature.of(BODY).strands();
    for (int i = 0; i < strands.size(); i++) {
      if (strands.get(i).muscle().key().equals(key) && strands.get(i).side() == Side.RIGHT) {
        return i;
      }
    }
    throw new AssertionError(key);
  }

  private static Pose neutral() {
    return Pose.neutral(BODY.tree());
  }

  @Test
  void a_muscle_of_one_joint_changes_by_the_arm_over_the_turn() {
    double turn = Math.PI / 2;
    DoubleFunction<Pose> bends = s -> neutral().with(KNEE, s * turn, 0, 0);
    int vastus = right("vastus_lateralis");
    double fine = along(400, bends).of(vastus);
    // Ten steps against four hundred: second order in the step.
    assertThat(along(10, bends).of(vastus)).isCloseTo(fine, within(0.01 * fine));
    // Arms of 3 to 5 cm over a quarter turn.
    assertThat(fine).isBetween(0.03 * turn, 0.055 * turn);
    assertThat(along(10, bends).turn(vastus)).isBetween(Math.toRadians(60), turn);
    // The hip did not turn.
    assertThat(along(10, bends).of(right("gluteus_maximus"))).isZero();
  }

  @Test
  void a_hamstring_hardly_changes_where_hip_and_knee_bend_together() {
    int hamstring = right("semimembranosus");
    double hipAlone = along(10, s -> neutral().with(HIP, s, 0, 0)).of(hamstring);
    double both = along(10, s -> neutral().with(HIP, s, 0, 0).with(KNEE, s, 0, 0)).of(hamstring);
    assertThat(both).isLessThan(0.6 * hipAlone);
  }

  @Test
  void one_position_changes_nothing() {
    LengthChange still = along(1, s -> neutral());
    for (int i = 0; i < Musculature.of(BODY).strands().size(); i++) {
      assertThat(still.of(i)).isZero();
      assertThat(still.turn(i)).isZero();
    }
  }

  @Test
  void with_the_arm_out_to_the_side_flexion_is_the_turn_about_the_arm_that_it_looks_like() {
    double out = Math.PI / 2;
    double turn = 0.5;
    int upperArm = BODY.tree().distalOf(SHOULDER);
    DoubleFunction<Pose> flexes = s -> neutral().with(SHOULDER, s * turn, out, 0);
    Vector3D forward = flexes.apply(1).placed().frame(upperArm).x();
    for (int sign : new int[] {-1, 1}) {
      DoubleFunction<Pose> turns = s -> neutral().with(SHOULDER, 0, out, sign * s * turn);
      if (turns.apply(1).placed().frame(upperArm).x().distance(forward) < 1e-9) {
        for (String key : List.of("subscapularis", "infraspinatus", "teres_major")) {
          double byFlexion = along(10, flexes).of(right(key));
          // Both ways hold the arm in the same places.
          assertThat(byFlexion).isCloseTo(along(10, turns).of(right(key)), within(1e-9));
          assertThat(byFlexion).isPositive();
        }
        return;
      }
    }
    throw new AssertionError("neither sense of rotation looks like flexion");
  }
}
