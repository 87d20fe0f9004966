package org.leverbook.checks;

import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.statics.Position;

/**
 * What presses inside the back, beside the one man in whose disc it was measured (C05; 70 kg, his
 * stature is taken as 174 cm), older such measurements (C06), and a study of many sizes (C17).
 */
final class DiscCases {

  private static final Person MAN = Person.of(Sex.MALE, kg(70), cm(174));

  private static final double[] MASSES = {50, 60, 70, 80, 90, 100, 110, 120};

  private DiscCases() {}

  /** The postures that somebody stood or lifted in, by the names of {@code spine_loading.csv}. */
  static Map<String, Position> positions() {
    Map<String, Position> positions = new LinkedHashMap<>();
    // Upright, arms hanging; leaned forward by 30 degrees; 20 kg at the chest, elbows at 130.
    positions.put("wilke_stand", SquatCases.hold(MAN.body(), 0, 0, 0, 0));
    positions.put("wilke_stand_flexed", SquatCases.hold(MAN.body(), 0, 30, 0, 0));
    positions.put("wilke_hold_close", SquatCases.hold(MAN.body(), 20, 0, 0, 130));
    // 20 kg with the hands 25 cm up, knees at 20 or 80 degrees.
    positions.put("wilke_lift_round", lift(20));
    positions.put("wilke_lift_squat", lift(80));
    return positions;
  }

  private static Position lift(double knees) {
    return Hinge.of(MAN).holding(Barbell.of(kg(20))).kneeBend(deg(knees)).barHeight(cm(25)).start();
  }

  static Map<String, DoubleSupplier> rows() {
    Map<String, DoubleSupplier> rows = new TreeMap<>();
    rows.put("C05c", () -> pressure("wilke_stand"));
    rows.put("C05d", () -> pressure("wilke_stand_flexed"));
    rows.put("C05h", () -> pressure("wilke_lift_round"));
    rows.put("C05i", () -> pressure("wilke_lift_squat"));
    rows.put("C05j", () -> pressure("wilke_hold_close"));
    rows.put("C05k", () -> pressure("wilke_lift_round") / pressure("wilke_stand"));
    rows.put("C05l", () -> pressure("wilke_lift_squat") / pressure("wilke_stand"));
    rows.put("C05m", () -> pressure("wilke_hold_close") / pressure("wilke_stand"));
    rows.put("C06c", DiscCases::leanedWithWeight);
    rows.put("C17a", () -> linear() ? 1 : 0);
    rows.put("C17b", () -> massMattersMore() ? 1 : 0);
    return rows;
  }

  /** Megapascals in the disc L4/L5. */
  private static double pressure(String name) {
    return positions().get(name).disc(JointId.L4_L5).pressure() / 1e6;
  }

  /** Leaned forward by 20 degrees with 10 kg in each hand, over upright without. */
  private static double leanedWithWeight() {
    return SquatCases.hold(MAN.body(), 20, 20, 0, 0).disc(JointId.L4_L5).pressure()
        / 1e6
        / pressure("wilke_stand");
  }

  private static double standing(double mass, double stature) {
    return SquatCases.hold(Person.of(Sex.MALE, kg(mass), cm(stature)).body(), 0, 0, 0, 0)
        .disc(JointId.L5_S1)
        .compression();
  }

  /**
   * Whether, standing, no mass from 50 to 120 kg is off a straight line by more than a twentieth.
   */
  private static boolean linear() {
    double first = standing(MASSES[0], 175);
    double last = standing(MASSES[MASSES.length - 1], 175);
    for (double mass : MASSES) {
      double straight =
          first + (last - first) * (mass - MASSES[0]) / (MASSES[MASSES.length - 1] - MASSES[0]);
      if (Math.abs(standing(mass, 175) / straight - 1) > 0.05) {
        return false;
      }
    }
    return true;
  }

  /** Whether the whole range of masses (50 to 120 kg) does more than that of statures. */
  private static boolean massMattersMore() {
    return standing(120, 175) - standing(50, 175) > Math.abs(standing(85, 200) - standing(85, 150));
  }
}
