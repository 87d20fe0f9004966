package org.leverbook.terminal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jline.keymap.KeyMap;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedString;
import org.jline.utils.InfoCmp.Capability;

/**
 * Where everything is written that is not the line being typed: answers, what the user's code
 * prints, and the bar of long work. A print wipes the bar off first, and the bar waits while a
 * printed line is unfinished; so neither breaks the other.
 */
final class Paper extends OutputStream {

  private static final int FEWEST_COLUMNS = 20;

  private final Terminal terminal;
  private final Charset encoding;
  private boolean barStands;
  private boolean atLineStart = true;
  private BooleanSupplier typing = () -> false;
  private Consumer<String> above = text -> {};
  private final ByteArrayOutputStream unfinished = new ByteArrayOutputStream();

  Paper(Terminal terminal) {
    this.terminal = terminal;
    this.encoding = terminal.encoding();
  }

  /**
   * What is printed while a line is typed, by code that was left behind, goes above it.
   *
   * @param now whether a line is typed now
   * @param lines takes finished lines
   */
  synchronized void whileTyping(BooleanSupplier now, Consumer<String> lines) {
    typing = now;
    above = lines;
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    if (length == 0) {
      return;
    }
    String lines = null;
    synchronized (this) {
      if (typing.getAsBoolean()) {
        unfinished.write(bytes, offset, length);
        lines = bytes[offset + length - 1] == '\n' ? taken() : "";
      } else {
        put(bytes, offset, length);
        atLineStart = bytes[offset + length - 1] == '\n';
      }
    }
    if (lines != null && !lines.isEmpty()) {
      // Not under our lock: the editor has one of its own.
      above.accept(lines);
    }
  }

  private void put(byte[] bytes, int offset, int length) throws IOException {
    try {
      wipe();
      terminal.output().write(bytes, offset, length);
    } catch (IllegalStateException e) {
      // The user's code prints into a window that was closed: a print must not fail of that.
      throw new IOException(e);
    }
  }

  private String taken() {
    String text = unfinished.toString(encoding);
    unfinished.reset();
    return text;
  }

  @Override
  public synchronized void flush() throws IOException {
    try {
      terminal.output().flush();
    } catch (IllegalStateException e) {
      throw new IOException(e);
    }
  }

  /** An input begins: the editor has left the cursor at the beginning of a line. */
  synchronized void begin() throws IOException {
    atLineStart = true;
    if (unfinished.size() > 0) {
      terminal.output().write(unfinished.toByteArray());
      unfinished.reset();
      atLineStart = false;
    }
  }

  /** Whatever comes next begins a line. */
  synchronized void freshLine() {
    try {
      wipe();
      if (!atLineStart) {
        terminal.output().write('\n');
        terminal.output().flush();
        atLineStart = true;
      }
    } catch (IOException | IllegalStateException e) {
      // The window was closed: nobody is left to tell.
      return;
    }
  }

  /** The terminal itself has written something on this line, such as a typed ^C. */
  synchronized void smudged() {
    atLineStart = false;
  }

  /** Draws the bar, unless a printed line is unfinished; an empty text wipes it off. */
  synchronized void bar(String text) {
    if (!atLineStart || typing.getAsBoolean()) {
      return;
    }
    try {
      // The last column stays free: a full line would go on in the next.
      int columns = Math.max(FEWEST_COLUMNS, terminal.getSize().getColumns()) - 1;
      draw(new AttributedString(text).columnSubSequence(0, columns).toString(), columns);
      barStands = !text.isEmpty();
    } catch (IOException | IllegalStateException e) {
      // The window was closed meanwhile: nobody is left to tell, and the work must not fail of it.
      barStands = false;
    }
  }

  private void wipe() throws IOException {
    if (barStands) {
      barStands = false;
      draw("", Math.max(FEWEST_COLUMNS, terminal.getSize().getColumns()) - 1);
    }
  }

  private void draw(String text, int columns) throws IOException {
    boolean erases = terminal.getStringCapability(Capability.clr_eol) != null;
    String rest =
        erases
            ? KeyMap.key(terminal, Capability.clr_eol)
            : " ".repeat(Math.max(0, columns - new AttributedString(text).columnLength()));
    terminal.output().write(("\r" + text + rest + "\r").getBytes(encoding));
    terminal.output().flush();
  }
}
