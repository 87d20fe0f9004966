package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Planks on props: pushes that can be worked out with a pencil. */
class SolversByHandTest {

  /** A prop that pushes up: force, and moment about the plank's end. */
  private static double[] prop(double at) {
    return new double[] {0, 1, 0, 0, 0, at};
  }

  private static double[] weight(double at) {
    return new double[] {0, 1, 0, 0, 0, at};
  }

  private static double[][] same(int n) {
    double[][] h = new double[n][n];
    for (int i = 0; i < n; i++) {
      h[i][i] = 1;
    }
    return h;
  }

  private static double[] least(double[][] h, double[] g, double[][] props, double[] b) {
    NonNegative.Answer start = NonNegative.of(props, b);
    assertThat(start.held()).isTrue();
    return LeastEffort.of(h, g, props, b, start.x());
  }

  @Test
  void two_props_share_a_weight_by_the_lever_law() {
    double[][] props = {prop(0), prop(1)};
    NonNegative.Answer answer = NonNegative.of(props, weight(0.25));
    assertThat(answer.held()).isTrue();
    assertThat(answer.x()).containsExactly(new double[] {0.75, 0.25}, within(1e-14));
  }

  @Test
  void a_weight_beyond_the_last_prop_lacks_the_shortest_remainder() {
    // One prop pushes p: (1 - p)² + (1.5 - p)² is least at 1.25, and leaves the root of 1/8.
    NonNegative.Answer answer = NonNegative.of(new double[][] {prop(0), prop(1)}, weight(1.5));
    assertThat(answer.held()).isFalse();
    assertThat(answer.x()).containsExactly(new double[] {0, 1.25}, within(1e-14));
    assertThat(answer.lack()).isCloseTo(Math.sqrt(0.125), within(1e-14));
    assertThat(answer.remainder()[1]).isCloseTo(-0.25, within(1e-14));
    assertThat(answer.remainder()[5]).isCloseTo(0.25, within(1e-14));
  }

  @Test
  void props_that_push_the_wrong_way_do_nothing() {
    NonNegative.Answer answer =
        NonNegative.of(new double[][] {prop(0), prop(1)}, new double[] {0, -1, 0, 0, 0, -0.5});
    assertThat(answer.x()).containsExactly(0, 0);
    assertThat(answer.lack()).isCloseTo(Math.sqrt(1.25), within(1e-14));
  }

  @Test
  void a_prop_that_was_tried_first_is_let_go_when_others_do_better() {
    // The middle prop is steepest at first; with props of ten times the arm outside it must go.
    double[][] props = {prop(-1), {0, 1.2, 0, 0, 0, 0.3}, prop(1)};
    NonNegative.Answer answer = NonNegative.of(props, weight(-1));
    assertThat(answer.held()).isTrue();
    assertThat(answer.x()).containsExactly(new double[] {1, 0, 0}, within(1e-13));
  }

  @Test
  void three_alike_props_under_a_centred_weight_push_alike() {
    double[][] props = {prop(0), prop(0.5), prop(1)};
    double third = 1 / 3.0;
    assertThat(least(same(3), new double[3], props, weight(0.5)))
        .containsExactly(new double[] {third, third, third}, within(1e-12));
  }

  @Test
  void a_prop_that_costs_twice_as_much_pushes_half_as_much() {
    // a, b, a with 2a + b = 1: least of 2a² + 2b² is at a = 2b.
    double[][] h = same(3);
    h[1][1] = 2;
    assertThat(least(h, new double[3], new double[][] {prop(0), prop(0.5), prop(1)}, weight(0.5)))
        .containsExactly(new double[] {0.4, 0.2, 0.4}, within(1e-12));
  }

  @Test
  void a_prop_that_eases_the_rest_takes_all_and_none_of_the_others_pulls() {
    // With gain 2 for the middle one the outer ones would have to pull: they rest at zero instead.
    double[][] props = {prop(0), prop(0.5), prop(1)};
    assertThat(least(same(3), new double[] {0, 2, 0}, props, weight(0.5)))
        .containsExactly(new double[] {0, 1, 0}, within(1e-12));
    // With gain 0.3, from -0.3 = 4 (a - b) ... : 2a + b = 1, a = b - 0.3, so b = 1.6 / 3.
    assertThat(least(same(3), new double[] {0, 0.3, 0}, props, weight(0.5)))
        .containsExactly(new double[] {0.7 / 3, 1.6 / 3, 0.7 / 3}, within(1e-12));
  }

  @Test
  void a_weight_off_centre_leans_the_shares_as_a_straight_line_does() {
    // Least squares under two conditions is a straight line over the places: c + d x.
    double[][] props = {prop(0), prop(1), prop(2), prop(3)};
    // Sum 4c + 6d = 1, moment 6c + 14d = 1.75: d = 0.05, c = 0.175.
    assertThat(least(same(4), new double[4], props, weight(1.75)))
        .containsExactly(new double[] {0.175, 0.225, 0.275, 0.325}, within(1e-12));
    // At 2.5 the line would cut below zero at the near end: the first prop lets go.
    double[] x = least(same(4), new double[4], props, weight(2.5));
    assertThat(x[0]).isZero();
    // 3c + 6d = 1, 6c + 14d = 2.5: d = 0.25, c = -1/6, so 1/12, 1/3, 7/12.
    assertThat(x).containsExactly(new double[] {0, 1 / 12.0, 1 / 3.0, 7 / 12.0}, within(1e-12));
  }

  @Test
  void props_that_are_coupled_share_by_what_they_cost_together() {
    // Cost (a + b)²/2 + c²/2 + small: a joint loaded by both outer props. By symmetry a = b; of
    // 2a² + c²/2 with 2a + c = 1 the least is at 4a = 2c: a = 1/4, c = 1/2.
    double[][] h = {{1 + 1e-9, 0, 1}, {0, 1, 0}, {1, 0, 1 + 1e-9}};
    assertThat(least(h, new double[3], new double[][] {prop(0), prop(0.5), prop(1)}, weight(0.5)))
        .containsExactly(new double[] {0.25, 0.5, 0.25}, within(1e-8));
  }
}
