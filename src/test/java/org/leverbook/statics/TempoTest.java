package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.seconds;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leverbook.quantity.Refused;

/** When a movement is where. */
class TempoTest {

  private static final List<Tempo> TEMPI =
      List.of(
          Tempo.smooth(seconds(1.6)),
          Tempo.steady(seconds(2)),
          Tempo.accelerating(seconds(1.2), 0, 3, 4, 1, -2, -3, -2.5, 0));

  @Test
  void every_tempo_goes_from_start_to_end_and_its_derivatives_are_those_of_its_share() {
    double step = 1e-5;
    for (Tempo tempo : TEMPI) {
      assertThat(tempo.at(0).share()).isZero();
      assertThat(tempo.at(tempo.seconds()).share()).isCloseTo(1, within(1e-12));
      for (double t = 0.1; t < tempo.seconds() - 0.1; t += 0.0931) {
        Tempo.Instant before = tempo.at(t - step);
        Tempo.Instant now = tempo.at(t);
        Tempo.Instant after = tempo.at(t + step);
        // Central differences: their error falls with the step squared, 1e-10 times the jerk.
        assertThat((after.share() - before.share()) / 2 / step)
            .isCloseTo(now.speed(), within(1e-7));
        assertThat((after.speed() - before.speed()) / 2 / step)
            .isCloseTo(now.acceleration(), within(2e-4));
      }
    }
  }

  @Test
  void a_smooth_tempo_starts_and_stops_without_speed_or_acceleration() {
    Tempo tempo = Tempo.smooth(seconds(1.6));
    assertThat(tempo.at(0)).isEqualTo(new Tempo.Instant(0, 0, 0));
    Tempo.Instant end = tempo.at(1.6);
    assertThat(end.speed()).isZero();
    assertThat(end.acceleration()).isZero();
    assertThat(tempo.at(0.8).speed()).isCloseTo(1.875 / 1.6, within(1e-12));
  }

  @Test
  void given_accelerations_are_taken_in_any_unit() {
    Tempo one = Tempo.accelerating(seconds(1), 0, 2, -2, 0);
    Tempo other = Tempo.accelerating(seconds(1), 0, 2000, -2000, 0);
    assertThat(other.at(0.4).share()).isCloseTo(one.at(0.4).share(), within(1e-15));
  }

  @Test
  void accelerations_of_any_size_give_the_same_tempo() {
    Tempo one = Tempo.accelerating(seconds(1), 0, 2, -2, 0);
    for (double size : new double[] {1e-300, 1e300}) {
      Tempo other = Tempo.accelerating(seconds(1), 0, 2 * size, -2 * size, 0);
      assertThat(other.at(0.4).share()).isCloseTo(one.at(0.4).share(), within(1e-12));
    }
  }

  @Test
  void constant_accelerations_are_those_of_school() {
    // From rest with the same gain all the way: a share of t²/T², speed 2t/T².
    Tempo fall = Tempo.accelerating(seconds(2), 9.81, 9.81);
    assertThat(fall.at(1).share()).isCloseTo(0.25, within(1e-12));
    assertThat(fall.at(1).speed()).isCloseTo(0.5, within(1e-12));
    assertThat(fall.at(1).acceleration()).isCloseTo(0.5, within(1e-12));
    assertThat(fall.text()).isEqualTo("2 s, given accelerations");
    Tempo steady = Tempo.steady(seconds(4));
    assertThat(steady.at(1)).isEqualTo(new Tempo.Instant(0.25, 0.25, 0));
  }

  @Test
  void the_instant_furthest_off_the_way_is_told() {
    // Of (-1, 4) over 2 s: 3 (-u² / 2 + 5 u³ / 6) with u = t / 2 is least at u = 0.4: -0.08.
    assertThatThrownBy(() -> Tempo.accelerating(seconds(2), -1, 4))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "These accelerations leave the way: at 0.80 s the movement is at -8.0 % of it.");
    // Of (4, -5) over 1 s: (2 u² - 1.5 u³) / 0.5 is most at u = 8/9: 1.0535.
    assertThatThrownBy(() -> Tempo.accelerating(seconds(1), 4, -5))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "These accelerations leave the way: at 0.89 s the movement is at 105.3 % of it.");
  }

  @Test
  void impossible_tempi_are_refused_in_a_sentence() {
    assertThatThrownBy(() -> Tempo.smooth(seconds(0)))
        .isInstanceOf(Refused.class)
        .hasMessage("The duration is 0 s, but must lie between 0.05 and 600 s.");
    assertThatThrownBy(() -> Tempo.smooth(null))
        .isInstanceOf(Refused.class)
        .hasMessage("The duration is missing (null): give one, such as seconds(1.5).");
    assertThatThrownBy(() -> Tempo.accelerating(seconds(1), 1))
        .isInstanceOf(Refused.class)
        .hasMessage("A tempo takes two or more accelerations, all of them finite numbers.");
    assertThatThrownBy(() -> Tempo.accelerating(seconds(1), -1, -1))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "These accelerations do not lead forward: from rest they end at or behind the start."
                + " Check their sign, and take gravity out of a sensor's readings.");
    assertThatThrownBy(() -> Tempo.accelerating(seconds(1), -1, 0, 0, 40))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("These accelerations leave the way: at ");
    assertThatThrownBy(() -> Tempo.steady(seconds(2)).at(2.5))
        .isInstanceOf(Refused.class)
        .hasMessage("The movement lasts from 0 to 2 s; there is nothing at 2.5 s.");
  }
}
