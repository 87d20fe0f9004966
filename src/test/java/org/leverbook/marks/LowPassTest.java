package org.leverbook.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leverbook.quantity.Refused;

/** What smoothing keeps and what it takes away. */
class LowPassTest {

  private static double[] wave(double hertz, double framesPerSecond) {
    return IntStream.range(0, 600)
        .mapToDouble(i -> Math.sin(2 * Math.PI * hertz * i / framesPerSecond))
        .toArray();
  }

  /** The share of a wave that passes, in its middle part. */
  private static double passed(double hertz, double cutOff, double framesPerSecond) {
    double[] in = wave(hertz, framesPerSecond);
    double[] out = new LowPass(cutOff, framesPerSecond).smooth(in);
    double both = 0;
    double own = 0;
    for (int i = 200; i < 400; i++) {
      both += in[i] * out[i];
      own += in[i] * in[i];
    }
    return both / own;
  }

  @Test
  void of_a_movement_at_the_cut_off_one_over_root_two_passes_without_lag() {
    // Over whole waves the product with the wave itself tells size and lag at once.
    assertThat(passed(5, 5, 50)).isEqualTo(Math.sqrt(0.5), within(1e-3));
    assertThat(passed(6, 6, 100)).isEqualTo(Math.sqrt(0.5), within(1e-3));
  }

  @Test
  void slow_movements_pass_and_fast_trembling_does_not() {
    assertThat(passed(1, 5, 50)).isEqualTo(1, within(0.002));
    assertThat(passed(15, 5, 50)).isLessThan(0.01);
  }

  @Test
  void what_stands_or_moves_evenly_is_left_as_it_is_up_to_its_ends() {
    double[] even = IntStream.range(0, 60).mapToDouble(i -> 0.3 + 0.01 * i).toArray();

    double[] smooth = new LowPass(6, 50).smooth(even);

    // The pass begins as if it had stood still, which has died away after the padding.
    for (int i = 0; i < even.length; i++) {
      assertThat(smooth[i]).isEqualTo(even[i], within(1e-6));
    }
  }

  @Test
  void a_cut_off_near_half_the_frame_rate_is_refused_with_what_would_work() {
    assertThatThrownBy(() -> new LowPass(6, 12))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "A cut-off of 6.0 Hz asks for more than 15 frames a second, but there are 12.0. Lower it"
                + " to 4.8 Hz or less, as in .smoothed(4).");
  }
}
