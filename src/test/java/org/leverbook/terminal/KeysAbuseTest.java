package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.abuse.Campaign;
import org.leverbook.abuse.Mangled;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Preferences;
import org.leverbook.language.Leaving;

/** Random keys, escape sequences, pastes and window sizes: the shell lives and forgets nothing. */
class KeysAbuseTest {

  private static final double SHARE = 0.01;

  /** After so many the shell must answer. */
  private static final int A_ROUND = 20;

  /** Between two tries to get a prompt, nanoseconds. */
  private static final long BREATH = 3_000_000_000L;

  private static final List<String> KEYS =
      List.of(
          "\r",
          "\n",
          "\t",
          "\t\t",
          "\u0001",
          "\u0002",
          "\u0003",
          "\u0005",
          "\u0006",
          "\u0008",
          "\u000b",
          "\u000c",
          "\u000e",
          "\u0010",
          "\u0012",
          "\u0013",
          "\u0014",
          "\u0015",
          "\u0016x",
          "\u0017",
          "\u0018",
          "\u0019",
          "\u001a",
          "\u001c",
          "\u001d",
          "\u001f",
          "\u007f",
          "\u001b",
          "\u001b\u001b",
          "\u001bOA",
          "\u001bOB",
          "\u001bOC",
          "\u001bOD",
          "\u001b[A",
          "\u001b[1;5C",
          "\u001b[3~",
          "\u001b[5~",
          "\u001bOP",
          "\u001be",
          "\u001bd",
          "\u001bf",
          "\u001bb",
          "\u001b[200~",
          "\u001b[201~",
          "\u001b[M !!",
          "\u001b[<0;1;1M",
          "\u001b]0;x\u0007",
          "\u001b[",
          "\u001b[999999999999m",
          "\u009b",
          "é",
          "膝",
          "\ud83c\udfcb",
          "\u0000",
          "(",
          ")",
          "\"",
          "{",
          "}",
          ";",
          "hinge(",
          "lifter.",
          "1 + 1",
          "\"a",
          "/*",
          "//",
          "ö",
          "\u00a0");

  private static final List<String> PASTES =
      List.of(
          "lever> 1 + 1\n2\nlever> int a = 5;",
          "int a = 5;\nint b = a +\n3;\n",
          "Dear coach,\nhow are you?\n",
          "a\tb\tc\n1\t2\t3\n",
          "{\n{\n{\n",
          "\"\"\"\ntext\n",
          "\u0000\u0001\u0002\n",
          ">>> print(1)\n",
          "x".repeat(3000),
          "int y = 1; // \ud83c\udfcb\n".repeat(20));

  @TempDir private Path folder;
  private final ByteArrayOutputStream said = new ByteArrayOutputStream();
  private PrintStream before;

  static List<Long> seeds() {
    return Campaign.seeds(SHARE);
  }

  @BeforeEach
  void choose() {
    Leaving.forget();
    OutputFolder.choose(folder.resolve("out"));
    before = System.err;
    System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
  }

  @AfterEach
  void putBack() {
    System.setErr(before);
    OutputFolder.choose(Path.of(""));
    Leaving.forget();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void random_keys_leave_the_shell_answering_and_its_variables_there(long seed) throws Exception {
    Campaign campaign = new Campaign("keys and pastes");
    Random random = new Random(seed);
    Mangled mangled = new Mangled(random);
    String home = folder.toAbsolutePath().toString();
    VirtualScreen screen =
        new VirtualScreen("xterm-256color", 100, 30)
            .talk(Map.of("XDG_STATE_HOME", home, "LOCALAPPDATA", home), () -> Preferences.USUAL);
    screen.type("int kept = 4100\r");
    screen.await("4100\nlever>");
    int size = Campaign.perSeed(SHARE);
    for (int i = 0; i < size; i++) {
      screen.type(input(random, mangled));
      campaign.count("typed");
      if (random.nextInt(15) == 0) {
        screen.resize(1 + random.nextInt(150), 1 + random.nextInt(50));
      }
      if (i % A_ROUND == A_ROUND - 1 || i == size - 1) {
        answers(screen, i, campaign);
      }
    }
    screen.close();
    said.toString(StandardCharsets.UTF_8)
        .lines()
        .filter(line -> line.contains("Exception") || line.contains("\tat "))
        .forEach(line -> campaign.complain("on the error stream: " + line, ""));
    campaign.tell(seed);
    assertThat(campaign.complaints()).isEmpty();
    assertThat(Files.readString(folder.resolve("leverbook").resolve("history")))
        .contains("int kept = 4100");
  }

  private static String input(Random random, Mangled mangled) {
    return switch (random.nextInt(6)) {
      case 0 ->
          "\u001b[200~" + mangled.text(PASTES.get(random.nextInt(PASTES.size()))) + "\u001b[201~";
      case 1 -> mangled.text("hinge(lifter).holding(barbell(kg(140)))");
      default -> {
        StringBuilder keys = new StringBuilder();
        for (int i = random.nextInt(8); i >= 0; i--) {
          keys.append(KEYS.get(random.nextInt(KEYS.size())));
        }
        yield keys.toString().replace("\u0004", "");
      }
    };
  }

  /** As a person does who sees no prompt: tries again until there is an answer. */
  private static void answers(VirtualScreen screen, int round, Campaign campaign) {
    screen.resize(100, 30);
    String question = "kept + " + (round + 1);
    String answer = "\n" + (4100 + round + 1) + "\nlever>";
    long[] next = {0};
    screen.await(
        question + " answered",
        () -> {
          if (System.nanoTime() > next[0]) {
            // Ends a paste, interrupts, clears line and screen, asks.
            screen.type("\u001b[201~\u0003\u0001\u000b\u000c" + question + "\r");
            next[0] = System.nanoTime() + BREATH;
          }
          return screen.seen().contains(answer);
        });
    if (screen.seen().contains("Exception") || screen.seen().contains("\tat ")) {
      campaign.complain("a stack trace is shown", screen.seen());
    }
  }
}
