package org.leverbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The built jar, started as a user starts it. */
class BuiltJarIT {

  /** Far above the seconds it takes: a hung process must fail, a slow machine must not. */
  private static final int PATIENCE_SECONDS = 120;

  @TempDir Path folder;

  private record Ended(int code, String out, String err) {}

  private Ended java(String input, String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Dleverbook.home=" + folder.resolve("home"));
    command.add("-Djava.awt.headless=true");
    command.add("-jar");
    command.add(Path.of("target", "leverbook.jar").toAbsolutePath().toString());
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
    assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).as("it ends").isTrue();
    return new Ended(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  @Test
  void the_first_lesson_writes_its_tables_pictures_and_worksheet() throws Exception {
    Path made = folder.resolve("made");
    Ended ended = java("", "run", "notebooks/hinge.jsh", "--out", made.toString());
    assertThat(ended.err()).isEmpty();
    assertThat(ended.code()).isZero();
    assertThat(ended.out())
        .contains("L5/S1: 530 N·m, tends to flex it, opposed by the trunk extensors")
        .contains("A teaching model, not medical or coaching clearance");
    try (Stream<Path> files = Files.list(made)) {
      assertThat(files.map(f -> f.getFileName().toString()))
          .containsExactlyInAnyOrder(
              "moments.csv",
              "spine.csv",
              "hip-height.csv",
              "hip-height.svg",
              "hip-height.png",
              "start.svg",
              "start.png",
              "start.json");
    }
    assertThat(Files.readAllLines(made.resolve("spine.csv"))).hasSize(1 + 18);
    assertThat(Files.readAllLines(made.resolve("hip-height.csv"))).hasSize(1 + 25);
    assertThat(Files.readAllLines(made.resolve("moments.csv"))).hasSize(1 + 45);
  }

  @Test
  void the_same_script_gives_the_same_files_twice() throws Exception {
    java("", "run", "notebooks/hinge.jsh", "--out", folder.resolve("a").toString());
    java("", "run", "notebooks/hinge.jsh", "--out", folder.resolve("b").toString());
    for (String name :
        List.of("moments.csv", "spine.csv", "hip-height.csv", "start.svg", "start.json")) {
      assertThat(folder.resolve("a").resolve(name))
          .hasSameTextualContentAs(folder.resolve("b").resolve(name));
    }
  }

  @Test
  void a_script_that_fails_tells_file_line_and_reason_and_keeps_what_it_wrote() throws Exception {
    Path script =
        Files.writeString(
            folder.resolve("lesson.jsh"),
            "var pull = hinge(person(MALE, kg(85), cm(178)));\n"
                + "pull.start().spine().save(\"spine.csv\")\n"
                + "pull.hipHeight(cm(20)).start()\n"
                + "pull.start().moments().save(\"moments.csv\")\n");
    Ended ended = java("", "run", script.toString(), "--out", folder.resolve("made").toString());
    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.err())
        .contains("lesson.jsh:3:1: A hip height of 20.0 cm would put the hips below the knees")
        .contains("pull.hipHeight(cm(20)).start()\n^");
    assertThat(ended.err()).doesNotContain("Exception").doesNotContain("\tat ");
    assertThat(folder.resolve("made").resolve("spine.csv")).exists();
    assertThat(folder.resolve("made").resolve("moments.csv")).doesNotExist();
  }

  @Test
  void a_slip_of_the_pen_is_shown_with_a_caret() throws Exception {
    Path script = Files.writeString(folder.resolve("slip.jsh"), "var a = 1;\nint b = hing(2);\n");
    Ended ended = java("", "run", script.toString());
    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.err())
        .contains("slip.jsh:2:9: There is no word \"hing\": did you mean hinge()?")
        .contains("int b = hing(2);\n        ^");
  }

  @Test
  void a_missing_file_is_a_sentence() throws Exception {
    Ended ended = java("", "run", "no-such.jsh");
    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.err()).contains("no-such.jsh").doesNotContain("Exception");
  }

  @Test
  void the_shell_reads_a_pipe_line_by_line() throws Exception {
    Ended ended = java("var pull = hinge(person(FEMALE, kg(60), cm(165)))\n1 + 1\n");
    assertThat(ended.code()).isZero();
    assertThat(ended.out()).contains("2");
    assertThat(ended.err()).isEmpty();
  }

  @Test
  void version_and_help_are_there() throws Exception {
    assertThat(java("", "--version").out()).contains("0.1.0");
    assertThat(java("", "--help").out()).contains("run");
    assertThat(java("", "run", "--help").out()).contains("--out");
    assertThat(java("", "fly").code()).isEqualTo(2);
  }
}
