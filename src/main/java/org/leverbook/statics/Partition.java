package org.leverbook.statics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Freedom;
import org.leverbook.body.Joint;
import org.leverbook.body.SegmentTree;
import org.leverbook.load.Force;
import org.leverbook.pose.Placement;

/**
 * Splits the moment at a joint into its sources, so that the parts add up exactly to the whole.
 *
 * <p>A joint with the floor on its distal side (a leg) carries there the share s of the floor's
 * vertical push, centred at p, where the whole push is centred at q. Every other source, with force
 * F and moment M about the joint, is then taken to be borne by this leg as the wrench (-sF, -s(M +
 * (p - q) x F)): its share, seen from where this foot presses. Over all feet these add up to the
 * source itself, because the p average to q. On a floor that only pushes upward nothing remains of
 * the floor; what friction adds stays under its name. Pads and grips are not passed on: they stand
 * in the table under their own names, negative where they relieve a joint, and of them too a leg
 * bears its share of the floor's push, since that much less reaches its foot.
 */
final class Partition {

  private final Placement where;
  private final NetLoads loads;
  private final String floor;
  private final String mainLoad;

  /**
   * Prepares the split.
   *
   * @param floor the support whose push is passed on to what it carries
   * @param mainLoad the load that arms are taken to, or empty
   */
  Partition(Placement where, NetLoads loads, String floor, String mainLoad) {
    this.where = where;
    this.loads = loads;
    this.floor = floor;
    this.mainLoad = mainLoad;
  }

  JointMoment at(int distal) {
    SegmentTree tree = where.tree();
    Joint joint = tree.segment(distal).joint();
    Vector3D centre = where.origin(distal);
    List<JointMoment.Axis> axes = new ArrayList<>();
    for (int k = 0; k < joint.freedoms().size(); k++) {
      Freedom freedom = joint.freedoms().get(k);
      axes.add(new JointMoment.Axis(freedom.motion(), where.axis(tree.firstAngle(distal) + k)));
    }
    Map<String, JointMoment.Part> parts = parts(distal, centre);
    Vector3D moment = loads.moment(distal);
    return new JointMoment(
        joint, centre, axes, loads.force(distal), moment, parts, mainLoad, main(axes, moment));
  }

  private Map<String, JointMoment.Part> parts(int distal, Vector3D centre) {
    double carried = shareOfFloor(distal);
    Vector3D offset = carried > 0 ? pressure(distal).subtract(pressure(0)) : Vector3D.ZERO;
    Map<String, JointMoment.Part> parts = new LinkedHashMap<>();
    Vector3D passedOn = Vector3D.ZERO;
    for (String source : loads.sources()) {
      if (source.equals(floor)) {
        continue;
      }
      Vector3D own = loads.moment(source, distal, centre);
      if (carried > 0) {
        Vector3D line = loads.force(source, 0);
        Vector3D whole = loads.moment(source, 0, centre);
        Vector3D borne = whole.add(offset.crossProduct(line)).scalarMultiply(-carried);
        passedOn = passedOn.subtract(borne);
        parts.put(
            source,
            new JointMoment.Part(own.add(borne), line.scalarMultiply(carried), armOf(line, whole)));
      } else {
        Vector3D line = loads.force(source, distal);
        parts.put(source, new JointMoment.Part(own, line, armOf(line, own)));
      }
    }
    if (loads.sources().contains(floor)) {
      Vector3D push = loads.force(floor, distal);
      Vector3D pushMoment = loads.moment(floor, distal, centre);
      parts.put(
          floor, new JointMoment.Part(pushMoment.add(passedOn), push, armOf(push, pushMoment)));
    }
    return parts;
  }

  /** The share of the floor's vertical push that the distal side of a joint stands on. */
  private double shareOfFloor(int distal) {
    if (!loads.sources().contains(floor)) {
      return 0;
    }
    double all = loads.force(floor, 0).getY();
    return all == 0 ? 0 : loads.force(floor, distal).getY() / all;
  }

  /** Where on the floor its push on the distal side acts, in the world, metres. */
  private Vector3D pressure(int distal) {
    Vector3D moment = loads.moment(floor, distal, Vector3D.ZERO);
    double up = loads.force(floor, distal).getY();
    return new Vector3D(moment.getZ() / up, 0, -moment.getX() / up);
  }

  /** Distance of a wrench's central axis: |F x M| / F². */
  private static double armOf(Vector3D force, Vector3D moment) {
    double square = force.getNormSq();
    return square == 0 ? 0 : force.crossProduct(moment).getNorm() / square;
  }

  /**
   * Flexion where the joint's first axis is one; otherwise the axis that takes most of the moment.
   */
  private static int main(List<JointMoment.Axis> axes, Vector3D moment) {
    if (axes.get(0).motion().axis().equals("flexion")) {
      return 0;
    }
    int main = 0;
    for (int k = 1; k < axes.size(); k++) {
      double here = Math.abs(moment.dotProduct(axes.get(k).direction()));
      if (here > Math.abs(moment.dotProduct(axes.get(main).direction()))) {
        main = k;
      }
    }
    return main;
  }

  /** The load to which arms are taken: the one that pulls hardest. */
  static String hardest(List<Force> forces) {
    Map<String, Double> sums = new LinkedHashMap<>();
    for (Force force : forces) {
      if (force.kind() == Force.Kind.LOAD) {
        sums.merge(force.source(), force.force().getNorm(), Double::sum);
      }
    }
    return sums.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .filter(e -> e.getValue() > 0)
        .map(Map.Entry::getKey)
        .orElse("");
  }
}
