package org.leverbook.statics;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.WeakHashMap;
import org.leverbook.body.Freedom;
import org.leverbook.body.Joint;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;
import org.leverbook.data.Recent;

/**
 * What one newton metre costs at each joint axis: one over the moment the joint can hold there, so
 * that efforts at strong and weak joints can be weighed against each other.
 *
 * <p>Values and sources stand in {@code strength/joint_capacity.csv}; the two directions of an axis
 * are averaged, because the direction is not known before the reactions are. Levels of the spine
 * hold the whole trunk's (or neck's) moment, and the levels of a region together count as one
 * joint: without that, a spine of seventeen joints would outweigh both hips. What bone and ligament
 * hold (a knee sideways) costs no effort.
 */
final class Capacities {

  private static final Lookup TABLE =
      new Lookup(DataTable.read("strength/joint_capacity.csv"), "joint", "axis");

  private static final double TABLE_MASS = 80;

  private static final Map<SegmentTree, double[]> KNOWN =
      Collections.synchronizedMap(new WeakHashMap<>());

  private static final long LUMBAR = JointId.L1_L2.ordinal() - JointId.L5_S1.ordinal() + 1;
  private static final long THORACIC = JointId.T1_T2.ordinal() - JointId.L1_L2.ordinal();
  private static final long CERVICAL = JointId.HEAD.ordinal() - JointId.T1_T2.ordinal();

  private static final Recent<Axis, Double> BY_AXIS =
      new Recent<>(3 * JointId.values().length, Capacities::cost);

  /** An axis of a joint, by the names of both. */
  private record Axis(String joint, String axis) {}

  private Capacities() {}

  /**
   * The cost of a newton metre.
   *
   * @param tree whose joints
   * @return for each joint angle in the tree's order, one over newton metres; zero where a moment
   *     costs no effort
   */
  static double[] costs(SegmentTree tree) {
    double[] known = KNOWN.get(tree);
    if (known == null) {
      // Not inside the map, which would let other threads wait.
      known = read(tree);
      KNOWN.put(tree, known);
    }
    return known;
  }

  private static double[] read(SegmentTree tree) {
    double[] costs = new double[tree.angles()];
    double scale = tree.mass() / TABLE_MASS;
    for (int i = 1; i < tree.size(); i++) {
      Joint joint = tree.segment(i).joint();
      List<Freedom> freedoms = joint.freedoms();
      for (int k = 0; k < freedoms.size(); k++) {
        Freedom freedom = freedoms.get(k);
        if (freedom.high() > freedom.low()) {
          costs[tree.firstAngle(i) + k] = cost(joint, freedom.motion().axis()) / scale;
        }
      }
    }
    return costs;
  }

  private static double cost(Joint joint, String axis) {
    return BY_AXIS.get(new Axis(joint.name(), axis));
  }

  private static double cost(Axis axis) {
    String name = axis.joint();
    double levels = 1;
    for (JointId level : JointId.values()) {
      if (!level.paired() && level.word().equals(axis.joint())) {
        name = level.compareTo(JointId.T1_T2) <= 0 ? "trunk" : "neck";
        levels =
            level.compareTo(JointId.L1_L2) <= 0
                ? LUMBAR
                : name.equals("trunk") ? THORACIC : CERVICAL;
      }
    }
    return TABLE.find(name, axis.axis()).map(r -> 1 / mean(r)).orElse(0.0) / Math.sqrt(levels);
  }

  private static double mean(DataRow row) {
    return (row.number("positive_Nm") + row.number("negative_Nm")) / 2;
  }
}
