package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jline.terminal.Size;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.leverbook.desk.Desk;
import org.leverbook.display.Preferences;

/** The shell as a door: lines go in, what it says comes out. */
public final class ShellDoor {

  private static final long PATIENCE = 120_000_000_000L;

  /** So wide and high that no table is cut. */
  private static final Size WALL = Size.of(4000, 2000);

  private ShellDoor() {}

  /** What the shell prints where lines come from a pipe. */
  public static String piped(List<String> lines) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Voice voice = new Voice(new PrintWriter(out), new PrintWriter(err), Voice.Manner.PLAIN);
    try (Desk desk = Desk.open()) {
      String all = String.join("\n", lines);
      boolean good = new PipedInput(desk, new BufferedReader(new StringReader(all)), voice).run();
      assertThat(err.toString()).isEmpty();
      assertThat(good).isTrue();
    }
    return out.toString();
  }

  /**
   * What is shown where a person types.
   *
   * @param lines each typed when the one before has been answered
   * @param home where the shell keeps its history
   */
  public static String typed(List<String> lines, Path home) throws Exception {
    ByteArrayOutputStream screen = new ByteArrayOutputStream();
    LineDisciplineTerminal terminal =
        new LineDisciplineTerminal("test", "xterm", screen, StandardCharsets.UTF_8);
    terminal.setSize(WALL);
    String place = home.toAbsolutePath().toString();
    Conversation conversation =
        new Conversation(
            terminal,
            Shell.startBehind(),
            Map.of("XDG_STATE_HOME", place, "LOCALAPPDATA", place),
            () -> Preferences.USUAL,
            open -> Optional.empty());
    Thread shell = new Thread(conversation::run, "shell as a door");
    shell.start();
    try {
      for (int i = 0; i < lines.size(); i++) {
        type(terminal, lines.get(i) + "\r\"answered \" + " + i + "\r");
        await(screen, "\nanswered " + i + "\n");
      }
      return shown(screen);
    } finally {
      terminal.close();
      shell.join(PATIENCE / 1_000_000);
    }
  }

  private static void type(LineDisciplineTerminal terminal, String text) throws IOException {
    for (byte key : text.getBytes(StandardCharsets.UTF_8)) {
      terminal.processInputByte(key);
    }
  }

  private static void await(ByteArrayOutputStream screen, String text) throws Exception {
    long end = System.nanoTime() + PATIENCE;
    while (!shown(screen).contains(text)) {
      assertThat(System.nanoTime()).as("no \"" + text + "\" in " + shown(screen)).isLessThan(end);
      Thread.sleep(10);
    }
  }

  /** Without colours, and without what only moves the cursor or sets modes. */
  private static String shown(ByteArrayOutputStream screen) {
    return screen
        .toString(StandardCharsets.UTF_8)
        .replaceAll("\u001b\\[\\??[0-9;]*[a-zA-Z]|\u001b[=>]|\r", "");
  }
}
