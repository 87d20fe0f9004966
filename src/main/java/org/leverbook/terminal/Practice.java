package org.leverbook.terminal;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.leverbook.display.Preferences;
import org.leverbook.language.Leaving;

/**
 * A short session that nobody sees, which loads what the first minutes of a real one load. Played
 * when the archive of loaded classes is made.
 */
public final class Practice {

  private static final List<String> TYPED =
      List.of(
          "1+1\r",
          "var lifter = person(MALE, kg(85), cm(178))\r",
          "hinge(lifter).hol\t",
          "barbell(kg(140))).start()\r",
          "int twice(int x) {\r",
          "return 2 * x;\r",
          "}\r",
          "twice(4)\r",
          "hing()\r",
          "person(MALE, kg(85), m(178))\r",
          "help(\"hinge\").text().length()\r",
          "quit()\r");

  private Practice() {}

  /**
   * Plays the session and returns when it is over.
   *
   * @throws IOException if there is no terminal to play on
   */
  public static void run() throws IOException {
    Leaving.forget();
    meetTheRealTerminal();
    try (LineDisciplineTerminal terminal =
        new LineDisciplineTerminal(
            "practice", "xterm", OutputStream.nullOutputStream(), StandardCharsets.UTF_8)) {
      terminal.setSize(Size.of(100, 40));
      for (String line : TYPED) {
        terminal.processInputBytes(line.getBytes(StandardCharsets.UTF_8));
      }
      new Conversation(
              terminal,
              Shell.startBehind(),
              Map.of(),
              () -> Preferences.USUAL,
              open -> Optional.empty())
          .run();
    }
  }

  /** Its classes are another kind's than the practice terminal's. */
  private static void meetTheRealTerminal() throws IOException {
    try (Terminal real =
        TerminalBuilder.builder()
            .system(true)
            .ffm(false)
            .dumb(true)
            .encoding(Encoding.ofOutput())
            .build()) {
      real.getSize();
    }
  }
}
