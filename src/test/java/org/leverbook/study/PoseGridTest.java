package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.Load;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.NetLoads;
import tech.tablesaw.api.Table;

/** Many given poses in one table. */
class PoseGridTest {

  private static final SegmentTree TREE = Body.of(Person.of(Sex.MALE, kg(85), cm(178))).tree();
  private static final List<JointId> JOINTS =
      List.of(JointId.L5_S1, JointId.SHOULDER, JointId.ELBOW);

  /** A pull on the left hand whose direction follows the hand: no dead weight. */
  private record Follows() implements Load {
    @Override
    public String source() {
      return "cord";
    }

    @Override
    public String description() {
      return "cord";
    }

    @Override
    public double mass() {
      return 0;
    }

    @Override
    public List<Force> forces(Placement where) {
      int hand = where.tree().distalOf(JointId.GRIP.on(Side.LEFT));
      Vector3D pull = new Vector3D(2, 2, 0).subtract(where.origin(hand)).scalarMultiply(50);
      return List.of(
          new Force(
              "cord", Force.Kind.LOAD, hand, where.origin(hand), pull, new Vector3D(1, 2, 3)));
    }
  }

  private static Pose pose(double lean, double elbow) {
    return Pose.neutral(TREE)
        .rootAt(new Vector3D(0, 0.9, 0), Frame.leanedForward(Math.toRadians(lean)))
        .with("right elbow", Math.toRadians(elbow), 0)
        .with("left elbow", Math.toRadians(elbow / 2), 0);
  }

  private static PoseGrid grid(List<Load> loads) {
    return PoseGrid.over(
        Span.of("lean", deg(0), deg(90), 13),
        Span.of("elbow flexion", deg(10), deg(120), 7),
        PoseGridTest::pose,
        loads,
        JOINTS.toArray(new JointId[0]));
  }

  @Test
  void every_row_is_the_moment_of_its_pose_with_dead_weights_and_with_others() {
    List<Load> loads = List.of(Barbell.of(kg(40)), new Follows());
    Table table = grid(loads).table();
    assertThat(table.rowCount()).isEqualTo(13 * 7);
    assertThat(table.columnNames())
        .containsExactly(
            "lean (°)",
            "elbow flexion (°)",
            "L5/S1 moment (N·m)",
            "shoulder moment (N·m)",
            "elbow moment (N·m)");
    for (int row = 0; row < table.rowCount(); row++) {
      Placement where =
          pose(table.doubleColumn(0).get(row), table.doubleColumn(1).get(row)).placed();
      List<Force> forces = new ArrayList<>();
      loads.forEach(load -> forces.addAll(load.forces(where)));
      NetLoads net = NetLoads.of(where, forces, Gravity.VECTOR);
      for (int j = 0; j < JOINTS.size(); j++) {
        // Rounding of some hundred newton metres.
        assertThat(table.doubleColumn(2 + j).get(row))
            .isCloseTo(greater(net, JOINTS.get(j)), within(1e-11));
      }
    }
  }

  private static double greater(NetLoads net, JointId joint) {
    JointMoment right = JointMoment.of(net, joint.on(Side.RIGHT), "");
    JointMoment left = JointMoment.of(net, joint.on(Side.LEFT), "");
    return left.size() > right.size() * (1 + 1e-9) ? left.signed() : right.signed();
  }

  @Test
  void a_grid_says_what_it_is_and_that_nothing_stands_on_a_floor() {
    assertThat(grid(List.of()).text())
        .startsWith(
            "grid of 91 still poses over lean (°) and elbow flexion (°): moments at L5/S1,"
                + " shoulder, elbow; the pelvis is held, the legs hang\n");
  }

  @Test
  void impossible_grids_are_refused_in_a_sentence() {
    assertThatThrownBy(() -> Span.of("lean", deg(5), deg(5), 9))
        .isInstanceOf(Refused.class)
        .hasMessage("The lean needs two different ends, but both are 5°.");
    Span<?> axis = Span.of("lean", deg(0), deg(5), 5000);
    assertThatThrownBy(
            () -> PoseGrid.over(axis, axis, PoseGridTest::pose, List.of(), JointId.ELBOW))
        .isInstanceOf(Refused.class)
        .hasMessage("A grid of 5,000 by 5,000 values is too large: at most 20,000,000 rows fit.");
    assertThatThrownBy(() -> PoseGrid.over(axis, axis, PoseGridTest::pose, List.of()))
        .isInstanceOf(Refused.class)
        .hasMessage("A grid needs at least one joint, such as ELBOW.");
  }

  @Test
  void a_leg_that_stands_is_refused_because_given_poses_know_no_floor() {
    assertThatThrownBy(() -> legs(0.9))
        .isInstanceOf(Refused.class)
        .hasMessageMatching(
            "An ankle is -?\\d+\\.\\d cm above the floor, so this leg stands, but a grid of given"
                + " poses knows no floor and no pads: keep the ankles above 12 cm, ask for joints"
                + " above the hips, or take grid\\(…\\) with positions\\.");
    assertThat(legs(1.2).rows()).as("hanging from a bar").isEqualTo(6);
  }

  private static PoseGrid legs(double hipHeight) {
    return PoseGrid.over(
        Span.of("hip flexion", deg(0), deg(10), 3),
        Span.of("knee bend", deg(0), deg(10), 2),
        (hip, knee) ->
            Pose.neutral(TREE)
                .rootAt(new Vector3D(0, hipHeight, 0), Frame.WORLD)
                .with("right hip", Math.toRadians(hip), 0, 0)
                .with("right knee", Math.toRadians(knee), 0, 0),
        List.of(),
        JointId.KNEE);
  }
}
