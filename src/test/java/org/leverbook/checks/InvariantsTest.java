package org.leverbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.Freedom;
import org.leverbook.body.Segment;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.NetLoads;

/**
 * What must hold in any pose under any forces, over seeded random people, poses and forces.
 *
 * <p>Tolerance: moments reach some 1e4 N·m here and are sums of a few hundred products, so 1e-9 N·m
 * is ten digits below the smallest that matters and three above rounding.
 */
class InvariantsTest {

  private static final int CASES = 200;
  private static final double ROUNDING = 1e-9;

  @Test
  void turning_the_whole_scene_with_gravity_changes_no_moment_about_an_anatomical_axis() {
    RandomScenes random = new RandomScenes(1);
    int compared = 0;
    for (int i = 0; i < CASES; i++) {
      SegmentTree tree = random.body().tree();
      Pose pose = random.pose(tree);
      List<Force> forces = random.forces(pose.placed());
      NetLoads still = NetLoads.of(pose.placed(), forces, Gravity.VECTOR);
      Rotation turn = random.rotation();
      Pose turned = Images.turned(turn, pose);
      NetLoads moved =
          NetLoads.of(
              turned.placed(),
              forces.stream().map(force -> Images.turned(turn, force)).toList(),
              turn.applyTo(Gravity.VECTOR));
      for (Segment segment : tree.segments().subList(1, tree.size())) {
        JointMoment before = JointMoment.of(still, segment.joint().fullName(), "load 0");
        JointMoment after = JointMoment.of(moved, segment.joint().fullName(), "load 0");
        for (Freedom freedom : segment.joint().freedoms()) {
          String axis = freedom.motion().axis();
          assertThat(after.about(axis)).isCloseTo(before.about(axis), within(ROUNDING));
          compared++;
        }
        assertThat(after.tendsTo()).isEqualTo(before.tendsTo());
        assertThat(after.arm3d()).isCloseTo(before.arm3d(), within(ROUNDING));
      }
    }
    assertThat(compared).isEqualTo(CASES * 119);
  }

  @Test
  void a_mirrored_person_has_the_same_moments_on_the_other_side() {
    RandomScenes random = new RandomScenes(2);
    int compared = 0;
    for (int i = 0; i < CASES; i++) {
      SegmentTree tree = random.body().tree();
      Pose pose = random.pose(tree);
      List<Force> forces = random.forces(pose.placed());
      NetLoads here = NetLoads.of(pose.placed(), forces, Gravity.VECTOR);
      Pose mirrored = Images.mirrored(pose);
      List<Force> there = forces.stream().map(force -> Images.mirrored(tree, force)).toList();
      NetLoads across = NetLoads.of(mirrored.placed(), there, Gravity.VECTOR);
      for (Segment segment : tree.segments().subList(1, tree.size())) {
        boolean midline = segment.joint().side() == Side.MIDLINE;
        String joint = segment.joint().fullName();
        JointMoment own = JointMoment.of(here, joint, "");
        JointMoment other = JointMoment.of(across, Images.otherSide(joint), "");
        for (Freedom freedom : segment.joint().freedoms()) {
          String axis = freedom.motion().axis();
          double sign = midline && !axis.equals("flexion") ? -1 : 1;
          assertThat(other.about(axis)).isCloseTo(sign * own.about(axis), within(ROUNDING));
          compared++;
        }
      }
    }
    assertThat(compared).isEqualTo(CASES * 119);
  }

  @Test
  void doubling_one_load_in_the_same_pose_doubles_its_own_share_and_no_other() {
    RandomScenes random = new RandomScenes(3);
    for (int i = 0; i < CASES; i++) {
      Body body = random.body();
      Pose pose = random.pose(body.tree());
      List<Force> once = random.forces(pose.placed());
      List<Force> twice = once.stream().map(InvariantsTest::firstLoadDoubled).toList();
      NetLoads single = NetLoads.of(pose.placed(), once, Gravity.VECTOR);
      NetLoads more = NetLoads.of(pose.placed(), twice, Gravity.VECTOR);
      for (Segment segment : body.tree().segments().subList(1, body.tree().size())) {
        String joint = segment.joint().fullName();
        var before = JointMoment.of(single, joint, "load 0").parts();
        var after = JointMoment.of(more, joint, "load 0").parts();
        assertThat(after.keySet()).isEqualTo(before.keySet());
        before.forEach(
            (source, part) -> {
              double factor = source.equals("load 0") ? 2 : 1;
              Vector3D wanted = part.moment().scalarMultiply(factor);
              assertThat(after.get(source).moment().distance(wanted)).isLessThan(ROUNDING);
              assertThat(after.get(source).arm()).isCloseTo(part.arm(), within(ROUNDING));
            });
      }
    }
  }

  private static Force firstLoadDoubled(Force force) {
    double factor = force.source().equals("load 0") ? 2 : 1;
    return new Force(
        force.source(),
        force.kind(),
        force.segment(),
        force.point(),
        force.force().scalarMultiply(factor),
        force.moment().scalarMultiply(factor));
  }

  @Test
  void what_the_inner_side_does_at_a_joint_is_the_opposite_of_what_the_outer_side_does() {
    RandomScenes random = new RandomScenes(4);
    for (int i = 0; i < CASES; i++) {
      SegmentTree tree = random.body().tree();
      Placement where = random.pose(tree).placed();
      List<Force> forces = new ArrayList<>(random.forces(where));
      forces.add(holding(where, forces));
      NetLoads net = NetLoads.of(where, forces, Gravity.VECTOR);
      assertThat(net.force(0).getNorm()).isLessThan(ROUNDING);
      Vector3D anywhere = random.vector(3);
      Vector3D about = Vector3D.ZERO;
      for (String source : net.sources()) {
        about = about.add(net.moment(source, 0, anywhere));
      }
      assertThat(about.getNorm()).isLessThan(ROUNDING);
      for (int joint = 1; joint < tree.size(); joint++) {
        Vector3D[] inner = innerSide(where, forces, joint);
        assertThat(inner[0].add(net.force(joint)).getNorm()).isLessThan(ROUNDING);
        assertThat(inner[1].add(net.moment(joint)).getNorm()).isLessThan(ROUNDING);
      }
    }
  }

  /** The one force on the pelvis, with a free moment, that keeps everything still. */
  private static Force holding(Placement where, List<Force> forces) {
    NetLoads net = NetLoads.of(where, forces, Gravity.VECTOR);
    return new Force(
        "hold",
        Force.Kind.SUPPORT,
        0,
        where.origin(0),
        net.force(0).negate(),
        net.moment(0).negate());
  }

  /** Force and moment of everything proximal to a joint, summed here piece by piece. */
  private static Vector3D[] innerSide(Placement where, List<Force> forces, int joint) {
    SegmentTree tree = where.tree();
    Vector3D centre = where.origin(joint);
    Vector3D force = Vector3D.ZERO;
    Vector3D moment = Vector3D.ZERO;
    for (int i = 0; i < tree.size(); i++) {
      if (!tree.hangsOn(i, joint)) {
        Vector3D weight = Gravity.VECTOR.scalarMultiply(tree.segment(i).mass());
        force = force.add(weight);
        moment = moment.add(where.centreOfMass(i).subtract(centre).crossProduct(weight));
      }
    }
    for (Force f : forces) {
      if (!tree.hangsOn(f.segment(), joint)) {
        force = force.add(f.force());
        moment = moment.add(f.momentAbout(centre));
      }
    }
    return new Vector3D[] {force, moment};
  }
}
