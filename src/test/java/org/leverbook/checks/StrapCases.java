package org.leverbook.checks;

import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.load.Gravity;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.statics.Position;
import org.leverbook.statics.Reaction;
import org.leverbook.support.Footing;
import org.leverbook.support.Pad;
import org.leverbook.support.Rings;
import org.leverbook.support.Support;

/**
 * Rows of section B on the share of body weight that hands bear: the low push-up (B32), handles on
 * straps (B34) and leaning back on straps (B35). The body is straight.
 *
 * <p>Printed: which push-up, straps upright (B34), body angle from the upright, arms straight, feet
 * under the anchor (B35). Not printed, and taken: the adult of 80 kg and 178 cm; at the low end of
 * a push-up the shoulders 20 cm above the wrists (handles), elbows back, hands and feet where they
 * were; handles 15 cm above the floor (B34); anchor 2.4 m up, arms in line with the straps, heels
 * that do not slip (B35).
 */
final class StrapCases {

  private static final Body BODY = Person.of(Sex.MALE, kg(80), cm(178)).body();

  private static final DoubleUnaryOperator ON_TOES = lean -> 0;
  private static final DoubleUnaryOperator KNEELING = lean -> Math.toRadians(70);
  private static final double LOW = 0.20;
  private static final double HANDLES = 0.15;
  private static final double ANCHOR = 2.4;

  /** Flexion of the upper arm against the upright, and of the elbow; the hand's own length used. */
  private record Arms(double upperArm, double elbow, boolean onHandles) {

    static Arms straight(boolean onHandles) {
      return new Arms(0, 0, onHandles);
    }

    /** Elbows back, hands below and behind the shoulders by these distances. */
    static Arms bent(boolean onHandles, double below, double behind) {
      double upper = BODY.links().upperArm();
      // A fist lies in line with the forearm; a flat hand begins at the wrist.
      double lower = BODY.links().forearm() + (onHandles ? BODY.links().grip() : 0);
      double away = Math.hypot(below, behind);
      double back = Math.atan2(behind, below) + angle(upper, away, lower);
      return new Arms(-back, Math.PI - angle(upper, lower, away), onHandles);
    }

    /** The angle between two sides of a triangle. */
    private static double angle(double one, double other, double opposite) {
      return Math.acos((one * one + other * other - opposite * opposite) / (2 * one * other));
    }

    double wrist() {
      // Flat on the floor whatever way the forearm leans.
      return onHandles ? 0 : -Math.PI / 2 + upperArm + elbow;
    }

    JointId hand() {
      return onHandles ? JointId.GRIP : JointId.WRIST;
    }
  }

  private StrapCases() {}

  static Map<String, DoubleSupplier> rows() {
    Map<String, DoubleSupplier> rows = new LinkedHashMap<>();
    rows.put("B32b", () -> onFloor(ON_TOES, Footing.feet(BODY)));
    rows.put("B32d", () -> onFloor(KNEELING, Pad.underKnees()));
    rows.put("B34a", () -> onStraps(plank(ON_TOES, Arms.straight(true), HANDLES)));
    rows.put("B34b", () -> onStraps(lowered(ON_TOES, true)));
    rows.put("B35a", () -> leaningBack(30));
    rows.put("B35b", () -> leaningBack(45));
    rows.put("B35c", () -> leaningBack(60));
    rows.put("B35d", () -> leaningBack(75));
    return rows;
  }

  /** Share on the hands at the low end, per cent of body weight. */
  private static double onFloor(DoubleUnaryOperator knees, Support below) {
    return share(lowered(knees, false), below, Pad.underHands());
  }

  /** Low, with hands and feet as far apart as they were with straight arms. */
  private static Pose lowered(DoubleUnaryOperator kneesBefore, boolean onHandles) {
    double handsAt = onHandles ? HANDLES : 0;
    Pose before = plank(kneesBefore, Arms.straight(onHandles), handsAt);
    double apart = apart(before, kneesBefore, onHandles);
    Vector3D trunk = before.rootFrame().y();
    double leanBefore = Math.atan2(trunk.getX(), trunk.getY());
    // Shanks that rest on the floor stay where they were.
    DoubleUnaryOperator knees =
        kneesBefore == ON_TOES
            ? ON_TOES
            : lean -> kneesBefore.applyAsDouble(leanBefore) + leanBefore - lean;
    double near = -0.1;
    double far = 0.3;
    for (int i = 0; i < 40; i++) {
      double middle = (near + far) / 2;
      Pose pose = plank(knees, Arms.bent(onHandles, LOW, middle), handsAt);
      if (apart(pose, knees, onHandles) > apart) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return plank(knees, Arms.bent(onHandles, LOW, near), handsAt);
  }

  private static double apart(Pose pose, DoubleUnaryOperator knees, boolean onHandles) {
    Placement where = pose.placed();
    JointId hand = Arms.straight(onHandles).hand();
    JointId foot = knees != ON_TOES ? JointId.KNEE : JointId.BALL;
    return where.centre(hand.on(Side.RIGHT)).getX() - where.centre(foot.on(Side.RIGHT)).getX();
  }

  private static double onStraps(Pose pose) {
    Placement where = pose.placed();
    Vector3D hand = where.centre(JointId.GRIP.on(Side.RIGHT));
    Rings rings = new Rings(new Vector3D(hand.getX(), ANCHOR, 0), hand.getZ());
    return share(pose, Footing.feet(BODY), rings);
  }

  private static double share(Pose pose, Support below, Support hands) {
    Position position =
        Position.of(
            "straight body", BODY, pose, List.of(), List.of(below, hands), List.of(), List.of());
    if (!position.held()) {
      throw new AssertionError(position.holding().sentence());
    }
    Vector3D sum = Vector3D.ZERO;
    for (Reaction reaction : position.supportForces()) {
      sum = reaction.source().equals(hands.source()) ? sum.add(reaction.force()) : sum;
    }
    return 100 * sum.getNorm() / (BODY.tree().mass() * Gravity.STANDARD);
  }

  /** The straight body, its lean such that the lowest of the hands is a height above the floor. */
  private static Pose plank(DoubleUnaryOperator knees, Arms arms, double handsAt) {
    DoubleUnaryOperator handsTooHigh =
        lean -> {
          Placement where = plank(lean, knees, arms, 0).placed();
          return hands(where, handsAt > 0) - feet(where, knees) - handsAt;
        };
    double low = Math.toRadians(30);
    double high = Math.toRadians(110);
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (handsTooHigh.applyAsDouble(middle) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return plank(low, knees, arms, -feet(plank(low, knees, arms, 0).placed(), knees));
  }

  private static Pose plank(double lean, DoubleUnaryOperator knees, Arms arms, double up) {
    Pose pose = Pose.neutral(BODY.tree()).rootAt(new Vector3D(0, up, 0), Frame.leanedForward(lean));
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose =
          pose.with(JointId.SHOULDER.on(side), lean + arms.upperArm(), 0, 0)
              .with(JointId.ELBOW.on(side), arms.elbow(), 0)
              .with(JointId.FOREARM.on(side), Math.PI)
              .with(JointId.WRIST.on(side), arms.wrist(), 0)
              .with(JointId.KNEE.on(side), knees.applyAsDouble(lean), 0, 0)
              .with(JointId.BALL.on(side), -lean);
    }
    return pose;
  }

  private static double hands(Placement where, boolean grip) {
    return grip
        ? where.centre(JointId.GRIP.on(Side.RIGHT)).getY()
        : SupportCases.lowest(where, SupportCases.hands());
  }

  private static double feet(Placement where, DoubleUnaryOperator knees) {
    return SupportCases.lowest(
        where, knees != ON_TOES ? SupportCases.knees() : SupportCases.toes());
  }

  /** Pull of both straps, per cent of body weight, the body leaned back from the upright. */
  private static double leaningBack(double degrees) {
    double lean = Math.toRadians(degrees);
    Pose back = Pose.neutral(BODY.tree()).rootAt(Vector3D.ZERO, Frame.leanedForward(-lean));
    Vector3D heel = heel(back.placed());
    // Heels on the floor, straight under the anchor.
    back = back.rootAt(heel.negate(), Frame.leanedForward(-lean));
    Vector3D shoulder = back.placed().centre(JointId.SHOULDER.on(Side.RIGHT));
    Vector3D anchor = new Vector3D(0, ANCHOR, 0);
    double strap = Math.atan2(-shoulder.getX(), -(ANCHOR - shoulder.getY()));
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      back = back.with(JointId.SHOULDER.on(side), strap - lean, 0, 0);
    }
    Rings rings = new Rings(anchor, shoulder.getZ());
    return share(back, Footing.feet(BODY).friction(3), rings);
  }

  private static Vector3D heel(Placement where) {
    Vector3D lowest = null;
    for (Body.SolePoint sole : BODY.soles()) {
      Vector3D at = where.toWorld(sole.segment(), sole.place());
      lowest = lowest == null || at.getY() < lowest.getY() ? at : lowest;
    }
    return new Vector3D(lowest.getX(), lowest.getY(), 0);
  }
}
