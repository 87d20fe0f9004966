package org.leverbook.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.display.OutputFolder;
import org.leverbook.notebook.CodeShown;
import org.leverbook.notebook.Notebook;
import org.leverbook.notebook.Schema;
import org.leverbook.script.Export.To;

/** From a script or a notebook to a page in the output folder. */
class ExportTest {

  private static final String LESSON =
      """
      // # Arms
      // Invented for a lesson.

      var start = hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(140))).start();
      start.balance()

      // And the picture:
      start.picture()
      """;

  @TempDir private Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void chooseFolder() {
    OutputFolder.choose(folder.resolve("made"));
  }

  @AfterEach
  void forgetFolder() {
    OutputFolder.choose(Path.of(""));
  }

  private boolean export(Path file, To to, boolean run) {
    return new Export(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            new Export.Wish(to, CodeShown.FOLDED, run, Optional.empty()))
        .run(file);
  }

  private Path script(String text) throws IOException {
    return Files.writeString(folder.resolve("lesson.jsh"), text);
  }

  private String complained() {
    return err.toString(StandardCharsets.UTF_8)
        .replace(System.lineSeparator(), "\n")
        .replace(folder + java.io.File.separator, "");
  }

  private String made(String name) throws IOException {
    return Files.readString(folder.resolve("made").resolve(name));
  }

  @Test
  void a_script_becomes_a_page_with_its_text_values_and_pictures() throws IOException {
    assertThat(export(script(LESSON), To.HTML, false)).isTrue();

    Document page = Jsoup.parse(made("lesson.html"));
    assertThat(page.title()).isEqualTo("Arms");
    assertThat(page.select(".prose p").eachText())
        .containsExactly("Invented for a lesson.", "And the picture:");
    assertThat(page.select("pre.value").text()).startsWith("balance at ");
    assertThat(page.select(".picture img").attr("alt")).contains("Arm to the hip");
    assertThat(page.select(".warning")).isEmpty();
    assertThat(complained()).isEmpty();
  }

  @Test
  void a_script_becomes_markdown_with_its_picture_beside() throws IOException {
    assertThat(export(script(LESSON), To.MD, false)).isTrue();

    assertThat(made("lesson.md"))
        .startsWith("# Arms\nInvented for a lesson.\n\n<details>")
        .contains("](lesson-2.svg)");
    assertThat(made("lesson-2.svg")).startsWith("<svg ");
  }

  @Test
  void a_script_that_fails_is_told_with_its_own_line_and_no_page_is_made() throws IOException {
    Path script =
        script("// One.\n\n1 + 1\n\n// Two.\nint f(int x) {\n\n  return 1 / x;\n}\n\nf(0)\n");

    assertThat(export(script, To.HTML, false)).isFalse();

    assertThat(complained())
        .isEqualTo(
            """
            lesson.jsh:11:1: A whole number is divided by zero.
            f(0)
            ^
              in line 8 of an earlier input: return 1 / x;
            Nothing was exported.
            """);
    assertThat(folder.resolve("made")).doesNotExist();
  }

  @Test
  void a_notebook_that_was_not_run_is_exported_as_it_is_and_the_user_is_told() throws IOException {
    Path file = folder.resolve("lesson.ipynb");
    Files.writeString(file, Notebook.of(List.of("1 + 1"), "T").text());

    assertThat(export(file, To.HTML, false)).isTrue();

    assertThat(complained())
        .isEqualTo(
            "lesson.ipynb: cells that have not been run: 1; the page says so. With --run they are"
                + " run first.\n");
    assertThat(Jsoup.parse(made("lesson.html")).select(".warning")).hasSize(1);

    assertThat(export(file, To.HTML, true)).isTrue();
    assertThat(Jsoup.parse(made("lesson.html")).select("pre.value").text()).isEqualTo("2");
  }

  @Test
  void a_script_becomes_a_notebook_and_that_a_script_again() throws IOException {
    assertThat(export(script(LESSON), To.IPYNB, false)).isTrue();
    assertThat(Schema.complaints(made("lesson.ipynb"))).isEmpty();

    assertThat(export(folder.resolve("made/lesson.ipynb"), To.JSH, false)).isTrue();

    assertThat(made("lesson.jsh").replace("\n\n", "\n")).isEqualTo(LESSON.replace("\n\n", "\n"));
  }

  @Test
  void a_moving_picture_is_a_gif_beside_markdown_with_its_page() throws IOException {
    Path script =
        script("animation(hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(100))), 2)\n");

    assertThat(export(script, To.MD, false)).isTrue();

    assertThat(made("lesson.md"))
        .contains("![Hinge: barbell 100.0 kg, 2 frames in ")
        .contains("](lesson-1.gif)\n\n[the moving picture as a page](lesson-1.html)");
    assertThat(Files.readAllBytes(folder.resolve("made/lesson-1.gif"))).startsWith('G', 'I', 'F');
    assertThat(made("lesson-1.html")).startsWith("<!DOCTYPE html>");
  }

  @Test
  void the_same_kind_and_an_unknown_kind_of_file_are_refused() throws IOException {
    assertThat(export(script("1"), To.JSH, false)).isFalse();
    assertThat(export(Files.writeString(folder.resolve("a.txt"), "1"), To.HTML, false)).isFalse();

    assertThat(complained().lines())
        .containsExactly(
            "lesson.jsh is a script already; --to html or --to md makes a page of it.",
            "a.txt is no script and no notebook: their names end in .jsh and in .ipynb.");
  }
}
