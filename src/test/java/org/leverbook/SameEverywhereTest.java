package org.leverbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.desk.Desk;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Preferences;
import org.leverbook.display.Progress;
import org.leverbook.kernel.KernelDoor;
import org.leverbook.language.Leaving;
import org.leverbook.notebook.Cell;
import org.leverbook.notebook.Notebook;
import org.leverbook.notebook.Output;
import org.leverbook.script.NotebookRun;
import org.leverbook.script.ScriptRun;
import org.leverbook.terminal.ShellDoor;

/**
 * One script, asked at every door, line by line and all at once: the same texts to the last digit,
 * and the same bytes in every file.
 */
@Timeout(value = 600, unit = TimeUnit.SECONDS)
class SameEverywhereTest {

  private static Given desk;

  @TempDir private Path folder;

  private Path saved;
  private Progress.Listener listened;

  @BeforeEach
  void quietly() {
    Leaving.forget();
    listened = Progress.listen(null);
  }

  @AfterEach
  void putBack() {
    Progress.listen(listened);
    OutputFolder.choose(Path.of(""));
    Preferences.choose(Preferences.USUAL);
  }

  private static List<String> script() throws IOException {
    try (InputStream in = SameEverywhereTest.class.getResourceAsStream("same-everywhere.jsh")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(line -> !line.startsWith("//")).toList();
    }
  }

  /** What a door gave: its values one after another, and the files it wrote. */
  private record Given(String values, Map<String, byte[]> files) {

    void isAs(Given other, String door) {
      List<String> lines = values.lines().toList();
      List<String> others = other.values().lines().toList();
      for (int i = 0; i < Math.min(lines.size(), others.size()); i++) {
        assertThat(lines.get(i)).as(door + ", line " + (i + 1)).isEqualTo(others.get(i));
      }
      assertThat(lines).as(door).hasSameSizeAs(others);
      assertThat(files.keySet()).as(door).isEqualTo(other.files().keySet());
      files.forEach(
          (name, bytes) ->
              assertThat(bytes).as(door + ": " + name).isEqualTo(other.files().get(name)));
    }
  }

  private void savingIn(String door) {
    saved = folder.resolve(door);
    OutputFolder.choose(saved);
  }

  private Given given(String values) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(saved)) {
      for (Path file : all.filter(f -> !f.toString().endsWith(".ipynb")).toList()) {
        files.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    String here = saved.toString();
    return new Given(values.replace(here, "FOLDER").strip(), files);
  }

  /** The values themselves, as a desk gives them; asked once. */
  private Given atTheDesk() throws IOException {
    if (desk != null) {
      return desk;
    }
    savingIn("desk");
    List<String> values = new ArrayList<>();
    try (Desk open = Desk.open()) {
      for (String line : script()) {
        var evaluation = open.evaluate(line, value -> values.add(value.text()));
        assertThat(evaluation.problem()).as(line).isEmpty();
      }
    }
    desk = given(String.join("\n", values));
    return desk;
  }

  private Given script(List<String> lines) throws IOException {
    savingIn("script");
    Path file = Files.write(folder.resolve("lesson.jsh"), lines);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    assertThat(new ScriptRun(stream(out), stream(err)).run(file)).as(err.toString()).isTrue();
    return given(out.toString(StandardCharsets.UTF_8));
  }

  private Given notebook(String door, List<String> cells) throws IOException {
    savingIn(door);
    Path file = Files.writeString(folder.resolve(door + ".ipynb"), Notebook.of(cells, "").text());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    NotebookRun run = new NotebookRun(stream(out), stream(out)).light();
    assertThat(run.run(file, NotebookRun.Into.SAME_FILE)).as(out.toString()).isTrue();
    List<String> values = new ArrayList<>();
    for (Cell cell : Notebook.read(file).cells()) {
      for (Output output : cell.outputs()) {
        assertThat(output).isInstanceOf(Output.Given.class);
        values.add(((Output.Given) output).bundle().text());
      }
    }
    return given(String.join("\n", values));
  }

  private Given kernel(String door, List<String> cells) throws IOException {
    savingIn(door);
    List<String> values = KernelDoor.values(cells, folder.resolve("history-" + door));
    return given(String.join("\n", values));
  }

  private static PrintStream stream(ByteArrayOutputStream bytes) {
    return new PrintStream(bytes, true, StandardCharsets.UTF_8);
  }

  @Test
  void shell_script_notebook_and_kernel_give_the_same_numbers_and_the_same_files()
      throws Exception {
    List<String> lines = script();
    List<String> atOnce = List.of(String.join("\n", lines));
    atTheDesk();
    assertThat(lines).hasSizeGreaterThan(20);
    assertThat(desk.values()).contains("lb", "5–95 %", "FOLDER").doesNotContain("NaN", "null");
    assertThat(desk.files())
        .containsOnlyKeys(
            "hip-height.csv", "hip-height-tidy.csv", "side-by-side.csv", "start.json", "start.svg");

    script(lines).isAs(desk, "script");
    savingIn("piped");
    given(ShellDoor.piped(lines)).isAs(desk, "shell, piped");
    notebook("cells", lines).isAs(desk, "notebook, a cell a line");
    notebook("cell", atOnce).isAs(desk, "notebook, one cell");
    kernel("kernel", lines).isAs(desk, "kernel, a cell a line");
    kernel("kernel-at-once", atOnce).isAs(desk, "kernel, one cell");
  }

  @Test
  void what_a_person_types_is_answered_with_the_same_values() throws Exception {
    atTheDesk();
    savingIn("typed");
    String shown = ShellDoor.typed(script(), folder.resolve("home"));
    Given typed = given(shown);
    assertThat(typed.files().keySet()).isEqualTo(desk.files().keySet());
    typed
        .files()
        .forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(desk.files().get(name)));
    int from = 0;
    for (String line : desk.values().lines().toList()) {
      // A bar of progress may have stood on the line before; the terminal wipes it.
      int at = typed.values().indexOf(line + "\n", from);
      assertThat(at).as(line).isNotNegative();
      from = at + line.length();
    }
  }
}
