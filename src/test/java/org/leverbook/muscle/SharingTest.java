package org.leverbook.muscle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Moments shared among muscles: against answers by hand, the optimum's conditions, a judge. */
class SharingTest {

  /** A random body of bodies: muscles that cross one to four of the axes, either way round. */
  static final class Case {

    final int axes;
    final int muscles;
    final double[] moments;
    final double[] needed;

    Case(Random random, int axes, int muscles, double effort) {
      this.axes = axes;
      this.muscles = muscles;
      moments = new double[axes * muscles];
      for (int i = 0; i < muscles; i++) {
        int crossed = 1 + random.nextInt(Math.min(4, axes));
        for (int n = 0; n < crossed; n++) {
          double arm = 0.01 + 0.05 * random.nextDouble();
          double force = 100 + 2000 * random.nextDouble();
          moments[random.nextInt(axes) * muscles + i] =
              (random.nextBoolean() ? 1 : -1) * arm * force;
        }
      }
      double[] pulls = new double[muscles];
      for (int i = 0; i < muscles; i++) {
        pulls[i] = random.nextInt(3) == 0 ? 0 : random.nextDouble();
      }
      needed = given(pulls);
      for (int k = 0; k < axes; k++) {
        needed[k] *= effort;
      }
    }

    double[] given(double[] pulls) {
      double[] sum = new double[axes];
      for (int k = 0; k < axes; k++) {
        for (int i = 0; i < muscles; i++) {
          sum[k] += moments[k * muscles + i] * pulls[i];
        }
      }
      return sum;
    }

    double scale(int axis) {
      double sum = 0;
      for (int i = 0; i < muscles; i++) {
        sum += Math.pow(moments[axis * muscles + i], 2);
      }
      return sum == 0 ? 1 : Math.sqrt(sum);
    }
  }

  private static double[] pulls(Sharing sharing, int muscles) {
    return IntStream.range(0, muscles).mapToDouble(sharing::pullOf).toArray();
  }

  @Test
  void two_flexors_share_as_the_published_example_prints() {
    // Case A41: 1000 and 500 N at 50 and 40 mm against 25 N·m; the answer is in closed form.
    Sharing sharing = new Sharing(1, 2, 2);
    sharing.solve(new double[] {50, 20}, new double[] {25});
    double k = 25 / (50.0 * 50 + 20.0 * 20);
    assertThat(1000 * sharing.pullOf(0))
        .isCloseTo(1000 * 50 * k, within(1e-6))
        .isBetween(430.168, 431.892);
    assertThat(500 * sharing.pullOf(1))
        .isCloseTo(500 * 20 * k, within(1e-6))
        .isBetween(86.0346, 86.3794);
    assertThat(sharing.uncovered(0)).isCloseTo(0, within(1e-7));
  }

  @Test
  void cubed_stress_shares_by_the_root_of_what_each_gives() {
    Sharing sharing = new Sharing(1, 2, 3);
    sharing.solve(new double[] {50, 20}, new double[] {25});
    // 3 a² + 0.002 a = m v for both muscles, with 50 a + 20 b = 25: by bisection.
    double low = 0;
    double high = 10;
    for (int n = 0; n < 200; n++) {
      double v = (low + high) / 2;
      if (50 * root(50 * v) + 20 * root(20 * v) > 25) {
        high = v;
      } else {
        low = v;
      }
    }
    assertThat(sharing.pullOf(0)).isCloseTo(root(50 * low), within(1e-8));
    assertThat(sharing.pullOf(1)).isCloseTo(root(20 * low), within(1e-8));
    // Without the added 0.001 a² the pulls would be as the square roots: 1 to 0.632.
    assertThat(sharing.pullOf(1) / sharing.pullOf(0)).isCloseTo(Math.sqrt(0.4), within(1e-3));
  }

  private static double root(double worth) {
    return (-1e-3 + Math.sqrt(1e-6 + 3 * worth)) / 3;
  }

  @Test
  void a_muscle_at_its_limit_leaves_the_rest_to_the_other() {
    Sharing sharing = new Sharing(1, 2, 2);
    sharing.solve(new double[] {50, 20}, new double[] {65});
    assertThat(sharing.pullOf(0)).isEqualTo(1);
    assertThat(sharing.pullOf(1)).isCloseTo(0.75, within(1e-9));
  }

  @Test
  void what_no_muscle_can_hold_is_told_and_an_antagonist_stays_slack() {
    Sharing sharing = new Sharing(1, 3, 2);
    sharing.solve(new double[] {50, 20, -30}, new double[] {108});
    assertThat(sharing.uncovered(0)).isCloseTo(38, within(1e-6));
    assertThat(pulls(sharing, 3)).containsExactly(1, 1, 0);
    sharing.solve(new double[] {50, 20, 0}, new double[] {-40});
    assertThat(sharing.uncovered(0)).isCloseTo(-40, within(1e-6));
    assertThat(pulls(sharing, 3)).containsOnly(0);
  }

  @Test
  void a_two_joint_muscle_that_helps_at_one_joint_is_paid_for_at_the_other() {
    // Muscle 0 extends the hip (+60) and flexes the knee (-30); muscle 1 extends the knee (+100).
    // By hand: a0 = 30/60 = 0.5, so a1 = 0.15 although the knee asks for nothing.
    Sharing sharing = new Sharing(2, 2, 2);
    sharing.solve(new double[] {60, 0, -30, 100}, new double[] {30, 0});
    assertThat(sharing.pullOf(0)).isCloseTo(0.5, within(1e-9));
    assertThat(sharing.pullOf(1)).isCloseTo(0.15, within(1e-9));
  }

  @Test
  void an_axis_without_muscles_keeps_all_it_needs() {
    Sharing sharing = new Sharing(2, 1, 2);
    sharing.solve(new double[] {0, 50}, new double[] {7, 25});
    assertThat(sharing.uncovered(0)).isCloseTo(7, within(1e-6));
    assertThat(sharing.pullOf(0)).isCloseTo(0.5, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3})
  void every_random_body_is_held_at_the_least_stress_and_tells_what_is_left(int power) {
    Random random = new Random(411);
    int most = 0;
    int lacking = 0;
    for (int round = 0; round < 20_000; round++) {
      // Half of them can be held for sure, the others are asked half as much again.
      double effort = round % 2 == 0 ? 1 : 1.5;
      Case one = new Case(random, 1 + random.nextInt(20), 5 + random.nextInt(60), effort);
      Sharing sharing = new Sharing(one.axes, one.muscles, power);
      sharing.solve(one.moments, one.needed);
      most = Math.max(most, sharing.steps());
      double[] given = one.given(pulls(sharing, one.muscles));
      boolean lacks = false;
      for (int k = 0; k < one.axes; k++) {
        double size = one.scale(k);
        // What is given and what is uncovered add up to what is needed, to rounding.
        assertThat((given[k] + sharing.uncovered(k) - one.needed[k]) / size)
            .as("case %d", round)
            .isCloseTo(0, within(1e-8));
        // Uncovered is what exceeds the price of leaving it: nothing below, all above.
        double price = sharing.price(k) * size;
        double beyond = Math.max(0, Math.abs(price) - Sharing.DEAR);
        assertThat(sharing.uncovered(k) / size)
            .as("case %d", round)
            .isCloseTo(Math.copySign(beyond, price), within(1e-7));
        lacks |= beyond > 1e-3;
      }
      lacking += lacks ? 1 : 0;
      assertThat(worst(one, sharing, power)).as("case %d", round).isLessThan(1e-6);
    }
    assertThat(lacking).isBetween(2_000, 12_000);
    assertThat(most).as("systems of equations for one answer").isLessThan(200);
  }

  @Test
  void a_body_with_muscles_to_spare_leaves_nothing_uncovered() {
    Random random = new Random(412);
    for (int round = 0; round < 2_000; round++) {
      Case one = new Case(random, 1 + random.nextInt(15), 50, 0.5);
      Sharing sharing = new Sharing(one.axes, one.muscles, 2);
      sharing.solve(one.moments, one.needed);
      for (int k = 0; k < one.axes; k++) {
        assertThat(sharing.uncovered(k) / one.scale(k)).isCloseTo(0, within(1e-7));
      }
    }
  }

  @Test
  void what_else_holds_an_axis_takes_a_part_at_its_price() {
    Sharing sharing = new Sharing(1, 1, 2);
    sharing.soften(0, 4);
    sharing.solve(new double[] {50}, new double[] {50 * 0.75});
    // With one muscle its size is the axis': 2 a = v, a + v / 4 = 0.75, so a = 0.5.
    assertThat(sharing.pullOf(0)).isCloseTo(0.5, within(1e-9));
    assertThat(sharing.uncovered(0)).isCloseTo(12.5, within(1e-7));
  }

  @Test
  void stretched_tissue_is_used_before_muscles_tire() {
    // Tissue costs a thousandth: of two equal pulls it gives a thousand times as much.
    Sharing sharing = new Sharing(1, 2, 2);
    sharing.cheapen(1, 1e-3);
    sharing.solve(new double[] {50, 50}, new double[] {40.04});
    assertThat(sharing.pullOf(1)).isCloseTo(0.8, within(1e-9));
    assertThat(sharing.pullOf(0)).isCloseTo(0.0008, within(1e-9));
  }

  /**
   * How far an answer is from the conditions of Karush, Kuhn and Tucker: a muscle's slope of stress
   * equals the worth of what it gives, unless it is slack and worth less, or full and worth more.
   */
  private static double worst(Case one, Sharing sharing, int power) {
    double worst = 0;
    for (int i = 0; i < one.muscles; i++) {
      double worth = 0;
      for (int k = 0; k < one.axes; k++) {
        worth += one.moments[k * one.muscles + i] * sharing.price(k);
      }
      double a = sharing.pullOf(i);
      double lacks = worth - (power == 2 ? 2 * a : 3 * a * a + 2e-3 * a);
      worst = Math.max(worst, a == 0 ? lacks : a == 1 ? -lacks : Math.abs(lacks));
    }
    return worst;
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 3})
  void the_last_answer_as_a_start_changes_nothing(int power) {
    Random random = new Random(413);
    Case one = new Case(random, 12, 50, 1);
    Sharing warm = new Sharing(one.axes, one.muscles, power);
    for (int round = 0; round < 300; round++) {
      for (int k = 0; k < one.axes; k++) {
        one.needed[k] += 0.02 * one.scale(k) * random.nextGaussian();
      }
      warm.solve(one.moments, one.needed);
      Sharing cold = new Sharing(one.axes, one.muscles, power);
      cold.solve(one.moments, one.needed);
      assertThat(pulls(warm, one.muscles)).containsExactly(pulls(cold, one.muscles), within(1e-7));
      assertThat(warm.steps()).isLessThanOrEqualTo(cold.steps() + 20);
    }
  }

  @Test
  void an_independent_solver_finds_no_less_stress() {
    Random random = new Random(414);
    Case[] cases = new Case[600];
    for (int n = 0; n < cases.length; n++) {
      cases[n] = new Case(random, 1 + random.nextInt(15), 21 + random.nextInt(30), 1);
    }
    long judged =
        IntStream.range(0, cases.length).parallel().filter(n -> compared(n, cases[n])).count();
    assertThat(judged).isGreaterThanOrEqualTo(550);
  }

  /** Compares one case; false where the judge found none, or a worse one. */
  private static boolean compared(int number, Case one) {
    Sharing sharing = new Sharing(one.axes, one.muscles, 2);
    sharing.solve(one.moments, one.needed);
    Optional<double[]> judge = Judge.pulls(one.axes, one.muscles, one.moments, one.needed);
    if (judge.isEmpty()) {
      return false;
    }
    double[] theirs = judge.get();
    double least = 0;
    double ours = 0;
    for (int i = 0; i < one.muscles; i++) {
      least += theirs[i] * theirs[i];
      ours += Math.pow(sharing.pullOf(i), 2);
    }
    // The judge holds its conditions to some 1e-8. In one case of 600 it stops at a point that
    // holds
    // them but has twice the stress, and calls it optimal; the conditions above say who is right.
    double tolerance = 1e-6 * Math.max(1, least);
    assertThat(ours).as("case %d", number).isLessThanOrEqualTo(least + tolerance);
    if (ours < least - tolerance) {
      return false;
    }
    assertThat(pulls(sharing, one.muscles))
        .as("case %d", number)
        .containsExactly(theirs, within(1e-4));
    return true;
  }
}
