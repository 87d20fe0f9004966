package org.leverbook.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

class DisplayTest {

  @Test
  void plain_values_show_as_java_shows_them() {
    assertThat(Display.of(2).text()).isEqualTo("2");
    assertThat(Display.of(null).text()).isEqualTo("null");
    assertThat(Display.of(new int[] {1, 2}).text()).isEqualTo("[1, 2]");
    assertThat(Display.of(List.of("a", "b")).text()).isEqualTo("[a, b]");
  }

  @Test
  void a_quantity_shows_in_its_own_unit() {
    assertThat(Display.of(Units.lb(315)).text()).isEqualTo("315 lb");
  }

  @Test
  void a_value_that_cannot_show_itself_does_no_harm() {
    Object broken =
        new Object() {
          @Override
          public String toString() {
            throw new IllegalStateException("broken");
          }
        };
    assertThat(Display.of(broken).text()).contains("cannot show itself").contains("broken");
  }

  @Test
  void a_huge_value_is_cut_and_says_so() {
    String text = Display.of(Collections.nCopies(100_000, 7)).text();
    assertThat(text).hasSizeLessThan(21_000).endsWith("(300000 characters in all)");
  }

  @Test
  void what_nobody_can_draw_is_refused_in_words() {
    assertThatThrownBy(() -> Illustrator.pictureOf("a text", List.of()))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "There is no picture of a text: positions, sweeps, comparisons and their like have one, as pull.start().");
  }
}
