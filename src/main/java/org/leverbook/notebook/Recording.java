package org.leverbook.notebook;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.leverbook.display.Display;
import org.leverbook.display.OnStage;
import org.leverbook.display.Shown;
import org.leverbook.display.Stage;

/**
 * Takes down what cells give while they run, from whatever thread it comes: what they print, what
 * they show on the way, their result, their mistake. What a cell gives beyond a limit is counted
 * and left out, so that a runaway loop fills neither memory nor file.
 */
public final class Recording implements Stage.Audience {

  /** What one cell may print, in characters. */
  public static final long MOST_PRINTED = 10_000_000;

  /** What the values that one cell shows may take, in characters of all their forms. */
  public static final long MOST_SHOWN = 100_000_000;

  /** An output takes some room of its own, however short it is. */
  private static final long EACH = 500;

  private final Function<Shown, MimeBundle> forms;
  private final Map<Integer, Page> pages = new HashMap<>();
  private final Map<Long, Slot> scenes = new HashMap<>();
  private Page page = new Page();

  /** What one cell gave so far. */
  private static final class Page {
    private final List<Slot> slots = new ArrayList<>();
    private long printed;
    private long shown;
    private long unprinted;
    private long unshown;
    private Slot last;
  }

  /** One output in the making: a text that grows, a value that may change, or a mistake. */
  private static final class Slot {
    private String stream = "";
    private final StringBuilder text = new StringBuilder();
    private MimeBundle bundle;
    private boolean isResult;
    private Output.Failed failed;

    private Output output() {
      if (failed != null) {
        return failed;
      }
      return bundle == null
          ? new Output.Printed(stream, text.toString())
          : new Output.Given(isResult, bundle);
    }
  }

  /**
   * An empty recording.
   *
   * @param forms makes the forms of a value that are kept, such as {@code MimeBundle::of}
   */
  public Recording(Function<Shown, MimeBundle> forms) {
    this.forms = forms;
  }

  /**
   * From here on all belongs to this cell.
   *
   * @param cell its place in the notebook
   */
  public synchronized void begin(int cell) {
    page = new Page();
    pages.put(cell, page);
  }

  /**
   * A stream that takes down what is printed.
   *
   * @param name {@code "stdout"} or {@code "stderr"}
   * @return the stream; nothing waits in it
   */
  public PrintStream stream(String name) {
    return new PrintStream(
        new DecodingStream(text -> print(name, text)), false, StandardCharsets.UTF_8);
  }

  /**
   * Takes down a printed text.
   *
   * @param stream {@code "stdout"} or {@code "stderr"}
   * @param text what was printed
   */
  public synchronized void print(String stream, String text) {
    if (text.isEmpty()) {
      return;
    }
    long room = MOST_PRINTED - page.printed;
    String kept = room >= text.length() ? text : text.substring(0, (int) Math.max(0, room));
    page.unprinted += text.length() - kept.length();
    if (kept.isEmpty()) {
      return;
    }
    Slot last = page.slots.isEmpty() ? null : page.slots.get(page.slots.size() - 1);
    if (last == null || !last.stream.equals(stream)) {
      last = new Slot();
      last.stream = stream;
      page.slots.add(last);
      page.printed += EACH;
    }
    last.text.append(kept);
    page.printed += kept.length();
  }

  /**
   * Takes down the value of an expression; whether it is the cell's result turns out later.
   *
   * @param value any value, or null; the place of a value that was shown already adds nothing
   */
  public void value(Object value) {
    MimeBundle bundle = value instanceof OnStage ? null : forms.apply(Display.of(value));
    synchronized (this) {
      page.last = bundle == null ? null : add(bundle);
    }
  }

  /** The value taken down last was the cell's last word: it is its result. */
  public synchronized void lastIsResult() {
    if (page.last != null) {
      page.last.isResult = true;
    }
  }

  /**
   * Takes down the mistake at which the cell ended.
   *
   * @param failed the mistake
   */
  public synchronized void fail(Output.Failed failed) {
    Slot slot = new Slot();
    slot.failed = failed;
    page.slots.add(slot);
  }

  @Override
  public void shows(long scene, Object value) {
    MimeBundle bundle = forms.apply(Display.of(value));
    synchronized (this) {
      Slot slot = add(bundle);
      if (slot != null) {
        scenes.put(scene, slot);
      }
    }
  }

  @Override
  public void changes(long scene, Object value) {
    MimeBundle bundle = forms.apply(Display.of(value));
    synchronized (this) {
      Slot slot = scenes.get(scene);
      if (slot != null) {
        slot.bundle = bundle;
      }
    }
  }

  private synchronized Slot add(MimeBundle bundle) {
    long size = EACH + bundle.data().values().stream().mapToLong(String::length).sum();
    if (page.shown + size > MOST_SHOWN) {
      page.unshown++;
      return null;
    }
    page.shown += size;
    Slot slot = new Slot();
    slot.bundle = bundle;
    page.slots.add(slot);
    return slot;
  }

  /**
   * What a cell gave.
   *
   * @param cell its place in the notebook
   * @return in order, with a note where something was left out
   */
  public synchronized List<Output> outputs(int cell) {
    Page of = pages.getOrDefault(cell, new Page());
    List<Output> outputs = new ArrayList<>();
    of.slots.forEach(slot -> outputs.add(slot.output()));
    if (of.unprinted > 0) {
      outputs.add(
          note(
              "%,d more characters were printed; of one cell the first %,d are kept.%n",
              of.unprinted, MOST_PRINTED));
    }
    if (of.unshown > 0) {
      outputs.add(
          note(
              "%,d more values were shown; of one cell %,d MB are kept.%n",
              of.unshown, MOST_SHOWN / 1_000_000));
    }
    return outputs;
  }

  private static Output note(String format, long left, long kept) {
    return new Output.Printed(
        "stderr", String.format(Locale.ROOT, format.replace("%n", "\n"), left, kept));
  }
}
