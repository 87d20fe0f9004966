package org.leverbook.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole sentences, because a coach reads them whole. */
class AskTest {

  static Stream<Arguments> masses() {
    return Stream.of(
        Arguments.of(
            Units.kg(-5),
            "The body mass is -5 kg, but must lie between 30 and 300 kg. A mass cannot be negative: is the minus a"
                + " slip?"),
        Arguments.of(
            Units.kg(315),
            "The body mass is 315 kg, but must lie between 30 and 300 kg. Is it in pounds? Then write lb(315)."),
        Arguments.of(
            Units.lb(2000),
            "The body mass is 2000 lb (907.2 kg), but must lie between 30 and 300 kg."),
        Arguments.of(null, "The body mass is missing (null): give one, such as kg(85)."));
  }

  @ParameterizedTest
  @MethodSource("masses")
  void a_mass_outside_is_named_with_its_range_and_likely_cause(
      Quantity<Mass> mass, String sentence) {
    assertThatThrownBy(() -> Ask.mass("body mass", mass, 30, 300))
        .isInstanceOf(Refused.class)
        .hasMessage(sentence);
  }

  static Stream<Arguments> lengths() {
    return Stream.of(
        Arguments.of(
            Units.m(17.8),
            "The stature is 17.8 m, but must lie between 120 and 230 cm. Is a decimal point one place off?"),
        Arguments.of(
            Units.m(178),
            "The stature is 178 m, but must lie between 120 and 230 cm. Were centimetres read as metres? Then write"
                + " cm(178)."),
        Arguments.of(
            Units.cm(1.78),
            "The stature is 1.78 cm, but must lie between 120 and 230 cm. Were metres read as centimetres? Then write"
                + " m(1.78)."),
        Arguments.of(
            Units.cm(70),
            "The stature is 70 cm, but must lie between 120 and 230 cm. Were inches read as centimetres? Then write"
                + " inch(70)."),
        Arguments.of(
            Units.inch(178),
            "The stature is 178 in (452.1 cm), but must lie between 120 and 230 cm. Were centimetres read as inches? Then write"
                + " cm(178)."),
        Arguments.of(
            Units.cm(-178),
            "The stature is -178 cm, but must lie between 120 and 230 cm. A length cannot be negative: is the minus a"
                + " slip?"));
  }

  @ParameterizedTest
  @MethodSource("lengths")
  void a_length_outside_is_named_with_its_range_and_likely_cause(
      Quantity<Length> length, String sentence) {
    assertThatThrownBy(() -> Ask.length("stature", length, 1.2, 2.3))
        .isInstanceOf(Refused.class)
        .hasMessage(sentence);
  }

  @Test
  void an_angle_outside_is_named_with_its_range() {
    assertThatThrownBy(() -> Ask.angle("knee bend", Units.deg(200), 0, Math.toRadians(140)))
        .isInstanceOf(Refused.class)
        .hasMessage("The knee bend is 200°, but must lie between 0 and 140°.");
  }

  @Test
  void the_ends_of_a_range_count_as_inside() {
    assertThat(Ask.mass("body mass", Units.kg(30), 30, 300)).isEqualTo(30);
    assertThat(Ask.mass("body mass", Units.kg(300), 30, 300)).isEqualTo(300);
  }

  @Test
  void pounds_and_inches_out_of_range_are_told_in_the_units_of_the_limits_as_well() {
    assertThatThrownBy(() -> Ask.mass("barbell's mass", Units.lb(5000), 0, 600))
        .hasMessage("The barbell's mass is 5000 lb (2268 kg), but must lie between 0 and 600 kg.");
    assertThatThrownBy(() -> Ask.length("hip height", Units.inch(200), 0, 3))
        .hasMessageStartingWith(
            "The hip height is 200 in (508 cm), but must lie between 0 and 300 cm.");
  }
}
