package org.leverbook.kernel;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import org.leverbook.quantity.Refused;
import org.leverbook.session.Stopped;

/** What the running code reads as its input: each line is asked for from whoever sent the cell. */
final class TypedInput extends InputStream {

  /** What a client sends for the end of all input. */
  private static final String END = "\u0004";

  private static final long LOOK = 100;

  private final BlockingQueue<String> answers = new LinkedBlockingQueue<>();
  private final ReentrantLock reading = new ReentrantLock();
  private final BiConsumer<Cell, ObjectNode> asker;
  private volatile Supplier<Optional<Cell>> cells = Optional::empty;
  private volatile boolean stale;
  private byte[] line = new byte[0];
  private int at;

  /** Input that is asked for: {@code asker} sends an input_request to whoever sent the cell. */
  TypedInput(BiConsumer<Cell, ObjectNode> asker) {
    this.asker = asker;
  }

  /** Whose code reads. */
  void readers(Supplier<Optional<Cell>> running) {
    this.cells = running;
  }

  /** An answer came. */
  void answer(String value) {
    answers.add(value);
  }

  /** A cell begins: what the one before left unread is gone. */
  void forget() {
    // No lock: a thread that is still reading must not hold up the next cell.
    stale = true;
  }

  @Override
  public int read() {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] into, int from, int length) {
    if (length == 0) {
      return 0;
    }
    lock();
    try {
      if (stale || at == line.length) {
        String typed = ask();
        if (typed.equals(END)) {
          return -1;
        }
        line = (typed + "\n").getBytes(StandardCharsets.UTF_8);
        at = 0;
      }
      int given = Math.min(length, line.length - at);
      System.arraycopy(line, at, into, from, given);
      at += given;
      return given;
    } finally {
      reading.unlock();
    }
  }

  @Override
  public int available() {
    return stale ? 0 : line.length - at;
  }

  private void lock() {
    try {
      reading.lockInterruptibly();
    } catch (InterruptedException e) {
      throw new Stopped();
    }
  }

  private String ask() {
    stale = false;
    line = new byte[0];
    at = 0;
    Cell cell = cells.get().filter(Cell::takesInput).orElseThrow(TypedInput::nobody);
    cell.printed().flush();
    answers.clear();
    ObjectNode request = Json.object();
    request.put("prompt", "");
    request.put("password", false);
    asker.accept(cell, request);
    try {
      String answer = null;
      while (answer == null) {
        if (cell.isDone()) {
          throw nobody();
        }
        answer = answers.poll(LOOK, TimeUnit.MILLISECONDS);
      }
      return answer;
    } catch (InterruptedException e) {
      throw new Stopped();
    }
  }

  private static Refused nobody() {
    return new Refused(
        "This asks for input, and whoever runs the cell types none. Give the value in the code"
            + " instead.");
  }
}
