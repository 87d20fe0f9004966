package org.leverbook.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.quantity.Refused;

/** Ways through a movement and what they do to each segment. */
class CourseTest {

  private static final SegmentTree TREE = Body.of(Person.of(Sex.MALE, kg(85), cm(178))).tree();

  /** A smooth way with everything turning: angles are sines and squares of the share. */
  private static Pose wavy(double share) {
    double[] angles = new double[TREE.angles()];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = 0.3 * Math.sin(2 * share + i) + 0.1 * share * share;
    }
    Rotation turn =
        new Rotation(
            new Vector3D(1, 2, 3), share + share * share, RotationConvention.VECTOR_OPERATOR);
    Frame frame =
        new Frame(
            turn.applyTo(Vector3D.PLUS_I),
            turn.applyTo(Vector3D.PLUS_J),
            turn.applyTo(Vector3D.PLUS_K));
    return Pose.of(TREE, angles, new Vector3D(share, Math.cos(share), share * share), frame);
  }

  @Test
  void slopes_and_curvatures_of_a_way_known_by_its_poses_are_those_of_calculus() {
    Course course = Course.through(CourseTest::wavy);
    Vector3D axis = new Vector3D(1, 2, 3).normalize();
    for (double s : new double[] {0, 0.001, 0.2, 0.5, 0.77, 1}) {
      MovingPose at = course.at(s);
      for (int i = 0; i < TREE.angles(); i++) {
        // Rounding of an angle (1e-16) over the squared step (1/65536), times weights of order 10.
        assertThat(at.rate(i)).isCloseTo(0.6 * Math.cos(2 * s + i) + 0.2 * s, within(1e-11));
        assertThat(at.acceleration(i)).isCloseTo(-1.2 * Math.sin(2 * s + i) + 0.2, within(1e-8));
      }
      MovingPose.Root root = at.root();
      assertThat(root.velocity().distance(new Vector3D(1, -Math.sin(s), 2 * s))).isLessThan(1e-11);
      assertThat(root.acceleration().distance(new Vector3D(0, -Math.cos(s), 2))).isLessThan(1e-8);
      assertThat(root.turning().distance(axis.scalarMultiply(1 + 2 * s))).isLessThan(1e-11);
      assertThat(root.turningUp().distance(axis.scalarMultiply(2))).isLessThan(1e-8);
    }
  }

  @Test
  void velocities_and_accelerations_of_points_are_the_changes_of_their_places() {
    Course course = Course.through(CourseTest::wavy);
    double s = 0.4;
    double step = 1e-3;
    Accelerations at = course.at(s).accelerations();
    for (int i = 0; i < TREE.size(); i++) {
      Vector3D local = new Vector3D(0.1, -0.2, 0.05);
      Vector3D before = wavy(s - step).placed().toWorld(i, local);
      Vector3D now = wavy(s).placed().toWorld(i, local);
      Vector3D after = wavy(s + step).placed().toWorld(i, local);
      Vector3D velocity = after.subtract(before).scalarMultiply(0.5 / step);
      Vector3D acceleration =
          after.add(before).subtract(now.scalarMultiply(2)).scalarMultiply(1 / step / step);
      // The differences of this test are the coarse side: their error falls with the step squared.
      assertThat(at.velocity(i, now).distance(velocity)).isLessThan(1e-3);
      assertThat(at.acceleration(i, now).distance(acceleration)).isLessThan(1e-2);
    }
  }

  @Test
  void a_way_between_two_poses_starts_and_ends_in_them_and_agrees_with_its_own_poses() {
    Pose start = wavy(0.1);
    Pose end = wavy(0.9);
    Course exact = Course.between(start, end);
    assertSame(exact.at(0).pose(), start);
    assertSame(exact.at(1).pose(), end);
    Course through = Course.through(share -> exact.at(share).pose());
    MovingPose one = exact.at(0.3);
    MovingPose other = through.at(0.3);
    for (int i = 0; i < TREE.angles(); i++) {
      assertThat(other.rate(i)).isCloseTo(one.rate(i), within(1e-11));
      assertThat(other.acceleration(i)).isCloseTo(0, within(1e-8));
    }
    assertThat(other.root().turning().distance(one.root().turning())).isLessThan(1e-11);
  }

  private static void assertSame(Pose one, Pose other) {
    for (int i = 0; i < TREE.angles(); i++) {
      assertThat(one.angle(i)).isCloseTo(other.angle(i), within(1e-15));
    }
    assertThat(one.rootPlace().distance(other.rootPlace())).isLessThan(1e-15);
    assertThat(one.rootFrame().x().distance(other.rootFrame().x())).isLessThan(1e-14);
    assertThat(one.rootFrame().y().distance(other.rootFrame().y())).isLessThan(1e-14);
  }

  @Test
  void another_pace_follows_the_chain_rule() {
    MovingPose way = Course.through(CourseTest::wavy).at(0.5);
    MovingPose paced = way.paced(3, 7);
    Random random = new Random(3);
    for (int n = 0; n < 10; n++) {
      int i = random.nextInt(TREE.angles());
      assertThat(paced.rate(i)).isEqualTo(3 * way.rate(i));
      // Two orders of the same three products: rounding.
      assertThat(paced.acceleration(i))
          .isCloseTo(9 * way.acceleration(i) + 7 * way.rate(i), within(1e-13));
    }
  }

  @Test
  void a_joint_that_is_told_a_whole_turn_more_has_not_moved() {
    int forearm = TREE.angleOf("right forearm", "rotation");
    Course course =
        Course.through(
            share -> {
              double[] angles = new double[TREE.angles()];
              angles[forearm] = Math.IEEEremainder(3 + share, 2 * Math.PI);
              return Pose.of(TREE, angles, Vector3D.ZERO, Frame.WORLD);
            });
    // The angle jumps from 180 to -180 degrees at 0.1416 of the way.
    for (double s : new double[] {0.13, 0.1415, 0.1417, 0.15}) {
      assertThat(course.at(s).rate(forearm)).isCloseTo(1, within(1e-10));
    }
  }

  @Test
  void a_pelvis_that_bounces_or_turns_back_at_once_is_refused_by_its_name() {
    Course bounce =
        Course.through(
            share ->
                Pose.neutral(TREE).rootAt(new Vector3D(0, Math.abs(share - 0.5), 0), Frame.WORLD));
    Course back =
        Course.through(
            share ->
                Pose.neutral(TREE)
                    .rootAt(Vector3D.ZERO, Frame.leanedForward(Math.abs(share - 0.5))));
    for (Course course : new Course[] {bounce, back}) {
      assertThatThrownBy(() -> course.at(0.502))
          .isInstanceOf(Refused.class)
          .hasMessageContaining("near 50.2 % of its way: there the pelvis would have to");
    }
    assertThat(bounce.at(0.6).root().velocity().getY()).isCloseTo(1, within(1e-11));
    // Leaning forward turns about the axis to the left.
    assertThat(back.at(0.6).root().turning().getZ()).isCloseTo(-1, within(1e-10));
  }

  @Test
  void a_fast_and_smooth_way_is_no_corner() {
    int knee = TREE.angleOf("right knee", "flexion");
    // 2.4 rad to and fro, six times over: a curvature of 1700 rad, and still no corner.
    Course course =
        Course.through(
            share -> {
              double[] angles = new double[TREE.angles()];
              angles[knee] = 1.2 - 1.2 * Math.cos(12 * Math.PI * share);
              return Pose.of(TREE, angles, Vector3D.ZERO, Frame.WORLD);
            });
    double w = 12 * Math.PI;
    for (double s : new double[] {0, 0.1, 0.25, 0.5, 1}) {
      assertThat(course.at(s).acceleration(knee))
          .isCloseTo(1.2 * w * w * Math.cos(w * s), within(0.01 * w * w));
    }
  }

  @Test
  void poses_that_are_missing_or_of_another_body_are_no_way() {
    SegmentTree stick = SegmentTree.root("stick", 1, Vector3D.ZERO).build();
    assertThatThrownBy(() -> Course.between(wavy(0), Pose.neutral(stick)))
        .isInstanceOf(Refused.class)
        .hasMessage("A course leads from one pose of a body to another of the same body.");
    Course mixed = Course.through(share -> share > 0.5 ? Pose.neutral(stick) : wavy(share));
    assertThatThrownBy(() -> mixed.at(0.5))
        .isInstanceOf(Refused.class)
        .hasMessage("A movement is that of one body, but its poses belong to different ones.");
    assertThatThrownBy(() -> Course.through(share -> null).at(0.25))
        .isInstanceOf(Refused.class)
        .hasMessage("There is no pose at share 0.250.");
  }

  @Test
  void a_corner_of_the_way_is_refused_with_the_joint_that_would_have_to_jump() {
    int knee = TREE.angleOf("right knee", "flexion");
    Course course =
        Course.through(
            share -> {
              double[] angles = new double[TREE.angles()];
              angles[knee] = Math.abs(share - 0.5);
              return Pose.of(TREE, angles, Vector3D.ZERO, Frame.WORLD);
            });
    assertThat(course.at(0.4).rate(knee)).isCloseTo(-1, within(1e-11));
    assertThat(course.at(0.6).rate(knee)).isCloseTo(1, within(1e-11));
    assertThatThrownBy(() -> course.at(0.502))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The movement turns a corner near 50.2 % of its way: there the right knee would have to"
                + " change its speed at once, which no body can. Choose a way on which joints set in"
                + " gradually, or read the instants before and after.");
  }
}
