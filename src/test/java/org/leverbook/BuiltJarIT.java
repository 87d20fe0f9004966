package org.leverbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The jar as a user starts it: a process of its own. */
class BuiltJarIT {

  private static final Path JAR = Path.of("target", "leverbook.jar").toAbsolutePath();

  @TempDir private Path folder;

  /** What a process said and how it ended. */
  private record Ended(int code, String out, String err) {

    /** What it said beside how far long work was: on a slow machine that is told. */
    String complaints() {
      return err.lines()
          .filter(line -> !line.matches(".* of .*, about .* left"))
          .collect(Collectors.joining("\n"));
    }
  }

  private Ended leverbook(String input, String... arguments) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Dleverbook.home=" + folder.resolve("home"));
    command.add("-jar");
    command.add(JAR.toString());
    command.addAll(List.of(arguments));
    Path in = Files.writeString(folder.resolve("in.txt"), input);
    Path out = folder.resolve("out.txt");
    Path err = folder.resolve("err.txt");
    Process process =
        new ProcessBuilder(command)
            .redirectInput(in.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    return new Ended(process.exitValue(), read(out), read(err));
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8).replace("\r\n", "\n");
  }

  @Test
  void the_hinge_notebook_writes_its_tables_pictures_and_worksheet() throws Exception {
    Path made = folder.resolve("made").resolve("hinge");

    Ended ended = leverbook("", "run", "notebooks/hinge.jsh", "--out", made.toString());

    assertThat(ended.complaints()).isEmpty();
    assertThat(ended.code()).isZero();
    for (String name :
        List.of(
            "moments.csv",
            "spine.csv",
            "hip-height.csv",
            "hip-height.svg",
            "hip-height.png",
            "start.svg",
            "start.png",
            "start.json")) {
      assertThat(made.resolve(name)).isNotEmptyFile();
    }
    assertThat(ended.out()).contains("saved " + made.resolve("moments.csv")).contains("N·m");
  }

  @Test
  void the_claims_notebook_writes_a_row_and_a_picture_for_each_claim() throws Exception {
    Path made = folder.resolve("made").resolve("claims");

    Ended ended = leverbook("", "run", "notebooks/claims.jsh", "--out", made.toString());

    assertThat(ended.complaints()).isEmpty();
    assertThat(ended.code()).isZero();
    List<String> lines = Files.readAllLines(made.resolve("claims.csv"));
    assertThat(lines.get(0)).startsWith("claim,cases,tested,holds (%),splitting input");
    assertThat(lines).hasSize(14);
    try (var files = Files.list(made)) {
      List<String> pictures =
          files.map(f -> f.getFileName().toString()).filter(n -> n.endsWith(".svg")).toList();
      assertThat(pictures).hasSize(14).contains("hips-knees-closest.svg", "long-thighs.svg");
    }
    // Two lifts of a hundred people, and the header.
    assertThat(Files.readAllLines(made.resolve("hips-and-knees.csv"))).hasSize(201);
    assertThat(ended.out()).contains("Holds in ", "What separates best: ");
  }

  @Test
  void a_bad_script_ends_with_its_place_and_code_1() throws Exception {
    Path script = Files.writeString(folder.resolve("bad.jsh"), "1 + 1\nbarbel(kg(20))\n");

    Ended ended = leverbook("", "run", script.toString());

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.out()).isEqualTo("2\n");
    assertThat(ended.err())
        .isEqualTo(
            script
                + ":2:1: There is no word \"barbel\": did you mean barbell()?\nbarbel(kg(20))\n^\n");
  }

  @Test
  void a_notebook_is_run_into_the_output_folder_and_becomes_a_page() throws Exception {
    Path made = folder.resolve("made");
    Path notebook =
        Files.writeString(
            folder.resolve("lesson.ipynb"),
            "{\"nbformat\":4,\"nbformat_minor\":5,\"metadata\":{},\"cells\":[{\"cell_type\":\"code\","
                + "\"id\":\"a\",\"metadata\":{},\"execution_count\":null,\"outputs\":[],"
                + "\"source\":\"kg(140)\"}]}");

    Ended ran = leverbook("", "run", notebook.toString(), "--out", made.toString());
    assertThat(ran.complaints()).isEmpty();
    assertThat(ran.code()).isZero();
    assertThat(ran.out()).isEqualTo("saved " + made.resolve("lesson.ipynb") + " (cells run: 1)\n");
    assertThat(read(made.resolve("lesson.ipynb"))).contains("\"execution_count\": 1", "140 kg");

    String executed = made.resolve("lesson.ipynb").toString();
    Ended page = leverbook("", "export", executed, "--to", "html", "--out", made.toString());
    assertThat(page.complaints()).isEmpty();
    assertThat(page.code()).isZero();
    assertThat(read(made.resolve("lesson.html"))).contains("140 kg").doesNotContain("<script");
  }

  @Test
  void a_bad_notebook_ends_with_its_cell_and_code_1() throws Exception {
    Path notebook =
        Files.writeString(
            folder.resolve("bad.ipynb"),
            "{\"nbformat\":4,\"cells\":[{\"cell_type\":\"code\",\"source\":\"1\\nbarbel(2)\"}]}");

    Ended ended = leverbook("", "run", notebook.toString());

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.out()).isEqualTo("1\n");
    assertThat(ended.err())
        .isEqualTo(
            notebook
                + ": cell 1, line 2: There is no word \"barbel\": did you mean barbell()?\n"
                + "barbel(2)\n^\n");
  }

  @Test
  void a_script_becomes_a_markdown_page() throws Exception {
    Path script = Files.writeString(folder.resolve("lesson.jsh"), "// # Loads\n\nkg(140)\n");
    Path made = folder.resolve("made");

    Ended ended =
        leverbook(
            "",
            "export",
            script.toString(),
            "--to",
            "md",
            "--code",
            "none",
            "--out",
            made.toString());

    assertThat(ended.complaints()).isEmpty();
    assertThat(ended.code()).isZero();
    assertThat(read(made.resolve("lesson.md"))).startsWith("# Loads\n\n```text\n140 kg\n```\n");
  }

  @Test
  void options_of_notebooks_and_kinds_of_pages_are_checked() throws Exception {
    Ended limit = leverbook("", "run", "notebooks/hinge.jsh", "--limit", "5");
    assertThat(limit.code()).isEqualTo(2);
    assertThat(limit.err())
        .startsWith(
            "--in-place, --light and --limit are for notebooks; notebooks/hinge.jsh is none.");
    Ended kind = leverbook("", "export", "notebooks/hinge.jsh", "--to", "docx");
    assertThat(kind.code()).isEqualTo(2);
    assertThat(kind.err()).startsWith("--to takes html, md, ipynb or jsh, not \"docx\".");
  }

  @Test
  void a_missing_script_ends_with_a_sentence_and_code_1() throws Exception {
    Ended ended = leverbook("", "run", "none.jsh");

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.err()).startsWith("There is no file none.jsh (looked in ");
  }

  @Test
  void a_pipe_into_the_shell_gives_values_alone() throws Exception {
    Ended ended = leverbook("1+1\nkg(140)\n");

    assertThat(ended.out()).isEqualTo("2\n140 kg\n");
    assertThat(ended.complaints()).isEmpty();
    assertThat(ended.code()).isZero();
  }

  @Test
  void a_failing_line_of_a_pipe_makes_code_1_after_the_rest_was_read() throws Exception {
    Ended ended = leverbook("nonsense\n1+1\n");

    assertThat(ended.out()).isEqualTo("2\n");
    assertThat(ended.err()).startsWith("input line 1: There is no word \"nonsense\".");
    assertThat(ended.code()).isEqualTo(1);
  }

  @Test
  void a_wrong_option_ends_with_the_nearest_one_and_code_2() throws Exception {
    Ended ended = leverbook("", "run", "--outt", "x", "notebooks/hinge.jsh");

    assertThat(ended.code()).isEqualTo(2);
    assertThat(ended.err())
        .startsWith("leverbook run has no option \"--outt\": did you mean --out?");
  }

  @Test
  void help_and_version_answer_on_the_program_and_on_its_command() throws Exception {
    for (String[] arguments :
        new String[][] {{"--version"}, {"run", "--version"}, {"export", "--version"}}) {
      Ended ended = leverbook("", arguments);
      assertThat(ended.code()).isZero();
      assertThat(ended.out()).matches("Leverbook \\d+\\.\\d+\\.\\d+\\S*\n");
    }
    for (String[] arguments :
        new String[][] {{"--help"}, {"run", "--help"}, {"export", "--help"}}) {
      Ended ended = leverbook("", arguments);
      assertThat(ended.code()).isZero();
      assertThat(ended.out()).contains("Usage: leverbook");
    }
  }
}
