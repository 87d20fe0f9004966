package org.leverbook.checks;

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
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.Load;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.statics.Reaction;
import org.leverbook.support.Floor;
import org.leverbook.support.Footing;
import org.leverbook.support.Pad;
import org.leverbook.support.Support;

/** Rows of sections B and E of {@code checks/cases.csv} that need supports, on the usual adult. */
final class SupportCases {

  private static final Body BODY = Person.of(Sex.MALE, Units.kg(80), Units.cm(178)).body();

  private static final double STRAIGHT_KNEE = 0;
  private static final double BENT_KNEE = Math.toRadians(70);

  private SupportCases() {}

  static Map<String, DoubleSupplier> rows() {
    Map<String, DoubleSupplier> rows = new LinkedHashMap<>();
    rows.put("B32a", () -> pushUp(STRAIGHT_KNEE, Footing.feet(BODY)));
    rows.put("B32c", () -> pushUp(BENT_KNEE, Pad.underKnees()));
    rows.put("E05", SupportCases::bentOverToUpright);
    rows.put("E06", SupportCases::thighPad);
    return rows;
  }

  /**
   * Share of body weight on the hands, per cent: body straight, arms upright under the shoulders.
   */
  static double pushUp(double kneeBend, Support below) {
    DoubleUnaryOperator handsAboveFeet =
        lean -> {
          Placement where = plank(lean, kneeBend, 0).placed();
          return lowest(where, hands()) - lowest(where, kneeBend > 0 ? knees() : toes());
        };
    double low = Math.toRadians(30);
    double high = Math.toRadians(95);
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (handsAboveFeet.applyAsDouble(middle) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double down = lowest(plank(low, kneeBend, 0).placed(), hands());
    Position position =
        Position.of(
            "push-up",
            BODY,
            plank(low, kneeBend, -down),
            List.of(),
            List.of(below, Pad.underHands()),
            List.of(),
            List.of());
    double up = 0;
    for (Reaction reaction : position.supportForces()) {
      up += reaction.source().equals("floor under the hands") ? reaction.force().getY() : 0;
    }
    return 100 * up / (BODY.tree().mass() * Gravity.STANDARD);
  }

  private static Pose plank(double lean, double kneeBend, double up) {
    Pose pose = Pose.neutral(BODY.tree()).rootAt(new Vector3D(0, up, 0), Frame.leanedForward(lean));
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose =
          pose.with(JointId.SHOULDER.on(side), lean, 0, 0)
              // Palm turned to the feet, then the hand bent back: flat on the floor.
              .with(JointId.FOREARM.on(side), Math.PI)
              .with(JointId.WRIST.on(side), -Math.PI / 2, 0)
              .with(JointId.KNEE.on(side), kneeBend, 0, 0)
              .with(JointId.BALL.on(side), -lean);
    }
    return pose;
  }

  static List<Site> hands() {
    return List.of(Site.HEEL_OF_HAND);
  }

  static List<Site> knees() {
    return List.of(Site.KNEE_CAP);
  }

  static List<Site> toes() {
    return List.of();
  }

  /** Height of the lowest of some sites, or of the toe tips. */
  static double lowest(Placement where, List<Site> sites) {
    double lowest = Double.POSITIVE_INFINITY;
    for (Site site : sites) {
      var place = where.tree().place(site, Side.RIGHT);
      lowest = Math.min(lowest, where.toWorld(place.segment(), place.local()).getY());
    }
    if (sites.isEmpty()) {
      for (Body.SolePoint sole : BODY.soles()) {
        if (sole.name().equals("right toe tip")) {
          lowest = where.toWorld(sole.segment(), sole.place()).getY();
        }
      }
    }
    return lowest;
  }

  /**
   * Moment at L5/S1 with the trunk 60 degrees forward over that of standing, 40 kg in the hands.
   */
  private static double bentOverToUpright() {
    return bent(60) / bent(0);
  }

  private static double bent(double degrees) {
    return Position.of(
            "row",
            BODY,
            TradeCases.hanging(BODY, degrees),
            List.of(Barbell.of(Units.kg(40))),
            List.of(new Floor(BODY)),
            List.of(),
            List.of())
        .moment(JointId.L5_S1)
        .size();
  }

  /** 1 where the thigh pad gives the pull less the lifter's weight, seat and feet empty. */
  private static double thighPad() {
    double weight = BODY.tree().mass() * Gravity.STANDARD;
    double pull = 1.3 * weight;
    Pose pose = Pose.neutral(BODY.tree()).rootAt(new Vector3D(0, 0.55, 0), Frame.WORLD);
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose =
          pose.with(JointId.HIP.on(side), Math.PI / 2, 0, 0)
              .with(JointId.KNEE.on(side), Math.PI / 2, 0, 0)
              .with(JointId.SHOULDER.on(side), Math.PI, 0, 0);
    }
    Placement where = pose.placed();
    // The pull stands where weight and pad leave no turning: between them by the lever rule.
    double pad = where.toWorld(place(where).segment(), place(where).local()).getX();
    double line = (weight * where.centreOfMass().getX() + (pull - weight) * pad) / pull;
    Load up = new UpwardPull(pull, line);
    Position position =
        Position.of(
            "pulldown", BODY, pose, List.of(up), List.of(Pad.thighs()), List.of(), List.of());
    double given = 0;
    for (Reaction reaction : position.supportForces()) {
      given -= reaction.force().getY();
    }
    return Math.abs(given - (pull - weight)) < 1e-9 * weight ? 1 : 0;
  }

  private static org.leverbook.body.Place place(Placement where) {
    return where.tree().place(Site.THIGH, Side.RIGHT);
  }

  /** A bar that both hands pull on, straight down, so that it pulls them straight up. */
  private record UpwardPull(double newtons, double forward) implements Load {

    @Override
    public String source() {
      return "bar";
    }

    @Override
    public String description() {
      return "upward pull";
    }

    @Override
    public double mass() {
      return 0;
    }

    @Override
    public List<Force> forces(Placement where) {
      List<Force> forces = new java.util.ArrayList<>();
      for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
        int hand = where.tree().distalOf(JointId.GRIP.on(side));
        Vector3D at = where.origin(hand);
        forces.add(
            Force.ofLoad(
                source(),
                hand,
                new Vector3D(forward, at.getY(), at.getZ()),
                new Vector3D(0, newtons / 2, 0)));
      }
      return forces;
    }
  }
}
