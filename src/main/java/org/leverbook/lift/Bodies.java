package org.leverbook.lift;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.solve.Feature;
import org.leverbook.support.LimbRest;
import org.leverbook.support.Pad;

/** How bodies hang, lean, sit and lie while the arms pull or the trunk holds. */
final class Bodies {

  /** Tilt of the plate of a low row, degrees: common practice, no source. */
  private static final double PLATE_TILT = 70;

  private Bodies() {}

  /** From the hips to the shoulders, standing, metres. */
  static double trunk(Posture p) {
    Placement tall = Pose.neutral(p.body().tree()).placed();
    return tall.centre(JointId.SHOULDER.on(Side.RIGHT)).getY()
        - tall.centre(JointId.HIP.on(Side.RIGHT)).getY();
  }

  /** Both knees are bent by this much. */
  static void kneesBent(Posture p, double radians) {
    p.exactlyRadians(JointId.KNEE, "flexion", radians);
  }

  /** The pelvis neither turns nor drops to a side. */
  static void square(Posture p) {
    p.statements().exactly("pelvis turn", 0).exactly("pelvis side lean", 0);
  }

  /**
   * One palm on a bench under its own shoulder, where it stays.
   *
   * @param p the posture
   * @param side which hand
   * @param height of the bench, metres
   */
  static void handOnBench(Posture p, Side side, double height) {
    String hand = "the " + side.of("hand");
    for (Site site : List.of(Site.HEEL_OF_HAND, Site.BALL_OF_HAND)) {
      p.statements()
          .along(
              hand,
              "the bench",
              p.place(site, side),
              new Vector3D(0, height, 0),
              List.of(Vector3D.PLUS_J));
    }
    Feature.Point wrist = p.joint(JointId.WRIST, side);
    for (Vector3D d : List.of(Vector3D.PLUS_I, Vector3D.PLUS_K)) {
      p.statements().ratherTogether(wrist, p.joint(JointId.SHOULDER, side), d, 0.5);
    }
    p.stays(hand, wrist, List.of(Vector3D.PLUS_I, Vector3D.PLUS_K));
    // The fingers point ahead.
    p.statements().rather(p.direction(side.of("hand"), Vector3D.PLUS_K), Vector3D.PLUS_I, 0, 1);
    p.usually(JointId.SHOULDER, side, "rotation", 0, 0.3);
    p.usually(JointId.ELBOW, side, "flexion", 8, 1);
    p.usually(JointId.SHOULDER, side, "flexion", 70, Posture.EASY);
    p.usually(JointId.WRIST, side, "flexion", -60, Posture.EASY);
    p.usually(JointId.FOREARM, side, "rotation", 120, Posture.EASY);
    p.on(
        new LimbRest(
            "bench",
            List.of(
                new LimbRest.Spot(Site.HEEL_OF_HAND, side),
                new LimbRest.Spot(Site.BALL_OF_HAND, side)),
            height,
            0,
            Pad.CLOTH_FRICTION));
  }

  /**
   * Feet on the floor, the chest on a pad that looks up and back.
   *
   * @param p the posture
   * @param tilt of its face, radians: 0 lies level
   */
  static void chestOnPad(Posture p, double tilt) {
    Vector3D facing = new Vector3D(-Math.sin(tilt), Math.cos(tilt), 0);
    double lean = 90 - Math.toDegrees(tilt);
    Feet.stand(p, 1.4 * p.links().hipHalfWidth(), Math.toRadians(15));
    p.roughly(-0.15, 0.9 * p.links().standingHipHeight(), lean);
    p.spine();
    p.statements()
        .together(
            "the chest",
            "the pad",
            p.place(Site.UPPER_CHEST, Side.RIGHT),
            p.place(Site.LOWER_CHEST, Side.RIGHT),
            Vector3D.ZERO,
            List.of(facing));
    p.usually(JointId.KNEE, "flexion", 20, 0.1);
    // Hips over the balls of the feet: further back the trunk's weight falls onto the heels instead
    // of the pad.
    p.statements()
        .ratherTogether(
            p.joint(JointId.HIP, Side.RIGHT),
            p.joint(JointId.BALL, Side.RIGHT),
            Vector3D.PLUS_I,
            3);
    p.usually(JointId.ANKLE, "flexion", 20, 0.1);
    p.usually(JointId.HIP, "flexion", 50, Posture.EASY);
    if (p.isSet(Setting.PAD_HEIGHT)) {
      p.atHeight(Site.CHEST, p.value(Setting.PAD_HEIGHT, 1), "the middle of the pad");
    } else {
      p.exactly(JointId.KNEE, "flexion", 20);
    }
    p.stays("the chest", p.place(Site.CHEST, Side.MIDLINE), List.of(Vector3D.PLUS_I));
    p.stays("the chest", p.place(Site.UPPER_CHEST, Side.RIGHT), List.of(facing));
    p.against(Pad.chest(Units.deg(Math.toDegrees(tilt))), Site.UPPER_CHEST, Site.LOWER_CHEST);
  }

  /**
   * Sits on a low bench, the hips at x = 0, the feet against a plate ahead.
   *
   * @param p the posture
   * @param seat height, metres
   * @param knees bend, radians
   */
  static void seatedAtPlate(Posture p, double seat, double knees) {
    p.roughly(0, seat + 0.1, 0);
    p.atHeight(Site.SITTING_BONE, seat, "the seat");
    if (p.isStart()) {
      p.atForward(JointId.HIP, 0, "their place on the seat");
    }
    p.usually(JointId.HIP, "flexion", 80, Posture.EASY);
    kneesBent(p, knees);
    p.against(Pad.seat(), Site.SITTING_BONE);
    double tilt = Math.toRadians(PLATE_TILT);
    Vector3D along = new Vector3D(Math.cos(tilt), Math.sin(tilt), 0);
    for (Side side : p.sides()) {
      String foot = "the " + side.of("foot");
      p.statements()
          .along(
              "the " + side.of("ankle"),
              "its place at the plate",
              p.joint(JointId.ANKLE, side),
              new Vector3D(0, seat - 0.05, side.sign() * p.links().hipHalfWidth()),
              List.of(Vector3D.PLUS_J, Vector3D.PLUS_K))
          .leans(foot, "the plate", p.direction(side.of("foot"), Vector3D.PLUS_J), along, 0)
          .leans(
              foot, "the plate", p.direction(side.of("foot"), Vector3D.PLUS_J), Vector3D.PLUS_K, 0)
          .leans(
              foot,
              "its direction",
              p.direction(side.of("foot"), Vector3D.PLUS_I),
              Vector3D.PLUS_K,
              0);
      p.exactly(JointId.BALL, side, "flexion", 0);
      p.stays(foot, p.joint(JointId.ANKLE, side), List.of(Vector3D.PLUS_I));
    }
    p.against(Pad.footPlate(Units.deg(PLATE_TILT)));
  }

  /**
   * The straight body turns about the heels, so placed that a bar at x = 0 meets the lower chest.
   *
   * @param p the posture
   * @param barHeight of the bar, metres
   * @param box under the heels, metres
   */
  static void straightOnHeels(Posture p, double barHeight, double box) {
    double height = barHeight - box;
    Placement tall = Pose.neutral(p.body().tree()).placed();
    Vector3D chest =
        tall.at(p.body().place(Site.LOWER_CHEST, Side.RIGHT))
            .subtract(tall.at(p.body().place(Site.HEEL, Side.RIGHT)));
    double ahead = chest.getX() + Barbell.GRIP_RADIUS;
    double reach = Math.hypot(ahead, chest.getY());
    if (height > 0.98 * reach) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A bar at %.0f cm is above the lower chest of this lifter (%.0f cm): set the bar height"
                  + " to %.0f cm or less.",
              100 * barHeight,
              100 * (box + reach),
              100 * box + 98 * reach));
    }
    double back = Math.atan2(ahead, chest.getY()) + Math.acos(height / reach);
    double heels = chest.getY() * Math.sin(back) - ahead * Math.cos(back);
    p.roughly(0.3 * heels, box + 0.55 * height, -Math.toDegrees(back));
    Props.straightBody(p);
    for (Side side : p.sides()) {
      p.statements()
          .at(
              "the " + side.of("heel"),
              "its place on the floor",
              p.place(Site.HEEL, side),
              new Vector3D(heels, box, side.sign() * 1.2 * p.links().hipHalfWidth()));
    }
    for (Side side : p.sides()) {
      Feature across = p.direction(side.of("foot"), Vector3D.PLUS_K);
      p.statements().leans("the " + side.of("heel"), "level", across, Vector3D.PLUS_J, 0);
    }
    p.usually(JointId.ANKLE, "flexion", 0, 1);
    Feet.ground(p, Map.of(Side.RIGHT, box, Side.LEFT, box));
  }

  /** Feet flat on the floor and held down over the instep; they stay where they are. */
  static void feetHeld(Posture p) {
    Rests.feet(p, 0.8 * p.links().thigh(), 0.12, 5);
    for (Side side : p.sides()) {
      p.stays("the " + side.of("ankle"), p.joint(JointId.ANKLE, side), List.of(Vector3D.PLUS_I));
    }
    p.against(
        new Pad(
            "foot hold",
            List.of(Site.INSTEP),
            Vector3D.MINUS_J,
            Optional.empty(),
            0.12,
            0.6,
            Pad.CLOTH_FRICTION,
            false));
  }

  /** Between start and finish the hips rise or sink evenly. */
  static void hipsStraight(Posture p) {
    p.straight("the hip", p.joint(JointId.HIP, Side.RIGHT));
  }

  /**
   * The chest is turned; hips and spine share it.
   *
   * @param p the posture
   * @param turn to the left, radians
   */
  static void turned(Posture p, double turn) {
    p.statements()
        .leans(
            "the chest",
            "its turn",
            p.direction("T4", Vector3D.PLUS_K),
            Vector3D.PLUS_I,
            Math.sin(turn));
    p.statements().usually("pelvis turn", 0.45 * turn, 1);
    p.statements().usually("twist", 0, 0.1);
  }

  /** The pelvis is level and square, the trunk rather upright seen from ahead. */
  static void level(Posture p) {
    Feature across = p.direction("pelvis", Vector3D.PLUS_K);
    p.statements()
        .leans("the pelvis", "level", across, Vector3D.PLUS_J, 0)
        .leans("the pelvis", "straight ahead", across, Vector3D.PLUS_I, 0)
        .rather(p.direction("T4", Vector3D.PLUS_J), Vector3D.PLUS_K, 0, 2);
  }

  /**
   * One leg swings through from behind to ahead, the foot just over the floor.
   *
   * @param p the posture
   * @param side which leg
   * @param step from there to there, metres
   */
  static void swings(Posture p, Side side, double step) {
    Vector3D ankle =
        new Vector3D(
            p.between(-step / 2, step / 2) - Feet.midfootAhead(p),
            p.links().footHeight() + p.between(0.10, 0.06),
            side.sign() * 0.5 * p.links().hipHalfWidth());
    p.statements().at("the " + side.of("foot"), "its way", p.joint(JointId.ANKLE, side), ankle);
    p.usually(JointId.KNEE, side, "flexion", p.between(45, 15), Posture.EASY);
    p.usually(JointId.HIP, side, "flexion", p.between(-10, 25), Posture.EASY);
    p.usually(JointId.ANKLE, side, "flexion", p.between(-10, 5), 0.1);
  }

  /** Hanging arms and shoulders keep still while the legs walk. */
  static void armsStill(Posture p) {
    p.usually(JointId.SHOULDER, "flexion", 3, 1).usually(JointId.SHOULDER, "abduction", 7, 1);
    p.usually(JointId.SHOULDER, "rotation", 0, 1);
    for (String axis : List.of("flexion", "abduction", "rotation")) {
      p.usually(JointId.SHOULDER_GIRDLE, axis, 0, 2);
    }
  }
}
