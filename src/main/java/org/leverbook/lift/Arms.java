package org.leverbook.lift;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.solve.Feature;
import org.leverbook.support.Pad;

/** Arms that press, raise and support, in a posture. */
final class Arms {

  /**
   * How far body weight presses a wrist back on a flat palm, radians: a forearm can then stand
   * upright over it. By itself a wrist extends 70 degrees (joint_rom.csv). Common practice, no
   * source.
   */
  private static final double PRESSED_BACK = Math.toRadians(90);

  /** Fingers on the floor point outward by this much, radians: common practice, no source. */
  private static final double FINGERS_OUT = Math.toRadians(20);

  /** By how much they turn in from there until the hands meet, radians: common practice. */
  private static final double FINGERS_TURN = Math.toRadians(70);

  /** Usual width between palms on the floor, in half shoulder widths: common practice. */
  static final double USUAL_PALMS = 3.4;

  /** How strongly they do, beside 0.5 for a wrist that is not bent aside. */
  private static final double FINGERS_KEEP = 2;

  /** How strongly a bar keeps square to the palm, beside 0.5 for a straight wrist. */
  private static final double OBLIQUE = 0.5;

  private Arms() {}

  /**
   * Between start and finish the forearms rather turn evenly from the one inclination to the other,
   * seen from the side; at the ends nothing is said.
   *
   * @param p the posture
   * @param weight how much it matters beside the equal parts of a straight way, which have 2
   */
  static void forearmsEvenly(Posture p, double weight) {
    if (p.ends().size() < 2) {
      return;
    }
    for (Side side : p.sides()) {
      Feature.Point elbow = p.joint(JointId.ELBOW, side);
      Feature.Point wrist = p.joint(JointId.WRIST, side);
      double from = world(p, 0, wrist).subtract(world(p, 0, elbow)).getX();
      double to = world(p, 1, wrist).subtract(world(p, 1, elbow)).getX();
      p.statements()
          .ratherOnTheWay(
              new Feature.Way(elbow, wrist), Vector3D.PLUS_I, p.between(from, to), weight);
    }
  }

  /** Between start and finish a point of the body rather sinks or rises evenly. */
  static void heightEvenly(Posture p, Feature.Point point, double weight) {
    if (p.ends().size() == 2) {
      double height = p.between(world(p, 0, point).getY(), world(p, 1, point).getY());
      p.statements().ratherOnTheWay(point, Vector3D.PLUS_J, height, weight);
    }
  }

  /**
   * Both hands on a straight bar across the body, so far apart, where arms stand askew to it: seen
   * from ahead the bar may lie obliquely in the palm, as it does in a wide grip; a wish keeps it
   * square.
   *
   * @param p the posture
   * @param width between the middles of the hands, metres
   * @param grip overhand or underhand
   */
  static void grasp(Posture p, double width, Grip grip) {
    for (Side side : p.sides()) {
      String hand = "the " + side.of("hand");
      Vector3D place = new Vector3D(0, 0, side.sign() * width / 2);
      Feature line = p.direction(side.of("hand"), Vector3D.PLUS_K);
      p.statements()
          .along(
              hand,
              "its place on the bar",
              p.place(Site.HAND, side),
              place,
              List.of(Vector3D.PLUS_K))
          .leans(hand, "the line of the bar", line, Vector3D.PLUS_I, 0);
      p.statements().rather(line, Vector3D.PLUS_J, 0, OBLIQUE);
      p.statements().rather(line, Vector3D.PLUS_K, grip.across(), OBLIQUE);
      double turned = Math.toDegrees(grip.pronation());
      p.usually(JointId.FOREARM, side, "rotation", turned, 0.1);
    }
  }

  private static Vector3D world(Posture p, int end, Feature.Point point) {
    return p.ends().get(end).toWorld(point.segment(), point.local());
  }

  /**
   * Both palms flat on the floor, fingers ahead and a little outward; they stay where they are at
   * the start. Body weight presses the wrists further back than they extend by themselves.
   *
   * @param p the posture
   * @param width between the middles of the hands, metres
   */
  static void palmsOnFloor(Posture p, double width) {
    p.note(
        String.format(
            Locale.ROOT,
            "Palms lie flat: body weight may press the wrists back to %.0f°, further than they"
                + " extend by themselves (common practice, no source).",
            Math.toDegrees(PRESSED_BACK)));
    for (String wrist : p.names(JointId.WRIST, "flexion")) {
      p.statements().pressedTo(wrist, -PRESSED_BACK);
    }
    for (Side side : p.sides()) {
      String hand = "the " + side.of("hand");
      Feature.Point grip = p.place(Site.HAND, side);
      Vector3D there = new Vector3D(0, 0, side.sign() * width / 2);
      p.statements()
          .along(
              hand, "the floor", p.place(Site.BALL_OF_HAND, side), there, List.of(Vector3D.PLUS_J))
          .along(hand, "its place on the floor", grip, there, List.of(Vector3D.PLUS_K))
          .points(
              hand, "the floor", p.direction(side.of("hand"), Vector3D.PLUS_I), Vector3D.MINUS_J);
      Feature fingers = p.direction(side.of("hand"), Vector3D.MINUS_J);
      p.statements()
          .rather(
              fingers, Vector3D.PLUS_K, side.sign() * Math.sin(fingersOut(p, width)), FINGERS_KEEP);
      p.stays(hand, grip, List.of(Vector3D.PLUS_I));
      p.stays("the " + side.of("wrist"), p.joint(JointId.WRIST, side), List.of(Vector3D.PLUS_K));
    }
  }

  /** Hands nearer together than usual turn inward, so that the elbows can still go out. */
  private static double fingersOut(Posture p, double width) {
    double usual = USUAL_PALMS * p.links().shoulderHalfWidth();
    double near = Math.max(0, (usual - width) / usual);
    return FINGERS_OUT - near * FINGERS_TURN;
  }

  /**
   * A sloping pad under the backs of both upper arms, set against them.
   *
   * @param slope of its face, radians: 0 lies level, 90 degrees stands upright
   * @return the pad, 30 cm long and 80 cm wide
   */
  static Pad armPad(double slope) {
    return new Pad(
        "arm pad",
        List.of(Site.BACK_OF_ARM),
        new Vector3D(Math.sin(slope), Math.cos(slope), 0),
        Optional.empty(),
        0.3,
        0.8,
        Pad.CLOTH_FRICTION,
        true);
  }
}
