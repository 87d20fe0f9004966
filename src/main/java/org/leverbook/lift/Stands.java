package org.leverbook.lift;

import org.leverbook.body.JointId;

/** How lifters stand on both feet, in a posture. */
final class Stands {

  private Stands() {}

  /**
   * Both feet flat, the middle of the feet at x = 0, the balance over it.
   *
   * @param p the posture
   * @param width usual, between the ankle centres, metres
   * @param turnOut usual, degrees
   */
  static void feet(Posture p, double width, double turnOut) {
    Feet.stand(p, p.value(Setting.STANCE_WIDTH, width) / 2, p.angle(Setting.TURN_OUT, turnOut));
    p.balancedOver(0);
  }

  /**
   * Upright with nearly straight knees: what the arms do is the lift.
   *
   * @param p the posture
   */
  static void upright(Posture p) {
    feet(p, 2.2 * p.links().hipHalfWidth(), 10);
    p.roughly(-0.05, p.links().standingHipHeight(), 0);
    p.exactly(JointId.KNEE, "flexion", 5);
    p.trunkLeans(p.angle(Setting.TRUNK_LEAN, 2));
    p.spine();
  }

  /**
   * Bent over with the trunk at an angle, the same all the way.
   *
   * @param p the posture
   * @param lean usual, degrees
   * @param knees usual bend, degrees
   */
  static void bentOver(Posture p, double lean, double knees) {
    feet(p, 2.2 * p.links().hipHalfWidth(), 10);
    p.roughly(-0.25, p.links().standingHipHeight() - 0.05, lean);
    p.exactlyRadians(JointId.KNEE, "flexion", p.angle(Setting.KNEE_BEND, knees));
    p.trunkLeans(p.angle(Setting.TRUNK_LEAN, lean));
    p.spine();
  }

  /**
   * Standing tall at the top of a pull: knees and hips as straight as they go.
   *
   * @param p the posture
   */
  static void tall(Posture p) {
    p.roughly(-0.03, p.links().standingHipHeight(), 0);
    p.exactly(JointId.KNEE, "flexion", 3);
    p.usually(JointId.HIP, "flexion", 3, 0.5);
  }
}
