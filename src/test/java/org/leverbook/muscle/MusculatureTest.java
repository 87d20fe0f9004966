package org.leverbook.muscle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.m;

import java.util.function.Predicate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.body.Body;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.pose.Pose;

/** What all muscles of the reference man can give together, joint by joint. */
class MusculatureTest {

  private static final Body MAN = Person.of(Sex.MALE, kg(75), m(1.75)).body();
  private static final Musculature MUSCLES = Musculature.of(MAN);

  /** The greatest moment about one axis that the chosen muscles give together, N·m. */
  static double total(
      Musculature muscles, Pose pose, String joint, String axis, int sign, Predicate<Strand> who) {
    double[] arms = new double[muscles.axes().length * muscles.strands().size()];
    muscles.arms(pose, arms);
    int row = muscles.row(muscles.tree().angleOf(joint, axis));
    double sum = 0;
    for (int i = 0; i < muscles.strands().size(); i++) {
      Strand strand = muscles.strands().get(i);
      double arm = sign * arms[row * muscles.strands().size() + i];
      sum += arm > 0 && who.test(strand) ? arm * strand.maxForce() : 0;
    }
    return sum;
  }

  private static Pose bent(String joint, String axis, double degrees) {
    double[] angles = new double[MAN.tree().angles()];
    angles[MAN.tree().angleOf(joint, axis)] = Math.toRadians(degrees);
    return Pose.of(
        MAN.tree(),
        angles,
        org.hipparchus.geometry.euclidean.threed.Vector3D.ZERO,
        org.leverbook.pose.Frame.WORLD);
  }

  // The totals that the collection of arms lists for one side; they are printed without decimals,
  // hence half a newton metre, and one more where a curve replaces the straight line.
  @ParameterizedTest(name = "{0} {1} at {3} degrees, direction {2}: {4} N·m")
  @CsvSource({
    "hip, flexion, -1, 0, 287",
    "hip, flexion, -1, 30, 318",
    "hip, flexion, -1, 60, 315",
    "hip, flexion, -1, 90, 278",
    "hip, flexion, 1, 0, 120",
    "hip, abduction, 1, 0, 145",
    "hip, abduction, -1, 0, 174",
    "knee, flexion, -1, 60, 203",
    "knee, flexion, -1, 90, 191",
    "knee, flexion, 1, 30, 103",
    "ankle, flexion, -1, 0, 163",
    "ankle, flexion, 1, 0, 25",
    "elbow, flexion, 1, 90, 75",
    "elbow, flexion, -1, 90, 36",
    "shoulder, flexion, 1, 60, 84",
    "shoulder, flexion, -1, 60, 71",
    "shoulder, abduction, 1, 60, 66",
    "shoulder, abduction, -1, 60, 84",
    "shoulder, rotation, 1, 0, 60",
    "shoulder, rotation, -1, 0, 32"
  })
  void a_joint_can_give_what_its_muscles_add_up_to(
      String joint, String axis, int sign, double degrees, double expected) {
    for (Side side : new Side[] {Side.RIGHT, Side.LEFT}) {
      Pose pose = bent(side.of(joint), axis, degrees);
      assertThat(total(MUSCLES, pose, side.of(joint), axis, sign, s -> s.side() == side))
          .isCloseTo(expected, within(1.5));
    }
  }
}
