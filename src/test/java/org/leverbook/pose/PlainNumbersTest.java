package org.leverbook.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;

/** The quick way to place a body and to sum up what weighs on it, against the plain way. */
class PlainNumbersTest {

  private static final SegmentTree TREE = Person.of(Sex.FEMALE, kg(64), cm(168)).body().tree();

  private static final double G = 9.80665;

  private final Random random = new Random(21);

  private Pose someone() {
    double[] angles = random.doubles(TREE.angles(), -1, 1).toArray();
    Frame frame = Frame.aboutVertical(0.6).turning(Frame.leanedForward(0.8));
    return Pose.of(TREE, angles, new Vector3D(0.4, 0.9, -0.3), frame);
  }

  private static double[] angles(Pose pose) {
    double[] angles = new double[TREE.angles()];
    pose.copyAngles(angles);
    return angles;
  }

  private static void place(Kinematics quick, Pose pose) {
    Frame frame = pose.rootFrame();
    double[] rows = {
      frame.x().getX(), frame.y().getX(), frame.z().getX(),
      frame.x().getY(), frame.y().getY(), frame.z().getY(),
      frame.x().getZ(), frame.y().getZ(), frame.z().getZ()
    };
    quick.place(angles(pose), pose.rootPlace().toArray(), rows);
  }

  private static Vector3D point(Kinematics quick, int segment, Vector3D local) {
    double[] at = new double[3];
    for (int k = 0; k < 3; k++) {
      at[k] = quick.coordinate(segment, k, local.getX(), local.getY(), local.getZ());
    }
    return new Vector3D(at);
  }

  @Test
  void points_joints_axes_and_directions_are_those_of_the_placed_pose() {
    Kinematics quick = new Kinematics(TREE);
    Vector3D local = new Vector3D(0.3, -0.2, 0.1);
    for (int round = 0; round < 5; round++) {
      Pose pose = someone();
      Placement plain = pose.placed();
      place(quick, pose);
      for (int i = 0; i < TREE.size(); i++) {
        Vector3D turned = plain.frame(i).toWorld(local);
        double[] origin = plain.origin(i).toArray();
        for (int k = 0; k < 3; k++) {
          assertThat(quick.origin(i, k)).isEqualTo(origin[k]);
          assertThat(quick.direction(i, k, 0.3, -0.2, 0.1))
              .isCloseTo(turned.toArray()[k], within(1e-15));
        }
        assertThat(point(quick, i, local).distance(plain.toWorld(i, local))).isLessThan(1e-15);
        assertThat(plain.toLocal(i, plain.toWorld(i, local)).distance(local)).isLessThan(1e-14);
      }
      for (int angle = 0; angle < TREE.angles(); angle++) {
        for (int k = 0; k < 3; k++) {
          assertThat(quick.axis(angle, k)).isEqualTo(plain.axis(angle).toArray()[k]);
        }
      }
    }
  }

  @Test
  void who_asks_for_one_arm_with_the_other_joints_straight_gets_the_same_arm() {
    boolean[] asked = new boolean[TREE.size()];
    for (int i = TREE.indexOf("right hand"); i >= 0; i = TREE.segment(i).parent()) {
      asked[i] = true;
    }
    boolean[] turns = new boolean[TREE.angles()];
    int shoulder = TREE.angleOf("right shoulder", "flexion");
    int elbow = TREE.angleOf("right elbow", "flexion");
    turns[shoulder] = true;
    turns[elbow] = true;
    Kinematics arm = new Kinematics(TREE, asked, turns);
    Pose pose = someone();
    double[] straight = new double[TREE.angles()];
    straight[shoulder] = pose.angle(shoulder);
    straight[elbow] = pose.angle(elbow);
    Placement plain = Pose.of(TREE, straight, pose.rootPlace(), pose.rootFrame()).placed();
    place(arm, pose);
    for (int i = 1; i < TREE.size(); i++) {
      Vector3D at = point(arm, i, Vector3D.MINUS_J);
      // What was not asked for is not placed at all.
      Vector3D expected = asked[i] ? plain.toWorld(i, Vector3D.MINUS_J) : Vector3D.ZERO;
      assertThat(at.distance(expected)).as(TREE.segment(i).name()).isLessThan(1e-14);
    }
  }

  @Test
  void weights_add_up_to_the_body_weight_through_its_centre_of_mass() {
    Pose pose = someone();
    double[] sums = new double[6 * TREE.size()];
    pose.placed().addWeights(new Vector3D(0, -G, 0), sums);
    ForceSums.gather(TREE.flat(), sums);
    Vector3D weight = new Vector3D(0, -64 * G, 0);
    Vector3D moment = pose.placed().centreOfMass().crossProduct(weight);
    assertThat(force(sums, 0).distance(weight)).isLessThan(1e-9);
    assertThat(moment(sums, 0).distance(moment)).isLessThan(1e-9);
  }

  @Test
  void gravity_may_pull_any_way_so_that_a_turned_scene_is_still_the_same_scene() {
    Pose pose = someone();
    Vector3D pull = new Vector3D(3, -2, 5);
    double[] sums = new double[6 * TREE.size()];
    pose.placed().addWeights(pull, sums);
    ForceSums.gather(TREE.flat(), sums);
    Vector3D weight = pull.scalarMultiply(TREE.mass());
    assertThat(force(sums, 0).distance(weight)).isLessThan(1e-9);
    assertThat(moment(sums, 0).distance(pose.placed().centreOfMass().crossProduct(weight)))
        .isLessThan(1e-9);
  }

  @Test
  void a_joint_carries_what_hangs_beyond_it_and_nothing_else() {
    Pose pose = someone();
    Placement plain = pose.placed();
    int forearm = TREE.distalOf("left elbow");
    int hand = TREE.indexOf("left hand");
    Kinematics quick = new Kinematics(TREE);
    quick.place(pose);
    double[] sums = new double[6 * TREE.size()];
    // 100 N down at the hand, 40 N to the right there too, and 500 N on a foot: not the arm's.
    Vector3D at = plain.origin(hand);
    Vector3D pull = new Vector3D(0, -100, 40);
    ForceSums.add(sums, hand, at.getX(), at.getY(), at.getZ(), 0, -100, 40);
    ForceSums.add(sums, TREE.indexOf("right foot"), 0.2, 0, 0.1, 7, 500, 3);
    ForceSums.gather(TREE.flat(), sums);
    double[] moments = new double[3 * TREE.size()];
    quick.aboutCentres(sums, moments);
    Vector3D expected = at.subtract(plain.origin(forearm)).crossProduct(pull);
    assertThat(
            new Vector3D(Arrays.copyOfRange(moments, 3 * forearm, 3 * forearm + 3))
                .distance(expected))
        .isLessThan(1e-10);
    int flexion = TREE.angleOf("left elbow", "flexion");
    assertThat(quick.along(moments, forearm, flexion))
        .isCloseTo(expected.dotProduct(plain.axis(flexion)), within(1e-10));
    assertThat(force(sums, 0).distance(new Vector3D(7, 400, 43))).isLessThan(1e-12);
    assertThat(quick.tree()).isSameAs(TREE);
  }

  private static Vector3D force(double[] sums, int segment) {
    return new Vector3D(Arrays.copyOfRange(sums, 6 * segment, 6 * segment + 3));
  }

  private static Vector3D moment(double[] sums, int segment) {
    return new Vector3D(Arrays.copyOfRange(sums, 6 * segment + 3, 6 * segment + 6));
  }
}
