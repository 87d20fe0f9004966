package org.leverbook.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/** The signs of the joint angles, told by what a coach sees move. */
class PlacementTest {

  private static final Body BODY = Person.of(Sex.MALE, Units.kg(85), Units.cm(178)).body();

  private static final Pose STANDING = Pose.neutral(BODY.tree());

  private static Vector3D place(Pose pose, JointId joint) {
    return pose.placed().centre(joint.on(Side.RIGHT));
  }

  /** Which way (x forward, y up, z to the right) a marker moves when one angle grows by 30°. */
  @ParameterizedTest
  @CsvSource({
    "HIP, flexion, KNEE, x, 1",
    "HIP, abduction, KNEE, z, 1",
    "KNEE, flexion, ANKLE, x, -1",
    "ANKLE, flexion, BALL, y, 1",
    "L5_S1, flexion, HEAD, x, 1",
    "L5_S1, abduction, HEAD, z, 1",
    "SHOULDER, flexion, ELBOW, x, 1",
    "SHOULDER, abduction, ELBOW, z, 1",
    "ELBOW, flexion, WRIST, x, 1",
    "SHOULDER_GIRDLE, abduction, SHOULDER, y, 1",
    "SHOULDER_GIRDLE, rotation, SHOULDER, x, 1"
  })
  void a_positive_angle_moves_the_body_the_way_its_name_says(
      JointId joint, String axis, JointId marker, char direction, int sign) {
    double[] angles = new double[BODY.tree().angles()];
    angles[BODY.tree().angleOf(joint.on(Side.RIGHT), axis)] = Math.toRadians(30);
    Pose bent = Pose.of(BODY.tree(), angles, Vector3D.ZERO, Frame.WORLD);
    Vector3D moved = place(bent, marker).subtract(place(STANDING, marker));
    double along =
        switch (direction) {
          case 'x' -> moved.getX();
          case 'y' -> moved.getY();
          default -> moved.getZ();
        };
    assertThat(sign * along).isGreaterThan(0.01);
  }

  @Test
  void turning_in_place_keeps_every_length() {
    double[] angles = new double[BODY.tree().angles()];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = Math.sin(i + 1.0);
    }
    Placement bent =
        Pose.of(BODY.tree(), angles, new Vector3D(1, 2, 3), Frame.leanedForward(0.7)).placed();
    for (int i = 1; i < BODY.tree().size(); i++) {
      int parent = BODY.tree().segment(i).parent();
      double length = bent.origin(i).subtract(bent.origin(parent)).getNorm();
      assertThat(length)
          .isCloseTo(BODY.tree().segment(i).joint().centre().getNorm(), within(1e-12));
    }
  }

  @Test
  void a_pose_never_takes_an_angle_that_is_no_number() {
    double[] angles = new double[BODY.tree().angles()];
    angles[3] = Double.NaN;
    assertThatThrownBy(() -> Pose.of(BODY.tree(), angles, Vector3D.ZERO, Frame.WORLD))
        .isInstanceOf(Refused.class)
        .hasMessage("A joint angle is NaN: give a finite number.");
  }

  @Test
  void a_joint_of_one_axis_takes_one_angle() {
    assertThatThrownBy(() -> STANDING.with("right shoulder", 0.1))
        .isInstanceOf(Refused.class)
        .hasMessage("The right shoulder turns in 3 ways, but 1 angles were given.");
  }

  @Test
  void an_angle_beyond_its_range_is_told_with_both() {
    double[] angles = new double[BODY.tree().angles()];
    angles[BODY.tree().angleOf("right hip", "flexion")] = Math.toRadians(140);
    Pose bent = Pose.of(BODY.tree(), angles, Vector3D.ZERO, Frame.WORLD);
    assertThat(Ranges.exceeded(bent))
        .containsExactly("the right hip would have to flex by 140°, but its range ends at 130°");
    assertThat(Ranges.exceeded(STANDING)).isEmpty();
  }
}
