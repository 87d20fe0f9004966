package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.jline.utils.AttributedString;
import org.junit.jupiter.api.Test;
import org.leverbook.display.Preferences;
import org.leverbook.session.CallHint;

/** What a call takes, in the width there is. */
class HintLinesTest {

  private static final String SWEEP =
      "Sweep sweep(String name, Quantity<Length> from, Map<String, List<Mass>> to, h -> position)";

  private static List<AttributedString> lines(CallHint hint, int columns, int most)
      throws IOException {
    var terminal =
        new LineDisciplineTerminal(
            "test", "xterm", new ByteArrayOutputStream(), StandardCharsets.UTF_8);
    Palette palette = new Palette(terminal, Map.of(), () -> Preferences.USUAL);
    return new HintLines(palette).of(hint, columns, most);
  }

  private static String marked(AttributedString line) {
    StringBuilder marked = new StringBuilder();
    for (int i = 0; i < line.length(); i++) {
      boolean underlined = line.styleAt(i).toAnsi().matches("(.*;)?4(;.*)?");
      marked.append(underlined ? line.charAt(i) : "");
    }
    return marked.toString();
  }

  @Test
  void the_parameter_at_the_cursor_is_marked_whatever_brackets_and_arrows_the_others_have()
      throws IOException {
    List<String> parameters =
        List.of(
            "String name", "Quantity<Length> from", "Map<String, List<Mass>> to", "h -> position");
    for (int i = 0; i < parameters.size(); i++) {
      AttributedString line = lines(new CallHint(List.of(SWEEP), i), 200, 4).get(0);
      assertThat(line.toString()).isEqualTo(SWEEP);
      assertThat(marked(line)).isEqualTo(parameters.get(i));
    }
    assertThat(marked(lines(new CallHint(List.of(SWEEP), 4), 200, 4).get(0))).isEmpty();
    assertThat(
            marked(
                lines(new CallHint(List.of("max(double first, double... more)"), 5), 80, 4).get(0)))
        .isEqualTo("double... more");
  }

  @Test
  void in_a_narrow_window_the_marked_parameter_stays_in_sight() throws IOException {
    for (int i = 0; i < 4; i++) {
      AttributedString line = lines(new CallHint(List.of(SWEEP), i), 40, 4).get(0);
      assertThat(line.columnLength()).isLessThanOrEqualTo(39);
      assertThat(line.toString()).contains("…");
      assertThat(marked(line)).isNotEmpty();
    }
    assertThat(lines(new CallHint(List.of(SWEEP), 3), 40, 4).get(0).toString())
        .startsWith("…")
        .endsWith("h -> position)");
  }

  @Test
  void many_forms_are_counted() throws IOException {
    List<String> forms = List.of("f(int a)", "f(int a, int b)", "f()", "f(long c)", "f(char d)");
    assertThat(lines(new CallHint(forms, 0), 80, 4))
        .extracting(AttributedString::toString)
        .containsExactly("f(int a)", "f(int a, int b)", "f()", "… and 2 more");
    assertThat(lines(new CallHint(forms, 0), 80, 1)).hasSize(1);
  }
}
