package org.leverbook.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class UnitsTest {

  /** One rounding of a double product. */
  private static final double ROUNDING = 1e-15;

  @Test
  void a_coachs_units_become_si() {
    assertThat(Si.kilograms(Units.lb(1))).isCloseTo(0.45359237, within(ROUNDING));
    assertThat(Si.metres(Units.inch(1))).isCloseTo(0.0254, within(ROUNDING));
    assertThat(Si.metres(Units.cm(58))).isCloseTo(0.58, within(ROUNDING));
    assertThat(Si.metres(Units.mm(5))).isCloseTo(0.005, within(ROUNDING));
    assertThat(Si.radians(Units.deg(180))).isCloseTo(Math.PI, within(ROUNDING));
    assertThat(Si.fraction(Units.percent(8))).isCloseTo(0.08, within(ROUNDING));
    assertThat(Units.newton(500).getValue().doubleValue()).isEqualTo(500);
  }

  static Stream<Arguments> texts() {
    return Stream.of(
        Arguments.of(Units.kg(85), "85 kg"),
        Arguments.of(Units.lb(315), "315 lb"),
        Arguments.of(Units.cm(58.5), "58.5 cm"),
        Arguments.of(Units.inch(22), "22 in"),
        Arguments.of(Units.deg(35), "35°"),
        Arguments.of(Units.percent(8), "8 %"),
        Arguments.of(Units.newton(1234567), "1234570 N"));
  }

  @ParameterizedTest
  @MethodSource("texts")
  void a_quantity_reads_as_it_was_written(Quantity<?> quantity, String text) {
    assertThat(Units.text(quantity)).isEqualTo(text);
  }

  static Stream<Arguments> words() {
    return Stream.of(
        Arguments.of("kg", (DoubleFunction<Quantity<?>>) Units::kg),
        Arguments.of("lb", (DoubleFunction<Quantity<?>>) Units::lb),
        Arguments.of("cm", (DoubleFunction<Quantity<?>>) Units::cm),
        Arguments.of("deg", (DoubleFunction<Quantity<?>>) Units::deg),
        Arguments.of("percent", (DoubleFunction<Quantity<?>>) Units::percent));
  }

  @ParameterizedTest
  @MethodSource("words")
  void no_word_takes_what_is_no_number(String word, DoubleFunction<Quantity<?>> unit) {
    for (double bad :
        new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
      assertThatThrownBy(() -> unit.apply(bad))
          .isInstanceOf(Refused.class)
          .hasMessageStartingWith(word + "(" + bad + ") is no amount: give a finite number.");
    }
  }
}
