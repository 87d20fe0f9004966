package org.leverbook.muscle;

import java.util.List;
import org.leverbook.body.Body;
import org.leverbook.body.Freedom;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.pose.Pose;

/**
 * What stretched tissue (ligaments, fascia, silent muscle) holds of a moment that bends the lumbar
 * spine forward.
 *
 * <p>Published: 25 N·m in lordosis, 120 N·m in men and 77 N·m in women in full flexion (Dolan,
 * Mannion and Adams 1994, J Biomech 27:1077-1085, abstract; {@code muscle/spine_loading.csv}).
 * Between them
 *
 * <pre>P(f) = P0 + (P1 - P0) (exp(3 f) - 1) / (exp(3) - 1)</pre>
 *
 * with f the level's flexion as a share of its way from standing to full flexion: slow at first,
 * steep at the end, as stretched tissue is (assumption). Backward of standing it fades to nothing
 * over a quarter of that way (assumption). The levels stand in series, so each holds up to the
 * whole moment; T12/L1 is taken like the lumbar ones (assumption). It is the most that tissue
 * holds: how much of it is used at each level follows from what the muscles need, at next to no
 * cost. It is not scaled to the person's size, as the paper prints men and women only. Other
 * joints: no data.
 */
final class Tissue {

  private static final double STEEPNESS = 3;
  private static final double FADES = 0.25;

  private final int[] axes;
  private final double[] spans;
  private final double lordotic;
  private final double full;

  private Tissue(SegmentTree tree, double lordotic, double full) {
    this.lordotic = lordotic;
    this.full = full;
    List<JointId> levels =
        JointId.spine().stream().filter(l -> l.compareTo(JointId.T12_L1) <= 0).toList();
    axes = levels.stream().mapToInt(l -> tree.angleOf(l.word(), "flexion")).toArray();
    spans =
        levels.stream()
            .map(l -> tree.segment(tree.distalOf(l.word())).joint())
            .mapToDouble(joint -> joint.freedom("flexion").map(Freedom::high).orElse(0.0))
            .toArray();
  }

  static Tissue of(Body body) {
    String full =
        body.person().sex() == Sex.MALE ? "passive_moment_full_men" : "passive_moment_full_women";
    return new Tissue(body.tree(), Read.value("passive_moment_lordotic"), Read.value(full));
  }

  private static final class Read {

    private static final DataTable FACTS = DataTable.read("muscle/spine_loading.csv");

    static double value(String id) {
      return row(id).number("value");
    }

    private static DataRow row(String id) {
      return FACTS.only(id, row -> row.is("id", id));
    }
  }

  /** The axes it holds, as places in the tree's order of angles: L5/S1 to T12/L1. */
  int[] axes() {
    return axes;
  }

  /**
   * The most it can hold of a moment that flexes.
   *
   * @param which which of its axes
   * @param pose the joint angles
   * @return newton metres, zero or more
   */
  double most(int which, Pose pose) {
    return most(pose.angle(axes[which]) / spans[which]);
  }

  /** The most it can hold, at a share of the way from standing to full flexion. */
  double most(double share) {
    if (share < 0) {
      return lordotic * Math.max(0, 1 + share / FADES);
    }
    double bent = Math.min(1, share);
    return lordotic + (full - lordotic) * Math.expm1(STEEPNESS * bent) / Math.expm1(STEEPNESS);
  }
}
