package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Links;
import org.leverbook.body.Side;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Limbs;
import org.leverbook.pose.Pose;

/**
 * A hinge with a straight spine by the law of cosines alone: an oracle for the solver, which knows
 * nothing of it. The bar is over the middle of the feet.
 *
 * <p>Shoulders ahead of the bar and straight arms give the shoulders, the hip height gives the hips
 * behind them, the legs close the figure.
 *
 * @param body whose
 * @param stance of the feet
 * @param barHeight metres
 * @param gripHalfWidth from the midline to the middle of a hand, metres
 */
record ClosedForm(Body body, Stance stance, double barHeight, double gripHalfWidth) {

  /** The usual stance and grip of a hinge, plates on blocks: so the hips stay in their range. */
  static ClosedForm usual(Body body) {
    Links links = body.links();
    return new ClosedForm(
        body,
        new Stance(1.5 * links.hipHalfWidth(), Math.toRadians(10)),
        0.35,
        links.shoulderHalfWidth() + 0.04);
  }

  /**
   * The pose.
   *
   * @param hipHeight metres
   * @param ahead of the shoulders from the bar, metres
   */
  Pose pose(double hipHeight, double ahead) {
    Pose neutral = Pose.neutral(body.tree());
    Vector3D right = neutral.placed().centre(JointId.SHOULDER.on(Side.RIGHT));
    Vector3D hips = neutral.placed().centre(JointId.HIP.on(Side.RIGHT));
    Vector3D trunk = new Vector3D(right.getX() - hips.getX(), right.getY() - hips.getY(), 0);
    double outward = gripHalfWidth - body.links().shoulderHalfWidth();
    double reach = body.links().reach();
    double up = Math.sqrt(reach * reach - outward * outward - ahead * ahead);
    Vector3D shoulder = new Vector3D(ahead, barHeight + up, 0);
    double rise = shoulder.getY() - hipHeight;
    double back = Math.sqrt(trunk.getNormSq() - rise * rise);
    Vector3D hip = new Vector3D(ahead - back, hipHeight, 0);
    Vector3D line = shoulder.subtract(hip);
    double lean = Math.atan2(line.getX(), line.getY()) - Math.atan2(trunk.getX(), trunk.getY());
    Pose standing = stance.under(neutral.rootAt(hip, Frame.leanedForward(lean)), body);
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Vector3D grip = new Vector3D(0, barHeight, side.sign() * gripHalfWidth);
      standing = Limbs.hang(standing, body, side, grip);
    }
    return standing;
  }
}
