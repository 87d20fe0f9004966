package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leverbook.desk.Desk;
import org.leverbook.language.Leaving;

/** Input that no person types. */
class PipedInputTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void start() {
    Leaving.forget();
  }

  private boolean run(String lines) {
    Voice voice = new Voice(new PrintWriter(out), new PrintWriter(err), Voice.Manner.PLAIN);
    try (Desk desk = Desk.open()) {
      return new PipedInput(desk, new BufferedReader(new StringReader(lines)), voice).run();
    }
  }

  @Test
  void values_come_out_without_prompt_echo_or_greeting() {
    assertThat(run("1+1\nint f() {\n  return 3;\n}\n\nf()\nkg(85)")).isTrue();

    assertThat(out.toString().lines()).containsExactly("2", "3", "85 kg");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void a_failing_input_is_told_with_its_line_and_the_next_is_read() {
    assertThat(run("1+1\nint f() {\n  return hing();\n}\nhing()\n2+2\n")).isFalse();

    assertThat(out.toString().lines())
        .containsExactly("2", "f needs method hing(), which is not there yet.", "4");
    assertThat(err.toString().lines())
        .containsExactly(
            "input line 5: There is no word \"hing\": did you mean hinge()?", "hing()", "^");
  }

  @Test
  void an_input_cut_off_at_the_end_is_an_error() {
    assertThat(run("1+1\nMath.max(1,\n")).isFalse();

    assertThat(err.toString())
        .contains("input line 2: The bracket ( opened at line 1, column 9 is never");
  }

  @Test
  void quit_leaves_what_follows_unread() {
    assertThat(run("1+1\nquit()\nnonsense\n")).isTrue();

    assertThat(out.toString().lines()).containsExactly("2");
  }
}
