package org.leverbook.terminal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jline.keymap.KeyMap;
import org.jline.reader.Candidate;
import org.jline.reader.LineReader;
import org.jline.reader.Reference;
import org.jline.reader.Widget;
import org.jline.reader.impl.LineReaderImpl;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.Display;
import org.jline.utils.InfoCmp.Capability;
import org.leverbook.session.CallHint;

/**
 * The line editor with what Java needs: a hint below the line, a pasted sentence that goes on with
 * a dot, and two keys that tell more.
 */
final class LineEditor extends LineReaderImpl {

  /** Below this height a hint would push the typed line out of sight. */
  private static final int FEWEST_ROWS = 6;

  private static final int MOST_HINTS = 4;

  /** How long a pasted line may keep the one before waiting, in milliseconds. */
  private static final long PASTED = 5;

  private final JavaInput input;
  private final Hints hints;
  private final HintLines lines;
  private List<Candidate> listed = List.of();
  private boolean hintsShown = true;

  /**
   * An editor.
   *
   * @param terminal where lines are typed
   * @param input what is known of a text
   * @param palette the colours
   * @param session finds what a call takes; may take its time
   */
  LineEditor(
      Terminal terminal,
      JavaInput input,
      Palette palette,
      BiFunction<String, Integer, Optional<CallHint>> session) {
    super(terminal, "leverbook", null);
    this.input = input;
    this.hints = new Hints(session, this::showAgain);
    this.lines = new HintLines(palette);
    setParser(input);
    setCompleter(input);
    if (palette.isDumb()) {
      hintsShown = false;
      option(Option.BRACKETED_PASTE, false);
    }
  }

  Hints hints() {
    return hints;
  }

  /**
   * Binds keys to something to read, which then stands above the line.
   *
   * @param name of the binding
   * @param text gives what to read for the typed text and the cursor
   * @param keys the keys, as they arrive
   */
  void tells(String name, BiFunction<String, Integer, String> text, String... keys) {
    Widget widget =
        () -> {
          printAbove(text.apply(buf.toString(), buf.cursor()));
          return true;
        };
    getWidgets().put(name, widget);
    for (String map : List.of(EMACS, VIINS)) {
      for (String key : keys) {
        getKeyMaps().get(map).bind(new Reference(name), key);
      }
    }
  }

  /** What a function key sends here, or else what it usually sends. */
  String key(Capability capability, String usual) {
    String sent = KeyMap.key(terminal, capability);
    return sent == null ? usual : sent;
  }

  @Override
  public AttributedString getDisplayedBufferWithPrompts(List<AttributedString> prompts) {
    AttributedString full = super.getDisplayedBufferWithPrompts(prompts);
    if (!hintsShown || !reading) {
      return full;
    }
    Optional<CallHint> hint = hints.at(buf.upToCursor());
    // A menu, a search or a question has the place below the line before any hint.
    boolean room = post == null && size.getRows() >= FEWEST_ROWS;
    if (!room || hint.isEmpty()) {
      return full;
    }
    int most = Math.min(MOST_HINTS, size.getRows() / FEWEST_ROWS);
    AttributedStringBuilder with = new AttributedStringBuilder().append(full);
    for (AttributedString line : lines.of(hint.get(), size.getColumns(), most)) {
      with.append("\n").append(line);
    }
    return with.toAttributedString();
  }

  private void showAgain() {
    lock.lock();
    try {
      if (reading) {
        redisplay();
      }
    } catch (IllegalStateException e) {
      // The window was closed while the hint was looked for.
      return;
    } finally {
      lock.unlock();
    }
  }

  /**
   * After a change of size the line is drawn anew from its first row. Terminals break their rows
   * anew as well, and some push the first of them out of sight, so what stood before is no guide.
   */
  @Override
  protected void handleSignal(Terminal.Signal signal) {
    if (signal != Terminal.Signal.WINCH || !hintsShown) {
      super.handleSignal(signal);
      return;
    }
    lock.lock();
    try {
      Size now = terminal.getBufferSize();
      if (now.equals(size)) {
        return;
      }
      for (int i = rowsToCursor(now.getColumns()); i > 1; i--) {
        terminal.puts(Capability.cursor_up);
      }
      terminal.puts(Capability.carriage_return);
      terminal.puts(Capability.clr_eos);
      size = now;
      display = new Display(terminal, false);
      display.resize(now);
      redisplay();
    } catch (IllegalStateException e) {
      // The window was closed while it changed.
      return;
    } finally {
      lock.unlock();
    }
  }

  private int rowsToCursor(int columns) {
    int rows = 0;
    AttributedString continuation = AttributedString.fromAnsi(continuation());
    for (String line : buf.upToCursor().split("\n", -1)) {
      int before = rows == 0 ? prompt.columnLength() : continuation.columnLength();
      int width = before + new AttributedString(line).columnLength();
      rows += Math.max(1, (width + columns - 1) / Math.max(1, columns));
    }
    return rows;
  }

  private String continuation() {
    return String.valueOf(getVariable(LineReader.SECONDARY_PROMPT_PATTERN));
  }

  /**
   * A line end that more text follows at once, beginning with a dot or a blank, was pasted: the
   * sentence may go on, so it is not evaluated yet.
   */
  @Override
  protected boolean acceptLine() {
    String text = buf.toString();
    if (!text.isBlank() && isGoneOnWith(peekCharacter(PASTED)) && input.isFinished(text)) {
      buf.cursor(buf.length());
      buf.write("\n");
      return true;
    }
    return super.acceptLine();
  }

  private static boolean isGoneOnWith(int next) {
    return next == '.' || next == ' ' || next == '\t';
  }

  /** A paste is one edit, whatever lines and stray control characters it brings. */
  @Override
  public boolean beginPaste() {
    buf.write(Pasted.cleaned(doReadStringUntil(BRACKETED_PASTE_END)));
    return true;
  }

  /**
   * Ctrl-X Ctrl-E would open an editor that no one here explains, and that hides what was typed.
   */
  @Override
  protected boolean editAndExecute() {
    beep();
    return true;
  }

  /** A list that is longer than the window is cut, and says so; a second Tab goes through all. */
  @Override
  protected boolean doList(
      List<Candidate> possible,
      String completed,
      boolean runLoop,
      BiFunction<CharSequence, Boolean, CharSequence> escaper,
      boolean forSuggestion) {
    int room = size.getRows() - rowsToCursor(size.getColumns()) - 1;
    listed = possible;
    List<Candidate> shown =
        runLoop ? CandidateList.fitting(possible, size.getColumns(), room) : possible;
    return super.doList(shown, completed, runLoop, escaper, forSuggestion);
  }

  /** The menu scrolls, so what the list had no room for is in it. */
  @Override
  protected boolean doMenu(
      List<Candidate> original,
      String completed,
      BiFunction<CharSequence, Boolean, CharSequence> escaper) {
    boolean cut = original.stream().anyMatch(CandidateList::isCount);
    List<Candidate> all =
        listed.stream()
            .filter(c -> c.value().startsWith(completed))
            .collect(Collectors.toCollection(ArrayList::new));
    return super.doMenu(cut ? all : original, completed, escaper);
  }

  /** The session says what fits best: its order stays. */
  @Override
  protected Comparator<Candidate> getCandidateComparator(boolean caseInsensitive, String word) {
    return Comparator.comparingInt(Candidate::sort);
  }

  /** Sets what is the same in every conversation. */
  LineEditor usual(int remembered, Supplier<AttributedString> continuation) {
    variable(LineReader.SECONDARY_PROMPT_PATTERN, continuation.get().toAnsi(terminal));
    variable(LineReader.HISTORY_SIZE, remembered);
    // Cutting the file down could lose what another shell writes meanwhile: see HistoryFile.
    variable(LineReader.HISTORY_FILE_SIZE, Integer.MAX_VALUE);
    // Lists are cut to the window instead: see doList.
    variable(LineReader.LIST_MAX, 0);
    variable(LineReader.FEATURES_MAX_BUFFER_SIZE, 20_000);
    // Both brackets are marked as long as the cursor is there: no need to jump.
    variable(LineReader.BLINK_MATCHING_PAREN, 0);
    // In Java an exclamation mark says "not".
    option(Option.DISABLE_EVENT_EXPANSION, true);
    // Blanks in a quoted text matter, and a line may begin with them.
    option(Option.HISTORY_REDUCE_BLANKS, false);
    option(Option.HISTORY_IGNORE_SPACE, false);
    // Each line is in the file before it is evaluated.
    option(Option.HISTORY_INCREMENTAL, true);
    return this;
  }
}
