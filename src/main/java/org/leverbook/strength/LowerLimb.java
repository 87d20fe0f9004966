package org.leverbook.strength;

import java.util.List;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;

/**
 * The greatest moment of one leg's hip, knee and ankle against angle and speed (Anderson, Madigan
 * and Nussbaum 2007, J Biomech 40:3105-3113; parameters and equation from memory, {@code
 * torque_angle_lower.csv}).
 *
 * <p>T = C1 W H cos(C2 (q - C3)) F(v), zero where the cosine's argument leaves a quarter turn; W
 * body mass times 9.81 (N), H stature (m), q the joint's angle (rad; hip flexion, knee flexion,
 * ankle dorsiflexion positive, zero standing), v its speed (rad/s, positive where the muscles
 * shorten). F falls to 75 % at C4 and to 50 % at C5; when lengthening it is mirrored and raised by
 * C6. The passive part is left out: one of its remembered numbers gives 572 N·m.
 *
 * <p>The groups are 18 to 25, 55 to 65 and over 65 years; moments between are mixed evenly from 25
 * over 60 to 70 years (assumption).
 */
final class LowerLimb {

  private static final double GRAVITY = 9.81;

  private static final Lookup TABLE =
      new Lookup(DataTable.read("strength/torque_angle_lower.csv"), "action", "sex", "age_group");

  private static final List<String> GROUPS = List.of("18-25", "55-65", "over65");

  private static final double[] AGES = {25, 60, 70};

  private final double[][] groups = new double[GROUPS.size()][];
  private final double weightHeight;
  private final double years;

  /**
   * One motion of one person.
   *
   * @param action as in "knee_extension"
   * @param who the person; training is left to the caller
   */
  LowerLimb(String action, Who who) {
    for (int i = 0; i < groups.length; i++) {
      DataRow row = TABLE.row(action, who.letter(), GROUPS.get(i));
      groups[i] =
          new double[] {
            row.number("C1"),
            row.number("C2"),
            row.number("C3_rad"),
            row.number("C4_rad_s"),
            row.number("C5_rad_s"),
            row.number("C6_s_rad")
          };
    }
    weightHeight = who.mass() * GRAVITY * who.stature();
    years = who.condition().years();
  }

  /**
   * The greatest moment.
   *
   * @param angle radians
   * @param speed rad/s, positive where the acting muscles shorten
   * @return newton metres, zero or more
   */
  double at(double angle, double speed) {
    if (years <= AGES[0]) {
      return of(groups[0], angle, speed);
    }
    int group = years < AGES[1] ? 0 : 1;
    double part = Math.min(1, (years - AGES[group]) / (AGES[group + 1] - AGES[group]));
    return (1 - part) * of(groups[group], angle, speed)
        + part * of(groups[group + 1], angle, speed);
  }

  private double of(double[] c, double angle, double speed) {
    double bend = c[1] * (angle - c[2]);
    if (Math.abs(bend) >= Math.PI / 2) {
      return 0;
    }
    double still = c[0] * weightHeight * Math.cos(bend);
    return Math.max(0, still * factor(c, speed));
  }

  private static double factor(double[] c, double speed) {
    double both = 2 * c[3] * c[4];
    double v = Math.abs(speed);
    double shortening = (both + v * (c[4] - 3 * c[3])) / (both + v * (2 * c[4] - 4 * c[3]));
    return speed >= 0 ? shortening : shortening * (1 - c[5] * speed);
  }
}
