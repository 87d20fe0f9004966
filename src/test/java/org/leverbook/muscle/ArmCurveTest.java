package org.leverbook.muscle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.quantity.Refused;

class ArmCurveTest {

  @Test
  void every_listed_arm_comes_back_at_its_own_angle() {
    int compared = 0;
    for (DataRow row : DataTable.read("muscle/moment_arms.csv").rows()) {
      if (!row.is("set", "primary")) {
        continue;
      }
      for (String muscle : row.text("applies_to").split("; *")) {
        ArmSeries series =
            ArmTable.SHIPPED.of(muscle).stream()
                .filter(s -> row.is("joint", s.joint()) && row.is("axis", s.axis()))
                .findFirst()
                .orElseThrow();
        double arm = series.curve().at(Math.toRadians(row.number("angle_deg")));
        // The curve goes through its values: rounding only.
        assertThat(arm).as(row.toString()).isCloseTo(row.number("moment_arm_m"), within(1e-12));
        compared++;
      }
    }
    assertThat(compared).isEqualTo(721);
  }

  @Test
  void between_two_values_the_arm_stays_between_them_and_turns_nowhere_else() {
    Random random = new Random(20251);
    for (int trial = 0; trial < 500; trial++) {
      int size = 2 + random.nextInt(7);
      double[] at = new double[size];
      double[] value = new double[size];
      for (int i = 0; i < size; i++) {
        at[i] = (i == 0 ? -1 : at[i - 1]) + 0.05 + random.nextDouble();
        value[i] = 0.1 * random.nextDouble() - 0.05;
      }
      ArmCurve curve = ArmCurve.through(at, value);
      for (int i = 1; i < size; i++) {
        int way = value[i] >= value[i - 1] ? 1 : -1;
        double before = value[i - 1];
        for (int k = 1; k <= 50; k++) {
          double here = curve.at(at[i - 1] + k / 50.0 * (at[i] - at[i - 1]));
          assertThat(way * (here - before)).as("trial %d", trial).isGreaterThanOrEqualTo(-1e-15);
          before = here;
        }
      }
    }
  }

  @Test
  void the_course_has_no_corner_and_holds_outside_the_table() {
    ArmCurve curve = ArmCurve.through(new double[] {0, 0.5, 1.5}, new double[] {0.02, 0.05, 0.03});
    double step = 1e-6;
    for (double angle : new double[] {0, 0.5, 1.5}) {
      double left = (curve.at(angle) - curve.at(angle - step)) / step;
      double right = (curve.at(angle + step) - curve.at(angle)) / step;
      // Slopes are compared over a millionth of a radian; the curvature there is below 1 m/rad².
      assertThat(left).isCloseTo(right, within(1e-5));
    }
    assertThat(curve.at(-3)).isEqualTo(0.02);
    assertThat(curve.at(3)).isEqualTo(0.03);
  }

  @Test
  void no_arm_is_farther_than_three_and_a_half_millimetres_from_the_straight_line() {
    double worst = 0;
    for (MuscleRow muscle : MuscleTable.SHIPPED.all()) {
      for (ArmSeries series : ArmTable.SHIPPED.of(muscle.key())) {
        worst = Math.max(worst, fromStraight(series.curve()));
      }
    }
    // The end slope of zero costs this much, most where an arm changes fast (adductor longus at the
    // hip, 21 mm in 30 degrees); such arms are themselves known to 3 to 12 mm.
    assertThat(worst).isBetween(0.0005, 0.0035);
  }

  private static double fromStraight(ArmCurve curve) {
    double worst = 0;
    List<Double> nodes = curve.angles();
    for (int i = 1; i < nodes.size(); i++) {
      for (double t = 0.1; t < 0.95; t += 0.1) {
        double straight = (1 - t) * curve.at(nodes.get(i - 1)) + t * curve.at(nodes.get(i));
        double angle = (1 - t) * nodes.get(i - 1) + t * nodes.get(i);
        worst = Math.max(worst, Math.abs(curve.at(angle) - straight));
      }
    }
    return worst;
  }

  @Test
  void angles_that_do_not_rise_are_refused() {
    assertThatThrownBy(() -> ArmCurve.through(new double[] {0, 0}, new double[] {1, 2}))
        .isInstanceOf(Refused.class)
        .hasMessage("The angles of a curve must rise, but 0.0° follows 0.0°.");
    assertThatThrownBy(() -> ArmCurve.through(new double[0], new double[0]))
        .isInstanceOf(Refused.class)
        .hasMessage("A curve needs one value for each angle, but there are 0 angles and 0 values.");
  }
}
