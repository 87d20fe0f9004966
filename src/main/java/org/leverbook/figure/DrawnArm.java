package org.leverbook.figure;

import java.util.Locale;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.statics.JointMoment;

/**
 * A perpendicular arm as it is seen from the side.
 *
 * @param id which joint
 * @param joint its centre, metres
 * @param foot where the perpendicular meets the line of force, metres
 * @param moment what the resistance asks of the joint
 */
record DrawnArm(JointId id, Vector2D joint, Vector2D foot, JointMoment moment) {

  /** Half a millimetre: below this a drawn length and a true one are told as one. */
  private static final double SAME = 0.0005;

  /** The drawn length, metres. */
  double length() {
    return joint.distance(foot);
  }

  /**
   * How much longer the arm is in space than it is drawn, metres; zero where the view is square.
   */
  double hidden() {
    double more = moment.arm3d() - length();
    return more > SAME ? more : 0;
  }

  /** Whether the arm that counts about the joint's own axis has another length than the drawn. */
  boolean axisOblique() {
    return Math.abs(moment.arm() - length()) > SAME;
  }

  /** What a coach calls it. */
  String name() {
    return JointNames.of(id);
  }

  /** Arm and moment. */
  String size() {
    return String.format(
        Locale.ROOT,
        "%.1f cm, %.0f N·m%s",
        100 * moment.arm(),
        moment.size(),
        moment.signed() < 0 && moment.size() >= 0.5 ? ", tends to " + moment.tendsTo() : "");
  }

  /** How the moment is made up. */
  String share() {
    StringBuilder share = new StringBuilder();
    moment
        .parts()
        .keySet()
        .forEach(
            source -> {
              double from = moment.from(source);
              if (Math.abs(from) >= 0.5) {
                share.append(share.isEmpty() ? "" : ", ");
                share.append(
                    String.format(
                        Locale.ROOT, "%s %s%.0f", source, from < 0 ? "−" : "", Math.abs(from)));
              }
            });
    return share.isEmpty() ? "" : share + " N·m";
  }
}
