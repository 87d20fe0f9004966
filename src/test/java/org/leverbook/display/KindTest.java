package org.leverbook.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Values are named as a coach would, not as Java does. */
class KindTest {

  @Test
  void a_value_is_named_with_its_article() {
    assertThat(Kind.of(3)).isEqualTo("a whole number");
    assertThat(Kind.of(2.5)).isEqualTo("a number");
    assertThat(Kind.of("hip")).isEqualTo("a text");
    assertThat(Kind.of(List.of(1))).isEqualTo("a list");
    assertThat(Kind.of(new int[2])).isEqualTo("a list");
    assertThat(Kind.of(Thread.State.NEW)).isEqualTo("a state");
  }

  @Test
  void what_has_no_name_of_its_own_gets_none() {
    UnaryOperator<String> rule = x -> x;
    assertThat(Kind.of(rule)).isEqualTo("a value of this kind");
    assertThat(Kind.of(new Object() {})).isEqualTo("a value of this kind");
  }
}
