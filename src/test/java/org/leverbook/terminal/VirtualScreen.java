package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jline.terminal.Size;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.jline.utils.ScreenTerminal;
import org.leverbook.desk.Desk;
import org.leverbook.display.Preferences;

/** A terminal without a window: real bytes are typed, and the cells it would show are read. */
final class VirtualScreen {

  private static final long PATIENCE = 60_000_000_000L;

  private final ScreenTerminal screen;
  private final LineDisciplineTerminal terminal;
  private final AtomicReference<String> offer = new AtomicReference<>();
  private Thread shell;

  VirtualScreen(String type, int columns, int rows) throws IOException {
    var made = ScreenTerminal.withTerminal("test", type, columns, rows);
    screen = made.screen();
    terminal = made.terminal();
  }

  LineDisciplineTerminal terminal() {
    return terminal;
  }

  /** Starts a shell on it, and waits for its prompt. */
  VirtualScreen talk(Map<String, String> environment, Supplier<Preferences> looks) {
    Supplier<Desk> desk = Shell.startBehind();
    Conversation conversation =
        new Conversation(
            terminal, desk, environment, looks, open -> Optional.ofNullable(offer.getAndSet(null)));
    shell = new Thread(conversation::run, "shell of test");
    shell.start();
    await("lever>");
    return this;
  }

  void type(String keys) {
    try {
      for (byte key : keys.getBytes(StandardCharsets.UTF_8)) {
        terminal.processInputByte(key);
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** Puts code behind the next prompt. */
  void offer(String code) {
    offer.set(code);
  }

  void resize(int columns, int rows) {
    screen.setSize(Size.of(columns, rows));
    terminal.setSize(Size.of(columns, rows));
    terminal.raise(org.jline.terminal.Terminal.Signal.WINCH);
  }

  /** The rows as they are seen, without blanks at their ends; the last ones not if empty. */
  String seen() {
    return IntStream.range(0, screen.getRows())
        .mapToObj(row -> text(cells(), row).stripTrailing())
        .collect(Collectors.joining("\n"))
        .stripTrailing();
  }

  private long[] cells() {
    long[] cells = new long[screen.getColumns() * screen.getRows()];
    screen.dump(cells, new int[2]);
    return cells;
  }

  private String text(long[] cells, int row) {
    int columns = screen.getColumns();
    StringBuilder text = new StringBuilder();
    for (int i = row * columns; i < (row + 1) * columns && i < cells.length; i++) {
      int letter = ScreenTerminal.cellCodePoint(cells[i]);
      text.appendCodePoint(letter == 0 ? ' ' : letter);
    }
    return text.toString();
  }

  /** The first cell of the last place where a text is seen. */
  long cell(String text) {
    long[] cells = cells();
    for (int row = screen.getRows() - 1; row >= 0; row--) {
      int column = text(cells, row).lastIndexOf(text);
      if (column >= 0) {
        return cells[row * screen.getColumns() + column];
      }
    }
    throw new AssertionError("no \"" + text + "\" in:\n" + seen());
  }

  boolean isMarked(String text) {
    return ScreenTerminal.cellUnderline(cell(text));
  }

  boolean isColoured(String text) {
    return ScreenTerminal.cellHasForeground(cell(text));
  }

  /** The colour of a text: 0xRGB with four bits each. */
  int colour(String text) {
    assertThat(isColoured(text)).as("colour of " + text + " in:\n" + seen()).isTrue();
    return ScreenTerminal.cellForeground(cell(text));
  }

  void await(String text) {
    await(text, () -> seen().contains(text));
  }

  void awaitGone(String text) {
    await("not " + text, () -> !seen().contains(text));
  }

  void await(String what, BooleanSupplier condition) {
    long end = System.nanoTime() + PATIENCE;
    while (!condition.getAsBoolean()) {
      assertThat(System.nanoTime()).as("no \"" + what + "\" in:\n" + seen()).isLessThan(end);
      assertThat(shell == null || shell.isAlive()).as("alive, showing:\n" + seen()).isTrue();
      java.util.concurrent.locks.LockSupport.parkNanos(10_000_000L);
    }
  }

  /** Closes the window; the shell must go with it. */
  void close() throws Exception {
    terminal.close();
    if (shell != null) {
      shell.join(20_000);
      assertThat(shell.isAlive()).isFalse();
    }
  }
}
