package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Side;
import org.leverbook.pose.Limbs;
import org.leverbook.pose.Pose;

/**
 * Two flat feet on the floor, the same on both sides, the middle of the feet at the world's X = 0.
 *
 * @param halfWidth midline to ankle centre, metres
 * @param turnOut how far each foot points outward, radians
 */
record Stance(double halfWidth, double turnOut) {

  /**
   * The middle of the foot stands this share of foot length ahead of the ankle (joint_centres.csv,
   * foot_midfoot).
   */
  private static final double MIDFOOT_AHEAD = 0.25;

  /** Ankle centre of one side in the world, metres. */
  Vector3D ankle(Body body, Side side) {
    double back = MIDFOOT_AHEAD * body.links().footLength() * Math.cos(turnOut);
    return new Vector3D(-back, body.links().footHeight(), side.sign() * halfWidth);
  }

  /** Stands both legs on the floor. */
  Pose under(Pose pose, Body body) {
    Pose standing = pose;
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      standing = Limbs.stand(standing, body, side, ankle(body, side), turnOut);
    }
    return standing;
  }

  /** Height of the hips with straight legs, hips above the ankles. */
  double standingHipHeight(Body body) {
    double legs = body.links().thigh() + body.links().shank();
    double sideways = halfWidth - body.links().hipHalfWidth();
    return body.links().footHeight() + Math.sqrt(legs * legs - sideways * sideways);
  }
}
