package org.leverbook.kernel;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.leverbook.display.Display;
import org.leverbook.display.Progress;
import org.leverbook.display.Stage;
import org.leverbook.session.Errands;

/**
 * Where the running code finds its streams, its stage and its listener while a kernel is open: each
 * leads to the cell that the code belongs to.
 */
final class Stand implements AutoCloseable {

  private final Log log;
  private final PrintStream out = System.out;
  private final PrintStream err = System.err;
  private final InputStream in = System.in;
  private final Stage.Audience watched;
  private final Progress.Listener listened;
  private volatile Cell latest;

  /** Takes the place of the process's streams. */
  Stand(InputStream input, Log log) {
    this.log = log;
    System.setOut(stream("stdout"));
    System.setErr(stream("stderr"));
    System.setIn(input);
    this.watched = Stage.watch(new OnShow());
    this.listened = Progress.listen(new OnProgress());
  }

  /** A cell begins: what belongs to no other goes there. */
  void turnTo(Cell cell) {
    latest = cell;
  }

  /** The cell whose code runs on this thread. */
  Optional<Cell> cell() {
    return Errands.here()
        .filter(errand -> errand instanceof Cell)
        .map(errand -> (Cell) errand)
        .or(() -> Optional.ofNullable(latest));
  }

  private PrintStream stream(String name) {
    OutputStream each =
        new OutputStream() {
          @Override
          public void write(int letter) {
            write(new byte[] {(byte) letter}, 0, 1);
          }

          @Override
          public void write(byte[] bytes, int from, int length) {
            cell()
                .ifPresentOrElse(
                    cell -> cell.printed().print(name, bytes, from, length),
                    () -> log.say(new String(bytes, from, length, StandardCharsets.UTF_8)));
          }
        };
    return new PrintStream(each, false, StandardCharsets.UTF_8);
  }

  /** Values shown on the way, each at a place of its own. */
  private final class OnShow implements Stage.Audience {
    @Override
    public void shows(long scene, Object value) {
      show("display_data", scene, value);
    }

    @Override
    public void changes(long scene, Object value) {
      show("update_display_data", scene, value);
    }

    private void show(String type, long scene, Object value) {
      Optional<Cell> cell = cell();
      if (cell.isPresent()) {
        try {
          cell.get().awaitRoom();
        } catch (InterruptedException e) {
          Thread.currentThread().interrupt();
        }
        cell.get().show(type, Forms.of(Display.of(value)), "scene-" + scene);
      }
    }
  }

  /** How far long work is, in one place for each. */
  private final class OnProgress implements Progress.Listener {

    private long place;
    private Progress last;

    @Override
    public synchronized void at(Progress progress) {
      boolean first = last == null || !last.what().equals(progress.what());
      place += first ? 1 : 0;
      last = progress;
      tell(first, Forms.of(progress));
    }

    @Override
    public synchronized void over() {
      if (last != null) {
        tell(false, Forms.over(last));
        last = null;
      }
    }

    private void tell(boolean first, ObjectNode data) {
      String type = first ? "display_data" : "update_display_data";
      cell().ifPresent(cell -> cell.show(type, data, "progress-" + place));
    }
  }

  /** Gives the process its streams back. */
  @Override
  public void close() {
    Progress.listen(listened);
    Stage.watch(watched);
    System.setIn(in);
    System.setErr(err);
    System.setOut(out);
  }
}
