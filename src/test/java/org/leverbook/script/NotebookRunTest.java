package org.leverbook.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.display.OutputFolder;
import org.leverbook.notebook.Cell;
import org.leverbook.notebook.MimeBundle;
import org.leverbook.notebook.Notebook;
import org.leverbook.notebook.Output;
import org.leverbook.notebook.Schema;
import org.leverbook.script.NotebookRun.Into;

/** A notebook from file to results in it, or to the place of its mistake. */
class NotebookRunTest {

  @TempDir private Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @AfterEach
  void forgetFolder() {
    OutputFolder.choose(Path.of(""));
  }

  private NotebookRun runner() {
    return new NotebookRun(
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  private Path file(String... code) throws IOException {
    return Files.writeString(
        folder.resolve("lesson.ipynb"), Notebook.of(List.of(code), "Lesson").text());
  }

  private boolean run(String... code) throws IOException {
    return runner().run(file(code), Into.SAME_FILE);
  }

  /** The cells of code after the run; the file is valid. */
  private List<Cell> cells() throws IOException {
    Path file = folder.resolve("lesson.ipynb");
    assertThat(Schema.complaints(Files.readString(file))).isEmpty();
    return Notebook.read(file).cells().stream().filter(c -> c.kind() == Cell.Kind.CODE).toList();
  }

  private static List<String> told(Cell cell) {
    List<String> told = new ArrayList<>();
    for (Output output : cell.outputs()) {
      if (output instanceof Output.Printed printed) {
        told.add(printed.stream() + " " + printed.text().strip());
      } else if (output instanceof Output.Given given) {
        told.add((given.isResult() ? "result " : "shown ") + given.bundle().text());
      } else if (output instanceof Output.Failed failed) {
        told.add("failed " + failed.name() + ": " + failed.message());
      }
    }
    return told;
  }

  private String said() {
    return words(out);
  }

  private String complained() {
    return words(err);
  }

  private String words(ByteArrayOutputStream stream) {
    return stream
        .toString(StandardCharsets.UTF_8)
        .replace(System.lineSeparator(), "\n")
        .replace(folder + java.io.File.separator, "");
  }

  @Test
  void the_last_expression_is_the_result_and_all_before_it_is_shown_in_order() throws IOException {
    assertThat(
            run(
                "var mass = kg(85);",
                "System.out.println(\"a\");\nmass\nSystem.out.print(\"b\");\n"
                    + "System.err.println(\"c\");\ndisplay(\"way\");\nmass.add(kg(1))",
                "mass\nvar last = 1;",
                "display(2)"))
        .isTrue();

    assertThat(told(cells().get(0))).isEmpty();
    assertThat(told(cells().get(1)))
        .containsExactly(
            "stdout a", "shown 85 kg", "stdout b", "stderr c", "shown way", "result 86 kg");
    assertThat(told(cells().get(2))).containsExactly("shown 85 kg");
    assertThat(told(cells().get(3))).containsExactly("shown 2");
    assertThat(cells().stream().map(c -> c.count().getAsInt())).containsExactly(1, 2, 3, 4);
    assertThat(said()).endsWith("lesson.ipynb (cells run: 4)\n");
    assertThat(complained()).isEmpty();
  }

  @Test
  void tables_and_pictures_stand_in_every_form() throws IOException {
    assertThat(
            run(
                "var start = hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(140))).start();",
                "start.moments()",
                "start.picture()"))
        .isTrue();

    assertThat(forms(1)).containsExactlyInAnyOrder("text/plain", "text/html");
    assertThat(forms(2)).containsExactlyInAnyOrder("text/plain", "image/svg+xml", "image/png");
  }

  @Test
  void a_light_run_writes_drawings_as_svg_alone() throws IOException {
    Path file =
        file(
            "var start = hinge(person(MALE, kg(85), cm(178))).start();",
            "start.picture()",
            "start.facts()");

    assertThat(runner().light().run(file, Into.SAME_FILE)).isTrue();

    assertThat(forms(1)).containsExactlyInAnyOrder("text/plain", "image/svg+xml");
    assertThat(forms(2)).containsExactly("text/plain");
  }

  private List<String> forms(int cell) throws IOException {
    Output output = cells().get(cell).outputs().get(0);
    return List.copyOf(((Output.Given) output).bundle().data().keySet());
  }

  @Test
  void what_was_shown_is_replaced_where_it_stands() throws IOException {
    assertThat(run("var place = display(1);\n\"x\"", "place.update(2)")).isTrue();

    assertThat(told(cells().get(0))).containsExactly("shown 2", "result x");
    assertThat(told(cells().get(1))).isEmpty();
  }

  @Test
  void a_mistake_ends_the_run_with_cell_and_line_and_keeps_what_was_done() throws IOException {
    Path file = file("1 + 1", "", "var a = 5;\nvar b = hing(a);", "2 + 2");

    assertThat(runner().run(file, Into.SAME_FILE)).isFalse();

    assertThat(complained())
        .isEqualTo(
            """
            lesson.ipynb: cell 2, line 2: There is no word "hing": did you mean hinge()?
            var b = hing(a);
                    ^
            """);
    assertThat(told(cells().get(0))).containsExactly("result 2");
    assertThat(told(cells().get(2))).singleElement().asString().contains("did you mean hinge()?");
    Output.Failed failed = (Output.Failed) cells().get(2).outputs().get(0);
    assertThat(failed.trace())
        .containsExactly(
            "line 2:9: There is no word \"hing\": did you mean hinge()?",
            "var b = hing(a);",
            "        ^");
    assertThat(cells().get(3).count()).isEmpty();
  }

  @Test
  void results_of_an_earlier_run_do_not_stay_behind_a_mistake() throws IOException {
    Cell old = Cell.code("3").ran(java.util.OptionalInt.of(9), List.of(given("old")));
    Notebook notebook = Notebook.ofCells(List.of(Cell.code("nonsense"), old));
    Files.writeString(folder.resolve("lesson.ipynb"), notebook.text());

    assertThat(runner().run(folder.resolve("lesson.ipynb"), Into.SAME_FILE)).isFalse();

    assertThat(cells().get(1).outputs()).isEmpty();
    assertThat(cells().get(1).count()).isEmpty();
  }

  private static Output given(String text) {
    return new Output.Given(true, new MimeBundle(java.util.Map.of("text/plain", text)));
  }

  @Test
  void a_value_that_is_refused_only_when_it_is_shown_is_a_mistake_of_its_line() throws IOException {
    assertThat(
            run(
                "class Late { public String toString() { return \"\"; } }\n"
                    + "org.leverbook.display.Shown late ="
                    + " () -> { throw new org.leverbook.quantity.Refused(\"Not today.\"); };\n"
                    + "  late\n"))
        .isFalse();

    assertThat(complained()).isEqualTo("lesson.ipynb: cell 1, line 3: Not today.\n  late\n  ^\n");
    assertThat(told(cells().get(0))).containsExactly("failed Refused: Not today.");
  }

  @Test
  void marked_cells_may_fail_or_are_left_out() throws IOException {
    String text = Notebook.of(List.of("nonsense", "alsoNonsense", "1 + 1"), "").text();
    int first = text.indexOf("\"metadata\": {}");
    int second = text.indexOf("\"metadata\": {}", first + 1);
    String marked =
        text.substring(0, first)
            + "\"metadata\": {\"tags\": [\"raises-exception\"]}"
            + text.substring(first + 14, second)
            + "\"metadata\": {\"tags\": [\"skip-execution\"]}"
            + text.substring(second + 14);
    Path file = Files.writeString(folder.resolve("lesson.ipynb"), marked);

    assertThat(runner().run(file, Into.SAME_FILE)).isTrue();

    assertThat(told(cells().get(0))).singleElement().asString().startsWith("failed ");
    assertThat(cells().get(1).count()).isEmpty();
    assertThat(told(cells().get(2))).containsExactly("result 2");
    assertThat(complained()).isEmpty();
  }

  @Test
  void quit_ends_the_run_without_an_error() throws IOException {
    assertThat(run("1", "quit();", "nonsense")).isTrue();

    assertThat(cells().get(2).count()).isEmpty();
    assertThat(complained()).isEmpty();
  }

  @Test
  void a_cell_that_does_not_end_is_stopped_at_the_limit() throws IOException {
    Path file = file("var x = 1;", "while (true) { x++; }", "x");

    assertThat(runner().limitedTo(Duration.ofMillis(1500)).run(file, Into.SAME_FILE)).isFalse();

    assertThat(complained())
        .startsWith(
            "lesson.ipynb: cell 2, line 1: This cell did not end within 1.500 s, the limit asked"
                + " for (--limit); it was stopped.\n");
    assertThat(cells().get(0).count()).hasValue(1);
    assertThat(cells().get(2).count()).isEmpty();
  }

  @Test
  void without_a_place_to_write_the_values_are_printed_and_the_file_stays() throws IOException {
    Path file = file("1 + 1\nSystem.out.println(\"on\");\ndisplay(5);", "\"two\"");
    String before = Files.readString(file);

    assertThat(runner().run(file, Into.PRINT)).isTrue();

    assertThat(said()).isEqualTo("2\non\n5\ntwo\n");
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void the_folder_for_saved_files_takes_the_notebook_too() throws IOException {
    OutputFolder.choose(folder.resolve("made"));
    Path file = file("1 + 1");
    String before = Files.readString(file);

    assertThat(runner().run(file, Into.FOLDER)).isTrue();

    assertThat(Files.readString(file)).isEqualTo(before);
    assertThat(Notebook.read(folder.resolve("made/lesson.ipynb")).cells().get(1).outputs())
        .hasSize(1);
  }

  @Test
  void the_notebooks_own_folder_as_target_is_refused_before_anything_runs() throws IOException {
    OutputFolder.choose(folder);
    Path file = file("nonsense");

    assertThat(runner().run(file, Into.FOLDER)).isFalse();

    assertThat(complained())
        .isEqualTo(
            "lesson.ipynb is the notebook itself; say --in-place to have its results written into"
                + " it, or name another folder.\n");
  }

  @Test
  void a_notebook_in_another_language_is_refused() throws IOException {
    String text = Notebook.of(List.of("print(1)"), "").text().replace("\"java\"", "\"python\"");
    Path file = Files.writeString(folder.resolve("lesson.ipynb"), text);

    assertThat(runner().run(file, Into.SAME_FILE)).isFalse();

    assertThat(complained())
        .isEqualTo(
            "lesson.ipynb is a notebook in python, as it says itself; only Java can be run here."
                + " Nothing was run.\n");
    assertThat(Files.readString(file)).isEqualTo(text);
  }

  @Test
  void an_empty_notebook_and_a_missing_one_are_told_apart() throws IOException {
    assertThat(run()).isTrue();
    assertThat(said()).endsWith("lesson.ipynb (cells run: 0)\n");

    assertThat(runner().run(folder.resolve("none.ipynb"), Into.SAME_FILE)).isFalse();
    assertThat(complained()).isEqualTo("There is no file none.ipynb (looked in " + folder + ").\n");
  }

  @Test
  void text_cells_and_what_is_not_known_of_a_file_stay_as_they_are() throws IOException {
    String reference;
    try (var in = getClass().getResourceAsStream("/notebook/reference.ipynb")) {
      reference = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    Path file = Files.writeString(folder.resolve("lesson.ipynb"), reference);

    assertThat(runner().run(file, Into.SAME_FILE)).isTrue();

    String after = Files.readString(file);
    int code = reference.indexOf("\"cell_type\": \"code\"");
    assertThat(after).startsWith(reference.substring(0, code));
    assertThat(after).endsWith(reference.substring(reference.indexOf("\n \"metadata\": {\n  \"k")));
  }

  @Test
  void the_printed_streams_and_the_stage_are_given_back() throws IOException {
    PrintStream before = System.out;
    PrintStream beside = System.err;

    run("System.out.println(1);");

    assertThat(System.out).isSameAs(before);
    assertThat(System.err).isSameAs(beside);
  }
}
