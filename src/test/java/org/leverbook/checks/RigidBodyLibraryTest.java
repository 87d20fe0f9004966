package org.leverbook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Freedom;
import org.leverbook.body.SegmentTree;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.NetLoads;

/**
 * The whole body against an independent rigid-body library (us.ihmc:mecano), which forms frames and
 * moments in another way (recursive Newton-Euler in body frames).
 *
 * <p>Differences are measured against the largest moment (or force) of the same pose: a wrist that
 * carries nothing has no relative accuracy of its own.
 */
class RigidBodyLibraryTest {

  private static final int POSES = 250;
  private static final long SEED = 20_260_101;
  private static final double AGREE = 1e-8;

  /** The greatest differences met in one run, relative except for places. */
  private static final class Worst {
    double place;
    double force;
    double moment;
    double component;
    int joints;
    int components;
  }

  @Test
  void every_joint_of_random_people_in_random_poses_agrees_with_the_rigid_body_library() {
    RandomScenes random = new RandomScenes(SEED);
    Worst worst = new Worst();
    RigidBodyTwin twin = null;
    for (int pose = 0; pose < POSES; pose++) {
      if (pose % 10 == 0) {
        twin = new RigidBodyTwin(random.body().tree());
      }
      Vector3D gravity = pose % 2 == 0 ? Gravity.VECTOR : random.vector(10);
      compare(twin, random.pose(twin.tree()), random, gravity, worst);
    }
    assertThat(worst.joints).as("joints compared").isEqualTo(POSES * 45);
    assertThat(worst.components).as("axes compared").isEqualTo(POSES * 119);
    assertThat(worst.place).as("metres").isLessThan(1e-12);
    assertThat(worst.force).isLessThan(AGREE);
    assertThat(worst.moment).isLessThan(AGREE);
    assertThat(worst.component).isLessThan(AGREE);
    // Met: 7e-15. More than 1e-12 would be a new fault, small as it is.
    assertThat(Math.max(worst.moment, worst.component)).isLessThan(1e-12);
  }

  private static void compare(
      RigidBodyTwin twin, Pose pose, RandomScenes random, Vector3D gravity, Worst worst) {
    Placement where = pose.placed();
    List<Force> forces = random.forces(where);
    SegmentTree tree = twin.tree();
    NetLoads net = NetLoads.of(where, forces, gravity);
    twin.solve(pose, forces, gravity);
    double largestForce = 0;
    double largestMoment = 0;
    for (int i = 0; i < tree.size(); i++) {
      largestForce = Math.max(largestForce, net.force(i).getNorm());
      largestMoment = Math.max(largestMoment, net.moment(i).getNorm());
    }
    for (int i = 0; i < tree.size(); i++) {
      worst.place = Math.max(worst.place, where.origin(i).distance(twin.place(i)));
      double force = net.force(i).add(twin.force(i)).getNorm() / largestForce;
      double moment = net.moment(i).add(twin.moment(i)).getNorm() / largestMoment;
      worst.force = Math.max(worst.force, force);
      worst.moment = Math.max(worst.moment, moment);
      if (i > 0) {
        worst.joints++;
        components(twin, net, i, largestMoment, worst);
      }
    }
  }

  private static void components(
      RigidBodyTwin twin, NetLoads net, int segment, double largest, Worst worst) {
    SegmentTree tree = twin.tree();
    String joint = tree.segment(segment).joint().fullName();
    JointMoment told = JointMoment.of(net, joint, "");
    List<Freedom> freedoms = new ArrayList<>(tree.segment(segment).joint().freedoms());
    for (int k = 0; k < freedoms.size(); k++) {
      double ours = told.about(freedoms.get(k).motion().axis());
      double theirs = twin.about(tree.firstAngle(segment) + k);
      worst.component = Math.max(worst.component, Math.abs(ours + theirs) / largest);
      worst.components++;
    }
  }
}
