package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.quantity.Refused;

/** What the lifts that pull say when something cannot be. */
class PullRefusalsTest {

  private static final Person MAN = Person.of(Sex.MALE, kg(85), cm(178));

  static Stream<Arguments> refusals() {
    return Stream.of(
        refused(() -> BentOverRow.of(MAN).gripWidth(cm(180)), "grip width", "180", "131"),
        refused(() -> ChestSupportedRow.of(MAN).padAngle(deg(400)), "pad angle", "400", "100"),
        refused(
            () -> InvertedRow.of(MAN).barHeight(cm(150)).start(),
            "150 cm",
            "lower chest",
            "or less"),
        refused(
            () -> SitUp.of(MAN).kneeBend(deg(55)).start(),
            "sit-up at 0 %",
            "ankle",
            "knee bend 55"),
        refused(() -> Shrug.of(MAN).shrug(deg(60)), "shrug", "60", "40"),
        refused(() -> CableChop.of(MAN).working(Side.MIDLINE), "one side works", "LEFT or RIGHT"));
  }

  private static Arguments refused(ThrowingCallable asked, String... parts) {
    return Arguments.of(asked, parts);
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void what_cannot_be_is_refused_in_words(ThrowingCallable asked, String[] parts) {
    assertThatThrownBy(asked)
        .isInstanceOf(Refused.class)
        .satisfies(e -> assertThat(e.getMessage()).containsIgnoringCase(parts[0]))
        .satisfies(
            e -> assertThat(e.getMessage()).contains(List.of(parts).subList(1, parts.length)))
        .satisfies(e -> assertThat(e.getMessage()).matches("(?s).*[.?]"));
  }
}
