package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.solve.Feature;

/** Arms of a lifter whose bar rests on the body: they steady it and carry nothing. */
final class Racked {

  /** Hands around a weight are so far before the skin of the breast bone, metres: by eye. */
  private static final double BEFORE = 0.10;

  private Racked() {}

  /**
   * Hands on a bar that lies on the upper back.
   *
   * @param p the posture
   * @param place where it lies
   */
  static void onBack(Posture p, Site place) {
    p.usually(JointId.SHOULDER, "flexion", -25, 0.3);
    p.usually(JointId.SHOULDER, "abduction", 45, 0.3);
    p.usually(JointId.SHOULDER, "rotation", -80, 0.3);
    p.usually(JointId.ELBOW, "flexion", 125, 0.3);
    hands(p, place, 1.5, Grip.OVERHAND, 0.02);
  }

  /**
   * Hands on a bar that lies on the front of the shoulders, elbows ahead.
   *
   * @param p the posture
   */
  static void inFront(Posture p) {
    p.usually(JointId.SHOULDER, "flexion", 80, 2);
    p.usually(JointId.SHOULDER, "abduction", 0, 0.3);
    p.usually(JointId.SHOULDER, "rotation", 0, 0.3);
    p.usually(JointId.ELBOW, "flexion", 140, 0.3);
    hands(p, Site.FRONT_OF_SHOULDER, 1.1, Grip.UNDERHAND, 0.02);
  }

  /**
   * Hands together in front of the breast bone.
   *
   * @param p the posture
   */
  static void atChest(Posture p) {
    p.usually(JointId.SHOULDER, "flexion", 30, 0.2);
    p.usually(JointId.SHOULDER, "rotation", 40, 0.2);
    p.usually(JointId.ELBOW, "flexion", 120, 0.2);
    p.usually(JointId.FOREARM, "rotation", 70, 0.2);
    for (Side side : p.sides()) {
      String hand = "the " + side.of("hand");
      Feature.Point grip = p.place(Site.HAND, side);
      Feature way = new Feature.Way(p.place(Site.CHEST, Side.MIDLINE), grip);
      p.statements()
          .product(hand, "before the chest", way, p.direction("T8", Vector3D.PLUS_I), BEFORE)
          .product(hand, "level with the chest", way, p.direction("T8", Vector3D.PLUS_J), 0)
          .along(
              hand,
              "its place on the weight",
              grip,
              new Vector3D(0, 0, side.sign() * 0.06),
              List.of(Vector3D.PLUS_K));
    }
  }

  /** As near to the bar as the arms let them. */
  private static void hands(Posture p, Site place, double wide, Grip grip, double strength) {
    double half = wide * p.links().shoulderHalfWidth();
    for (Side side : p.sides()) {
      for (Vector3D d : List.of(Vector3D.PLUS_I, Vector3D.PLUS_J)) {
        p.statements().ratherTogether(p.place(Site.HAND, side), p.place(place, side), d, 3);
      }
      p.statements().rather(p.place(Site.HAND, side), Vector3D.PLUS_K, side.sign() * half, 3);
      p.usually(JointId.WRIST, side, "flexion", grip == Grip.UNDERHAND ? -50 : -20, 0.2);
      p.usually(
          JointId.FOREARM, side, "rotation", Math.toDegrees(grip.pronation()), strength + 0.1);
    }
  }
}
