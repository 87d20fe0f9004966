package org.leverbook.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.display.OutputFolder;

/** A script from file to printed values, written files and the place of its error. */
class ScriptRunTest {

  @TempDir private Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @AfterEach
  void forgetFolder() {
    OutputFolder.choose(Path.of(""));
  }

  private boolean run(Path file) {
    return new ScriptRun(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8))
        .run(file);
  }

  private boolean run(String text) throws IOException {
    return run(Files.writeString(folder.resolve("lesson.jsh"), text));
  }

  private String said() {
    return out.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
  }

  private String complained() {
    return err.toString(StandardCharsets.UTF_8)
        .replace(System.lineSeparator(), "\n")
        .replace(folder + java.io.File.separator, "");
  }

  @Test
  void bare_expressions_are_printed_as_values_show_themselves() throws IOException {
    assertThat(run("// who\nvar mass = kg(85);\nmass\n\nmass.add(kg(1))\nint[] a = {1, 2};\na\n"))
        .isTrue();

    assertThat(said()).isEqualTo("85 kg\n86 kg\n[1, 2]\n");
    assertThat(complained()).isEmpty();
  }

  @Test
  void what_is_shown_on_the_way_stands_between_the_values() throws IOException {
    assertThat(
            run(
                "1\nfor (int i = 2; i < 4; i++) { display(i); }\nvar place = display(\"a\");\n"
                    + "place.update(\"b\")\nplace\n5\n"))
        .isTrue();

    assertThat(said()).isEqualTo("1\n2\n3\na\nb\n5\n");
  }

  @Test
  void long_work_says_how_far_it_is_beside_the_values() throws IOException {
    assertThat(
            run(
                "sweep(\"h\", cm(1), cm(2), 400, h -> {"
                    + " java.util.concurrent.locks.LockSupport.parkNanos(10_000_000L);"
                    + " return null; }).rows().size()\n"))
        .isTrue();

    assertThat(said()).isEqualTo("400\n");
    assertThat(complained()).matches("(lesson.jsh: sweep over h: [0-9]+ of 400, about .* left\n)+");
  }

  @Test
  void a_byte_order_mark_and_windows_line_ends_do_not_matter() throws IOException {
    assertThat(run("\uFEFFint twice(int x) {\r\n  return 2 * x;\r\n}\r\n\r\ntwice(4)\r\n"))
        .isTrue();

    assertThat(said()).isEqualTo("8\n");
  }

  @Test
  void a_mistake_ends_the_script_with_file_line_column_reason_and_caret() throws IOException {
    assertThat(run("1 + 1\nvar a = 5;\nvar b = hing(a);\n2 + 2\n")).isFalse();

    assertThat(said()).isEqualTo("2\n");
    assertThat(complained())
        .isEqualTo(
            """
            lesson.jsh:3:9: There is no word "hing": did you mean hinge()?
            var b = hing(a);
                    ^
            """);
  }

  @Test
  void a_refusal_in_a_script_names_its_line() throws IOException {
    assertThat(run("var lifter = person(MALE, kg(85), cm(178));\n\n  barbell(kg(-5))\n")).isFalse();

    assertThat(complained()).startsWith("lesson.jsh:3:3: ").contains("-5").contains("\n  ^\n");
  }

  @Test
  void an_exception_names_the_line_it_came_from_and_the_line_that_called() throws IOException {
    assertThat(run("int f(int x) {\n  return 1 / x;\n}\nf(1)\nf(0)\n")).isFalse();

    assertThat(complained())
        .isEqualTo(
            """
            lesson.jsh:2:3: A whole number is divided by zero.
              return 1 / x;
              ^
              called from line 5
            """);
  }

  @Test
  void files_written_before_the_mistake_stay() throws IOException {
    OutputFolder.choose(folder.resolve("made"));
    String start = "hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(140))).start()";

    assertThat(run(start + ".moments().save(\"moments.csv\");\nnonsense\n")).isFalse();

    assertThat(folder.resolve("made").resolve("moments.csv")).isNotEmptyFile();
    assertThat(complained()).startsWith("lesson.jsh:2:1: There is no word \"nonsense\".");
  }

  @Test
  void a_bracket_left_open_is_named() throws IOException {
    assertThat(run("1 + 1\nvar a = Math.max(1,\n  2;\n3\n")).isFalse();

    assertThat(said()).isEqualTo("2\n");
    assertThat(complained())
        .startsWith(
            "lesson.jsh:2:17: The bracket ( opened at line 2, column 17 is never closed: a ) is"
                + " missing.\n");
  }

  @Test
  void a_last_line_without_its_end_is_named() throws IOException {
    assertThat(run("1 + 1\nvar a =\n")).isFalse();

    assertThat(complained()).startsWith("lesson.jsh:2:7: After the = something must follow.\n");
  }

  @Test
  void quit_ends_a_script_without_an_error() throws IOException {
    assertThat(run("1 + 1\nif (1 < 2) { quit(); }\n3 + 3\nnonsense\n")).isTrue();

    assertThat(said()).isEqualTo("2\n");
    // The next script starts afresh.
    assertThat(run("4 + 4\n")).isTrue();
    assertThat(said()).isEqualTo("2\n8\n");
  }

  @Test
  void a_command_of_another_shell_is_refused_in_words() throws IOException {
    assertThat(run("/open other.jsh\n")).isFalse();

    assertThat(complained()).startsWith("lesson.jsh:1:1: \"/open\" is no word here");
  }

  @Test
  void a_missing_file_is_told_with_the_folder_that_was_searched() {
    assertThat(run(folder.resolve("none.jsh"))).isFalse();

    assertThat(complained()).isEqualTo("There is no file none.jsh (looked in " + folder + ").\n");
  }

  @Test
  void a_folder_and_another_kind_of_file_are_told() throws IOException {
    assertThat(run(folder)).isFalse();
    assertThat(run(Files.writeString(folder.resolve("a.txt"), "1"))).isFalse();

    assertThat(complained().lines())
        .containsExactly(
            folder + " is a folder; name one .jsh script or .ipynb notebook in it.",
            "a.txt is no script and no notebook: their names end in .jsh and in .ipynb.");
  }

  @Test
  void a_file_that_is_not_utf8_is_told_with_its_line() throws IOException {
    byte[] latin1 = "var a = 1;\n// N\u00b7m\n".getBytes(StandardCharsets.ISO_8859_1);

    assertThat(run(Files.write(folder.resolve("old.jsh"), latin1))).isFalse();

    assertThat(complained())
        .isEqualTo("old.jsh is not UTF-8 text (line 2 is not); save it as UTF-8 in your editor.\n");
  }

  @Test
  void an_empty_script_is_fine() throws IOException {
    assertThat(run("")).isTrue();
    assertThat(said()).isEmpty();
  }

  @Test
  void a_value_that_turns_out_impossible_when_it_is_shown_ends_the_script_at_its_line()
      throws IOException {
    String late =
        "class Late implements org.leverbook.display.Shown {\n"
            + "  public String text() { throw new org.leverbook.quantity.Refused(\"Too low.\"); }\n}\n";

    assertThat(run(late + "1 + 1\nvar kept = new Late();\nkept\n3 + 3\n")).isFalse();

    assertThat(said()).isEqualTo("2\n");
    assertThat(complained()).isEqualTo("lesson.jsh:6:1: Too low.\nkept\n^\n");
  }
}
