package org.leverbook.muscle;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.pose.Frame;
import org.leverbook.quantity.Refused;

/**
 * What presses in hips, knees and shoulders: minus the net force of loads, weight and supports on
 * all that is distal, minus every muscle's pull there.
 *
 * <p>How hard a muscle pulls follows from its arm; only its direction is asked of {@link
 * StraightLines} (hip, knee) and {@link ShoulderLines}. So the size is an estimate: directions of
 * hip and knee are own estimates, good to some 10 degrees.
 */
public final class Bones {

  private static final List<JointId> KNOWN = List.of(JointId.HIP, JointId.KNEE, JointId.SHOULDER);

  private final Effort effort;
  private final SegmentTree tree;
  private final StraightLines lines;

  private Bones(Effort effort, Body body) {
    this.effort = effort;
    tree = body.tree();
    lines = new StraightLines(body);
  }

  /**
   * The joints of an effort.
   *
   * @param effort who pulls how hard
   * @param body whose
   * @return what presses in its joints
   */
  public static Bones of(Effort effort, Body body) {
    return new Bones(effort, body);
  }

  /**
   * What to know of the muscles before these forces are read.
   *
   * @return who is at full pull, and whether that is enough; none where nobody is
   */
  public List<String> notes() {
    return FullPull.pressing(effort, KNOWN);
  }

  /**
   * What presses in one joint.
   *
   * @param joint hip, knee or shoulder
   * @param side left or right
   * @return the force between its bones
   * @throws Refused if it is another joint, or no side is given
   */
  public BoneLoad at(JointId joint, Side side) {
    if (!KNOWN.contains(joint)) {
      throw new Refused(
          "What presses inside is known for HIP, KNEE and SHOULDER, not for the "
              + joint.word()
              + ". For the low back ask .disc(L5_S1).");
    }
    if (side == Side.MIDLINE) {
      throw new Refused("There are two of the " + joint.word() + "s: say LEFT or RIGHT.");
    }
    int distal = tree.distalOf(joint.on(side));
    Vector3D net = effort.loads().force(distal);
    Vector3D pulls = Vector3D.ZERO;
    Vector3D kneecap = Vector3D.ZERO;
    for (Effort.Pull pull : effort.pulls()) {
      if (pull.strand().side() == side && pull.force() > 0 && crosses(pull.strand(), distal)) {
        String key = pull.strand().muscle().key();
        pulls = pulls.add(direction(joint, side, key).scalarMultiply(pull.force()));
        if (joint == JointId.KNEE && lines.byTendon(key)) {
          Vector3D onKneecap = thigh(side).subtract(lines.tendon(effort.where(), side));
          kneecap = kneecap.add(onKneecap.scalarMultiply(pull.force()));
        }
      }
    }
    Vector3D between = net.add(pulls).negate();
    Frame bone = effort.where().frame(distal);
    Vector3D along = joint == JointId.SHOULDER ? outward(side) : bone.y().negate();
    return new BoneLoad(
        joint.on(side),
        net.getNorm(),
        between.getNorm(),
        between.dotProduct(along),
        kneecap.getNorm());
  }

  private boolean crosses(Strand strand, int distal) {
    int first = tree.firstAngle(distal);
    int end = tree.firstAngle(distal + 1);
    return strand.crossings().stream().anyMatch(c -> c.axis() >= first && c.axis() < end);
  }

  private Vector3D direction(JointId joint, Side side, String muscle) {
    if (joint == JointId.SHOULDER) {
      return ShoulderLines.direction(effort.where(), side, muscle);
    }
    return joint == JointId.KNEE && lines.byTendon(muscle)
        ? lines.tendon(effort.where(), side)
        : lines.direction(effort.where(), side, muscle);
  }

  private Vector3D thigh(Side side) {
    return effort.where().frame(tree.indexOf(side.of("thigh"))).y();
  }

  private Vector3D outward(Side side) {
    Frame girdle = effort.where().frame(tree.indexOf(side.of("shoulder girdle")));
    return girdle.z().scalarMultiply(side.sign());
  }
}
