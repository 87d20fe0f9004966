package org.leverbook.lift;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.quantity.Refused;
import org.leverbook.solve.Feature;
import org.leverbook.support.Floor;
import org.leverbook.support.Footing;

/** Puts feet on the ground in a posture, and the ground under them. */
final class Feet {

  /**
   * The middle of the foot stands this share of foot length ahead of the ankle (joint_centres.csv,
   * foot_midfoot).
   */
  static final double MIDFOOT_AHEAD = 0.25;

  private Feet() {}

  /** How far the middle of this person's foot lies ahead of the ankle, metres. */
  static double midfootAhead(Posture p) {
    return p.place(Site.FOOT, Side.RIGHT).local().getX();
  }

  /**
   * Both feet flat and alike, the middle of the feet at x = 0, knees over the toes.
   *
   * @param p the posture
   * @param halfWidth midline to ankle centre, metres
   * @param turnOut each, radians
   */
  static void stand(Posture p, double halfWidth, double turnOut) {
    stand(p, 0, halfWidth, turnOut, 0);
  }

  /**
   * Both feet alike, the middle of the feet at a place forward.
   *
   * @param p the posture
   * @param forward of the middle of the feet, metres
   * @param halfWidth midline to ankle centre, metres
   * @param turnOut each, radians
   * @param heels height of plates under the heels, metres
   */
  static void stand(Posture p, double forward, double halfWidth, double turnOut, double heels) {
    for (Side side : p.sides()) {
      foot(p, side, new Vector3D(forward, 0, side.sign() * halfWidth), turnOut, heels);
    }
    Footing ground = Footing.feet(p.body());
    p.on(heels > 0 ? new Footing(p.body(), ground.heights(), heels, ground.friction()) : ground);
  }

  /**
   * Feet on ground of different heights, or one foot alone.
   *
   * @param p the posture
   * @param heights ground under each foot that stands, metres
   */
  static void ground(Posture p, Map<Side, Double> heights) {
    p.on(new Footing(p.body(), new EnumMap<>(heights), 0, Floor.SHOE_FRICTION));
  }

  /**
   * One foot on level ground.
   *
   * @param p the posture
   * @param side which
   * @param middle of the foot on its ground, metres; its z that of the ankle
   * @param turnOut radians
   * @param heels how high the heel stands above the ball, metres; negative hangs below it
   */
  static void foot(Posture p, Side side, Vector3D middle, double turnOut, double heels) {
    Vector3D ahead = new Vector3D(Math.cos(turnOut), 0, side.sign() * Math.sin(turnOut));
    Vector3D across = ahead.crossProduct(Vector3D.PLUS_J);
    Vector3D hinge = p.body().tree().segment(toes(p, side)).joint().centre();
    double pitch = pitch(p, side, hinge, heels);
    Vector3D nose = new Vector3D(Math.cos(pitch), ahead, -Math.sin(pitch), Vector3D.PLUS_J);
    Vector3D up = new Vector3D(Math.sin(pitch), ahead, Math.cos(pitch), Vector3D.PLUS_J);
    // The hinge of the toes stays above its place; the ball's lowest point touches the ground.
    double toHinge = hinge.getX() - midfootAhead(p);
    double height = -lowest(p, side, hinge, pitch);
    double aside = midfootAhead(p) * ahead.getZ();
    Vector3D ankle =
        middle
            .add(new Vector3D(0, 0, aside))
            .add(new Vector3D(toHinge, ahead, height, Vector3D.PLUS_J))
            .subtract(new Vector3D(hinge.getX(), nose, hinge.getY(), up));
    p.statements().at("the " + side.of("ankle"), "its place", p.joint(JointId.ANKLE, side), ankle);
    Feature sole = p.direction(side.of("foot"), Vector3D.PLUS_J);
    Feature toes = p.direction(side.of("foot"), Vector3D.PLUS_I);
    String foot = "the " + side.of("foot");
    p.statements().points(foot, "the ground", sole, up);
    p.statements().leans(foot, "its direction", toes, across, 0);
    double toesUp = toesUp(p, side, height);
    p.exactly(JointId.BALL, side, "flexion", -Math.toDegrees(pitch + toesUp));
    Feature knee = p.direction(side.of("shank"), Vector3D.PLUS_K);
    p.statements().rather(knee, ahead, 0, 1);
  }

  private static int toes(Posture p, Side side) {
    return p.body().tree().distalOf(JointId.BALL.on(side));
  }

  /** How far the toes point up so that their tip touches the ground too, radians. */
  private static double toesUp(Posture p, Side side, double height) {
    int toes = toes(p, side);
    Vector3D tip =
        p.body().soles().stream()
            .filter(s -> s.segment() == toes)
            .findFirst()
            .orElseThrow()
            .place();
    double reach = Math.hypot(tip.getX(), tip.getY());
    return Math.asin(-height / reach) - Math.atan2(tip.getY(), tip.getX());
  }

  /** Height of a sole's point above the hinge of the toes when the foot is pitched toes down. */
  private static double above(Vector3D sole, Vector3D hinge, double pitch) {
    return (hinge.getX() - sole.getX()) * Math.sin(pitch)
        + (sole.getY() - hinge.getY()) * Math.cos(pitch);
  }

  /** Height of the lowest point in front of the heel. */
  private static double lowest(Posture p, Side side, Vector3D hinge, double pitch) {
    return soles(p, side)
        .filter(s -> !s.name().contains("heel"))
        .mapToDouble(s -> above(s.place(), hinge, pitch))
        .min()
        .orElseThrow();
  }

  /** How far the foot is pitched so that the heel stands so high above the ball, or below it. */
  private static double pitch(Posture p, Side side, Vector3D hinge, double heels) {
    if (heels == 0) {
      return 0;
    }
    Vector3D heel = soles(p, side).findFirst().orElseThrow().place();
    UnivariateFunction off =
        angle -> above(heel, hinge, angle) - lowest(p, side, hinge, angle) - heels;
    double steepest = heels > 0 ? Math.PI / 2.2 : -Math.PI / 4;
    if (off.value(steepest) * heels < 0) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "With a foot of %.1f cm the heel cannot stand %.1f cm %s the ball: at most about %.0f"
                  + " cm.",
              100 * p.links().footLength(),
              100 * Math.abs(heels),
              heels > 0 ? "above" : "below",
              100 * Math.abs(off.value(steepest) + heels)));
    }
    return new BracketingNthOrderBrentSolver(1e-12, 5)
        .solve(100, off, Math.min(0, steepest), Math.max(0, steepest));
  }

  /** The points of a sole that go with the foot itself; the heel comes first. */
  private static Stream<Body.SolePoint> soles(Posture p, Side side) {
    int foot = p.body().tree().indexOf(side.of("foot"));
    return p.body().soles().stream().filter(s -> s.segment() == foot);
  }
}
