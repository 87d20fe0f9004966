package org.leverbook.checks;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Links;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Limbs;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.support.Footing;

/**
 * A squat held still: shins and thighs as given, the trunk leaned so that lifter and bar balance
 * over the middle of the foot, the spine straight.
 *
 * @param body whose
 * @param halfStance midline to ankle, metres
 * @param turnOut of each foot, radians; each knee goes the way its foot points
 * @param bar mass, kilograms
 * @param rest where the bar lies
 * @param shin lean of the shins from the upright, radians
 * @param thigh angle of the thighs above the level, radians
 */
record Squat(
    Body body,
    double halfStance,
    double turnOut,
    double bar,
    Site rest,
    double shin,
    double thigh) {

  /** Ahead of the ankle, as a share of foot length: the middle of the foot. */
  private static final double MIDDLE_OF_FOOT = 0.25;

  /** Feet under the hips, pointing straight ahead, thighs level, the bar on the upper back. */
  static Squat level(Body body, double bar) {
    return new Squat(
        body, body.links().hipHalfWidth(), 0, bar, Site.UPPER_BACK_HIGH, Math.toRadians(30), 0);
  }

  Squat stance(double width, double turned) {
    return new Squat(body, width / 2, turned, bar, rest, shin, thigh);
  }

  Squat withBar(double kilograms, Site place) {
    return new Squat(body, halfStance, turnOut, kilograms, place, shin, thigh);
  }

  Squat shin(double degrees) {
    return new Squat(body, halfStance, turnOut, bar, rest, Math.toRadians(degrees), thigh);
  }

  Squat thigh(double degreesAboveLevel) {
    return new Squat(body, halfStance, turnOut, bar, rest, shin, Math.toRadians(degreesAboveLevel));
  }

  /** The lean of the shins with which the knees stand this far ahead of the toe tips. */
  Squat kneesAheadOfToes(double metres) {
    Links links = body.links();
    double toes = 0;
    Placement neutral = Pose.neutral(body.tree()).placed();
    for (Body.SolePoint sole : body.soles()) {
      if (sole.name().equals("right toe tip")) {
        toes =
            neutral.toWorld(sole.segment(), sole.place()).getX()
                - neutral.centre(JointId.ANKLE.on(Side.RIGHT)).getX();
      }
    }
    double ahead = (toes + metres) / links.shank();
    return new Squat(body, halfStance, turnOut, bar, rest, Math.asin(ahead), thigh);
  }

  /** Trunk lean in balance, degrees. */
  double lean() {
    double low = Math.toRadians(-10);
    double high = Math.toRadians(100);
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      if (balance(pose(middle).placed()) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.toDegrees(low);
  }

  Position position() {
    return leaned(lean());
  }

  /** The same with another lean of the trunk, balanced or not. */
  Position leaned(double degrees) {
    return Position.of(
        "squat",
        body,
        pose(Math.toRadians(degrees)),
        List.of(load()),
        List.of(Footing.feet(body)),
        List.of(),
        List.of());
  }

  private Barbell load() {
    return Barbell.of(Units.kg(bar)).on(rest);
  }

  /** How far the weight of lifter and bar acts ahead of the middle of the foot, metres. */
  private double balance(Placement where) {
    double mass = body.tree().mass();
    double sum = mass * where.centreOfMass().getX();
    for (Force force : load().forces(where)) {
      double share = -force.force().getY() / Gravity.STANDARD;
      sum += share * force.point().getX();
      mass += share;
    }
    return sum / mass;
  }

  private Pose pose(double lean) {
    Links links = body.links();
    double out = Math.sin(shin) * links.shank();
    Vector3D ankle =
        new Vector3D(
            -MIDDLE_OF_FOOT * links.footLength() * Math.cos(turnOut),
            links.footHeight(),
            halfStance);
    Vector3D knee =
        ankle.add(
            new Vector3D(
                out * Math.cos(turnOut), Math.cos(shin) * links.shank(), out * Math.sin(turnOut)));
    double up = Math.sin(thigh) * links.thigh();
    double aside = knee.getZ() - links.hipHalfWidth();
    double back = Math.sqrt(links.thigh() * links.thigh() - up * up - aside * aside);
    Pose pose =
        Pose.neutral(body.tree())
            .rootAt(
                new Vector3D(knee.getX() - back, knee.getY() + up, 0), Frame.leanedForward(lean));
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Vector3D own = new Vector3D(ankle.getX(), ankle.getY(), side.sign() * halfStance);
      pose = Limbs.stand(pose, body, side, own, turnOut);
      // Hands at the bar: elbows bent behind it, or lifted ahead of it.
      double raised = rest == Site.FRONT_OF_SHOULDER ? Math.toRadians(80) : Math.toRadians(-10);
      pose =
          pose.with(JointId.SHOULDER.on(side), raised, 0, 0)
              .with(JointId.ELBOW.on(side), Math.toRadians(140), 0);
    }
    return pose;
  }
}
