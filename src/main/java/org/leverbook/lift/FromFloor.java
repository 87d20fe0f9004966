package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;

/** Pulls of a bar in straight arms, straight up over the middle of the foot. */
final class FromFloor {

  private FromFloor() {}

  /**
   * Arms straight, hands on the bar, the bar over the middle of the foot all the way.
   *
   * @param p the posture
   * @param width usual grip, metres
   * @param grip overhand, or neutral on side handles
   */
  static void hands(Posture p, double width, Grip grip) {
    double ahead = p.value(Setting.BAR_AHEAD, 0);
    Hands.straight(p);
    Hands.apart(p, p.value(Setting.GRIP_WIDTH, width), grip);
    for (Side side : p.sides()) {
      p.statements()
          .along(
              "the " + side.of("hand"),
              "the bar",
              p.place(Site.HAND, side),
              new Vector3D(ahead, 0, 0),
              List.of(Vector3D.PLUS_I));
    }
    Hands.straightWay(p);
    p.usually(JointId.SHOULDER, "abduction", 0, 0.2);
    p.spine();
  }

  /**
   * The bar is at a height.
   *
   * @param p the posture
   * @param metres its axis above the floor
   */
  static void barAt(Posture p, double metres) {
    p.atHeight(Site.HAND, metres, "the bar");
  }

  /**
   * Down at the bar with bent knees: the hips where the coach says or where they are usual, the
   * shoulders a little ahead of the bar.
   *
   * @param p the posture
   * @param knees usual bend, degrees
   * @param lean usual, degrees
   */
  static void down(Posture p, double knees, double lean) {
    p.roughly(-0.3, 0.6 * p.links().standingHipHeight(), lean);
    p.usually(JointId.KNEE, "flexion", knees, 0.3);
    p.usually(JointId.HIP, "flexion", 95, Posture.EASY);
    p.usually(JointId.SHOULDER, "flexion", lean, Posture.EASY);
    if (p.isSet(Setting.HIP_HEIGHT)) {
      p.atHeight(JointId.HIP, p.value(Setting.HIP_HEIGHT, 0.6), "their height");
    }
    p.ratherBalancedOver(0, 1);
  }
}
