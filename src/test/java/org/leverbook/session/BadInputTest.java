package org.leverbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Texts that no one would type but many paste: odd characters, endless lines, towers of brackets.
 */
class BadInputTest {

  private static final Session SESSION = Session.open(Preamble.NONE);

  @AfterAll
  static void close() {
    SESSION.close();
  }

  private static Problem problem(String text) {
    return SESSION.evaluate(text).problem().orElseThrow();
  }

  private static Object value(String text) {
    Evaluation evaluation = SESSION.evaluate(text);
    assertThat(evaluation.problem()).isEmpty();
    return evaluation.value().orElseThrow().object();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\u201Cab\u201D.length()|2",
        "\u201Clifter\u2019s hip\u201D.length()|12",
        "\"a\u201D b\u00d7\".length()|5",
        "2 \u00d7 3|6",
        "7 \u2013 3|4",
        "7 \u2212 3|4",
        "8 \u00f7 4|2",
        "Math.max\uff081\uff0c 2\uff09|2",
        "1\u00a0+\u20092|3",
        "\uFEFF1 + 1|2",
        "1 + 1 // \u201Cwhy\u201D \u00d7|2",
        "/* \u201C */ 2 + 1|3"
      })
  void what_a_web_page_or_a_word_processor_made_of_code_is_read_as_it_was_meant(
      String text, int value) {
    assertThat(value(text)).isEqualTo(value);
  }

  @Test
  void a_line_as_pasted_stands_above_the_caret() {
    Problem problem = problem("var a = 1;\nhing(\u201Chip\u201D)");

    assertThat(problem.caret()).isEqualTo("hing(\u201Chip\u201D)\n^");
    assertThat(problem.line()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0000|null (U+0000)",
        "001B|escape (U+001B)",
        "001A|substitute (U+001A)",
        "000B|line tabulation (U+000B)",
        "200B|zero width space (U+200B)",
        "202E|right-to-left override (U+202E)",
        "FEFF|zero width no-break space (U+FEFF)",
        "00AD|soft hyphen (U+00AD)"
      })
  void a_character_that_cannot_be_seen_is_named_and_placed(String code, String name) {
    char unseen = (char) Integer.parseInt(code, 16);
    Evaluation evaluation = SESSION.evaluate("var ok = 1;\nvar x" + unseen + "y = 3;\nvar z = 1;");

    Problem problem = evaluation.problem().orElseThrow();
    assertThat(evaluation.unitsDone()).isEqualTo(1);
    assertThat(problem.message())
        .isEqualTo(
            "Here stands a character that cannot be seen, "
                + name
                + ": delete it, or type this line anew.");
    assertThat(problem.line()).isEqualTo(2);
    assertThat(problem.column()).isEqualTo(6);
    assertThat(problem.caret()).isEqualTo("var x\u25A1y = 3;\n     ^");
  }

  @Test
  void half_a_character_is_placed_and_in_quoted_text_let_be() {
    assertThat(problem("var x\uD83D = 3;").message())
        .isEqualTo(
            "Here stands half a character (U+D83D), as is left where text was cut or decoded wrongly:"
                + " delete it.");
    assertThat(value("\"\uD83D\".length()")).isEqualTo(1);
    assertThat(value("\"\uD83D\uDE00\".length()")).isEqualTo(2);
    assertThat(value("var h\u00fcfte = 3; h\u00fcfte")).isEqualTo(3);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "var a = 140\u00b2|The character \u00b2 cannot stand here: a square is x * x.",
        "3 \u2265 2|The character \u2265 cannot stand here: write >=.",
        "var a = 3 \u2605 2|The character \u2605 cannot stand here (black star): it belongs only into quoted"
            + " text."
      })
  void a_sign_that_is_no_code_is_named_with_what_to_type(String text, String message) {
    assertThat(problem(text).message()).isEqualTo(message);
  }

  @Test
  void windows_line_ends_and_tabs_keep_lines_and_caret() {
    Problem problem = problem("var a = 1;\r\n\tint b =\r\n\t\thing(a);\r\n");

    assertThat(problem.line()).isEqualTo(3);
    assertThat(problem.column()).isEqualTo(3);
    assertThat(problem.caret()).isEqualTo("\t\thing(a);\n\t\t^");
  }

  @Test
  void letters_that_take_two_places_or_none_push_the_caret_along() {
    assertThat(problem("\"\u6df1\" + hing").caret()).endsWith("\n \u3000    ^");
    assertThat(problem("\"e\u0301\" + hing").caret()).endsWith("\n      ^");
  }

  @Test
  void of_a_very_long_line_the_part_around_the_place_is_shown() {
    Problem problem =
        problem("var t = \"" + "x".repeat(1_000) + "\" + hing + \"" + "y".repeat(1_000) + '"');

    String[] lines = problem.caret().split("\n");
    assertThat(lines[0])
        .hasSizeLessThan(200)
        .contains("hing")
        .startsWith("\u2026")
        .endsWith("\u2026");
    assertThat(lines[0].substring(lines[1].length() - 1)).startsWith("hing");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "(",
        "[",
        "{",
        "f(",
        "-",
        "!",
        "(int)",
        "x->",
        "a.",
        "1+",
        "true?1:",
        "if(true)",
        "List<"
      })
  void a_tower_of_ten_thousand_is_refused_in_a_sentence(String piece) {
    String said =
        printed(
            () -> {
              Problem problem = problem(piece.repeat(10_000) + "1");
              assertThat(problem.message())
                  .endsWith(".")
                  .doesNotContain("StackOverflow", "Exception");
              assertThat(problem.caret().length()).isLessThan(500);
            });

    assertThat(said).isEmpty();
    assertThat(value("1 + 1")).isEqualTo(2);
  }

  @Test
  void what_a_lesson_may_hold_is_not_taken_for_a_tower() {
    assertThat(value("(".repeat(60) + "1" + ")".repeat(60))).isEqualTo(1);
    assertThat(value("1" + " + 1".repeat(200))).isEqualTo(201);
    assertThat(value("\"a\"" + ".trim()".repeat(100))).isEqualTo("a");
    assertThat(value("java.util.Arrays.asList(" + "1.5, -2, ".repeat(400) + "3).size()"))
        .isEqualTo(801);
  }

  @Test
  void a_quoted_text_that_no_class_can_hold_does_not_spoil_the_session() {
    String most = "x".repeat(65_534);
    assertThat(value('"' + most + "\".length()")).isEqualTo(65_534);
    String joined = ('"' + "x".repeat(9_000) + "\" + ").repeat(8);
    String said =
        "This quoted text is too long for the compiler, which takes 65534 bytes at most: read it from a"
            + " file.";
    for (String text :
        List.of(
            "var t = \"x" + most + "\";",
            "1 + \"\u00e9" + "\u00e9".repeat(32_768) + "\".length()",
            "var u = " + joined + "1;",
            "int f() { return \"\"\"\n" + most + "x\"\"\".length(); }",
            '"' + "x".repeat(1_000_000) + '"')) {
      assertThat(problem(text).message()).isEqualTo(said);
    }
    assertThat(value("1 + 1")).isEqualTo(2);
  }

  @Test
  void a_method_that_is_too_long_leaves_nothing_behind() {
    long before = SESSION.liveSnippets();

    assertThat(problem("int n = 0;\nvoid f() {\n" + "n = n + 1;\n".repeat(12_000) + "}").message())
        .isEqualTo("This is too long for one method: split it into several.");

    assertThat(SESSION.liveSnippets()).isEqualTo(before + 1);
    assertThat(value("1 + 1")).isEqualTo(2);
  }

  @Test
  void a_word_of_a_million_letters_is_answered_by_a_short_sentence() {
    assertThat(problem("y".repeat(1_000_000)).message())
        .isEqualTo("A word of 1000000 letters is not known here.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"String s = \"abc", "String s = \"\"\"\n  abc", "/* abc", "f(\"abc"})
  void what_is_never_closed_is_named(String text) {
    assertThat(problem(text).message()).contains("never closed").endsWith(".");
    assertThat(value("1 + 1")).isEqualTo(2);
  }

  /** Cutting one text of many lines must not look at each line again and again. */
  @Test
  void ten_times_the_lines_take_about_ten_times_as_long_to_cut() {
    cut(1_000);
    long few = cut(1_000);
    long many = cut(10_000);

    // Cutting anew at each line would take a hundred times as long; forty leaves room for the
    // machine's moods in one short measure.
    assertThat(many).isLessThan(40 * Math.max(few, 20_000_000));
  }

  private static long cut(int lines) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < lines; i++) {
      text.append("n = n + ").append(i).append("; // step\n");
    }
    var bean = ManagementFactory.getThreadMXBean();
    long begun = bean.getCurrentThreadCpuTime();
    assertThat(SESSION.completeness(text.toString())).isEqualTo(Completeness.COMPLETE);
    return bean.getCurrentThreadCpuTime() - begun;
  }

  /** What the compiler itself prints on the error stream meanwhile. */
  private static String printed(Runnable work) {
    PrintStream before = System.err;
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    System.setErr(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    try {
      work.run();
    } finally {
      System.setErr(before);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
