package org.leverbook.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The many-at-once sine and cosine against the platform's own. */
class SinesTest {

  /** A few roundings of a number near one; the platform's own is good to one. */
  private static final double ROUNDING = 5e-16;

  @Test
  void agrees_with_the_platform_for_every_angle_a_joint_can_have_and_far_beyond() {
    Random random = new Random(7);
    double[] angles = new double[200_000];
    for (int i = 0; i < angles.length; i++) {
      double reach = i % 3 == 0 ? 1e-6 : i % 3 == 1 ? 4 : 1e6;
      angles[i] = reach * (2 * random.nextDouble() - 1);
    }
    check(angles);
  }

  @Test
  void agrees_at_quarter_turns_and_at_the_seams_between_quadrants() {
    double[] angles = new double[801];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = (i - 400) * Math.PI / 4;
    }
    check(angles);
    double[] zero = {0, -0.0};
    double[] sines = new double[2];
    double[] cosines = new double[2];
    Sines.of(zero, sines, cosines, new double[2], new double[2]);
    assertThat(sines[0]).isZero();
    assertThat(sines[1]).isZero();
    assertThat(cosines).containsExactly(1, 1);
  }

  private static void check(double[] angles) {
    double[] sines = new double[angles.length];
    double[] cosines = new double[angles.length];
    Sines.of(angles, sines, cosines, new double[angles.length], new double[angles.length]);
    for (int i = 0; i < angles.length; i++) {
      assertThat(Math.abs(sines[i] - Math.sin(angles[i])))
          .as("sine of " + angles[i])
          .isLessThan(ROUNDING);
      assertThat(Math.abs(cosines[i] - Math.cos(angles[i])))
          .as("cosine of " + angles[i])
          .isLessThan(ROUNDING);
    }
  }
}
