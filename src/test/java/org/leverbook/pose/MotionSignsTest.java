package org.leverbook.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.body.Body;
import org.leverbook.body.Freedom;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;

/** Which way a positive angle moves a person, seen from outside: the convention by worked cases. */
class MotionSignsTest {

  private static final Body BODY = Person.of(Sex.MALE, kg(80), cm(180)).body();
  private static final SegmentTree TREE = BODY.tree();

  /** The pose with one angle given and all others zero. */
  private static Placement bent(String joint, String axis, double degrees) {
    double[] angles = new double[TREE.angles()];
    angles[TREE.angleOf(joint, axis)] = Math.toRadians(degrees);
    return Pose.of(TREE, angles, Vector3D.ZERO, Frame.WORLD).placed();
  }

  @ParameterizedTest(name = "{0}, {1} +30 degrees: the {2} moves {3}")
  @CsvSource({
    "right hip, flexion, right knee, forward",
    "left hip, flexion, left knee, forward",
    "right hip, abduction, right knee, right",
    "left hip, abduction, left knee, left",
    "right knee, flexion, right ankle, backward",
    "left knee, flexion, left ankle, backward",
    "right ankle, flexion, right ball of the foot, up",
    "left ankle, flexion, left ball of the foot, up",
    "right hip, rotation, right ball of the foot, left",
    "left hip, rotation, left ball of the foot, right",
    "L5/S1, flexion, C0/C1, forward",
    "L5/S1, abduction, C0/C1, right",
    "T7/T8, flexion, C0/C1, forward",
    "C7/T1, flexion, C0/C1, forward",
    "L5/S1, rotation, right shoulder, forward",
    "L5/S1, rotation, left shoulder, backward",
    "right shoulder, flexion, right elbow, forward",
    "left shoulder, flexion, left elbow, forward",
    "right shoulder, abduction, right elbow, right",
    "left shoulder, abduction, left elbow, left",
    "right elbow, flexion, right wrist, forward",
    "left elbow, flexion, left wrist, forward",
    "right wrist, flexion, right grip, forward",
    "left wrist, flexion, left grip, forward",
    "right wrist, abduction, right grip, left",
    "left wrist, abduction, left grip, right",
    "right shoulder girdle, rotation, right shoulder, forward",
    "left shoulder girdle, rotation, left shoulder, forward",
    "right shoulder girdle, abduction, right shoulder, up",
    "left shoulder girdle, abduction, left shoulder, up"
  })
  void a_positive_angle_moves_the_person_as_clinicians_read_it(
      String joint, String axis, String watched, String way) {
    Vector3D before = Pose.neutral(TREE).placed().centre(watched);
    Vector3D moved = bent(joint, axis, 30).centre(watched).subtract(before);
    Vector3D direction =
        switch (way) {
          case "forward" -> Vector3D.PLUS_I;
          case "backward" -> Vector3D.MINUS_I;
          case "up" -> Vector3D.PLUS_J;
          case "right" -> Vector3D.PLUS_K;
          default -> Vector3D.MINUS_K;
        };
    // A joint 4 cm away moves by about 2 cm at 30 degrees: anything above 5 mm is no rounding.
    assertThat(moved.dotProduct(direction)).as("metres %s", way).isGreaterThan(0.005);
  }

  @Test
  void thirty_degrees_at_the_hip_move_the_knee_by_half_a_thigh_forward() {
    Vector3D hip = bent("right hip", "flexion", 30).centre("right hip");
    Vector3D knee = bent("right hip", "flexion", 30).centre("right knee").subtract(hip);
    double thigh = BODY.links().thigh();
    assertThat(knee.getX()).isCloseTo(thigh / 2, within(1e-12));
    assertThat(knee.getY()).isCloseTo(-thigh * Math.sqrt(0.75), within(1e-12));
    assertThat(knee.getZ()).isCloseTo(0, within(1e-12));
  }

  @Test
  void a_forearm_turned_from_the_anatomical_position_brings_the_palm_backward() {
    for (String side : List.of("right", "left")) {
      Placement turned = bent(side + " forearm", "rotation", 180);
      int hand = TREE.indexOf(side + " hand");
      assertThat(turned.frame(hand).x().distance(Vector3D.MINUS_I)).isLessThan(1e-12);
    }
  }

  @Test
  void every_angle_turns_right_handedly_about_the_axis_that_its_joint_carries() {
    List<String> turned = new ArrayList<>();
    double step = 1e-6;
    double[] angles = new double[TREE.angles()];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = 0.4 * Math.sin(i + 1);
    }
    Placement before = Pose.of(TREE, angles, Vector3D.ZERO, Frame.WORLD).placed();
    for (int segment = 1; segment < TREE.size(); segment++) {
      List<Freedom> freedoms = TREE.segment(segment).joint().freedoms();
      for (int k = 0; k < freedoms.size(); k++) {
        int angle = TREE.firstAngle(segment) + k;
        double[] more = angles.clone();
        more[angle] += step;
        Placement after = Pose.of(TREE, more, Vector3D.ZERO, Frame.WORLD).placed();
        Vector3D far = new Vector3D(0.3, -0.4, 0.2);
        Vector3D moved =
            after
                .toWorld(segment, far)
                .subtract(before.toWorld(segment, far))
                .scalarMultiply(1 / step);
        Vector3D arm = before.toWorld(segment, far).subtract(before.origin(segment));
        // A difference quotient: the error is step/2 times half a metre.
        assertThat(moved.distance(before.axis(angle).crossProduct(arm))).isLessThan(1e-6);
        turned.add(TREE.segment(segment).name());
      }
    }
    assertThat(turned).hasSize(TREE.angles());
  }
}
