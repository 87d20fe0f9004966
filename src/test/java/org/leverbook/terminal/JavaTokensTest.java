package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.terminal.JavaTokens.Kind;

/** Java text cut for the eye. */
class JavaTokensTest {

  private static String kinds(String text) {
    StringBuilder kinds = new StringBuilder();
    for (JavaTokens.Token token : JavaTokens.of(text).tokens()) {
      if (token.kind() != Kind.OTHER && token.kind() != Kind.BRACKET) {
        kinds.append(token.kind()).append(' ').append(text, token.from(), token.to()).append('|');
      }
    }
    return kinds.toString();
  }

  @Test
  void words_numbers_texts_and_comments_are_told_apart() {
    assertThat(kinds("var a = 1.5e3 + x1.length(\"b \\\" c\") // d \"e\""))
        .isEqualTo(
            "KEYWORD var|NAME a|NUMBER 1.5e3|NAME x1|NAME length|TEXT \"b \\\" c\"|COMMENT // d \"e\"|");
    assertThat(kinds("'(' /* a\nb */ \"\"\"\nc \\\"\"\" d\"\"\""))
        .isEqualTo("TEXT '('|COMMENT /* a\nb */|TEXT \"\"\"\nc \\\"\"\" d\"\"\"|");
    assertThat(kinds("\"never closed\nreturn")).isEqualTo("TEXT \"never closed|KEYWORD return|");
    assertThat(kinds("\"\\")).isEqualTo("TEXT \"\\|");
  }

  /** The bar is the cursor; the numbers are the place of the bracket and the parameter. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "f(|; 1 0",
        "f(a, b, |; 1 2",
        "f(g(1, 2), |; 1 1",
        "f(g(1, |; 3 1",
        "f(new int[] {1, 2}, |; 1 1",
        "f(\", (\", |; 1 1",
        "f(x -> { return |; none",
        "f(\"a|; none",
        "f('a', |; 1 1",
        "(1 + |; none",
        "f() + |; none",
        "f(1 /* , */, |; 1 1",
        "f(1 // ,|; none",
        "f)(|; none"
      })
  void the_call_around_the_cursor_is_found(String marked, String expected) {
    String before = marked.substring(0, marked.indexOf('|'));
    Optional<JavaTokens.Call> call = JavaTokens.of(before).callAtEnd();

    assertThat(call.map(c -> c.open() + " " + c.parameter()).orElse("none")).isEqualTo(expected);
  }

  @Test
  void a_text_is_open_inside_brackets_comments_and_text_blocks() {
    assertThat(JavaTokens.of("f(").isOpen()).isTrue();
    assertThat(JavaTokens.of("\"\"\"\n a").isOpen()).isTrue();
    assertThat(JavaTokens.of("/* a").isOpen()).isTrue();
    assertThat(JavaTokens.of("f(\"(\")").isOpen()).isFalse();
    assertThat(JavaTokens.of("\"never closed").isOpen()).isFalse();
  }
}
