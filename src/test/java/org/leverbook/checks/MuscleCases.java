package org.leverbook.checks;

import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.BentOverRow;
import org.leverbook.lift.ChestSupportedRow;
import org.leverbook.lift.Hinge;
import org.leverbook.lift.InvertedRow;
import org.leverbook.lift.LegExtension;
import org.leverbook.lift.LegPress;
import org.leverbook.lift.Lift;
import org.leverbook.lift.SeatedCableRow;
import org.leverbook.load.Barbell;
import org.leverbook.load.Gravity;
import org.leverbook.muscle.DiscLoad;
import org.leverbook.muscle.Discs;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.statics.Position;
import org.leverbook.support.Footing;

/**
 * Rows on what presses inside and on how hard muscles work: B18, B19, B26c, B27b, B41, B45, C13,
 * C17.
 *
 * <p>Not printed, and taken: the adult of 80 kg and 178 cm, the lifts of the library with their
 * usual postures and loads, held still at seven places from start to finish.
 */
final class MuscleCases {

  private static final Person ADULT = Person.of(Sex.MALE, kg(80), cm(178));

  private MuscleCases() {}

  static Map<String, DoubleSupplier> rows() {
    Map<String, DoubleSupplier> rows = new LinkedHashMap<>();
    rows.put("B18a", () -> rowing(BentOverRow.of(ADULT)) / rowing(SeatedCableRow.of(ADULT)));
    rows.put("B18b", () -> rowing(BentOverRow.of(ADULT)) / rowing(InvertedRow.of(ADULT)));
    rows.put(
        "B18c",
        () ->
            yes(
                rowing(BentOverRow.of(ADULT))
                    > Math.max(rowing(SeatedCableRow.of(ADULT)), rowing(InvertedRow.of(ADULT)))));
    rows.put(
        "B18d",
        () ->
            yes(
                rowing(InvertedRow.of(ADULT))
                    < Math.min(rowing(SeatedCableRow.of(ADULT)), rowing(BentOverRow.of(ADULT)))));
    rows.put("B19", () -> erectors(BentOverRow.of(ADULT)) / erectors(ChestSupportedRow.of(ADULT)));
    rows.put("B26c", () -> yes(risesWithBoth()));
    rows.put("B27b", MuscleCases::tallLifter);
    rows.put("B41a", () -> yes(deepest(BackSquat.of(ADULT)) && deepest(LegPress.of(ADULT))));
    rows.put("B41b", MuscleCases::straightest);
    rows.put("B45a", MuscleCases::kneecapPeak);
    rows.put("B45b", () -> yes(kneecapPeak() < 130));
    rows.put("C13b", MuscleCases::armOut);
    rows.put("C17c", () -> yes(growsDownward()));
    return rows;
  }

  private static double yes(boolean answer) {
    return answer ? 1 : 0;
  }

  private static double[] over(Lift<?> lift, ToDoubleFunction<Position> of) {
    return DoubleStream.iterate(0, share -> share + 1)
        .limit(7)
        .map(n -> of.applyAsDouble(lift.at(percent(100 * n / 6))))
        .toArray();
  }

  private static double most(double[] values) {
    return DoubleStream.of(values).max().orElseThrow();
  }

  private static int placeOfMost(double[] values) {
    int place = 0;
    for (int i = 1; i < values.length; i++) {
      place = values[i] > values[place] ? i : place;
    }
    return place;
  }

  private static double rowing(Lift<?> row) {
    return most(over(row, position -> position.disc(JointId.L4_L5).compression()));
  }

  /** Mean stress of the spinal erectors, over the whole row. */
  private static double erectors(Lift<?> row) {
    return DoubleStream.of(
            over(
                row,
                position ->
                    position.effort().pulls().stream()
                        .filter(p -> p.strand().muscle().group().equals("spinal erectors"))
                        .mapToDouble(p -> p.stress())
                        .average()
                        .orElseThrow()))
        .average()
        .orElseThrow();
  }

  /**
   * 0, 10, 20 kg at trunk angles of 0, 15, 30 degrees, knees straight; what tips over is left out.
   */
  private static boolean risesWithBoth() {
    double[][] pressed = new double[3][3];
    for (int load = 0; load < 3; load++) {
      for (int trunk = 0; trunk < 3; trunk++) {
        Position hold = SquatCases.hold(10 * load, 15 * trunk, 0, 90);
        if (hold.held()) {
          pressed[load][trunk] = hold.disc(JointId.L4_L5).compression();
          boolean more = load == 0 || pressed[load][trunk] > pressed[load - 1][trunk];
          boolean leaned = trunk == 0 || pressed[load][trunk] > pressed[load][trunk - 1];
          if (!more || !leaned) {
            return false;
          }
        }
      }
    }
    return true;
  }

  /** Between the bones of the shoulder, empty arm straight out to the side, in body weights. */
  private static double armOut() {
    Body body = ADULT.body();
    double up = body.links().footHeight() + body.links().thigh() + body.links().shank();
    Pose pose = Pose.neutral(body.tree()).rootAt(new Vector3D(0, up, 0), Frame.WORLD);
    for (Side side : JointId.SHOULDER.sides()) {
      pose = pose.with(JointId.SHOULDER.on(side), 0, Math.toRadians(90), 0);
    }
    Position out =
        Position.of(
            "arms out", body, pose, List.of(), List.of(Footing.feet(body)), List.of(), List.of());
    return 100
        * out.boneLoad(JointId.SHOULDER, Side.RIGHT).size()
        / (body.tree().mass() * Gravity.STANDARD);
  }

  /** Whether each disc is pressed harder than the one above it in a lift from the ground. */
  private static boolean growsDownward() {
    List<DiscLoad> discs = Discs.levels().stream().map(level -> hinge(60).disc(level)).toList();
    for (int i = 1; i < discs.size(); i++) {
      if (discs.get(i).compression() >= discs.get(i - 1).compression()) {
        return false;
      }
    }
    return true;
  }

  private static Position hinge(double kilograms) {
    return Hinge.of(ADULT).holding(Barbell.of(kg(kilograms))).start();
  }

  private static double tallLifter() {
    return Hinge.of(Person.of(Sex.MALE, kg(98.8), cm(182)))
        .holding(Barbell.of(kg(68)))
        .start()
        .disc(JointId.L5_S1)
        .compression();
  }

  private static double knee(Position position) {
    return position.boneLoad(JointId.KNEE, Side.RIGHT).along();
  }

  private static double bend(Position position) {
    return Math.toDegrees(position.placement().pose().angle(JointId.KNEE, Side.RIGHT, "flexion"));
  }

  /** Whether the knee is pressed hardest within the deepest quarter of its bend. */
  private static boolean deepest(Lift<?> lift) {
    double[] bends = over(lift, MuscleCases::bend);
    double at = bends[placeOfMost(over(lift, MuscleCases::knee))];
    return at >= most(bends) - 0.25 * (most(bends) - DoubleStream.of(bends).min().orElseThrow());
  }

  private static double straightest() {
    double[] bends = over(LegExtension.of(ADULT), MuscleCases::bend);
    double at = bends[placeOfMost(over(LegExtension.of(ADULT), MuscleCases::knee))];
    double least = DoubleStream.of(bends).min().orElseThrow();
    return yes(at <= least + 0.25 * (most(bends) - least));
  }

  /** The knee bend at which the kneecap is pressed hardest on the way into a deep squat. */
  private static double kneecapPeak() {
    BackSquat squat = BackSquat.of(ADULT).depth(deg(15));
    double[] pressed =
        over(squat, position -> position.boneLoad(JointId.KNEE, Side.RIGHT).kneecap());
    return over(squat, MuscleCases::bend)[placeOfMost(pressed)];
  }
}
