package org.leverbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The jar in a real terminal, that of tmux: keys typed, the screen read. */
@Timeout(value = 300, unit = TimeUnit.SECONDS)
class TerminalIT {

  private static final Path JAR = Path.of("target", "leverbook.jar").toAbsolutePath();
  private static final long PATIENCE = 90_000_000_000L;

  @TempDir private Path folder;
  private Path socket;

  @BeforeEach
  void needsTmux() throws Exception {
    socket = folder.resolve("tmux");
    boolean there;
    try {
      there = new ProcessBuilder("tmux", "-V").start().waitFor() == 0;
    } catch (IOException e) {
      there = false;
    }
    assumeTrue(there, "tmux is not installed here, so nothing could be tried in a real terminal");
  }

  @AfterEach
  void end() throws Exception {
    if (Files.exists(socket)) {
      tmux("kill-server");
    }
  }

  private String tmux(String... arguments) throws Exception {
    List<String> command = new ArrayList<>(List.of("tmux", "-f", "/dev/null", "-S", socket + ""));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().remove("TMUX");
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    process.waitFor();
    return said;
  }

  private void open(String term, String... options) throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    // The shell behind it tells how the program ended.
    String line =
        "cd '%s' && TERM=%s '%s' %s -Dleverbook.home='%s' -jar '%s'; echo left with $?; sleep 100"
            .formatted(folder, term, java, String.join(" ", options), folder.resolve("home"), JAR);
    tmux("-u", "new-session", "-d", "-x", "80", "-y", "24", line);
    await("lever>");
  }

  private void type(String... keys) throws Exception {
    List<String> arguments = new ArrayList<>(List.of("send-keys"));
    arguments.addAll(List.of(keys));
    tmux(arguments.toArray(String[]::new));
  }

  private String screen() throws Exception {
    return tmux("capture-pane", "-p").stripTrailing();
  }

  /** Waits until a prompt is the last line: what is typed before is echoed where it stands. */
  private void awaitPrompt() throws Exception {
    long end = System.nanoTime() + PATIENCE;
    while (!screen().endsWith("\nlever>")) {
      assertThat(System.nanoTime()).as("no prompt in:\n" + screen()).isLessThan(end);
      LockSupport.parkNanos(50_000_000L);
    }
  }

  private void await(String text) throws Exception {
    long end = System.nanoTime() + PATIENCE;
    while (!screen().contains(text)) {
      assertThat(System.nanoTime()).as("no \"" + text + "\" in:\n" + screen()).isLessThan(end);
      LockSupport.parkNanos(50_000_000L);
    }
  }

  @Test
  void a_session_is_typed_interrupted_resized_and_left() throws Exception {
    open("tmux-256color");
    type("var lifter = person(MALE, kg(85), ");
    await("stature");
    type("cm(178))", "Enter");
    type("lifter.mass()", "Enter");
    await("\n85 kg\nlever>");

    type("for (long i = 0; ; i++) System.out.println(\"round \" + i)", "Enter");
    await("round 1");
    type("C-c");
    await("Stopped.\nlever>");
    type("System.exit(3)", "Enter");
    await("so it was not done");
    type("int deep(int n) { return deep(n + 1) + 1; }", "Enter", "deep(0)", "Enter");
    await("A method calls itself without end");
    awaitPrompt();

    type("C-l");
    type("\"anExampleLongEnoughToNeedTwoRowsWhenNarrow\".length() + 1000");
    await("+ 1000");
    tmux("resize-window", "-x", "40", "-y", "12");
    type("0");
    await("+ 10000");
    assertThat(screen())
        .isEqualTo("lever> \"anExampleLongEnoughToNeedTwoRows\nWhenNarrow\".length() + 10000");
    tmux("resize-window", "-x", "100", "-y", "30");
    await("lever> \"anExampleLongEnoughToNeedTwoRowsWhenNarrow\".length() + 10000");
    type("Enter");
    await("\n10042\nlever>");

    type("C-d");
    await("left with 0");
  }

  @Test
  void a_picture_is_sketched_with_its_numbers_and_its_files_are_named() throws Exception {
    open("tmux-256color");
    tmux("resize-window", "-x", "100", "-y", "40");
    type(
        "hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(140))).start().picture()",
        "Enter");
    await("saved picture-1.svg, picture-1.png");

    assertThat(screen())
        .contains("low back (L5/S1)", "N·m", "line of force: bar")
        .containsPattern("[⠁-⣿]{3}");
  }

  @Test
  void memory_that_runs_out_is_told_and_the_variables_stay() throws Exception {
    open("tmux-256color", "-Xmx256m");
    type("var kept = 41", "Enter", "var values = new ArrayList<long[]>()", "Enter");
    type("while (true) values.add(new long[1_000_000])", "Enter");
    await("There is not enough memory for this");
    type("values = null", "Enter", "kept + 1", "Enter");
    await("\n42\nlever>");
  }

  @Test
  void a_killed_shell_has_lost_no_line_and_two_at_once_keep_both() throws Exception {
    open("tmux-256color");
    type("1111 + 1", "Enter");
    await("1112");
    Path history = folder.resolve("home").resolve("history");
    Process other =
        new ProcessBuilder(
                "tmux",
                "-S",
                socket + "",
                "split-window",
                "-d",
                "-P",
                "-F",
                "#{pane_id}",
                "java -Dleverbook.home='%s' -jar '%s'".formatted(folder.resolve("home"), JAR))
            .start();
    String pane = new String(other.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
    long end = System.nanoTime() + PATIENCE;
    while (!tmux("capture-pane", "-p", "-t", pane).contains("lever>")) {
      assertThat(System.nanoTime()).as("the second prompt").isLessThan(end);
      LockSupport.parkNanos(50_000_000L);
    }
    tmux("send-keys", "-t", pane, "2222 + 1", "Enter");
    type("while (true) Thread.sleep(1)", "Enter");
    while (!Files.readString(history).contains("2222 + 1")
        || !Files.readString(history).contains("while (true)")) {
      assertThat(System.nanoTime()).as(Files.readString(history)).isLessThan(end);
      LockSupport.parkNanos(50_000_000L);
    }
    // As hard as the system can: nothing in the program hears of it.
    tmux("kill-server");

    assertThat(Files.readString(history))
        .contains("1111 + 1", "2222 + 1", "while (true) Thread.sleep(1)");
  }

  @Test
  void a_terminal_that_knows_nothing_but_letters_is_spoken_to_plainly() throws Exception {
    open("dumb");
    type("40 + 2", "Enter");
    await("\n42\n");
    type("hing(3)", "Enter");
    await("There is no word \"hing\": did you mean hinge()?");
    assertThat(tmux("capture-pane", "-p", "-e")).doesNotContain("\u001b");
    type("C-d");
    await("left with 0");
  }
}
