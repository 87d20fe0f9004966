package org.leverbook.lift;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;

/** Legs of lifters who stand, in a posture. */
final class Legs {

  /** How firmly bent knees stay over the toes: common practice, no source. */
  private static final double KNEES_TRACK = 1.5;

  /** How firmly the pelvis stays square in one-sided lifts: common practice, no source. */
  private static final double SQUARE = 10;

  private Legs() {}

  /**
   * The thighs are so far below level; negative stays above.
   *
   * @param p the posture
   * @param below radians
   */
  static void thighs(Posture p, double below) {
    for (Side side : p.sides()) {
      thigh(p, side, below);
    }
  }

  /**
   * The pelvis stays square to the way ahead and level, though one leg does more than the other.
   */
  static void squareHips(Posture p) {
    p.statements().usually("pelvis turn", 0, SQUARE);
    p.statements().usually("pelvis side lean", 0, SQUARE);
  }

  /** Bent knees stay over the toes: they do not roll the feet. */
  static void kneesOverToes(Posture p) {
    p.usually(JointId.ANKLE, "abduction", 0, KNEES_TRACK);
  }

  /** One thigh is so far below level. */
  static void thigh(Posture p, Side side, double below) {
    p.statements()
        .leans(
            "the " + side.of("thigh"),
            "its depth",
            p.direction(side.of("thigh"), Vector3D.PLUS_J),
            Vector3D.PLUS_J,
            -Math.sin(below));
  }
}
