package org.leverbook.statics;

import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;
import static org.leverbook.quantity.Units.seconds;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.BenchPress;
import org.leverbook.lift.Hinge;
import org.leverbook.lift.LatPulldown;
import org.leverbook.load.Barbell;
import org.leverbook.load.HandWeights;
import org.leverbook.load.Sled;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.support.FixedBar;
import org.leverbook.support.Pad;

/** Ways from 0 to 1 of a lifter on pads, benches, seats, plates and bars. */
public final class SupportedMovements {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));

  private SupportedMovements() {}

  /**
   * All of them.
   *
   * @return by name
   */
  public static Map<String, DoubleFunction<Position>> all() {
    Hinge pull = Hinge.of(LIFTER).holding(Barbell.of(kg(60)));
    BenchPress press = BenchPress.of(LIFTER);
    LatPulldown down = LatPulldown.of(LIFTER);
    Map<String, DoubleFunction<Position>> ways = new LinkedHashMap<>();
    ways.put("chest pad", s -> pull.hipHeight(cm(66 + 4 * s)).start().on(Pad.chest(deg(30))));
    ways.put("bench", s -> press.at(percent(100 * (1 - s))));
    ways.put("seat and thigh pad", s -> down.at(percent(100 * s)));
    ways.put(
        "fixed bar in the hands",
        s -> pull.hipHeight(cm(66 + 4 * s)).start().without("bar").on(new FixedBar()));
    ways.put("feet on a foot plate", SupportedMovements::onFootPlate);
    ways.put("sled", SupportedMovements::onSled);
    return ways;
  }

  /**
   * Each a third of the way through a smooth second and a half.
   *
   * @return with inertia
   */
  public static List<Position> moving() {
    return all().entrySet().stream()
        .map(w -> Movement.of(w.getKey(), Tempo.smooth(seconds(1.5)), w.getValue()))
        .map(m -> m.at(seconds(0.5)))
        .toList();
  }

  /** Leaning back with level shanks, soles against an upright plate, raising two dumbbells. */
  private static Position onFootPlate(double share) {
    Body body = LIFTER.body();
    Pose pose = reclined(body, 60, 0);
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose = pose.with(JointId.SHOULDER.on(side), Math.toRadians(20 + 60 * share), 0, 0);
    }
    return Position.of(
        "foot plate",
        body,
        pose,
        List.of(HandWeights.pair("dumbbell", kg(8))),
        List.of(Pad.seat(), Pad.back(deg(50)), Pad.footPlate(deg(90))),
        List.of(),
        List.of());
  }

  private static Position onSled(double share) {
    Body body = LIFTER.body();
    return Position.of(
        "sled",
        body,
        reclined(body, 90 - 30 * share, 45),
        List.of(Sled.of(kg(100), deg(45))),
        List.of(Pad.seat().friction(0.8), Pad.back(deg(50)).friction(0.8)),
        List.of(),
        List.of());
  }

  /** Hips half a metre up, trunk leaned back 40 degrees, shanks so many degrees above level. */
  private static Pose reclined(Body body, double knees, double shanks) {
    double lean = Math.toRadians(-40);
    double hip = Math.toRadians(knees + 90 + shanks) + lean;
    Pose pose =
        Pose.neutral(body.tree()).rootAt(new Vector3D(0, 0.5, 0), Frame.leanedForward(lean));
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose =
          pose.with(JointId.HIP.on(side), hip, 0, 0)
              .with(JointId.KNEE.on(side), Math.toRadians(knees), 0, 0);
    }
    return pose;
  }
}
