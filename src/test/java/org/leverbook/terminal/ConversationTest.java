package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jline.terminal.Size;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.desk.Desk;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Preferences;
import org.leverbook.language.Leaving;

/** A person at a terminal: real bytes typed, the shown text read. */
@Timeout(value = 120, unit = TimeUnit.SECONDS)
class ConversationTest {

  private static final String CTRL_C = "\u0003";
  private static final String CTRL_D = "\u0004";
  private static final String TAB = "\t";
  private static final String UP = "\u001bOA";

  @TempDir private Path folder;

  private final ByteArrayOutputStream screen = new ByteArrayOutputStream();
  private final Map<String, String> environment = new HashMap<>();
  private LineDisciplineTerminal terminal;
  private Thread shell;

  @BeforeEach
  void start() {
    Leaving.forget();
    OutputFolder.choose(folder.resolve("out"));
    environment.put("XDG_STATE_HOME", folder.toAbsolutePath().toString());
    environment.put("LOCALAPPDATA", folder.toAbsolutePath().toString());
  }

  @AfterEach
  void end() throws Exception {
    terminal.close();
    shell.join(20_000);
    OutputFolder.choose(Path.of(""));
    assertThat(shell.isAlive()).isFalse();
  }

  private void open(Size size) throws Exception {
    terminal = new LineDisciplineTerminal("test", "xterm", screen, StandardCharsets.UTF_8);
    terminal.setSize(size);
    Supplier<Desk> desk = Shell.startBehind();
    Conversation conversation =
        new Conversation(
            terminal, desk, environment, () -> Preferences.USUAL, open -> Optional.empty());
    shell = new Thread(conversation::run, "shell under test");
    shell.start();
    await("lever> ");
  }

  private void type(String text) throws Exception {
    for (byte key : text.getBytes(StandardCharsets.UTF_8)) {
      terminal.processInputByte(key);
    }
  }

  /** The shown text, without what only moves the cursor or sets modes; colours stay. */
  private String shown() {
    return screen
        .toString(StandardCharsets.UTF_8)
        .replaceAll("\u001b\\[\\??[0-9;]*[a-ln-zA-Z]|\u001b[=>]|\r", "");
  }

  /** Waits until a text is shown after what was shown when last asked. */
  private void await(String text) throws Exception {
    long end = System.nanoTime() + 20_000_000_000L;
    while (!shown().contains(text)) {
      assertThat(System.nanoTime()).as("no \"" + text + "\" in: " + shown()).isLessThan(end);
      assertThat(shell.isAlive()).as("the shell ended, showing: " + shown()).isTrue();
      Thread.sleep(20);
    }
  }

  private void clear() {
    screen.reset();
  }

  @Test
  void the_greeting_names_the_version_a_line_to_try_the_caution_and_the_way_out() throws Exception {
    open(Size.of(120, 40));

    assertThat(shown())
        .contains("Leverbook 0.", "help() lists the words, quit() leaves", "hinge(person(")
        .contains("not medical or coaching clearance");
    type(CTRL_D);
  }

  @Test
  void a_line_gives_its_value_and_several_lines_make_one_input() throws Exception {
    open(Size.of(120, 40));
    type("int f() {\r");
    await("   ... ");
    type("return 40 + 2;\r}\rf() + 100\r");
    await("\n142\n");
    type("quit()\r");
    shell.join(20_000);

    assertThat(shell.isAlive()).isFalse();
  }

  @Test
  void tab_completes_a_word_begun() throws Exception {
    open(Size.of(120, 40));
    type("var lifter = person(MALE, kg(85), cm(178))\r");
    clear();
    type("hinge(lifter).hol" + TAB);
    await("holding(");
    type("barbell(kg(140))).text().length() > 0\r");
    await("\ntrue\n");
    type(CTRL_D);
  }

  @Test
  void long_work_draws_a_bar_with_the_time_left_and_wipes_it_off() throws Exception {
    open(Size.of(120, 40));
    type(
        "sweep(\"h\", cm(1), cm(2), 400, h -> { java.util.concurrent.locks.LockSupport"
            + ".parkNanos(10_000_000L); return null; }).rows().size() + 1000\r");
    await(" of 400, about ");
    await("1400\n");

    assertThat(shown()).containsPattern("\\[=+ +\\] [0-9]+ %  sweep over h: [0-9]+ of 400, about");
    assertThat(screen.toString(StandardCharsets.UTF_8))
        .as("wiped off before the value")
        .containsPattern("\r\u001b\\[K\r\\s*1400");
    type(CTRL_D);
  }

  @Test
  void ctrl_c_ends_a_sweep_and_keeps_the_rows_that_are_done() throws Exception {
    open(Size.of(120, 40));
    type(
        "var s = sweep(\"h\", cm(1), cm(2), 90_000, h -> { java.util.concurrent.locks.LockSupport"
            + ".parkNanos(10_000_000L); return null; })\r");
    await(" of 90,000, about ");
    type(CTRL_C);
    await("Stopped; what was done until then is kept.");
    type("s.notes().get(0).length() + 1000 * (s.rows().size() / 90_000)\r");
    // "The work was stopped after 123 of 90,000; what was done is kept." is so long.
    await("\n6");

    assertThat(shown()).containsPattern("\n6[3-7]\n");
    type(CTRL_D);
  }

  @Test
  void ctrl_c_stops_what_runs_and_keeps_what_was_declared() throws Exception {
    open(Size.of(120, 40));
    type("var kept = 41\r");
    type("kept + 1000\r");
    await("\n1041\n");
    Path sign = folder.resolve("runs");
    String made = "Files.createFile(Path.of(\"" + sign.toString().replace("\\", "/") + "\"));";
    type("{ " + made + " while (true) { try { Math.sqrt(2); } catch (Throwable t) { } } }\r");
    while (!Files.exists(sign)) {
      Thread.sleep(20);
    }
    type(CTRL_C);
    await("Stopped.");
    type("kept + 1\r");
    await("\n42\n");
    type(CTRL_D);
  }

  @Test
  void ctrl_c_at_the_prompt_clears_the_line() throws Exception {
    open(Size.of(120, 40));
    type("nonsense" + CTRL_C);
    type("40 + 2\r");
    await("\n42\n");
    assertThat(shown()).doesNotContain("There is no word");
    type(CTRL_D);
  }

  @Test
  void a_mistake_is_red_with_a_caret_and_plain_where_colours_are_not_wanted() throws Exception {
    open(Size.of(120, 40));
    type("hing(3)\r");
    await("^");
    assertThat(shown()).contains("\u001b[31mThere is no word \"hing\": did you mean hinge()?");
    type(CTRL_D);
    end();

    Leaving.forget();
    environment.put("NO_COLOR", "1");
    clear();
    open(Size.of(120, 40));
    type("hing(3)\r");
    await("^");
    assertThat(shown())
        .contains("There is no word \"hing\": did you mean hinge()?")
        .doesNotContain("\u001b[31m");
    type(CTRL_D);
  }

  @Test
  void typed_lines_are_there_again_at_the_next_start() throws Exception {
    open(Size.of(120, 40));
    type("40 + 2\r");
    await("\n42\n");
    type(CTRL_D);
    end();

    Leaving.forget();
    clear();
    open(Size.of(120, 40));
    clear();
    type(UP);
    await("2");
    type("00\r");
    await("\n240\n");
    type(CTRL_D);
  }

  @Test
  void a_picture_is_saved_and_its_place_is_shown() throws Exception {
    open(Size.of(200, 40));
    type(
        "class Dot implements org.leverbook.display.Picture {"
            + " public String text() { return \"a dot\"; }"
            + " public String svgDocument() { return \"<svg/>\"; }"
            + " public byte[] pngFile() { return new byte[] {1}; } }\r");
    type("new Dot()\r");
    await("picture-1.png");
    type("new Dot()\r");
    await("picture-2.png");
    type(CTRL_D);
    shell.join(20_000);

    assertThat(shown()).contains("a dot");
    assertThat(folder.resolve("out"))
        .isDirectoryContaining("glob:**/picture-1.svg")
        .isDirectoryContaining("glob:**/picture-2.png");
  }

  @Test
  void a_wide_table_is_cut_to_the_terminal_and_a_terminal_without_size_counts_as_80_columns()
      throws Exception {
    open(Size.of(0, 0));
    type("hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(140))).start().spine()\r");
    await("(cut to this terminal: 80 of ");
    type(CTRL_D);
  }
}
