package org.leverbook.checks;

import static org.leverbook.checks.DeadliftCases.yes;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.HandWeights;
import org.leverbook.load.Load;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.statics.Position;
import org.leverbook.support.Footing;

/**
 * Rows of section B on squats and on holding a weight with the trunk bent: B01, B12, B13, B15, B26,
 * B42, B43, B46. Moments are those of one leg.
 *
 * <p>Printed: the bar as a share of body mass, "parallel", the knees kept behind the toes (B01),
 * stance widths (B12), 70 % of each best (B13; its loads from memory), trunk angles and loads
 * (B26). Not printed, and taken: the adult of 80 kg and 178 cm, thighs level, the lean of the
 * shins, the balance over the middle of the foot.
 */
final class SquatCases {

  private static final Body BODY = Person.of(Sex.MALE, kg(80), cm(178)).body();
  private static final Squat LEVEL = Squat.level(BODY, 80);

  /** The knees at the toes: the barrier. */
  private static final Squat BLOCKED = LEVEL.kneesAheadOfToes(0);

  /** How far free knees went is not printed. */
  private static final Squat FREE = LEVEL.kneesAheadOfToes(0.07);

  private static final Squat TRADITIONAL =
      Squat.level(BODY, 100).stance(0.483, Math.toRadians(20)).shin(30);

  private static final Squat WIDE = TRADITIONAL.stance(0.896, Math.toRadians(40)).shin(10);

  private static final Squat BOX = TRADITIONAL.stance(0.921, Math.toRadians(40)).shin(0);

  private static final Squat BACK = LEVEL.withBar(61.8, Site.UPPER_BACK_HIGH);

  private static final Squat FRONT = LEVEL.withBar(48.5, Site.FRONT_OF_SHOULDER);

  private SquatCases() {}

  static Map<String, DoubleSupplier> rows() {
    Map<String, DoubleSupplier> rows = new LinkedHashMap<>();
    rows.put("B01a", () -> knee(FREE));
    rows.put("B01b", () -> knee(BLOCKED));
    rows.put("B01c", () -> hip(FREE));
    rows.put("B01d", () -> hip(BLOCKED));
    rows.put("B01e", () -> knee(BLOCKED) / knee(FREE));
    rows.put("B01f", () -> hip(BLOCKED) - hip(FREE));
    rows.put("B12a", () -> spine(TRADITIONAL) / spine(WIDE));
    rows.put("B12b", () -> spine(WIDE) / spine(BOX));
    rows.put("B12c", () -> ankle(TRADITIONAL) / ankle(WIDE));
    rows.put("B12d", () -> ankle(WIDE) / ankle(BOX));
    rows.put("B13a", () -> knee(BACK) / BODY.tree().mass());
    rows.put("B13b", () -> knee(FRONT) / BODY.tree().mass());
    rows.put("B13c", () -> knee(BACK) / knee(FRONT));
    rows.put("B15a", () -> yes(rising(SquatCases::trunkMoment)));
    rows.put("B15b", () -> yes(rising(SquatCases::lumbarShear)));
    rows.put("B26a", () -> yes(bentHolds(true)));
    rows.put("B26b", () -> yes(bentHolds(false)));
    rows.put("B42d", SquatCases::hipRisesMore);
    rows.put("B46", () -> yes(inward(1) > 0 && inward(1.5) > inward(1)));
    rows.put("B43b", () -> yes(LEVEL.shin(20).lean() > LEVEL.shin(30).lean()));
    rows.put("B43c", () -> yes(LEVEL.shin(40).lean() < LEVEL.shin(30).lean()));
    return rows;
  }

  /** Plus where the resistance tends to flex the joint, so that its extensors must hold. */
  private static double knee(Squat squat) {
    return squat.position().moment(JointId.KNEE).about("flexion");
  }

  private static double hip(Squat squat) {
    return squat.position().moment(JointId.HIP).about("flexion");
  }

  private static double ankle(Squat squat) {
    return squat.position().moment(JointId.ANKLE).about("flexion");
  }

  /** What the floor pushes the right foot towards the left, newtons. */
  private static double inward(double trochanterWidths) {
    Squat squat = Squat.level(BODY, 100).stance(trochanterWidths * 0.33, Math.toRadians(20));
    return squat.position().supportForces().stream()
        .filter(r -> r.on().equals("right foot"))
        .mapToDouble(r -> -r.force().getZ())
        .sum();
  }

  private static double spine(Squat squat) {
    return squat.position().moment(JointId.L5_S1).about("flexion");
  }

  /** A front squat with the shins more and more upright, so that the trunk must lean more. */
  private static List<Position> moreAndMoreLeaned() {
    return IntStream.of(40, 35, 30, 25, 20).mapToObj(s -> FRONT.shin(s).position()).toList();
  }

  private static boolean rising(ToDoubleFunction<Position> of) {
    double[] values = moreAndMoreLeaned().stream().mapToDouble(of).toArray();
    return IntStream.range(1, values.length).allMatch(i -> values[i] > values[i - 1]);
  }

  private static double trunkMoment(Position position) {
    return position.moment(JointId.L5_S1).about("flexion");
  }

  private static double lumbarShear(Position position) {
    return position.contactForce(JointId.L4_L5, Side.MIDLINE).forward();
  }

  /**
   * 0, 10, 20 kg in hanging hands at trunk angles of 0, 15, 30 degrees, straight and bent knees.
   */
  private static boolean bentHolds(boolean byLoad) {
    for (double knees : new double[] {0, 45}) {
      for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 2; j++) {
          double before = byLoad ? held(10 * j, 15 * i, knees) : held(10 * i, 15 * j, knees);
          double after =
              byLoad ? held(10 * (j + 1), 15 * i, knees) : held(10 * i, 15 * (j + 1), knees);
          if (after <= before) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /** Moment at L4/L5 that tends to bend the trunk forward, newton metres. */
  private static double held(double kilograms, double trunk, double knees) {
    return hold(kilograms, trunk, knees, 90).moment(JointId.L4_L5).about("flexion");
  }

  /** A weight held in both hands, upper arms hanging, elbows bent so far. */
  static Position hold(double kilograms, double trunk, double knees, double elbows) {
    return hold(BODY, kilograms, trunk, knees, elbows);
  }

  static Position hold(Body body, double kilograms, double trunk, double knees, double elbows) {
    double lean = Math.toRadians(trunk);
    double bend = Math.toRadians(knees);
    double shin = bend / 2;
    double height =
        body.links().footHeight() + (body.links().thigh() + body.links().shank()) * Math.cos(shin);
    Pose pose =
        Pose.neutral(body.tree()).rootAt(new Vector3D(0, height, 0), Frame.leanedForward(lean));
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose =
          pose.with(JointId.HIP.on(side), lean + bend / 2, 0, 0)
              .with(JointId.KNEE.on(side), bend, 0, 0)
              .with(JointId.ANKLE.on(side), bend / 2, 0, 0)
              // Held ahead of the body, upper arms hanging, forearms level.
              .with(JointId.SHOULDER.on(side), lean, 0, 0)
              .with(JointId.ELBOW.on(side), Math.toRadians(elbows), 0);
    }
    List<Load> loads =
        kilograms > 0 ? List.of(HandWeights.pair("weight", kg(kilograms / 2))) : List.of();
    return Position.of(
        "hold", body, pose, loads, List.of(Footing.feet(body)), List.of(), List.of());
  }

  /** From 50 to 90 kg: what the hip gains and what the knee gains. */
  private static double hipRisesMore() {
    Squat light = LEVEL.withBar(50, Site.UPPER_BACK_HIGH);
    Squat heavy = LEVEL.withBar(90, Site.UPPER_BACK_HIGH);
    return yes(hip(heavy) - hip(light) > knee(heavy) - knee(light));
  }
}
