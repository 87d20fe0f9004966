package org.leverbook.kernel;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * The text that a cell prints, on its way to the reader: gathered for a short while, so that a
 * thousand lines are not a thousand messages, and ended where it becomes too much for a page.
 */
final class Printed {

  /**
   * What a cell may print, in bytes. Notebook servers leave out whatever comes faster than a
   * million bytes a second, counted over three seconds, results and errors too; less than three
   * million can never make them.
   */
  static final int MOST = 2_000_000;

  private static final int LARGE = 64 * 1024;
  private static final int MOST_TURNS = 32;
  private static final long GATHER = 60;

  private static final ScheduledExecutorService CLOCK =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "leverbook printing");
            thread.setDaemon(true);
            return thread;
          });

  /** Text of one stream, up to where the other one speaks. */
  private record Piece(String stream, ByteArrayOutputStream bytes) {}

  private final Cell cell;
  private final List<Piece> pieces = new ArrayList<>();
  private int gathered;
  private long printed;
  private boolean due;

  Printed(Cell cell) {
    this.cell = cell;
  }

  /**
   * Prints.
   *
   * @param stream stdout or stderr
   * @param bytes UTF-8; the end of a letter may come later
   */
  void print(String stream, byte[] bytes, int from, int length) {
    if (length == 0) {
      return;
    }
    boolean much;
    synchronized (this) {
      much = gathered + length >= LARGE;
    }
    if (much) {
      // Outside the lock: others must be able to go on.
      await();
    }
    synchronized (this) {
      if (printed >= MOST) {
        return;
      }
      int kept = (int) Math.min(length, MOST - printed);
      printed += kept;
      add(stream, bytes, from, kept);
      if (printed >= MOST) {
        flush();
        send("stderr", note());
      } else if (gathered >= LARGE) {
        flush(false);
      } else if (!due) {
        due = true;
        CLOCK.schedule(this::flushDue, GATHER, TimeUnit.MILLISECONDS);
      }
    }
  }

  private static String note() {
    return String.format(
        Locale.ROOT,
        "%nThis cell has printed more than %.0f MB; the rest is not shown. Write so much to a file,"
            + " or show less.%n",
        MOST / 1e6);
  }

  private void await() {
    try {
      cell.awaitRoom();
    } catch (InterruptedException e) {
      // The code is asked to stop: it says its last words and meets its stop check.
      Thread.currentThread().interrupt();
    }
  }

  private void add(String stream, byte[] bytes, int from, int length) {
    Piece into = null;
    int last = pieces.size() - 1;
    for (int i = last; i >= 0 && into == null; i--) {
      // In order, unless the streams take turns too often.
      boolean own = pieces.get(i).stream().equals(stream);
      into = own && (i == last || pieces.size() >= MOST_TURNS) ? pieces.get(i) : null;
    }
    if (into == null) {
      into = new Piece(stream, new ByteArrayOutputStream());
      pieces.add(into);
    }
    into.bytes().write(bytes, from, length);
    gathered += length;
  }

  private synchronized void flushDue() {
    due = false;
    flush(false);
  }

  /** Sends what is gathered. */
  synchronized void flush() {
    flush(true);
  }

  private synchronized void flush(boolean all) {
    List<Piece> sent = List.copyOf(pieces);
    pieces.clear();
    gathered = 0;
    for (Piece piece : sent) {
      byte[] bytes = piece.bytes().toByteArray();
      int whole = all ? bytes.length : wholeLetters(bytes);
      send(piece.stream(), new String(bytes, 0, whole, StandardCharsets.UTF_8));
      if (whole < bytes.length) {
        add(piece.stream(), bytes, whole, bytes.length - whole);
      }
    }
  }

  private void send(String stream, String text) {
    if (!text.isEmpty()) {
      ObjectNode content = Json.object();
      content.put("name", stream);
      content.put("text", text);
      cell.tell("stream", content);
    }
  }

  /** How many bytes are whole letters: the last letter's other bytes may still be on their way. */
  static int wholeLetters(byte[] bytes) {
    int first = bytes.length - 1;
    while (first > bytes.length - 4 && first > 0 && (bytes[first] & 0xC0) == 0x80) {
      first--;
    }
    if (first < 0) {
      return 0;
    }
    int lead = bytes[first] & 0xFF;
    int needed = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC0 ? 2 : 1;
    return first + needed > bytes.length ? first : bytes.length;
  }
}
