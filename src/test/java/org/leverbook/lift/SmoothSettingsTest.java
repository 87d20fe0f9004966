package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.body.Population;
import org.leverbook.body.Sex;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;

/**
 * Every setting of every lift of the library swept about its usual value in 21 values: from one
 * value to the next no joint may jump. Everybody's search starts from a person of middle size, so
 * each value depends on itself alone and still leads smoothly to the next.
 */
class SmoothSettingsTest {

  private static final int VALUES = 21;

  /** A step above this, and four times as large as the sweep's middle one, is a jump, radians. */
  private static final double JUMP = Math.toRadians(5);

  /**
   * Of neighbours, so many may be apart: where a knee or a girdle meets the end of its range the
   * best posture turns sharply, and in a few far settings another posture becomes the better one.
   * Found: 3 of 7,000.
   */
  private static final double MAY_JUMP = 0.001;

  @Test
  void no_joint_jumps_from_one_value_of_a_setting_to_the_next() {
    int neighbours = 0;
    List<String> jumps = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      Person person = Population.person(i % 2 == 0 ? Sex.MALE : Sex.FEMALE, 5, i);
      for (Lift<?> lift : Library.of(person)) {
        for (Map.Entry<Setting, Double> usual : used(lift).entrySet()) {
          List<Double> steps = steps(lift, usual.getKey(), usual.getValue());
          neighbours += steps.size();
          double middle = median(steps);
          for (double step : steps) {
            if (step > JUMP && step > 4 * middle) {
              jumps.add(lift.name() + ", " + usual.getKey().word() + ", " + step);
            }
          }
        }
      }
    }
    assertThat(neighbours).isGreaterThan(6000);
    assertThat(jumps).hasSizeLessThan((int) (MAY_JUMP * neighbours));
  }

  private static Map<Setting, Double> used(Lift<?> lift) {
    Posture posture = new Posture(lift.setup(), 0, lift.bothSidesAlike(), List.of());
    lift.say(posture);
    return posture.used();
  }

  private static List<Double> steps(Lift<?> lift, Setting setting, double usual) {
    List<Double> steps = new ArrayList<>();
    double[] before = null;
    for (int i = 0; i < VALUES; i++) {
      double part = (i - VALUES / 2) / (double) (VALUES / 2);
      double value =
          setting.unit().equals("°")
              ? usual + Math.toRadians(15) * part
              : usual * (1 + 0.25 * part);
      double[] now = angles(lift.changed(lift.setup().said(setting, value)));
      if (before != null && now != null) {
        double largest = 0;
        for (int a = 0; a < now.length; a++) {
          largest = Math.max(largest, Math.abs(now[a] - before[a]));
        }
        steps.add(largest);
      }
      before = now;
    }
    return steps;
  }

  /** The joint angles at the start; null where nobody of that build gets there. */
  private static double[] angles(Lift<?> lift) {
    try {
      Pose pose = new Way(lift).startAnswer().pose();
      double[] angles = new double[pose.tree().angles()];
      for (int i = 0; i < angles.length; i++) {
        angles[i] = pose.angle(i);
      }
      return angles;
    } catch (Refused e) {
      return null;
    }
  }

  private static double median(List<Double> values) {
    List<Double> sorted = new ArrayList<>(values);
    Collections.sort(sorted);
    return sorted.isEmpty() ? 0 : sorted.get(sorted.size() / 2);
  }
}
