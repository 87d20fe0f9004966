package org.leverbook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.SegmentTree;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.Inertia;
import org.leverbook.pose.MovingPose;
import org.leverbook.pose.Pose;
import org.leverbook.statics.NetLoads;

/**
 * Moving bodies against the independent rigid-body library: its inverse dynamics work in body
 * frames with spatial vectors, ours in the world with d'Alembert's forces.
 *
 * <p>Differences are measured against the largest force or moment of the same instant.
 */
class MovingBodyTest {

  private static final int MOTIONS = 250;
  private static final long SEED = 20_260_202;
  private static final double AGREE = 1e-8;

  @Test
  void every_joint_of_random_people_in_random_motion_agrees_with_the_rigid_body_library() {
    RandomScenes random = new RandomScenes(SEED);
    RigidBodyTwin twin = null;
    double worst = 0;
    int joints = 0;
    double share = 0;
    for (int motion = 0; motion < MOTIONS; motion++) {
      if (motion % 10 == 0) {
        twin = new RigidBodyTwin(random.body().tree());
      }
      SegmentTree tree = twin.tree();
      MovingPose moving = random.moving(random.pose(tree));
      List<Force> forces = new ArrayList<>(random.forces(moving.pose().placed()));
      twin.solve(moving, forces, Gravity.VECTOR);
      forces.addAll(Inertia.ofBody(moving.accelerations()).fixed());
      NetLoads net = NetLoads.of(moving.pose().placed(), forces, Gravity.VECTOR);
      double largestForce = 0;
      double largestMoment = 0;
      for (int i = 0; i < tree.size(); i++) {
        largestForce = Math.max(largestForce, net.force(i).getNorm());
        largestMoment = Math.max(largestMoment, net.moment(i).getNorm());
      }
      for (int i = 0; i < tree.size(); i++) {
        worst = Math.max(worst, net.force(i).add(twin.force(i)).getNorm() / largestForce);
        worst = Math.max(worst, net.moment(i).add(twin.moment(i)).getNorm() / largestMoment);
        joints++;
      }
      share +=
          net.moment("body inertia", 0, net.where().origin(0)).getNorm()
              / net.moment(0).getNorm()
              / MOTIONS;
    }
    assertThat(joints).as("joints compared, root included").isEqualTo(MOTIONS * 46);
    assertThat(share)
        .as("inertia's share of the whole, so that it is truly tested")
        .isGreaterThan(0.5);
    assertThat(worst).isLessThan(AGREE);
    // Met: 1.4e-14. More than 1e-12 would be a new fault, small as it is.
    assertThat(worst).isLessThan(1e-12);
  }

  @Test
  void a_body_that_does_not_move_has_the_moments_of_the_still_one_to_the_last_digit() {
    RandomScenes random = new RandomScenes(SEED + 1);
    for (int n = 0; n < 20; n++) {
      Pose pose = random.pose(random.body().tree());
      List<Force> forces = random.forces(pose.placed());
      NetLoads still = NetLoads.of(pose.placed(), forces, Gravity.VECTOR);
      List<Force> more = new ArrayList<>(forces);
      more.addAll(Inertia.ofBody(MovingPose.still(pose).accelerations()).fixed());
      NetLoads moving = NetLoads.of(pose.placed(), more, Gravity.VECTOR);
      for (int i = 0; i < pose.tree().size(); i++) {
        assertThat(moving.moment(i)).isEqualTo(still.moment(i));
        assertThat(moving.force(i)).isEqualTo(still.force(i));
      }
    }
  }

  @Test
  void a_body_that_falls_freely_presses_nowhere() {
    RandomScenes random = new RandomScenes(SEED + 2);
    Pose pose = random.pose(random.body().tree());
    int angles = pose.tree().angles();
    MovingPose falling =
        MovingPose.of(
            pose,
            new double[angles],
            new double[angles],
            new MovingPose.Root(
                new Vector3D(1, -3, 0), Gravity.VECTOR, Vector3D.ZERO, Vector3D.ZERO));
    NetLoads net =
        NetLoads.of(pose.placed(), Inertia.ofBody(falling.accelerations()).fixed(), Gravity.VECTOR);
    for (int i = 0; i < pose.tree().size(); i++) {
      // Rounding of some hundred newtons at some metres.
      assertThat(net.force(i).getNorm()).isLessThan(1e-11);
      assertThat(net.moment(i).getNorm()).isLessThan(1e-11);
    }
  }
}
