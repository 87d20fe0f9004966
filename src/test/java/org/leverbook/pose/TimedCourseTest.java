package org.leverbook.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

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

  private static Frame spun(double angle) {
    return Frame.aboutVertical(angle).turning(Frame.leanedForward(0.3));
  }

  /** Three whole turns about the vertical, leaned, in so many poses. */
  private static Course whirl(int poses) {
    List<Pose> list = new ArrayList<>();
    for (int i = 0; i < poses; i++) {
      double angle = 6 * Math.PI * i / (poses - 1);
      list.add(Pose.neutral(TREE).rootAt(Vector3D.ZERO, spun(angle)));
    }
    return TimedCourse.through(list);
  }

  @Test
  void who_turns_three_times_around_turns_steadily_also_past_the_half_turn() {
    Course whirl = whirl(241);
    for (double u = 0.1; u < 0.95; u += 0.01) {
      MovingPose.Root root = whirl.at(u).root();
      // A step is 4.5 degrees: errors of the spline's curvature are some thousandths of 6 pi.
      assertThat(root.turning().distance(new Vector3D(0, 6 * Math.PI, 0))).isLessThan(0.01);
      assertThat(root.turningUp().getNorm()).isLessThan(0.5);
    }
  }

  @Test
  void between_poses_far_apart_speeds_and_gains_are_still_those_of_the_frames_it_shows() {
    Course whirl = whirl(16);
    double h = 1e-4;
    for (double u : new double[] {0.21, 0.3, 0.5, 0.63, 0.77}) {
      Frame before = whirl.at(u - h).pose().rootFrame();
      Frame after = whirl.at(u + h).pose().rootFrame();
      MovingPose.Root root = whirl.at(u).root();
      Vector3D seen =
          before
              .x()
              .crossProduct(after.x())
              .add(before.y().crossProduct(after.y()))
              .add(before.z().crossProduct(after.z()))
              .scalarMultiply(0.25 / h);
      // Differences of this test: the step squared times the third derivative, some thousands.
      assertThat(root.turning().distance(seen)).isLessThan(1e-3);
      Vector3D gained = whirl.at(u + h).root().turning().subtract(whirl.at(u - h).root().turning());
      assertThat(root.turningUp().distance(gained.scalarMultiply(0.5 / h))).isLessThan(1e-2);
    }
  }

  @Test
  void four_poses_are_a_movement_that_begins_and_ends_in_them_and_stands_there_afterwards() {
    Course course = TimedCourse.through(List.of(LOW, HIGH, LOW, HIGH));
    for (double u : new double[] {0, 1.0 / 3, 2.0 / 3, 1, -0.5, 1.5}) {
      Pose expected = Math.round(3 * Math.max(0, Math.min(1, u))) % 2 == 0 ? LOW : HIGH;
      Pose found = course.at(u).pose();
      assertThat(found.rootPlace().distance(expected.rootPlace())).isLessThan(1e-14);
      assertThat(found.rootFrame().x().distance(expected.rootFrame().x())).isLessThan(1e-14);
      for (int i = 0; i < TREE.angles(); i++) {
        assertThat(found.angle(i)).isCloseTo(expected.angle(i), within(1e-14));
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
