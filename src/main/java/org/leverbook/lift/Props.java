package org.leverbook.lift;

import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.support.Floor;
import org.leverbook.support.Pad;

/** Bodies held straight between hands or forearms and toes, in a posture. */
final class Props {

  private Props() {}

  /** Hips, knees and spine straight. */
  static void straightBody(Posture p) {
    p.exactly(JointId.KNEE, "flexion", 0);
    p.exactly(JointId.HIP, "flexion", 0);
    p.spine();
  }

  /**
   * Both feet on their toes at a place, the balls of the feet on the floor, which carries them.
   *
   * @param p the posture
   * @param forward metres
   */
  static void toesOnFloor(Posture p, double forward) {
    toes(p, forward);
    p.on(floor("floor under the toes", Site.BALL_OF_FOOT));
  }

  /**
   * Both feet on their toes at a place; what carries them is said elsewhere.
   *
   * @param p the posture
   * @param forward metres
   */
  static void toes(Posture p, double forward) {
    for (Side side : p.sides()) {
      p.statements()
          .along(
              "the " + side.of("ball of the foot"),
              "its place on the floor",
              p.place(Site.BALL_OF_FOOT, side),
              new Vector3D(forward, 0, 0),
              List.of(Vector3D.PLUS_I, Vector3D.PLUS_J));
      p.usually(JointId.ANKLE, side, "flexion", 5, 0.5);
      p.exactly(JointId.BALL, side, "flexion", -65);
    }
  }

  /** The level floor under some sites. */
  static Pad floor(String name, Site... sites) {
    return new Pad(
        name,
        List.of(sites),
        Vector3D.PLUS_J,
        Optional.of(Vector3D.ZERO),
        10,
        10,
        Floor.SHOE_FRICTION,
        false);
  }
}
