package org.leverbook.checks;

import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.Deadlift;
import org.leverbook.lift.Hinge;
import org.leverbook.lift.SumoDeadlift;
import org.leverbook.load.Barbell;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.statics.Position;

/**
 * Rows of section B on deadlifts: B04, B05 and B11 by the two deadlifts of the library, B08 and B27
 * by the hinge, B44.
 *
 * <p>Printed: stance, turn-out and hand spacing of both styles, which the two lifts take, stature
 * and mass in B27. Not printed, and taken: the adult of 80 kg and 178 cm elsewhere, a bar of 140
 * kg, the usual knees and lean of each style.
 */
final class DeadliftCases {

  private static final Person ADULT = Person.of(Sex.MALE, kg(80), cm(178));

  private static final Position CONVENTIONAL =
      Deadlift.of(ADULT).holding(Barbell.of(kg(140))).start();

  private static final Position SUMO = SumoDeadlift.of(ADULT).holding(Barbell.of(kg(140))).start();

  /** Stance, turn-out and hand spacing as B04 prints them. */
  private static final Hinge FROM_THE_FLOOR =
      Hinge.of(ADULT)
          .holding(Barbell.of(kg(70)))
          .stance(cm(32), deg(14))
          .gripWidth(cm(55))
          .kneeBend(deg(65));

  /** Knees a little bent, the bar hanging below the knee: how deep is not printed. */
  private static final Hinge ROMANIAN =
      Hinge.of(ADULT).holding(Barbell.of(kg(70))).kneeBend(deg(15)).barHeight(cm(40));

  private DeadliftCases() {}

  static Map<String, DoubleSupplier> rows() {
    Map<String, DoubleSupplier> rows = new LinkedHashMap<>();
    rows.put("B04b", DeadliftCases::usualStance);
    rows.put("B04d", DeadliftCases::usualTurnOut);
    rows.put("B04f", DeadliftCases::usualGrip);
    rows.put("B04g", () -> trunkLean(CONVENTIONAL) - trunkLean(SUMO));
    rows.put("B04h", () -> thighAboveLevel(CONVENTIONAL) - thighAboveLevel(SUMO));
    rows.put("B04i", () -> 1 / sumoTravel());
    rows.put("B05c", DeadliftCases::sumoTravel);
    rows.put("B05d", () -> -sign(SUMO, JointId.ANKLE));
    rows.put("B05e", () -> -sign(CONVENTIONAL, JointId.ANKLE));
    rows.put("B05f", () -> sign(SUMO, JointId.KNEE));
    rows.put("B08a", () -> sign(FROM_THE_FLOOR.start(), JointId.KNEE));
    rows.put("B08b", () -> sign(ROMANIAN.start(), JointId.KNEE));
    rows.put("B08c", DeadliftCases::ankleToRomanian);
    rows.put("B11a", () -> yes(hipCarriesMost()));
    rows.put("B11b", () -> yes(barFurthestFromHip()));
    rows.put("B11c", () -> yes(ankleBearsMost()));
    rows.put("B27a", DeadliftCases::tallLifter);
    rows.put("B44", DeadliftCases::sumoTravel);
    return rows;
  }

  static double yes(boolean so) {
    return so ? 1 : 0;
  }

  private static Placement usual() {
    return Hinge.of(ADULT).holding(Barbell.of(kg(140))).start().placement();
  }

  /** Distance between the ankles where the coach says nothing, metres. */
  private static double usualStance() {
    return 2 * usual().centre(JointId.ANKLE.on(Side.RIGHT)).getZ();
  }

  private static double usualTurnOut() {
    Placement where = usual();
    Vector3D forward = where.frame(where.tree().distalOf(JointId.ANKLE.on(Side.RIGHT))).x();
    return Math.toDegrees(Math.atan2(forward.getZ(), forward.getX()));
  }

  private static double usualGrip() {
    return 2 * usual().centre(JointId.GRIP.on(Side.RIGHT)).getZ();
  }

  private static double trunkLean(Position start) {
    return start.fact("trunk lean");
  }

  /** Angle of the line from knee to hip with the level, degrees, in space. */
  private static double thighAboveLevel(Position start) {
    Placement where = start.placement();
    Vector3D thigh =
        where
            .centre(JointId.HIP.on(Side.RIGHT))
            .subtract(where.centre(JointId.KNEE.on(Side.RIGHT)));
    return Math.toDegrees(Math.asin(thigh.getY() / thigh.getNorm()));
  }

  /** Plus where the resistance tends to flex: extensors, plantarflexors oppose. */
  private static double sign(Position start, JointId joint) {
    return Math.signum(start.moment(joint).about("flexion"));
  }

  private static double ankleToRomanian() {
    double conventional = FROM_THE_FLOOR.start().moment(JointId.ANKLE).size();
    return conventional / ROMANIAN.start().moment(JointId.ANKLE).size();
  }

  /** From the floor to straight knees and hips: how far the bar rises, sumo over conventional. */
  private static double sumoTravel() {
    return travel(0.70, 0.47) / travel(0.32, 0.55);
  }

  private static double travel(double stance, double grip) {
    Body body = ADULT.body();
    double legs = body.links().thigh() + body.links().shank();
    double hip =
        body.links().footHeight()
            + Math.sqrt(legs * legs - square(stance / 2 - body.links().hipHalfWidth()));
    Pose upright = Pose.neutral(body.tree()).rootAt(new Vector3D(0, hip, 0), Frame.WORLD);
    Vector3D shoulder = upright.placed().centre(JointId.SHOULDER.on(Side.RIGHT));
    double reach = body.links().reach();
    double bar = shoulder.getY() - Math.sqrt(reach * reach - square(grip / 2 - shoulder.getZ()));
    return bar - Barbell.STANDARD_PLATE_RADIUS;
  }

  private static double square(double value) {
    return value * value;
  }

  private static boolean hipCarriesMost() {
    Position start = CONVENTIONAL;
    double hip = start.moment(JointId.HIP).size();
    return hip > start.moment(JointId.KNEE).size() && hip > start.moment(JointId.ANKLE).size();
  }

  private static boolean barFurthestFromHip() {
    Position start = CONVENTIONAL;
    double hip = start.moment(JointId.HIP).arm();
    return hip > start.moment(JointId.KNEE).arm() && hip > start.moment(JointId.ANKLE).arm();
  }

  private static boolean ankleBearsMost() {
    Position start = CONVENTIONAL;
    List<Double> pushes =
        List.of(JointId.ANKLE, JointId.KNEE, JointId.HIP).stream()
            .map(joint -> Math.abs(start.moment(joint).force().getY()))
            .toList();
    return pushes.get(0) > pushes.get(1) && pushes.get(1) > pushes.get(2);
  }

  /** One man of 1.82 m and 98.8 kg with 68 kg at lift-off: newton metres at L5/S1. */
  private static double tallLifter() {
    return Hinge.of(Person.of(Sex.MALE, kg(98.8), cm(182)))
        .holding(Barbell.of(kg(68)))
        .start()
        .moment(JointId.L5_S1)
        .size();
  }
}
