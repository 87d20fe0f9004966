package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Preferences;
import org.leverbook.language.Leaving;

/** One long evening at a terminal of 100 columns: keys typed, cells read. */
@Timeout(value = 180, unit = TimeUnit.SECONDS)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class TypingTest {

  private static final String CTRL_C = "\u0003";
  private static final String CTRL_L = "\u000c";
  private static final String CTRL_R = "\u0012";
  private static final String F1 = "\u001bOP";
  private static final String ALT_E = "\u001be";
  private static final String PASTE = "\u001b[200~";
  private static final String PASTED = "\u001b[201~";

  @TempDir private static Path folder;

  private VirtualScreen screen;

  @BeforeAll
  void open() throws Exception {
    Leaving.forget();
    OutputFolder.choose(folder.resolve("out"));
    String home = folder.toAbsolutePath().toString();
    screen =
        new VirtualScreen("xterm-256color", 100, 30)
            .talk(Map.of("XDG_STATE_HOME", home, "LOCALAPPDATA", home), () -> Preferences.USUAL);
    screen.type("var lifter = person(MALE, kg(85), cm(178))\r40 + 2\r");
    screen.await("\n42\nlever>");
  }

  @BeforeEach
  void clear() {
    screen.type(CTRL_C);
    screen.resize(100, 30);
    screen.type(CTRL_L);
    screen.await("an empty screen", () -> screen.seen().equals("lever>"));
  }

  @AfterAll
  void close() throws Exception {
    screen.close();
    OutputFolder.choose(Path.of(""));
  }

  @Test
  void no_keys_open_an_editor_that_hides_what_was_typed() {
    screen.type("40 + 2\u0018\u0005 + 1\r");

    screen.await("\n43\nlever>");
  }

  @Test
  void words_texts_numbers_and_comments_have_colours_of_their_own() {
    screen.type("var x = hinge(lifter).at(12) + \"a text\" // why");
    screen.await("why");
    screen.await("colours of our words", () -> screen.isColoured("hinge"));

    assertThat(
            IntStream.of(
                    screen.colour("var"),
                    screen.colour("hinge"),
                    screen.colour("12"),
                    screen.colour("\"a text"),
                    screen.colour("// why"))
                .distinct())
        .hasSize(5);
    assertThat(screen.isColoured("lifter")).isFalse();
  }

  @Test
  void the_bracket_at_the_cursor_and_its_mate_are_marked_until_the_line_is_done() {
    screen.type("(1 + (2)) * 3");
    screen.await("* 3");
    assertThat(screen.isMarked("(1")).isFalse();
    screen.type("\u0001");
    screen.await("a mark", () -> screen.isMarked("(1"));
    assertThat(screen.isMarked(") *")).isTrue();
    assertThat(screen.isMarked("(2")).isFalse();
    screen.type("\r");
    screen.await("\n9\n");
    assertThat(screen.isMarked("(1")).isFalse();
  }

  @Test
  void what_a_call_takes_stands_below_with_the_current_parameter_marked() {
    screen.type("person(");
    screen.await("stature");
    assertThat(screen.seen()).startsWith("lever> person(\n");
    assertThat(screen.isMarked("mass")).isFalse();
    screen.type("MALE, k");
    screen.await("the next parameter marked", () -> screen.isMarked("mass"));
    screen.type("g(85), cm(178)).mass()");
    screen.awaitGone("stature");
    screen.type("\r");
    screen.await("\n85 kg\nlever>");
    assertThat(screen.seen()).doesNotContain("stature");
  }

  @Test
  void tab_shows_a_menu_with_signatures_and_the_arrow_keys_choose() {
    screen.type("hinge(lifter).bar\t");
    screen.await("barHeight(");
    assertThat(screen.seen()).contains("barAhead(distance: ", "barHeight(height: ");
    assertThat(screen.seen().lines()).allMatch(line -> line.length() <= 100);
    screen.type("\t\t");
    screen.await("lever> hinge(lifter).barHeight(");
    screen.type("cm(20)).text().length() > 0\r");
    screen.await("\ntrue\nlever>");
  }

  @Test
  void a_list_longer_than_the_window_is_cut_and_counted_and_tab_goes_through_all() {
    screen.resize(40, 10);
    screen.type("hinge(lifter).\t");
    screen.await(" more: Tab");
    assertThat(screen.seen()).startsWith("lever> hinge(lifter).\n");
    screen.type("\t");
    screen.await("lever> hinge(lifter).at(");
    // Backwards from the first is the last.
    screen.type("\u001b[Z");
    screen.await("the last", () -> screen.seen().startsWith("lever> hinge(lifter).withLoadTimes("));
  }

  @Test
  void ctrl_r_finds_an_earlier_line() {
    screen.type("11 * 11\r");
    screen.await("\n121\n");
    screen.type("\"later\"\r");
    screen.await("\nlater\nlever>");
    screen.type(CTRL_R + "11 *");
    screen.await("11 * 11\n", () -> screen.seen().split("11 \\* 11", -1).length > 2);
    screen.type("\r");
    screen.await("a second answer", () -> screen.seen().split("\n121\n", -1).length > 2);
  }

  @Test
  void a_paste_of_several_lines_is_one_input_without_its_stray_characters() {
    screen.type(
        PASTE + "int pasted =\r\n\u0007  40\r\n\u200b  + 5;\r\n\r\npasted + 1000\r\n" + PASTED);
    screen.await("pasted + 1000");
    assertThat(screen.seen()).doesNotContain("1045").contains("   ...   + 5;");
    screen.type("\r");
    screen.await("\n1045\nlever>");
  }

  @Test
  void a_line_that_begins_with_a_dot_goes_on_with_the_sentence_before() {
    screen.type("\"abc\";\r");
    screen.await("\nabc\nlever>");
    screen.type(".concat(\"def\")\r");
    screen.await("\nabcdef\nlever>");
    screen.type("  .length()\r");
    screen.await("\n6\nlever>");
    screen.type("var shout = \"hey\"\r");
    screen.type("1 + 1\r");
    screen.await("\n2\nlever>");
  }

  @Test
  void lines_pasted_as_if_typed_stay_one_sentence_where_a_dot_follows() {
    screen.type("\"abc\"\r    .concat(\"d\")\r.length()\r");
    screen.await("\n4\nlever>");
    assertThat(screen.seen()).doesNotContain("\nabc\n");
  }

  @Test
  void ten_thousand_pasted_lines_are_taken_and_run() {
    String lines =
        IntStream.range(0, 9_998).mapToObj(Integer::toString).collect(Collectors.joining("\n"));
    screen.type(PASTE + "var list = \"\"\"\n" + lines + "\n\"\"\";" + PASTED);
    screen.await("the end of the paste", () -> screen.seen().endsWith("   ... \"\"\";"));
    screen.type("\r");
    screen.await("10,000 lines; Ctrl-C stops them, and keeps what was done until then.");
    screen.type("list.lines().count()\r");
    screen.await("\n9998\nlever>");
  }

  @Test
  void after_a_mistake_a_key_tells_the_compilers_own_words() {
    screen.type("person(3)\r");
    screen.await("^");
    screen.type(ALT_E);
    screen.await("The compiler's own words:");
    assertThat(screen.seen()).contains("required:").endsWith("lever>");
    screen.type("1 + 1\r");
    screen.await("\n2\nlever>");
    screen.type(ALT_E);
    screen.await("The last input went well: the compiler had nothing to say.");
  }

  @Test
  void a_key_tells_what_is_known_of_the_word_at_the_cursor() {
    screen.type("hinge" + F1);
    screen.await("(Person lifter)");
    screen.await("the line again", () -> screen.seen().endsWith("lever> hinge"));
    screen.type(CTRL_C + "(" + F1);
    screen.await("Nothing is known of this place. Put the cursor on a word, and ask again.");
  }

  @Test
  void in_a_narrower_window_typing_goes_on_in_the_next_row() {
    screen.type("int narrow = 1000 + 2000 + 300");
    screen.await("+ 300");
    screen.resize(40, 12);
    screen.type("0 + 4000 + 5000 + 6000 + 7000 + 8000");
    screen.await("8000");
    assertThat(screen.seen().replace("\n", ""))
        .isEqualTo("lever> int narrow = 1000 + 2000 + 3000 + 4000 + 5000 + 6000 + 7000 + 8000");
    screen.type("\rnarrow\r");
    screen.await("\n36000\nlever>");
  }

  @Test
  void what_the_code_prints_and_shows_on_the_way_stands_at_once_and_beside_the_bar()
      throws Exception {
    Path go = folder.resolve("go");
    screen.type(
        "{ System.out.print(\"half a line\"); display(\"shown early\"); while (!Files.exists(Path.of(\""
            + go.toString().replace("\\", "/")
            + "\"))) Thread.sleep(5); }\r");
    screen.await("half a line\nshown early");
    Files.createFile(go);
    screen.await("lever>", () -> screen.seen().endsWith("lever>"));
    screen.type(CTRL_L);
    Path seen = folder.resolve("seen");
    screen.type("import java.util.concurrent.locks.LockSupport\r");
    screen.await("LockSupport\nlever>");
    // The last values are slow until the bar was seen, however quick the machine is.
    screen.type(
        "sweep(\"h\", cm(1), cm(2), 100, h -> { LockSupport.parkNanos(40_000_000L);"
            + " System.out.println(\"one\"); for (int i = 0; i < 100 &&"
            + " h.getValue().doubleValue() > 1.8 && !Files.exists(Path.of(\""
            + seen.toString().replace("\\", "/")
            + "\")); i++) LockSupport.parkNanos(20_000_000L); return null; }).rows().size()\r");
    screen.await(" of 100, about ");
    Files.createFile(seen);
    screen.await("\n100\nlever>");
    assertThat(screen.seen().lines().filter(l -> l.contains("one") && !l.contains("sweep")))
        .isNotEmpty()
        .allMatch("one"::equals);
    assertThat(screen.seen()).doesNotContain(" of 100, about");
  }

  @Test
  void offered_code_stands_behind_the_next_prompt_ready_for_enter() {
    screen.offer("20 + 3");
    screen.type("1 + 1\r");
    screen.await("\n2\nlever> 20 + 3");
    screen.type("00\r");
    screen.await("\n320\nlever>");
  }

  @Test
  void system_exit_is_refused_and_the_shell_goes_on() {
    screen.type("System.exit(0)\r");
    screen.await("so it was not done");
    screen.type("lifter.mass()\r");
    screen.await("\n85 kg\nlever>");
  }

  @Test
  void ctrl_c_stops_a_loop_that_prints_without_end() {
    screen.type("for (long i = 0; ; i++) System.out.println(\"again \" + i)\r");
    screen.await("again 1");
    long typed = System.nanoTime();
    screen.type(CTRL_C);
    screen.await("Stopped.\nlever>");
    // Promptly, also on a machine that is busy with other things.
    assertThat(System.nanoTime() - typed).isLessThan(8_000_000_000L);
  }

  @Test
  void a_line_is_in_the_history_file_before_it_has_run() throws Exception {
    Path file = folder.resolve("leverbook").resolve("history");
    screen.type("while (true) Thread.sleep(1)\r");
    screen.await("the line", () -> read(file).contains("while (true) Thread.sleep(1)"));
    screen.await("a running loop", this::isRunning);
    screen.type(CTRL_C);
    screen.await("Stopped.\nlever>");
    screen.type("   7 * 7\r");
    screen.await("\n49\n");
    assertThat(read(file)).contains("   7 * 7");
  }

  /** Whether the user's code sleeps on one of its threads. */
  private boolean isRunning() {
    return Thread.getAllStackTraces().entrySet().stream()
        .filter(thread -> thread.getKey().getName().startsWith("leverbook evaluation"))
        .anyMatch(
            thread ->
                thread.getValue().length > 0
                    && thread.getValue()[0].getMethodName().startsWith("sleep"));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (java.io.IOException e) {
      return "";
    }
  }
}
