package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.solve.Feature;

/** Arms that pull, in a posture: how they begin and where a bar or handle ends. */
final class Pulls {

  private Pulls() {}

  /** The usual width between the hands: narrower where palms are turned in or up. */
  static double width(Posture p, Grip grip, double overhand) {
    double usual = Hands.usualWidth(p);
    return p.value(
        Setting.GRIP_WIDTH, grip == Grip.OVERHAND ? overhand : Math.min(usual, overhand));
  }

  /** The shoulder blades come together on the way, as a coach asks for in a row. */
  static void bladesTogether(Posture p) {
    p.usually(JointId.SHOULDER_GIRDLE, "rotation", p.between(4, -18), 2);
    p.usually(JointId.SHOULDER_GIRDLE, "abduction", p.between(3, 1), 1);
  }

  /** Straight arms hang under the shoulders, seen from the side. */
  static void hangingArms(Posture p) {
    Hands.straight(p);
    p.statements()
        .together(
            "the hand",
            "its place under the shoulder",
            p.place(Site.HAND, Side.RIGHT),
            p.joint(JointId.SHOULDER, Side.RIGHT),
            Vector3D.ZERO,
            List.of(Vector3D.PLUS_I));
  }

  /**
   * The hands are so far ahead of the skin of the lower chest, square to the trunk; where along the
   * trunk is left open.
   *
   * @param p the posture
   * @param ahead metres
   */
  static void touchTrunk(Posture p, double ahead) {
    p.statements()
        .product(
            "the hand",
            "the front of the trunk",
            fromChest(p),
            p.direction("T9", Vector3D.PLUS_I),
            ahead);
  }

  /**
   * The hands are so far below the lower chest, along the trunk.
   *
   * @param p the posture
   * @param below metres
   */
  static void alongTrunk(Posture p, double below) {
    p.statements()
        .product(
            "the hand",
            "its height on the trunk",
            fromChest(p),
            p.direction("T9", Vector3D.PLUS_J),
            -below);
  }

  private static Feature fromChest(Posture p) {
    return new Feature.Way(p.place(Site.LOWER_CHEST, Side.RIGHT), p.place(Site.HAND, Side.RIGHT));
  }

  /** Hands on a bar slide along the front of the hips. */
  static void touchThighs(Posture p) {
    p.statements()
        .product(
            "the hand",
            "the front of the thighs",
            new Feature.Way(p.place(Site.HIP_CREASE, Side.RIGHT), p.place(Site.HAND, Side.RIGHT)),
            p.direction("pelvis", Vector3D.PLUS_I),
            0.02);
  }

  /**
   * Straight arms rather point from the shoulders to a pulley, seen from the side.
   *
   * @param p the posture
   * @param pulley in the world, metres
   * @param shoulders their height, roughly, metres
   */
  static void reachTo(Posture p, Vector3D pulley, double shoulders) {
    Vector3D line = new Vector3D(pulley.getX(), pulley.getY() - shoulders, 0).normalize();
    Vector3D off = new Vector3D(-line.getY(), line.getX(), 0);
    for (Side side : p.sides()) {
      p.statements()
          .ratherTogether(p.place(Site.HAND, side), p.joint(JointId.SHOULDER, side), off, 4);
    }
  }

  /** The forearm of one side rather stands upright. */
  static void forearmUpright(Posture p, Side side, double weight) {
    Feature forearm = p.direction(side.of("forearm"), Vector3D.PLUS_J);
    p.statements().rather(forearm, Vector3D.PLUS_I, 0, weight);
    p.statements().rather(forearm, Vector3D.PLUS_K, 0, weight);
  }

  /** Between start and finish one hand goes straight, seen from the side. */
  static void straightWay(Posture p, Side side) {
    p.straight("the " + side.of("hand"), p.place(Site.HAND, side));
  }

  /**
   * The chin is over a bar, the face behind it.
   *
   * @param p the posture
   * @param height of the bar, metres
   */
  static void chinOver(Posture p, double height) {
    p.atHeight(JointId.HEAD, height + 0.05, "over the bar");
  }

  /** The hands are beside the forehead and a little ahead of it. */
  static void besideForehead(Posture p) {
    for (Side side : p.sides()) {
      p.statements()
          .together(
              "the " + side.of("hand"),
              "beside the forehead",
              p.place(Site.HAND, side),
              p.place(Site.HEAD, Side.MIDLINE),
              new Vector3D(0.02, 0, 0),
              List.of(Vector3D.PLUS_I, Vector3D.PLUS_J));
    }
  }

  /** Upper arms go straight out to the sides, seen from above. */
  static void armsAcross(Posture p) {
    for (Side side : p.sides()) {
      Feature arm = p.direction(side.of("upper arm"), Vector3D.PLUS_J);
      p.statements().leans("the " + side.of("upper arm"), "straight out", arm, Vector3D.PLUS_I, 0);
    }
    p.usually(JointId.SHOULDER, "rotation", 25, 0.3);
  }

  /** Arms crossed on the chest, as a wish. */
  static void armsCrossed(Posture p) {
    p.usually(JointId.SHOULDER, "flexion", 35, 0.1);
    p.usually(JointId.SHOULDER, "abduction", 0, 0.1);
    p.usually(JointId.SHOULDER, "rotation", 50, 0.3);
    p.usually(JointId.ELBOW, "flexion", 125, 0.5);
    for (Side side : p.sides()) {
      Feature hand = p.place(Site.HAND, side);
      Feature chest = p.place(Site.UPPER_CHEST, side);
      for (Vector3D d : List.of(Vector3D.PLUS_I, Vector3D.PLUS_J)) {
        p.statements().ratherTogether(hand, chest, d, 1);
      }
      p.statements().rather(hand, Vector3D.PLUS_K, side.sign() * 0.02, 0.5);
    }
  }

  /**
   * Both hands on one handle, straight ahead of a turned chest, arms nearly straight.
   *
   * @param p the posture
   * @param turn of the chest to the left, radians
   */
  static void handsAhead(Posture p, double turn) {
    Feature.Point right = p.place(Site.HAND, Side.RIGHT);
    Vector3D across = new Vector3D(Math.sin(turn), 0, Math.cos(turn));
    p.statements()
        .together(
            "the right hand",
            "the handle",
            right,
            p.place(Site.HAND, Side.LEFT),
            across.scalarMultiply(0.08),
            List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K))
        .together(
            "the right hand",
            "its place ahead of the chest",
            right,
            p.place(Site.CHEST, Side.MIDLINE),
            across.scalarMultiply(0.04),
            List.of(across));
    p.usually(JointId.ELBOW, "flexion", 15, 0.5);
    p.usually(JointId.SHOULDER, "flexion", p.between(100, 30), Posture.EASY);
  }
}
