package org.leverbook.checks;

import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.m;
import static org.leverbook.quantity.Units.percent;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.HandWeights;
import org.leverbook.load.Load;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.NetLoads;
import org.leverbook.statics.Position;
import org.leverbook.support.Floor;

/**
 * Section E of {@code checks/cases.csv} as properties: each answer is the worst over many seeded
 * random people, loads and positions, that is the one furthest from the middle of the row's band.
 */
final class TradeCases {

  private static final int CASES = 100;

  /** Bars of at least the lifter's own mass count as heavy here. */
  static final double HEAVY = 1.0;

  private static final List<Start> STARTS = starts();

  private TradeCases() {}

  /** A hinge's start and the bar in it, in lifters' masses. */
  record Start(double loadShare, Position position) {}

  static Map<String, DoubleSupplier> rows() {
    Map<String, DoubleSupplier> rows = new LinkedHashMap<>();
    rows.put("E01", () -> worst(0.5, 0, start -> start.balance().shareOfFoot()));
    rows.put("E02a", TradeCases::growsDownTheSpine);
    rows.put("E02b", TradeCases::shoulderToLowBack);
    rows.put(
        "E03", () -> worst(0.05, HEAVY, start -> start.fact("shoulders ahead of the bar") / 100));
    rows.put("E07a", () -> raise(30, 0.5));
    rows.put("E07b", () -> raise(60, Math.sqrt(0.75)));
    rows.put("E07c", () -> raise(0, 0));
    rows.put("E11", TradeCases::doubled);
    rows.put("E12a", TradeCases::leftToRight);
    rows.put("E12b", TradeCases::sideways);
    return rows;
  }

  /** Hinge starts of many builds, bars from empty hands' worth to twice the lifter. */
  private static List<Start> starts() {
    RandomScenes random = new RandomScenes(20_262);
    List<Start> starts = new ArrayList<>();
    while (starts.size() < CASES) {
      Person person =
          Person.of(
                  starts.size() % 2 == 0 ? Sex.MALE : Sex.FEMALE,
                  kg(random.between(50, 120)),
                  cm(random.between(150, 200)))
              .longer(Part.THIGH, percent(random.between(-8, 8)));
      double share = random.between(0.05, 2);
      Hinge hinge =
          Hinge.of(person)
              .holding(Barbell.of(kg(share * person.kilograms())))
              .hipHeight(m(person.metres() * random.between(0.32, 0.43)));
      try {
        starts.add(new Start(share, hinge.start()));
      } catch (Refused outOfReach) {
        continue; // Some builds cannot reach the bar with their hips there.
      }
    }
    return starts;
  }

  static List<Start> atLeast(double share) {
    return STARTS.stream().filter(start -> start.loadShare() >= share).toList();
  }

  private static double worst(double middle, double share, ToDoubleFunction<Position> value) {
    double worst = middle;
    for (Start start : atLeast(share)) {
      worst = further(worst, value.applyAsDouble(start.position()), middle);
    }
    return worst;
  }

  private static double further(double worst, double value, double middle) {
    return Math.abs(value - middle) > Math.abs(worst - middle) ? value : worst;
  }

  /** 1 where in every start both hips together carry more than L5/S1, and so on up to T1/T2. */
  private static double growsDownTheSpine() {
    for (Start start : STARTS) {
      double below =
          start.position().moment(JointId.HIP, Side.RIGHT).signed()
              + start.position().moment(JointId.HIP, Side.LEFT).signed();
      for (JointId level : JointId.spine()) {
        double own = start.position().moment(level).signed();
        if (level != JointId.C7_T1 && !(own < below)) {
          return 0;
        }
        below = own;
      }
    }
    return 1;
  }

  /** A trunk leaned forward over unbent legs, hips back, arms hanging straight down with a bar. */
  static Pose hanging(Body body, double degrees) {
    double lean = Math.toRadians(degrees);
    double back = 0.25 * lean;
    double leg = body.links().thigh() + body.links().shank();
    Pose pose =
        Pose.neutral(body.tree())
            .rootAt(
                new Vector3D(
                    -leg * Math.sin(back), body.links().footHeight() + leg * Math.cos(back), 0),
                Frame.leanedForward(lean));
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose =
          pose.with(JointId.HIP.on(side), lean + back, 0, 0)
              .with(JointId.ANKLE.on(side), -back, 0, 0)
              .with(JointId.SHOULDER.on(side), lean, 0, 0);
    }
    return pose;
  }

  /**
   * Least and greatest of L5/S1's moment in a free row over that of standing with the same load at
   * arm's length, trunk 45 to 90 degrees forward.
   */
  static double[] rowToStanding() {
    RandomScenes random = new RandomScenes(5);
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = 0; i < CASES; i++) {
      Body body = random.body();
      Load bar = Barbell.of(kg(random.between(10, 80)));
      double ratio = lowBack(body, bar, random.between(45, 90)) / lowBack(body, bar, 0);
      least = Math.min(least, ratio);
      most = Math.max(most, ratio);
    }
    return new double[] {least, most};
  }

  private static double lowBack(Body body, Load bar, double degrees) {
    NetLoads net = above(hanging(body, degrees).placed(), bar);
    return Math.abs(JointMoment.of(net, JointId.L5_S1.word(), "bar").about("flexion"));
  }

  /**
   * With arms straight down; with the shoulders ahead of the bar they carry more (see the test).
   */
  private static double shoulderToLowBack() {
    RandomScenes random = new RandomScenes(2);
    double worst = 0;
    for (int i = 0; i < CASES; i++) {
      Body body = random.body();
      Placement where = hanging(body, random.between(30, 85)).placed();
      NetLoads net = above(where, Barbell.of(kg(random.between(10, 150))));
      double back = JointMoment.of(net, JointId.L5_S1.word(), "bar").about("flexion");
      for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
        double shoulder = JointMoment.of(net, JointId.SHOULDER.on(side), "bar").about("flexion");
        worst = further(worst, shoulder / back, 0);
      }
    }
    return worst;
  }

  /** Loads without what carries the feet: enough for every joint above the hips. */
  private static NetLoads above(Placement where, Load... loads) {
    List<Force> forces = new ArrayList<>();
    for (Load load : loads) {
      forces.addAll(load.forces(where));
    }
    return NetLoads.of(where, forces, Gravity.VECTOR);
  }

  /** Moment of the lateral raise at an angle over the one at 90 degrees, furthest from the sine. */
  private static double raise(double degrees, double sine) {
    RandomScenes random = new RandomScenes(7);
    double worst = sine;
    for (int i = 0; i < CASES; i++) {
      Body body = random.body();
      Load bell = HandWeights.one("dumbbell", kg(random.between(1, 30)), Side.RIGHT);
      worst = further(worst, raised(body, bell, degrees) / raised(body, bell, 90), sine);
    }
    return worst;
  }

  private static double raised(Body body, Load bell, double degrees) {
    Placement where =
        Pose.neutral(body.tree())
            .with(JointId.SHOULDER.on(Side.RIGHT), 0, Math.toRadians(degrees), 0)
            .placed();
    return -JointMoment.of(above(where, bell), "right shoulder", "dumbbell").about("abduction");
  }

  /**
   * The bar's share of the moment with twice the bar over that with one: the whole vector at every
   * joint of random poses; and, of hinge starts on the floor that hold with empty hands too, the
   * part about the line across the body.
   *
   * <p>Other parts at the legs do not double on the floor, and need not: where inside each sole the
   * push acts and how hard the feet press outward is chosen by least effort among pushes that never
   * pull, which is not linear. For the same reason the ball of the foot is left out: the toes begin
   * to carry only as the push comes forward.
   */
  private static double doubled() {
    RandomScenes random = new RandomScenes(11);
    double worst = 2;
    for (int i = 0; i < CASES; i++) {
      Body body = random.body();
      Placement where = random.pose(body.tree()).placed();
      double mass = random.between(5, 100);
      NetLoads none = above(where);
      NetLoads one = above(where, Barbell.of(kg(mass)));
      NetLoads two = above(where, Barbell.of(kg(2 * mass)));
      for (int joint = 1; joint < body.tree().size(); joint++) {
        worst = further(worst, growth(none.moment(joint), one.moment(joint), two.moment(joint)), 2);
      }
    }
    for (Start start : STARTS) {
      Position empty = start.position().without("bar");
      Barbell bar = (Barbell) start.position().loads().get(0);
      if (empty.held()) {
        Position two = empty.with(Barbell.of(kg(2 * bar.kilograms())));
        worst = further(worst, onTheFloor(empty, start.position(), two), 2);
      }
    }
    return worst;
  }

  private static double onTheFloor(Position none, Position one, Position two) {
    double worst = 2;
    for (int i = 0; i < none.all().size(); i++) {
      if (!none.all().get(i).joint().name().equals(JointId.BALL.word())) {
        worst = further(worst, growth(across(none, i), across(one, i), across(two, i)), 2);
      }
    }
    return worst;
  }

  private static Vector3D across(Position position, int joint) {
    return new Vector3D(0, 0, position.all().get(joint).moment().getZ());
  }

  /** Twice the bar's moment over once; what points elsewhere counts as excess. */
  private static double growth(Vector3D none, Vector3D one, Vector3D two) {
    Vector3D single = one.subtract(none);
    Vector3D twice = two.subtract(none);
    if (single.getNorm() < 1e-2) {
      return 2; // A hundredth of a newton metre and less: solving the floor gives 1e-6 of it away.
    }
    double along = twice.dotProduct(single) / single.getNormSq();
    return along + twice.crossProduct(single).getNorm() / single.getNormSq();
  }

  /** Somebody who does the same left and right, on the floor with a bar. */
  private static List<Position> even() {
    List<Position> even = new ArrayList<>();
    STARTS.forEach(start -> even.add(start.position()));
    RandomScenes random = new RandomScenes(12);
    for (int i = 0; i < CASES; i++) {
      Body body = random.body();
      Pose pose = hanging(body, random.between(0, 40));
      Load bar = Barbell.of(kg(random.between(5, 80)));
      Position position =
          Position.of(
              "even", body, pose, List.of(bar), List.of(new Floor(body)), List.of(), List.of());
      if (position.held()) {
        even.add(position);
      }
    }
    return even;
  }

  private static double leftToRight() {
    double worst = 1;
    for (Position position : even()) {
      for (JointId joint : JointId.values()) {
        if (joint.paired()) {
          double right = position.moment(joint, Side.RIGHT).about("flexion");
          double left = position.moment(joint, Side.LEFT).about("flexion");
          // Below a thousandth of a newton metre the ratio is rounding over rounding.
          if (Math.abs(right) > 1e-3) {
            worst = Math.min(worst, Math.min(left / right, right / left));
          }
        }
      }
    }
    return worst;
  }

  private static double sideways() {
    double worst = 0;
    for (Position position : even()) {
      for (JointId level : JointId.spine()) {
        JointMoment moment = position.moment(level);
        worst = further(worst, moment.about("abduction"), 0);
        worst = further(worst, moment.about("rotation"), 0);
      }
    }
    return worst;
  }
}
