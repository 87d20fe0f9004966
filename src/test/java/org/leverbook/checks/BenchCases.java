package org.leverbook.checks;

import static org.leverbook.checks.DeadliftCases.yes;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.newton;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Place;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;
import org.leverbook.load.Cable;
import org.leverbook.load.Gravity;
import org.leverbook.load.Load;
import org.leverbook.load.SteadyForce;
import org.leverbook.pose.Frame;
import org.leverbook.pose.JointAngles;
import org.leverbook.pose.Limbs;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.statics.Position;
import org.leverbook.support.Footing;
import org.leverbook.support.Pad;
import org.leverbook.support.Support;

/**
 * Rows of section B on benches and cables: the hip thrust (B29), grip width in the bench press
 * (B38), the way cables turn the shoulder (B39).
 *
 * <p>Printed: bar on the hips and shoulders on a bench, 70 % of the best (B29); grips (B37, B38);
 * the four cable exercises (B39). Not printed, and taken: the adult of 80 kg and 178 cm, 120 kg on
 * the hips, trunk and shins as told below, 60 kg pressed with the upper arms level and straight out
 * and the hands' sideways push of B37, the cable at 30 % of body weight.
 */
final class BenchCases {

  private static final Body BODY = Person.of(Sex.MALE, kg(80), cm(178)).body();

  private static final double PRESSED = 60;

  /**
   * Where the hands are and how hard each pushes the bar outward, as a share of its push upward:
   * both as B37 prints them.
   */
  private record Grip(double width, double outward) {}

  private static final Grip WIDE = new Grip(0.81, 0.30);
  private static final Grip NARROW = new Grip(0.40, -0.10);

  /** Height of a bench for the hip thrust, metres: common practice, no source. */
  private static final double BENCH = 0.42;

  private BenchCases() {}

  static Map<String, DoubleSupplier> rows() {
    Map<String, DoubleSupplier> rows = new LinkedHashMap<>();
    rows.put("B29a", () -> thrust(worstBend()) / BODY.tree().mass());
    rows.put("B29b", BenchCases::worstBend);
    rows.put("B38a", () -> elbow(NARROW) / elbow(WIDE));
    rows.put("B38b", () -> shoulder(WIDE) / shoulder(NARROW));
    rows.put("B39a", () -> yes(uprightRowIsOpposite()));
    return rows;
  }

  /** The hip flexion, in steps of 5 degrees, at which both hips bear most. */
  private static double worstBend() {
    double worst = 0;
    for (double bend = 15; bend <= 100; bend += 5) {
      worst = worst == 0 || thrust(bend) > thrust(worst) ? bend : worst;
    }
    return worst;
  }

  /**
   * Moment of both hips, newton metres: shins upright, trunk and thighs such that the hips are bent
   * this much, the upper back on the bench's edge.
   */
  static double thrust(double hipBend) {
    Position position = hipThrust(hipBend);
    if (!position.held()) {
      throw new AssertionError(position.holding().sentence());
    }
    double sum = 0;
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      sum += position.moment(JointId.HIP, side).about("flexion");
    }
    return sum;
  }

  /** Hips at the height at which they bend this much. */
  static Position hipThrust(double hipBend) {
    double low = 0.05;
    double high = 0.55;
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      if (bendAt(middle) > hipBend) {
        low = middle;
      } else {
        high = middle;
      }
    }
    Pose pose = thrustPose(low);
    return Position.of(
        "hip thrust",
        BODY,
        pose,
        List.of(Barbell.of(kg(120)).on(Site.HIP_CREASE)),
        List.of(Footing.feet(BODY), edge()),
        List.of(),
        List.of());
  }

  private static double bendAt(double hipHeight) {
    return Math.toDegrees(thrustPose(hipHeight).angle(JointId.HIP, Side.RIGHT, "flexion"));
  }

  private static Support edge() {
    return new Pad(
        "bench",
        List.of(Site.UPPER_BACK_LOW, Site.MID_BACK),
        Vector3D.PLUS_J,
        Optional.empty(),
        0.30,
        0.60,
        1,
        false);
  }

  /** Shins upright, feet flat under the knees; the lower upper back at the bench's height. */
  private static Pose thrustPose(double hipHeight) {
    SegmentTree tree = BODY.tree();
    double knee = BODY.links().footHeight() + BODY.links().shank();
    double thigh = BODY.links().thigh();
    double forward = Math.sqrt(thigh * thigh - (knee - hipHeight) * (knee - hipHeight));
    double low = 0;
    double high = Math.toRadians(120);
    Pose pose = null;
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      pose = Pose.neutral(tree).rootAt(new Vector3D(0, hipHeight, 0), Frame.leanedForward(-middle));
      Place back = tree.place(Site.MID_BACK, Side.RIGHT);
      if (pose.placed().toWorld(back.segment(), back.local()).getY() > BENCH) {
        low = middle;
      } else {
        high = middle;
      }
    }
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Vector3D ankle =
          new Vector3D(
              forward, BODY.links().footHeight(), side.sign() * BODY.links().hipHalfWidth());
      pose = Limbs.stand(pose, BODY, side, ankle, 0);
    }
    return pose;
  }

  /** Lying on a bench, upper arms level, forearms to the bar's grips: one elbow, newton metres. */
  private static double elbow(Grip grip) {
    return Math.abs(press(grip).moment(JointId.ELBOW, Side.RIGHT).size3d());
  }

  private static double shoulder(Grip grip) {
    return Math.abs(press(grip).moment(JointId.SHOULDER, Side.RIGHT).size3d());
  }

  /**
   * The bar over the line of the shoulders, the upper arms level and out to the side, the forearms
   * rising to the grips.
   */
  private static Position press(Grip grip) {
    Frame lying = Frame.leanedForward(-Math.PI / 2);
    Pose pose = Pose.neutral(BODY.tree()).rootAt(new Vector3D(0, 0.6, 0), lying);
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Vector3D out = new Vector3D(0, 0, side.sign());
      Vector3D shoulder = pose.placed().centre(JointId.SHOULDER.on(side));
      Vector3D elbow = shoulder.add(out.scalarMultiply(BODY.links().upperArm()));
      double in = grip.width() / 2 - Math.abs(elbow.getZ());
      double length = BODY.links().forearm() + BODY.links().grip();
      Vector3D hand =
          elbow.add(new Vector3D(0, Math.sqrt(length * length - in * in), side.sign() * in));
      pose = reach(pose, side, elbow, hand);
    }
    return Position.of(
        "bench press",
        BODY,
        pose,
        List.of(Barbell.of(kg(PRESSED)), aside(grip, Side.RIGHT), aside(grip, Side.LEFT)),
        List.of(Pad.bench(deg(0))),
        List.of(),
        List.of());
  }

  /** The bar's answer to a hand that pushes it outward: inward on the hand. */
  private static Load aside(Grip grip, Side side) {
    double push = grip.outward() * PRESSED / 2 * Gravity.STANDARD;
    double inward = -side.sign() * Math.signum(push);
    return SteadyForce.of("bar, sideways", newton(Math.abs(push)), new Vector3D(0, 0, inward * 1e9))
        .on(Site.HAND, side);
  }

  /** Shoulder and elbow such that elbow and hand are at these places. */
  private static Pose reach(Pose pose, Side side, Vector3D elbow, Vector3D hand) {
    SegmentTree tree = BODY.tree();
    int upperArm = tree.distalOf(JointId.SHOULDER.on(side));
    Placement where = pose.placed();
    Vector3D shoulder = where.origin(upperArm);
    Vector3D along = hand.subtract(elbow);
    // The elbow's hinge bends towards the humerus's front.
    Frame humerus = Frame.of(shoulder.subtract(elbow), along);
    Frame girdle = where.frame(tree.segment(upperArm).parent());
    double bend = Vector3D.angle(elbow.subtract(shoulder), along);
    return pose.with(
            JointId.SHOULDER.on(side),
            JointAngles.of(tree.segment(upperArm).joint(), humerus.relativeTo(girdle)))
        .with(JointId.ELBOW.on(side), bend, 0);
  }

  /** The upright row's cable turns the shoulder the other way than the three pulls do. */
  private static boolean uprightRowIsOpposite() {
    Vector3D up = Vector3D.PLUS_J;
    Vector3D ahead = Vector3D.PLUS_I;
    Vector3D slope = new Vector3D(1, 1, 0);
    double pulldown = cable(ahead, up, up);
    double slanting = cable(new Vector3D(2, -1, 0), slope, slope);
    double seated = cable(new Vector3D(1, -1, 0), ahead, ahead);
    // Elbows out to the side and ahead, hands before the belly.
    double upright =
        cable(new Vector3D(0.4, -0.4, 0.8), new Vector3D(0.3, -0.6, -0.7), up.negate());
    return pulldown > 0 && slanting > 0 && seated > 0 && upright < 0;
  }

  /**
   * Moment about the level axis at the right shoulder, newton metres, from a cable alone; plus
   * where it tends to flex.
   *
   * @param upperArm its direction: forward, up and out
   * @param forearm its direction
   * @param pull the cable's direction
   */
  private static double cable(Vector3D upperArm, Vector3D forearm, Vector3D pull) {
    Pose pose = Pose.neutral(BODY.tree()).rootAt(new Vector3D(0, 0.9, 0), Frame.WORLD);
    double length = BODY.links().forearm() + BODY.links().grip();
    Vector3D handle = Vector3D.ZERO;
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Vector3D shoulder = pose.placed().centre(JointId.SHOULDER.on(side));
      Vector3D elbow =
          new Vector3D(1, shoulder, BODY.links().upperArm(), own(upperArm, side).normalize());
      Vector3D hand = new Vector3D(1, elbow, length, own(forearm, side).normalize());
      pose = reach(pose, side, elbow, hand);
      handle = handle.add(hand.scalarMultiply(0.5));
    }
    Load cable = Cable.of(kg(24), handle.add(pull.normalize().scalarMultiply(1.5)));
    Position position =
        Position.of("cable", BODY, pose, List.of(cable), List.of(), List.of(), List.of());
    return position.moment(JointId.SHOULDER, Side.RIGHT).parts().get("cable").moment().getZ();
  }

  private static Vector3D own(Vector3D way, Side side) {
    return new Vector3D(way.getX(), way.getY(), side.sign() * way.getZ());
  }
}
