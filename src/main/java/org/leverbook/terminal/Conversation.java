package org.leverbook.terminal;

import java.util.Map;
import java.util.function.Supplier;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.Terminal.Signal;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStyle;
import org.jline.utils.InfoCmp.Capability;
import org.leverbook.desk.Desk;
import org.leverbook.display.Progress;
import org.leverbook.language.Leaving;
import org.leverbook.session.Evaluation;

/** A person at a terminal: prompt, evaluation, answer. */
final class Conversation {

  private static final String PROMPT = "lever> ";
  private static final String CONTINUATION = "   ... ";
  private static final int REMEMBERED = 5_000;
  private static final Size USUAL = Size.of(80, 24);

  private final Terminal terminal;
  private final Supplier<Desk> desk;
  private final Map<String, String> environment;
  private final Voice voice;

  /**
   * A conversation.
   *
   * @param terminal where it takes place
   * @param desk gives the session with its words, once it is ready
   * @param environment the environment variables
   */
  Conversation(Terminal terminal, Supplier<Desk> desk, Map<String, String> environment) {
    this.terminal = terminal;
    this.desk = desk;
    this.environment = environment;
    this.voice = new Voice(terminal.writer(), terminal.writer(), this::fitted, this::alarming);
  }

  /** Talks until the user leaves by {@code quit()} or the end of input. */
  void run() {
    giveItASize();
    voice.note(Greeting.TEXT);
    LineReader reader = reader();
    while (!Leaving.isAsked()) {
      try {
        answer(reader.readLine(PROMPT));
      } catch (UserInterruptException e) {
        // Ctrl-C at the prompt clears what was typed.
        continue;
      } catch (EndOfFileException e) {
        break;
      } catch (IllegalStateException e) {
        // A terminal whose window was closed under the prompt says so only this way.
        if (isOpen()) {
          throw e;
        }
        break;
      }
    }
    desk.get().close();
  }

  private boolean isOpen() {
    try {
      terminal.writer();
      return true;
    } catch (IllegalStateException e) {
      return false;
    }
  }

  private LineReader reader() {
    LineReaderBuilder builder =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .appName("leverbook")
            .parser(new JavaParser(text -> desk.get().session().completeness(text)))
            .completer(new WordCompleter((text, at) -> desk.get().session().completions(text, at)))
            .variable(LineReader.SECONDARY_PROMPT_PATTERN, CONTINUATION)
            .variable(LineReader.HISTORY_SIZE, REMEMBERED)
            .variable(LineReader.HISTORY_FILE_SIZE, REMEMBERED)
            // In Java an exclamation mark says "not".
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            // Blanks in a quoted text matter.
            .option(LineReader.Option.HISTORY_REDUCE_BLANKS, false);
    HistoryFile.ready(HistoryFile.place(environment, System.getProperties()))
        .ifPresent(file -> builder.variable(LineReader.HISTORY_FILE, file));
    return builder.build();
  }

  private void answer(String text) {
    if (text.isBlank()) {
      return;
    }
    Desk ready = desk.get();
    Terminal.SignalHandler before = terminal.handle(Signal.INT, signal -> interrupt(ready));
    Progress.Listener listened = Progress.listen(new ProgressBar(terminal));
    try {
      Evaluation evaluation = ready.evaluate(text, voice::value);
      evaluation.notes().forEach(voice::note);
      boolean severalLines = text.contains("\n");
      evaluation
          .problem()
          .ifPresent(p -> voice.problem(p, severalLines ? "line " + p.line() + ": " : ""));
    } finally {
      Progress.listen(listened);
      terminal.handle(Signal.INT, before);
    }
  }

  private void interrupt(Desk running) {
    // The terminal has shown ^C: the answer begins on a line of its own.
    terminal.writer().println();
    terminal.writer().flush();
    running.session().stop();
  }

  private String fitted(String text) {
    Size size = terminal.getSize();
    return new Fitting(size.getColumns(), size.getRows()).fit(text);
  }

  private String alarming(String text) {
    Integer colours = terminal.getNumericCapability(Capability.max_colors);
    boolean plain = !environment.getOrDefault("NO_COLOR", "").isEmpty();
    return plain || colours == null || colours < 8
        ? text
        : new AttributedString(text, AttributedStyle.DEFAULT.foreground(AttributedStyle.RED))
            .toAnsi(terminal);
  }

  /** Some terminals do not know their size, and say zero. */
  private void giveItASize() {
    Size size = terminal.getSize();
    if (size.getColumns() <= 0 || size.getRows() <= 0) {
      terminal.setSize(USUAL);
    }
  }
}
