package org.leverbook.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.load.Force;
import org.leverbook.load.Load;
import org.leverbook.pose.Kinematics;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.QuickMoments;

/**
 * Works through the poses of one line of a grid in arrays of its own. Loads that promise to be dead
 * weights are asked for their forces once; the others in every pose.
 */
final class GridLine {

  /** As in a position: of two sides the right, unless the left is truly greater. */
  private static final double TRULY = 1 + 1e-9;

  private static final Set<JointId> LEG =
      EnumSet.of(JointId.HIP, JointId.KNEE, JointId.ANKLE, JointId.BALL);

  /** With the ankle centre lower than this a foot is taken to stand, metres: by eye. */
  private static final double LOWEST_ANKLE = 0.12;

  private final QuickMoments quick;
  private final List<Load> changing = new ArrayList<>();
  private final List<Load> dead = new ArrayList<>();
  private final int[][] distals;
  private final int[][] angles;
  private final int[] feet;
  private int[] held;
  private double[] places;
  private double[] weights;

  GridLine(SegmentTree tree, List<Load> loads, List<JointId> joints) {
    quick = new QuickMoments(tree);
    loads.forEach(load -> (load.deadWeight() ? dead : changing).add(load));
    distals = new int[joints.size()][];
    angles = new int[joints.size()][];
    for (int j = 0; j < joints.size(); j++) {
      JointId joint = joints.get(j);
      List<Side> sides = joint.sides();
      distals[j] = sides.stream().mapToInt(side -> tree.distalOf(joint.on(side))).toArray();
      angles[j] =
          sides.stream().mapToInt(side -> tree.angleOf(joint.on(side), "flexion")).toArray();
    }
    feet =
        joints.stream().anyMatch(LEG::contains)
            ? JointId.ANKLE.sides().stream()
                .mapToInt(side -> tree.distalOf(JointId.ANKLE.on(side)))
                .toArray()
            : new int[0];
  }

  void solve(Pose pose) {
    if (pose.tree() != quick.where().tree()) {
      throw new Refused("A grid is that of one body, but its poses belong to different ones.");
    }
    quick.at(pose);
    hanging();
    if (held == null) {
      weigh(pose.placed());
    }
    Kinematics where = quick.where();
    for (int k = 0; k < held.length; k++) {
      int i = 3 * k;
      double x = places[i];
      double y = places[i + 1];
      double z = places[i + 2];
      quick.push(
          held[k],
          where.coordinate(held[k], 0, x, y, z),
          where.coordinate(held[k], 1, x, y, z),
          where.coordinate(held[k], 2, x, y, z),
          weights[i],
          weights[i + 1],
          weights[i + 2]);
    }
    if (!changing.isEmpty()) {
      Placement placement = pose.placed();
      for (Load load : changing) {
        if (load.shared(placement).isPresent()) {
          throw new Refused(
              "A grid does not look for the place where the soles press the "
                  + load.source()
                  + ": say it, as in .pressedAt(percent(50)).");
        }
        load.forces(placement).forEach(this::push);
      }
    }
    quick.gather();
  }

  /** Refuses legs that stand: what the floor gives them is not known here. */
  private void hanging() {
    for (int foot : feet) {
      double ankle = quick.where().origin(foot, 1);
      if (ankle < LOWEST_ANKLE) {
        throw new Refused(
            String.format(
                Locale.ROOT,
                "An ankle is %.1f cm above the floor, so this leg stands, but a grid of given poses"
                    + " knows no floor and no pads: keep the ankles above %.0f cm, ask for joints"
                    + " above the hips, or take grid(…) with positions.",
                100 * ankle,
                100 * LOWEST_ANKLE));
      }
    }
  }

  private void weigh(Placement first) {
    List<Force> forces = dead.stream().flatMap(load -> load.forces(first).stream()).toList();
    held = new int[forces.size()];
    places = new double[3 * held.length];
    weights = new double[3 * held.length];
    for (int k = 0; k < held.length; k++) {
      Force force = forces.get(k);
      held[k] = force.segment();
      Vector3D local = first.toLocal(force.segment(), force.point());
      System.arraycopy(local.toArray(), 0, places, 3 * k, 3);
      System.arraycopy(force.force().toArray(), 0, weights, 3 * k, 3);
    }
  }

  private void push(Force force) {
    Vector3D at = force.point();
    Vector3D pull = force.force();
    quick.push(
        force.segment(), at.getX(), at.getY(), at.getZ(), pull.getX(), pull.getY(), pull.getZ());
    Vector3D moment = force.moment();
    quick.twist(force.segment(), moment.getX(), moment.getY(), moment.getZ());
  }

  /** The moment about the flexion axis of a joint, newton metres; of a pair, the greater. */
  double signed(int joint) {
    double right = quick.about(distals[joint][0], angles[joint][0]);
    if (distals[joint].length == 1) {
      return right;
    }
    double left = quick.about(distals[joint][1], angles[joint][1]);
    return Math.abs(left) > Math.abs(right) * TRULY ? left : right;
  }
}
