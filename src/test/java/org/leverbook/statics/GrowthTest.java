package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class GrowthTest {

  private static final double NEAR = 1e-4;

  private static Growth.Tried held(double effort) {
    return new Growth.Tried(true, effort, Optional.empty(), "");
  }

  private static final Growth.Tried FALLS = new Growth.Tried(false, 0, Optional.empty(), "tips");

  private static Growth.Found of(DoubleUnaryOperator effort) {
    return Growth.of(k -> held(effort.applyAsDouble(k)), 0.05, NEAR);
  }

  /** The found load is held, and within the stated share of the limit. */
  @Test
  void the_limit_is_found_from_below() {
    for (double limit : new double[] {0.07, 0.9, 3, 140}) {
      assertThat(of(k -> 0.2 + 0.8 * k / limit).factor())
          .isLessThanOrEqualTo(limit)
          .isCloseTo(limit, within(NEAR * limit));
      assertThat(of(k -> Math.pow(k / limit, 3)).factor())
          .isLessThanOrEqualTo(limit)
          .isCloseTo(limit, within(NEAR * limit));
    }
  }

  @Test
  void where_supports_give_out_the_reason_is_kept() {
    Growth.Found found = Growth.of(k -> k > 2.5 ? FALLS : held(k / 10), 0.05, NEAR);
    assertThat(found.factor()).isCloseTo(2.5, within(3e-4));
    assertThat(found.limit().reason()).isEqualTo("tips");
  }

  @Test
  void a_body_that_is_too_heavy_alone_cannot_hold_even_nothing() {
    Growth.Found found = of(k -> 1.2 + k);
    assertThat(found.possible()).isFalse();
    assertThat(found.factor()).isZero();
    assertThat(found.limit().effort()).isEqualTo(1.2);
  }

  @Test
  void a_counterweight_that_is_needed_is_found_first() {
    Growth.Found found = of(k -> Math.abs(1.5 - k) + 0.2);
    assertThat(found.factor()).isCloseTo(2.3, within(1e-3));
  }

  @Test
  void what_nothing_limits_is_said_to_be_unlimited() {
    assertThat(of(k -> 0.5).unlimited()).isTrue();
  }

  @Test
  void few_tries_are_needed() {
    AtomicInteger tries = new AtomicInteger();
    Growth.of(
        k -> {
          tries.incrementAndGet();
          return held(0.1 + 0.37 * k);
        },
        0.05,
        NEAR);
    assertThat(tries).hasValueLessThan(20);
  }
}
