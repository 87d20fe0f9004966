package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.solve.Feature;

/**
 * Pulls of a bar in straight arms, straight up over the middle of the foot, along the shins and the
 * thighs. Lengths and how firmly each is wished: common practice, no source.
 */
final class FromFloor {

  /** The bar is so far ahead of the middle of the foot: the shins need the room, metres. */
  private static final double AHEAD = 0.03;

  /** How far the shoulders are ahead of the bar in a hinge, metres. */
  static final double SHOULDERS_AHEAD = 0.06;

  /** The knee counts as far as this above its joint, metres. */
  private static final double CAP = 0.05;

  private FromFloor() {}

  /**
   * Arms straight, hands on a bar that lies across, the bar on one upright line all the way and
   * never behind the front of the legs.
   *
   * @param p the posture
   * @param width usual grip, metres
   */
  static void bar(Posture p, double width) {
    hands(p, width, Grip.OVERHAND, AHEAD);
    if (p.ends().size() == 2) {
      alongLegs(p);
    }
  }

  /**
   * Arms straight, hands on the handles at both sides, on one upright line all the way.
   *
   * @param p the posture
   * @param width usual grip, metres
   */
  static void handles(Posture p, double width) {
    hands(p, width, Grip.NEUTRAL, 0);
  }

  private static void hands(Posture p, double width, Grip grip, double usualAhead) {
    double ahead = p.value(Setting.BAR_AHEAD, usualAhead);
    straightArms(p, p.value(Setting.GRIP_WIDTH, width), grip);
    for (Side side : p.sides()) {
      p.statements()
          .along(
              "the " + side.of("hand"),
              "the bar",
              p.place(Site.HAND, side),
              new Vector3D(ahead, 0, 0),
              List.of(Vector3D.PLUS_I));
    }
  }

  /** Straight arms, hands so far apart, a flat back. */
  static void straightArms(Posture p, double width, Grip grip) {
    Hands.straight(p);
    Hands.apart(p, width, grip, Hands.askew(p, width));
    p.usually(JointId.SHOULDER, "abduction", 0, 0.2);
    flatBack(p);
  }

  /** The spine keeps its standing shape and gives way last, unless the coach has it rounded. */
  private static void flatBack(Posture p) {
    p.spine();
    if (!p.isSet(Setting.SPINE_ROUNDING)) {
      p.statements().usually("low back flexion", 0, 30);
      p.statements().usually("upper back flexion", 0, 30);
    }
  }

  /**
   * The bar is at a height.
   *
   * @param p the posture
   * @param metres its axis above the floor
   */
  static void barAt(Posture p, double metres) {
    p.atHeight(Site.HAND, metres, "the bar");
  }

  /**
   * Down at the bar with bent knees: shins at the bar and the hips as high as that makes them, or
   * the hips where the coach says.
   *
   * @param p the posture
   * @param knees usual bend, degrees
   * @param lean usual, degrees
   * @param shoulders usual place ahead of the bar, metres
   */
  static void down(Posture p, double knees, double lean, double shoulders) {
    p.roughly(-0.3, 0.65 * p.links().standingHipHeight(), lean);
    p.usually(JointId.KNEE, "flexion", knees, 0.1);
    p.usually(JointId.HIP, "flexion", 105, 1);
    p.usually(JointId.SHOULDER, "flexion", lean, Posture.EASY);
    if (p.isSet(Setting.HIP_HEIGHT)) {
      p.atHeight(JointId.HIP, p.value(Setting.HIP_HEIGHT, 0.6), "their height");
    }
    shouldersAhead(p, shoulders, 50);
    Legs.kneesOverToes(p);
    p.ratherBalancedOver(0, 0.3);
  }

  /**
   * Down at the bar with nearly straight knees, the hips far back.
   *
   * @param p the posture
   * @param knees bend, radians
   * @param lean usual, degrees
   */
  static void hinged(Posture p, double knees, double lean) {
    p.roughly(-0.35, 0.9 * p.links().standingHipHeight(), lean);
    p.usually(JointId.HIP, "flexion", 95, Posture.EASY);
    p.usually(JointId.SHOULDER, "flexion", lean, Posture.EASY);
    p.exactlyRadians(JointId.KNEE, "flexion", knees);
    shouldersAhead(p, SHOULDERS_AHEAD, 30);
    p.ratherBalancedOver(0, 20);
  }

  /** The shins rather touch a bar at this height. */
  static void shinsAtBar(Posture p, double height) {
    double kneeHeight = p.links().footHeight() + p.links().shank();
    touch(p, height, kneeHeight, p.links().standingHipHeight());
  }

  /**
   * Standing tall, the bar against the thighs.
   *
   * @param p the posture
   */
  static void lockedOut(Posture p) {
    Stands.tall(p);
    double height = p.links().standingHipHeight() + p.links().spine() + p.links().pelvisUp();
    height -= p.links().reach();
    touch(p, height, p.links().standingHipHeight() - p.links().thigh(), 0.98);
    p.ratherBalancedOver(0, 0.3);
  }

  private static void shouldersAhead(Posture p, double metres, double weight) {
    for (Side side : p.sides()) {
      Feature way = new Feature.Way(p.place(Site.HAND, side), p.joint(JointId.SHOULDER, side));
      p.statements().rather(way, Vector3D.PLUS_I, metres, weight);
    }
  }

  /** The front of a leg at one height, as a point on its bones and how thick it is there. */
  private record Front(Feature.Point bone, double thick) {

    /** Where a bar that touches it is, at the least, ahead of the bone. */
    double bar() {
      return thick + Barbell.GRIP_RADIUS;
    }
  }

  private static Front front(Posture p, Side side, double height, double knee, double hip) {
    boolean below = height < knee;
    int shank = p.body().tree().distalOf(JointId.KNEE.on(side));
    int thigh = p.body().tree().distalOf(JointId.HIP.on(side));
    double shin = p.body().place(Site.SHIN, side).local().getX();
    double cap = p.body().place(Site.THIGH, side).local().getX();
    double top = p.body().place(Site.HIP_CREASE, side).local().getX();
    double ankle = p.links().footHeight();
    // The cap makes the knee tall: just above the joint the bar still passes the knee.
    double above = knee + CAP;
    double share = below ? (knee - height) / (knee - ankle) : (hip - height) / (hip - above);
    double part = Math.max(0, Math.min(1, share));
    double length = below ? p.links().shank() : p.links().thigh();
    double thick = below ? cap + part * (shin - cap) : top + part * (cap - top);
    return new Front(
        new Feature.Point(below ? shank : thigh, new Vector3D(0, -part * length, 0)), thick);
  }

  private static void touch(Posture p, double height, double knee, double hip) {
    for (Side side : p.sides()) {
      Front front = front(p, side, height, knee, hip);
      Feature way = new Feature.Way(front.bone(), p.place(Site.HAND, side));
      p.statements().rather(way, Vector3D.PLUS_I, front.bar(), 100);
    }
  }

  /** A bar at this height, somewhere ahead of the legs. */
  static void clearOfLegs(Posture p, double height) {
    double kneeHeight = p.links().footHeight() + p.links().shank();
    for (Side side : p.sides()) {
      Front front = front(p, side, height, kneeHeight, p.links().standingHipHeight());
      p.statements()
          .beyond(
              "the bar",
              "the " + side.of("leg"),
              p.place(Site.HAND, side),
              front.bone(),
              Vector3D.PLUS_I,
              front.bar());
    }
  }

  /**
   * Between the ends the legs are nowhere further ahead of the bar than they are there. How high
   * bar, knees and hips are by then is taken from the mixture of the ends, which the pose keeps to.
   */
  static void alongLegs(Posture p) {
    Placement now = mixture(p);
    for (Side side : p.sides()) {
      double ahead = p.ends().get(0).at(p.body().place(Site.HAND, side)).getX();
      double inside = p.between(inside(p, side, p.ends().get(0)), inside(p, side, p.ends().get(1)));
      Front front = frontAtBar(p, side, now);
      p.statements()
          .atLeast(
              "the " + side.of("leg"),
              "the bar",
              front.bone(),
              Vector3D.MINUS_I,
              front.bar() - ahead - Math.max(0, inside));
    }
  }

  /** How far a leg would be inside a bar in the hands, metres; negative where there is room. */
  static double inside(Posture p, Side side, Placement where) {
    Front front = frontAtBar(p, side, where);
    Vector3D bone = where.toWorld(front.bone().segment(), front.bone().local());
    return bone.getX() + front.bar() - where.at(p.body().place(Site.HAND, side)).getX();
  }

  private static Front frontAtBar(Posture p, Side side, Placement where) {
    double up = p.links().footHeight() - height(where, JointId.ANKLE, side);
    return front(
        p,
        side,
        where.at(p.body().place(Site.HAND, side)).getY() + up,
        height(where, JointId.KNEE, side) + up,
        height(where, JointId.HIP, side) + up);
  }

  private static double height(Placement where, JointId joint, Side side) {
    return where.centre(joint.on(side)).getY();
  }

  /** Every joint, and the lean of the pelvis, so far on its way; where it stands is left open. */
  private static Placement mixture(Posture p) {
    Pose first = p.ends().get(0).pose();
    Pose last = p.ends().get(1).pose();
    double[] angles = new double[first.tree().angles()];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = p.between(first.angle(i), last.angle(i));
    }
    Frame pelvis = Frame.leanedForward(p.between(lean(first), lean(last)));
    return Pose.of(first.tree(), angles, Vector3D.ZERO, pelvis).placed();
  }

  private static double lean(Pose pose) {
    Vector3D up = pose.rootFrame().y();
    return Math.atan2(up.getX(), up.getY());
  }

  /**
   * The whole deadlift of a straight bar: from the floor, shins at the bar, to standing.
   *
   * @param p the posture
   * @param bar what is pulled
   * @param style what tells one way of standing at the bar from another
   */
  static void deadlift(Posture p, Barbell bar, Style style) {
    Feet.stand(
        p,
        p.value(Setting.STANCE_WIDTH, style.stance) / 2,
        p.angle(Setting.TURN_OUT, style.turnOut));
    bar(p, style.grip);
    if (p.isStart()) {
      double height = p.value(Setting.BAR_HEIGHT, bar.plateRadius());
      barAt(p, height);
      shinsAtBar(p, height);
      down(p, style.knees, style.lean, style.ahead);
    } else if (p.isFinish()) {
      lockedOut(p);
    }
  }

  /**
   * A way of standing at the bar, all of it usual and not exact.
   *
   * @param stance between the ankles, metres
   * @param turnOut each, degrees
   * @param grip between the hands, metres
   * @param knees bend at the start, degrees
   * @param lean of the trunk at the start, degrees
   * @param ahead of the shoulders from the bar, metres
   */
  record Style(
      double stance, double turnOut, double grip, double knees, double lean, double ahead) {}
}
