package org.leverbook.checks;

import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleSupplier;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.strength.Capacity;
import org.leverbook.strength.Strength;

/**
 * Greatest voluntary moments of untrained adults (C16), from a table that none of Leverbook's
 * strengths was taken from.
 *
 * <p>The table's angles are read as those between the segments, so a knee at 135 degrees is bent by
 * 45; which they are is not printed. The back's 90 degrees, a seat, are the middle of the range
 * over which the low back was tested.
 */
final class StrengthCases {

  private static final Capacity MAN = Capacity.of(Person.of(Sex.MALE, kg(75), cm(175)).body());

  private static final Capacity WOMAN = Capacity.of(Person.of(Sex.FEMALE, kg(60), cm(163)).body());

  private StrengthCases() {}

  static Map<String, DoubleSupplier> rows() {
    Map<String, DoubleSupplier> rows = new TreeMap<>();
    rows.put("C16a", () -> at(MAN, JointId.SHOULDER, "flex", 90));
    rows.put("C16b", () -> at(MAN, JointId.ELBOW, "flex", 180 - 45));
    rows.put("C16c", () -> at(MAN, JointId.ELBOW, "flex", 180 - 90));
    rows.put("C16d", () -> at(MAN, JointId.ELBOW, "flex", 180 - 135));
    rows.put("C16e", () -> at(WOMAN, JointId.ELBOW, "flex", 180 - 90));
    rows.put("C16f", () -> back(MAN));
    rows.put("C16g", () -> back(WOMAN));
    rows.put("C16h", () -> at(MAN, JointId.KNEE, "extend", 180 - 45));
    rows.put("C16i", () -> at(MAN, JointId.KNEE, "extend", 180 - 90));
    rows.put("C16j", () -> at(MAN, JointId.KNEE, "extend", 180 - 135));
    rows.put("C16k", () -> at(WOMAN, JointId.KNEE, "extend", 180 - 90));
    rows.put("C16l", () -> at(MAN, JointId.ANKLE, "plantarflex", 0));
    return rows;
  }

  private static double at(Capacity who, JointId joint, String action, double degrees) {
    return who.strength(joint, action).orElseThrow().at(Math.toRadians(degrees));
  }

  private static double back(Capacity who) {
    Strength extension = who.strength(JointId.L5_S1, "extend").orElseThrow();
    return extension.at((extension.from() + extension.to()) / 2);
  }
}
