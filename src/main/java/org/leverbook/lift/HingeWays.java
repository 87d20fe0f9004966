package org.leverbook.lift;

import java.util.List;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Links;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.Load;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;
import org.leverbook.solve.Answer;
import org.leverbook.solve.Feature;
import org.leverbook.solve.PoseSolver;

/**
 * What a hinge is, said of a posture. Usual values, how firmly each is wished and how far ahead
 * shoulders hold a bar: common practice, no source.
 */
final class HingeWays {

  /** Knee bend where the coach says nothing, degrees. */
  private static final double USUAL_KNEE_BEND = 65;

  /** Foot spacing as a multiple of hip-joint spacing, and turn-out in degrees. */
  private static final double USUAL_STANCE = 1.5;

  private static final double USUAL_TURN_OUT = 10;

  /** So much spine and shoulder girdle may add to the trunk, metres; the solver knows exactly. */
  private static final double GIVES = 0.08;

  /** How much lower the hips are than the leg is long, looked for first. */
  private static final double LEG_LEANS = 0.93;

  /** Light bars and empty hands count as much, in lifter's masses: arms do not swing far back. */
  private static final double LIGHT = 0.5;

  private static final double BALANCED = 60;
  private static final double BALANCED_ON_THE_WAY = 3;
  private static final double OVER_THE_FOOT = 20;

  /** A bar hangs no further than this ahead of the ball of the foot, metres. */
  static final double BEYOND_THE_BALL = 0.03;

  /** Wrists hang with the arm, the shoulder girdle does not make up for what legs should do. */
  private static final double STRAIGHT = 10;

  private static final double SHOULDERS = 16;

  /** How low or high the hips can be: more gently where the firm wish tears at the conditions. */
  private static final double[] UTMOST = {40, 15, 5};

  private static final Lookup SURVEY =
      new Lookup(DataTable.read("body/population_anthropometry.csv"), "sex", "dimension");

  private HingeWays() {}

  static double stance(Links links) {
    return 2 * USUAL_STANCE * links.hipHalfWidth();
  }

  static double kneeHeight(Body body) {
    return body.links().footHeight() + body.links().shank();
  }

  static void say(Posture p) {
    Barbell bar = common(p);
    if (p.isStart()) {
      low(p, bar);
      atTheBar(p, bar);
    } else if (p.isFinish()) {
      FromFloor.lockedOut(p);
      p.ratherBalancedOver(0, BALANCED);
    }
  }

  /** What holds all the way: flat feet, straight arms, the bar on one line, the balance. */
  private static Barbell common(Posture p) {
    Barbell bar = Weights.bar(p, 0, Site.HAND);
    Feet.stand(
        p,
        p.value(Setting.STANCE_WIDTH, stance(p.links())) / 2,
        p.angle(Setting.TURN_OUT, USUAL_TURN_OUT));
    double width = p.value(Setting.GRIP_WIDTH, Hands.usualWidth(p));
    reaches(p, width / 2);
    FromFloor.straightArms(p, width, Grip.OVERHAND);
    for (String axis : List.of("flexion", "abduction", "rotation")) {
      p.usually(JointId.SHOULDER_GIRDLE, axis, 0, STRAIGHT);
    }
    // A straight arm turns in the shoulder or in the forearm: which of them must not waver.
    p.usually(JointId.SHOULDER, "rotation", 0, 1);
    p.usually(JointId.WRIST, "flexion", 0, STRAIGHT);
    p.usually(JointId.WRIST, "abduction", 0, STRAIGHT);
    if (p.ends().size() == 2) {
      for (Side side : p.sides()) {
        p.straight("the " + side.of("hand"), p.place(Site.HAND, side), 0);
      }
      if (bar.kilograms() > 0) {
        FromFloor.alongLegs(p);
      }
      double[] over = p.ends().stream().mapToDouble(end -> balance(p, bar, end)).toArray();
      p.statements()
          .ratherBalancedOnTheWay(
              p.between(over[0], over[1]), List.copyOf(p.carried()), BALANCED_ON_THE_WAY);
    }
    return bar;
  }

  /**
   * How far ahead of the middle of the foot lifter, bar and all that the coach added stand in
   * balance, metres.
   */
  static double balance(Posture p, Barbell bar, Placement where) {
    double body = p.body().tree().mass();
    double hands = where.at(p.body().place(Site.HAND, Side.RIGHT)).getX();
    double moment = body * where.centreOfMass().getX() + bar.mass() * hands;
    double mass = body + bar.mass();
    for (Load load : p.setup().more()) {
      for (Force f : load.forces(where)) {
        Vector3D pull = f.force().scalarMultiply(1 / Gravity.STANDARD);
        moment += pull.getX() * f.point().getY() - pull.getY() * f.point().getX();
        mass -= pull.getY();
      }
    }
    return moment / mass;
  }

  private static void reaches(Posture p, double half) {
    if (half - p.links().shoulderHalfWidth() >= p.links().reach()) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A grip of %.0f cm is wider than these arms (%.0f cm from shoulder to grip) can take. Grip narrower.",
              200 * half,
              100 * p.links().reach()));
    }
  }

  /** The one thing the coach says of how low, and where to start looking. */
  private static void low(Posture p, Barbell bar) {
    double shoulders = p.value(Setting.BAR_HEIGHT, bar.plateRadius()) + p.links().reach();
    double trunk = Bodies.trunk(p);
    double hips;
    if (p.isSet(Setting.HIP_HEIGHT)) {
      hips = p.value(Setting.HIP_HEIGHT, 0);
      trunkReaches(p, shoulders, hips);
      p.atHeight(JointId.HIP, hips, "the height asked for");
    } else if (p.isSet(Setting.TRUNK_LEAN)) {
      double lean = p.angle(Setting.TRUNK_LEAN, 0);
      hips = shoulders - trunk * Math.cos(lean);
      p.trunkLeans(lean);
    } else {
      double knees = p.angle(Setting.KNEE_BEND, USUAL_KNEE_BEND);
      hips = p.links().footHeight() + LEG_LEANS * leg(p.links(), knees);
      p.exactlyRadians(JointId.KNEE, "flexion", knees);
    }
    from(p, hips, (shoulders - hips) / trunk);
  }

  /**
   * Refuses hips so low or high that no trunk brings the shoulders an arm's length over the bar.
   */
  private static void trunkReaches(Posture p, double shoulders, double hips) {
    double rise = shoulders - hips;
    double missing = Math.abs(rise) - Bodies.trunk(p);
    if (missing > GIVES) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "With straight arms the shoulders are %.1f cm above the floor, but from hips at %.1f cm the trunk"
                  + " reaches only to %.1f cm: the hands stop %.1f cm %s the bar. %s",
              100 * shoulders,
              100 * hips,
              100 * (shoulders - Math.signum(rise) * missing),
              100 * missing,
              rise > 0 ? "below" : "above",
              hipHeights(p.setup())));
    }
  }

  /** From ankle to hip with the knee bent, metres. */
  private static double leg(Links links, double bend) {
    double both = 2 * links.thigh() * links.shank() * Math.cos(bend);
    return Math.sqrt(links.thigh() * links.thigh() + links.shank() * links.shank() + both);
  }

  private static void from(Posture p, double hips, double rise) {
    double lean = Math.toDegrees(Math.acos(Math.max(-0.3, Math.min(0.99, rise))));
    p.roughly(-0.35, hips, lean);
    p.usually(JointId.HIP, "flexion", 100, Posture.EASY);
    p.usually(JointId.KNEE, "flexion", USUAL_KNEE_BEND, Posture.EASY);
    p.usually(JointId.SHOULDER, "flexion", lean, Posture.EASY);
  }

  /** The hands hold the bar where it starts. */
  private static void atTheBar(Posture p, Barbell bar) {
    double height = p.value(Setting.BAR_HEIGHT, bar.plateRadius());
    FromFloor.barAt(p, height);
    double most = mostAhead(p.body(), bar);
    double share = Math.max(LIGHT, bar.kilograms() / p.body().tree().mass());
    double usual = 0.5 * handBreadth(p.body().person()) / Math.max(1, share);
    for (Side side : p.sides()) {
      String shoulder = "the " + side.of("shoulder");
      var joint = p.joint(JointId.SHOULDER, side);
      var hand = p.place(Site.HAND, side);
      p.statements()
          .beyond(shoulder, "a place over the bar", joint, hand, Vector3D.PLUS_I, 0)
          .beyond(shoulder, "where it can hold the bar", hand, joint, Vector3D.PLUS_I, -most);
      // As firmly as the bar is heavy: half a hand's breadth ahead, less with a heavier bar.
      p.statements()
          .rather(new Feature.Way(hand, joint), Vector3D.PLUS_I, usual, SHOULDERS * share);
      if (p.isSet(Setting.BAR_AHEAD)) {
        p.statements()
            .along(
                "the " + side.of("hand"),
                "the bar",
                hand,
                new Vector3D(p.value(Setting.BAR_AHEAD, 0), 0, 0),
                List.of(Vector3D.PLUS_I));
      } else {
        p.statements().rather(hand, Vector3D.PLUS_I, 0, OVER_THE_FOOT);
        p.statements()
            .beyond(
                "the ball of the foot",
                "the bar",
                p.joint(JointId.BALL, side),
                hand,
                Vector3D.PLUS_I,
                -BEYOND_THE_BALL);
      }
    }
    if (!p.isSet(Setting.BAR_AHEAD) && bar.kilograms() > 0) {
      FromFloor.clearOfLegs(p, height);
    }
    Legs.kneesOverToes(p);
    p.ratherBalancedOver(0, BALANCED);
  }

  /**
   * How far shoulders can be ahead of a bar, metres: what it does there is no more than what the
   * lifter's own weight would do a hand's breadth ahead.
   */
  static double mostAhead(Body body, Barbell bar) {
    double share = Math.max(LIGHT, bar.kilograms() / body.tree().mass());
    return handBreadth(body.person()) / share;
  }

  /**
   * Hand breadth at the knuckles, as the survey's mean share of stature (ANSUR II, Gordon et al.
   * 2014), metres.
   */
  static double handBreadth(Person person) {
    return person.metres()
        * SURVEY.row(person.sex().word(), "handbreadth").number("mean_frac_stature");
  }

  /** The range of hip heights that can be set up with everything else as it is. */
  static String hipHeights(Setup said) {
    Setup setup = said.without(Setting.HIP_HEIGHT, Setting.KNEE_BEND, Setting.TRUNK_LEAN);
    double knees = kneeHeight(setup.body());
    double lowest = Math.max(utmost(setup, knees), knees);
    double highest = utmost(setup, setup.body().links().standingHipHeight());
    if (!(lowest < highest)) {
      return "No hip height works with this bar height and grip: change those first.";
    }
    return String.format(
        Locale.ROOT,
        "With this bar this lifter can be set up with the hips from about %.0f to %.0f cm above the floor.",
        Math.ceil(100 * lowest),
        Math.floor(100 * highest));
  }

  /** The hip height nearest to a wished one; NaN where there is none. */
  private static double utmost(Setup setup, double wished) {
    for (double firmly : UTMOST) {
      Posture p = new Posture(setup, 0, true, List.of());
      Barbell bar = common(p);
      from(p, 0.7 * p.links().standingHipHeight(), 0.5);
      atTheBar(p, bar);
      p.statements().rather(p.joint(JointId.HIP, Side.RIGHT), Vector3D.PLUS_J, wished, firmly);
      Answer answer = new PoseSolver(p.statements()).solve();
      if (answer.met()) {
        return answer.pose().rootPlace().getY();
      }
    }
    return Double.NaN;
  }
}
