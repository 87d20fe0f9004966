package org.leverbook.lift;

import org.leverbook.body.JointId;

/** What all squats on two feet share, in a posture. */
final class Squats {

  private Squats() {}

  /**
   * Both feet, heels raised where said, the balance over the middle of the feet, spine straight.
   */
  static void feet(Posture p, double width, double turnOut) {
    Feet.stand(
        p,
        0,
        p.value(Setting.STANCE_WIDTH, width) / 2,
        p.angle(Setting.TURN_OUT, turnOut),
        p.value(Setting.HEEL_HEIGHT, 0));
    p.balancedOver(0).spine();
  }

  /** Standing. */
  static void up(Posture p) {
    Stands.tall(p);
    p.usually(JointId.ANKLE, "flexion", 3, 0.2);
  }

  /** Down with the thighs so far below level; the trunk rather leans so far, in degrees. */
  static void down(Posture p, double below, double lean) {
    p.roughly(-0.15, p.links().standingHipHeight() - 0.45, lean);
    p.usually(JointId.KNEE, "flexion", 110, Posture.EASY);
    p.usually(JointId.HIP, "flexion", 105, Posture.EASY);
    p.usually(JointId.ANKLE, "flexion", 24, 0.3);
    p.usually(JointId.HIP, "abduction", 20, 0.1);
    p.ratherTrunkLeans(Math.toRadians(lean), 1.5);
    Legs.kneesOverToes(p);
    Legs.thighs(p, below);
  }
}
