package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.solve.Feature;

/** Puts hands on bars and handles in a posture. */
final class Hands {

  /** Hands this much outside the shoulder joints, each, metres: common practice, no source. */
  static final double USUAL_OUTSIDE = 0.04;

  /**
   * Arms that stand askew to a bar by more than this take it obliquely in the palm, radians: common
   * practice, no source. It leaves the wrist some of its 20 degrees towards the thumb.
   */
  private static final double SQUARE = Math.toRadians(12);

  private Hands() {}

  /** The usual width between the hands: a little wider than the shoulders. */
  static double usualWidth(Posture p) {
    return 2 * (p.links().shoulderHalfWidth() + USUAL_OUTSIDE);
  }

  /**
   * Both hands on a straight bar across the body, at a place.
   *
   * @param p the posture
   * @param forward of the bar's axis, metres
   * @param up of the bar's axis, metres
   * @param width between the middles of the hands, metres
   * @param grip overhand or underhand
   */
  static void onBar(Posture p, double forward, double up, double width, Grip grip) {
    onBar(p, forward, up, width, grip, 0);
  }

  /** The same, the bar so far askew in the palm: see {@link #askew}. */
  static void onBar(Posture p, double forward, double up, double width, Grip grip, double askew) {
    for (Side side : p.sides()) {
      p.statements()
          .at(
              "the " + side.of("hand"),
              "the bar",
              p.place(Site.HAND, side),
              new Vector3D(forward, up, side.sign() * width / 2));
      along(p, side, grip, askew);
    }
  }

  /**
   * Both hands somewhere on a straight bar across the body, so far apart.
   *
   * @param p the posture
   * @param width between the middles of the hands, metres
   * @param grip overhand or underhand
   */
  static void apart(Posture p, double width, Grip grip) {
    apart(p, width, grip, 0);
  }

  /** The same, the bar so far askew in the palm: see {@link #askew}. */
  static void apart(Posture p, double width, Grip grip, double askew) {
    for (Side side : p.sides()) {
      p.statements()
          .along(
              "the " + side.of("hand"),
              "its place on the bar",
              p.place(Site.HAND, side),
              new Vector3D(0, 0, side.sign() * width / 2),
              List.of(Vector3D.PLUS_K));
      along(p, side, grip, askew);
    }
  }

  /**
   * How far a bar lies askew in the palms of straight arms that reach out to a wide grip: nothing
   * where they stand nearly square to it, so that usual grips keep the bar square.
   *
   * @param p the posture
   * @param width between the middles of the hands, metres
   * @return radians, for hanging arms; its opposite for raised ones
   */
  static double askew(Posture p, double width) {
    double out = Math.max(0, width / 2 - p.links().shoulderHalfWidth());
    double arm = p.links().reach();
    return Math.max(0, Math.asin(Math.min(1, out / arm)) - SQUARE);
  }

  /**
   * The hand's line runs along a bar that lies across, or so far askew to it seen from ahead; a
   * neutral grip turns the forearm only.
   */
  private static void along(Posture p, Side side, Grip grip, double askew) {
    p.usually(JointId.FOREARM, side, "rotation", Math.toDegrees(grip.pronation()), 0.1);
    if (grip.across() != 0) {
      Feature line = p.direction(side.of("hand"), Vector3D.PLUS_K);
      p.statements()
          .points(
              "the " + side.of("hand"),
              "the line of the bar",
              line,
              new Vector3D(0, side.sign() * Math.sin(askew), Math.cos(askew))
                  .scalarMultiply(grip.across()));
    }
  }

  /** The forearms rather stand upright under or over the bar, seen from the side and from ahead. */
  static void forearmUpright(Posture p, double weight) {
    for (Side side : p.sides()) {
      Feature forearm = p.direction(side.of("forearm"), Vector3D.PLUS_J);
      p.statements().rather(forearm, Vector3D.PLUS_I, 0, weight);
      p.statements().rather(forearm, Vector3D.PLUS_K, 0, weight / 2);
    }
  }

  /** Between start and finish the hands go straight, seen from the side. */
  static void straightWay(Posture p) {
    for (Side side : p.sides()) {
      p.straight("the " + side.of("hand"), p.place(Site.HAND, side));
    }
  }

  /** Both upper arms are raised so far from hanging straight down, radians. */
  static void armsRaised(Posture p, double radians) {
    for (Side side : p.sides()) {
      armRaised(p, side, radians);
    }
  }

  /** One upper arm is raised so far from hanging straight down, radians. */
  static void armRaised(Posture p, Side side, double radians) {
    p.statements()
        .leans(
            "the " + side.of("upper arm"),
            "its height",
            p.direction(side.of("upper arm"), Vector3D.MINUS_J),
            Vector3D.MINUS_J,
            Math.cos(radians));
  }

  /** The upper arms point down and so far ahead, radians from straight down, seen from the side. */
  static void upperArm(Posture p, double ahead) {
    for (Side side : p.sides()) {
      p.segmentLeans(
          "the " + side.of("upper arm"),
          p.joint(JointId.ELBOW, side),
          p.joint(JointId.SHOULDER, side),
          -ahead);
      p.usually(JointId.SHOULDER, side, "abduction", 5, 0.5);
    }
  }

  /** The arms hang straight down, palms facing the thighs. */
  static void hang(Posture p) {
    p.sides().forEach(side -> hang(p, side));
  }

  /** One arm hangs straight down. */
  static void hang(Posture p, Side side) {
    p.exactly(JointId.ELBOW, side, "flexion", 0);
    p.usually(JointId.FOREARM, side, "rotation", 80, 0.3);
    Feature arm = p.direction(side.of("upper arm"), Vector3D.PLUS_J);
    p.statements().rather(arm, Vector3D.PLUS_I, 0, 30);
    p.statements().rather(arm, Vector3D.PLUS_K, -side.sign() * 0.12, 30);
  }

  /** The arm is straight. */
  static void straight(Posture p) {
    p.exactly(JointId.ELBOW, "flexion", 0);
  }

  /**
   * The upper arm stands off the trunk: seen along the trunk's own axis the angle between the upper
   * arm and the trunk, radians; a wish.
   */
  static void elbowsOut(Posture p, double radians, double weight) {
    for (Side side : p.sides()) {
      // The arm's line runs down from the shoulder: its part sideways is the sine of the angle.
      Feature arm = p.direction(side.of("upper arm"), Vector3D.MINUS_J);
      p.statements()
          .rather(
              arm,
              Vector3D.PLUS_K.scalarMultiply(side.sign()),
              Math.sin(Math.min(radians, Math.PI / 2)),
              weight);
    }
  }
}
