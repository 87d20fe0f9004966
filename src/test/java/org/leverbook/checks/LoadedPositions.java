package org.leverbook.checks;

import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.newton;
import static org.leverbook.quantity.Units.percent;
import static org.leverbook.quantity.Units.seconds;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Band;
import org.leverbook.load.Barbell;
import org.leverbook.load.Cable;
import org.leverbook.load.Cam;
import org.leverbook.load.Chains;
import org.leverbook.load.HandWeights;
import org.leverbook.load.LeverMachine;
import org.leverbook.load.Load;
import org.leverbook.load.PivotingBar;
import org.leverbook.load.Sled;
import org.leverbook.load.SteadyForce;
import org.leverbook.load.Stretch;
import org.leverbook.load.Worn;
import org.leverbook.pose.Course;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.statics.Tempo;
import org.leverbook.support.Floor;

/** Every kind of load on somebody who stands, who hinges, and who moves, feet on a rough floor. */
final class LoadedPositions {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));
  private static final Body BODY = LIFTER.body();

  private LoadedPositions() {}

  /** Light enough that the floor's friction and the feet hold the lifter with each. */
  static List<Load> loads() {
    Vector3D ahead = new Vector3D(0.9, 1.4, 0.3);
    Vector3D pivot = new Vector3D(0.6, 0.8, 0);
    return List.of(
        Barbell.of(kg(60)),
        Barbell.trap(kg(60)),
        Barbell.of(kg(40)).on(Site.UPPER_BACK_HIGH),
        Barbell.of(kg(40)).on(Site.UPPER_BACK_LOW),
        Barbell.of(kg(30)).on(Site.FRONT_OF_SHOULDER),
        Barbell.of(kg(8)).on(Site.HIP_CREASE),
        HandWeights.pair("kettlebell", kg(12)),
        HandWeights.one("dumbbell", kg(12), Side.LEFT),
        HandWeights.one("dumbbell", kg(14), Side.RIGHT).withOther(kg(4), Side.LEFT),
        Cable.of(kg(8), ahead),
        Cable.of(kg(16), ahead).through(2).lifting(percent(10)),
        Cable.of(kg(5), ahead).heldBy(Site.HAND, Side.RIGHT),
        Cable.of(kg(4), ahead.add(new Vector3D(0, -1.2, 0))).heldBy(Site.ANKLE, Side.LEFT),
        Band.of(Vector3D.ZERO, cm(10), newton(80), cm(40)),
        Band.of(ahead, cm(10), newton(20), cm(60))
            .pullingBy(Stretch.linear(60).and(2.5, 160))
            .heldBy(Site.HAND, Side.LEFT),
        Chains.of(kg(4), cm(150)),
        Chains.ofSteel(cm(1), cm(120)).on(Site.UPPER_BACK_HIGH),
        LeverMachine.of(pivot, kg(10), cm(50)),
        LeverMachine.of(pivot, kg(8), cm(50)).platesTurnedBy(deg(20)).heldBy(Site.HAND, Side.LEFT),
        LeverMachine.of(pivot, kg(10), Cam.round(cm(10))),
        PivotingBar.of(new Vector3D(1.6, 0, 0.1), kg(1)),
        PivotingBar.of(new Vector3D(1.6, 0, 0.1), kg(2)).bar(kg(10), cm(200)).in(Side.RIGHT),
        Sled.of(kg(20), deg(90)),
        SteadyForce.of("partner", newton(40), new Vector3D(1, 1.2, -0.5)).on(Site.CHEST),
        SteadyForce.of("partner", newton(40), ahead).on(Site.HAND, Side.RIGHT),
        SteadyForce.of("fixed handle", newton(90), new Vector3D(0.3, 0, 0)),
        Worn.vest(kg(15)),
        Worn.belt(kg(6)));
  }

  /** Straight legs, arms hanging, the left one raised forward by so much and out by half of it. */
  private static Pose standing(double degrees) {
    double leg = BODY.links().thigh() + BODY.links().shank();
    double up = BODY.links().footHeight() + leg;
    double raised = Math.toRadians(degrees);
    return Pose.neutral(BODY.tree())
        .rootAt(new Vector3D(0, up, 0), Frame.WORLD)
        .with(JointId.SHOULDER.on(Side.LEFT), raised, raised / 2, 0)
        .with(JointId.ELBOW.on(Side.RIGHT), raised, 0);
  }

  private static Position on(Pose pose, Load load) {
    return Position.of(
        "standing", BODY, pose, List.of(load), List.of(new Floor(BODY)), List.of(), List.of());
  }

  private static Position hinged(double share, Load load) {
    return Hinge.of(LIFTER)
        .holding(Barbell.of(kg(20)))
        .hipHeight(cm(72 + 6 * share))
        .barHeight(cm(30 + 12 * share))
        .start()
        .without("bar")
        .with(load);
  }

  static List<Position> still() {
    List<Position> all = new ArrayList<>();
    for (Load load : loads()) {
      all.add(on(standing(40), load));
      all.add(hinged(0.5, load));
    }
    return all;
  }

  /** A cable from behind that no standing lifter holds with 40 kg on it. */
  static Position pulledOver() {
    return on(standing(40), Cable.of(kg(40), new Vector3D(-1.5, 1.4, 0)));
  }

  /** Gaining speed and losing it again. */
  static List<Position> moving() {
    List<Position> all = new ArrayList<>();
    Course raise = Course.between(standing(20), standing(70));
    Tempo tempo = Tempo.smooth(seconds(1.5));
    for (Load load : loads()) {
      Movement lift = Movement.along("raise", tempo, raise, pose -> on(pose, load));
      Movement hinge = Movement.of("hinge", tempo, share -> hinged(share, load));
      for (double time : new double[] {0.3, 1.1}) {
        all.add(lift.at(seconds(time)));
        all.add(hinge.at(seconds(time)));
      }
    }
    return all;
  }
}
