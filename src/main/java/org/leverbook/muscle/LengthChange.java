package org.leverbook.muscle;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.pose.Placement;

/**
 * How much every muscle changes its length along a way.
 *
 * <p>A muscle with the arm r about an axis gets shorter by r dq as the axis turns by dq its way: so
 * dL = - sum of r dq over the axes it crosses, added up over the way with the mean of the arms at
 * both ends of a step (error: second order in the step). Muscles of two joints come out right: a
 * hamstring that the hip shortens and the knee lengthens hardly changes.
 *
 * <p>Fibres' own lengths are not in the data. What is told besides centimetres is therefore the
 * turn: the change over the longest arm on the way, the angle by which one joint would have to turn
 * to change it as much. Tendon stretch is left out.
 */
final class LengthChange {

  private final double[] change;
  private final double[] longest;

  private LengthChange(int strands) {
    change = new double[strands];
    longest = new double[strands];
  }

  /**
   * Along a way.
   *
   * @param way positions of one person, in order; one alone changes nothing
   * @return the changes
   */
  static LengthChange along(List<Effort> way) {
    Musculature muscles = way.get(0).muscles();
    int[] axes = muscles.axes();
    int strands = muscles.strands().size();
    LengthChange found = new LengthChange(strands);
    double[] length = new double[strands];
    double[] least = new double[strands];
    double[] most = new double[strands];
    for (int step = 0; step < way.size(); step++) {
      Effort here = way.get(step);
      Effort before = way.get(Math.max(0, step - 1));
      double[] turns = turns(before.where(), here.where(), muscles);
      for (int i = 0; i < strands; i++) {
        for (int row = 0; row < axes.length; row++) {
          double arm = (before.arm(row, i) + here.arm(row, i)) / 2;
          length[i] -= arm * turns[row];
          found.longest[i] = Math.max(found.longest[i], Math.abs(here.arm(row, i)));
        }
        least[i] = Math.min(least[i], length[i]);
        most[i] = Math.max(most[i], length[i]);
      }
    }
    Arrays.setAll(found.change, i -> most[i] - least[i]);
    return found;
  }

  /**
   * By how much each row of arms turns from one placement to the next. The flexion row of a
   * shoulder is no joint angle ({@link Musculature#axis}): the joint's flexion turns partly about
   * it, partly about the upper arm.
   */
  private static double[] turns(Placement from, Placement to, Musculature muscles) {
    SegmentTree tree = muscles.tree();
    int[] axes = muscles.axes();
    double[] turns = new double[axes.length];
    for (int row = 0; row < axes.length; row++) {
      turns[row] = to.pose().angle(axes[row]) - from.pose().angle(axes[row]);
    }
    for (Side side : JointId.SHOULDER.sides()) {
      String shoulder = JointId.SHOULDER.on(side);
      int flexion = tree.angleOf(shoulder, "flexion");
      int rotation = tree.angleOf(shoulder, "rotation");
      if (muscles.row(flexion) >= 0 && muscles.row(rotation) >= 0) {
        double turn = turns[muscles.row(flexion)];
        turns[muscles.row(flexion)] = turn * (along(from, flexion) + along(to, flexion)) / 2;
        turns[muscles.row(rotation)] +=
            turn * (onto(from, flexion, rotation) + onto(to, flexion, rotation)) / 2;
      }
    }
    return turns;
  }

  private static double along(Placement where, int flexion) {
    return where.axis(flexion).dotProduct(Musculature.axis(flexion, where));
  }

  private static double onto(Placement where, int flexion, int rotation) {
    return Vector3D.dotProduct(where.axis(flexion), where.axis(rotation));
  }

  /** The change of a muscle, metres, longest less shortest. */
  double of(int strand) {
    return change[strand];
  }

  /** The turn on its longest arm that changes it as much, radians. */
  double turn(int strand) {
    return longest[strand] > 0 ? change[strand] / longest[strand] : 0;
  }
}
