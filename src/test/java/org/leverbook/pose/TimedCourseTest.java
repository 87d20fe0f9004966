package org.leverbook.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/** A course through poses at equal times gives their speeds and accelerations. */
class TimedCourseTest {

  private static final SegmentTree TREE =
      Body.of(Person.of(Sex.FEMALE, Units.kg(64), Units.cm(168))).tree();

  private static final Pose LOW =
      Pose.neutral(TREE)
          .with("right hip", 1.2, 0.2, -0.1)
          .with("left elbow", 0.3, 0)
          .rootAt(new Vector3D(0.1, 0.9, 0), Frame.leanedForward(0.3));

  private static final Pose HIGH =
      Pose.neutral(TREE)
          .with("right hip", 0.1, -0.1, 0.2)
          .with("left elbow", 1.9, 0)
          .rootAt(
              new Vector3D(0.3, 0.6, 0.1),
              Frame.aboutVertical(0.7).turning(Frame.leanedForward(-0.2)));

  @Test
  void between_two_poses_it_moves_as_the_exact_course_does() {
    Course exact = Course.between(LOW, HIGH);
    List<Pose> poses = new ArrayList<>();
    int n = 81;
    for (int i = 0; i < n; i++) {
      double u = i / (n - 1.0);
      poses.add(exact.at(smooth(u)).pose());
    }
    Course timed = TimedCourse.through(poses);
    for (double u : new double[] {0.2, 0.33, 0.5, 0.61, 0.8}) {
      MovingPose found = timed.at(u);
      MovingPose truth =
          exact.at(smooth(u)).paced(30 * u * u * (1 - u) * (1 - u), 60 * u * (1 - u) * (1 - 2 * u));
      // A cubic spline's curvature errs by the step squared times the fourth derivative over 12:
      // 360 of it over 80² and 12 is 0.005 of the whole way, here up to 1.7 rad.
      for (int s = 0; s < TREE.size(); s++) {
        Vector3D point = truth.pose().placed().origin(s);
        assertThat(
                found
                    .accelerations()
                    .acceleration(s, point)
                    .distance(truth.accelerations().acceleration(s, point)))
            .isLessThan(0.03);
        assertThat(
                found
                    .accelerations()
                    .angularVelocity(s)
                    .distance(truth.accelerations().angularVelocity(s)))
            .isLessThan(0.001);
        assertThat(
                found
                    .accelerations()
                    .angularAcceleration(s)
                    .distance(truth.accelerations().angularAcceleration(s)))
            .isLessThan(0.03);
      }
    }
  }

  @Test
  void three_poses_are_no_movement() {
    assertThatThrownBy(() -> TimedCourse.through(List.of(LOW, HIGH, LOW)))
        .isInstanceOf(Refused.class)
        .hasMessage("A movement needs at least 4 poses, but there are 3.");
  }

  private static double smooth(double u) {
    return u * u * u * (10 - 15 * u + 6 * u * u);
  }
}
