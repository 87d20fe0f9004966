package org.leverbook.pose;

import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Links;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.quantity.Refused;

/**
 * Puts a limb between two given ends in closed form: a leg between the hip and a flat foot, a
 * straight arm between the shoulder and a grip.
 */
public final class Limbs {

  /**
   * How far the forearm is turned in an overhand grip, of the 160 degrees it has from the
   * anatomical position; the shoulder gives the rest. Common practice, no source.
   */
  private static final double OVERHAND_PRONATION = Math.toRadians(150);

  private Limbs() {}

  /**
   * Stands a leg on a flat foot: the knee points the way the foot does, as coaches ask for.
   *
   * @param pose the pelvis already in place
   * @param body whose leg
   * @param side which leg
   * @param ankle the ankle's centre in the world, metres
   * @param turnOut how far the foot points outward, radians
   * @return the pose with this leg's hip, knee and ankle angles
   * @throws Refused if the leg is too short for the distance, or the distance too short for the leg
   */
  public static Pose stand(Pose pose, Body body, Side side, Vector3D ankle, double turnOut) {
    Links links = body.links();
    SegmentTree tree = body.tree();
    int thighIndex = tree.distalOf(JointId.HIP.on(side));
    Vector3D hip =
        pose.rootPlace().add(pose.rootFrame().toWorld(tree.segment(thighIndex).joint().centre()));
    Vector3D down = ankle.subtract(hip);
    double distance = down.getNorm();
    double longest = links.thigh() + links.shank();
    if (distance > longest) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The hips are %.1f cm too far from the ankles for these legs.",
              100 * (distance - longest)));
    }
    Vector3D along = down.normalize();
    Frame foot = Frame.aboutVertical(-side.sign() * turnOut);
    double toKnee =
        (links.thigh() * links.thigh() - links.shank() * links.shank() + distance * distance)
            / (2 * distance);
    double bulge = Math.sqrt(Math.max(0, links.thigh() * links.thigh() - toKnee * toKnee));
    Vector3D forward =
        foot.x().subtract(along.scalarMultiply(foot.x().dotProduct(along))).normalize();
    Vector3D knee = new Vector3D(1, hip, toKnee, along, bulge, forward);
    Frame thigh = Frame.of(hip.subtract(knee), forward);
    Frame shank = Frame.of(knee.subtract(ankle), forward);
    return pose.with(
            JointId.HIP.on(side),
            JointAngles.of(tree.segment(thighIndex).joint(), thigh.relativeTo(pose.rootFrame())))
        .with(
            JointId.KNEE.on(side),
            JointAngles.of(joint(tree, JointId.KNEE, side), shank.relativeTo(thigh)))
        .with(
            JointId.ANKLE.on(side),
            JointAngles.of(joint(tree, JointId.ANKLE, side), foot.relativeTo(shank)));
  }

  /**
   * Points a straight arm from its shoulder towards a grip, palm towards the lifter (overhand).
   *
   * @param pose pelvis, spine and shoulder girdle already in place
   * @param body whose arm
   * @param side which arm
   * @param grip the centre of the gripped bar in the world, metres; the hand ends there if it is
   *     one reach away
   * @return the pose with this arm's shoulder, elbow and forearm angles
   */
  public static Pose hang(Pose pose, Body body, Side side, Vector3D grip) {
    SegmentTree tree = body.tree();
    Placement where = pose.placed();
    int upperArm = tree.distalOf(JointId.SHOULDER.on(side));
    Vector3D shoulder = where.origin(upperArm);
    Frame hand = Frame.of(shoulder.subtract(grip), Vector3D.MINUS_I);
    Frame humerus = hand.turning(Frame.aboutVertical(-side.sign() * OVERHAND_PRONATION));
    Frame girdle = where.frame(tree.segment(upperArm).parent());
    return pose.with(
            JointId.SHOULDER.on(side),
            JointAngles.of(tree.segment(upperArm).joint(), humerus.relativeTo(girdle)))
        .with(JointId.FOREARM.on(side), OVERHAND_PRONATION);
  }

  private static org.leverbook.body.Joint joint(SegmentTree tree, JointId id, Side side) {
    return tree.segment(tree.distalOf(id.on(side))).joint();
  }
}
