package org.leverbook.statics;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.load.Gravity;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;

/**
 * The moments that are known: all of them where the position is held; where it is not, those of
 * joints through which no support reaches, as these follow from weights and loads alone.
 */
final class KnownMoments {

  /** Said where a position is not held. */
  static final String LEFT_OUT =
      "Moments at joints that the supports would reach through are not known and left out.";

  private final Map<String, JointMoment> moments = new LinkedHashMap<>();
  private final String reason;

  private KnownMoments(String reason) {
    this.reason = reason;
  }

  static KnownMoments of(Placement where, Resting resting) {
    KnownMoments known = new KnownMoments(resting.holding().sentence());
    NetLoads net = NetLoads.of(where, resting.forces(), Gravity.VECTOR);
    Partition partition =
        new Partition(where, net, resting.passedOn(), Partition.hardest(resting.forces()));
    SegmentTree tree = where.tree();
    for (int i = 1; i < tree.size(); i++) {
      if (resting.holding().held() || !resting.touchesBeyond(tree, i)) {
        known.moments.put(tree.segment(i).joint().fullName(), partition.at(i));
      }
    }
    return known;
  }

  JointMoment at(JointId joint, Side side) {
    JointMoment moment = moments.get(joint.on(side));
    if (moment == null) {
      throw new Refused(
          "The moment at the "
              + joint.on(side)
              + " is not known, because the supports cannot hold this position. "
              + reason);
    }
    return moment;
  }

  /** Of a paired joint the greater one, the right where both are equal. */
  JointMoment greater(JointId joint) {
    if (!joint.paired() || !knows(joint, Side.LEFT)) {
      return at(joint, Side.RIGHT);
    }
    if (!knows(joint, Side.RIGHT)) {
      return at(joint, Side.LEFT);
    }
    JointMoment right = at(joint, Side.RIGHT);
    JointMoment left = at(joint, Side.LEFT);
    return left.size() > right.size() * (1 + 1e-9) ? left : right;
  }

  boolean knows(JointId joint, Side side) {
    return moments.containsKey(joint.on(side));
  }

  List<JointMoment> all() {
    return List.copyOf(moments.values());
  }
}
