package org.leverbook.terminal;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletionException;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jline.reader.EndOfFileException;
import org.jline.reader.MaskingCallback;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.Terminal.Signal;
import org.jline.utils.AttributedString;
import org.leverbook.desk.Desk;
import org.leverbook.display.Preferences;
import org.leverbook.display.Progress;
import org.leverbook.display.Stage;
import org.leverbook.language.Leaving;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Value;
import org.leverbook.terminal.Palette.Role;

/** A person at a terminal: prompt, evaluation, answer. */
final class Conversation {

  private static final Size USUAL = Size.of(80, 24);

  /** So many may take minutes, each being compiled on its own. */
  private static final int MANY_LINES = 500;

  private final Terminal terminal;
  private final Supplier<Desk> desk;
  private final Palette palette;
  private final Function<Desk, Optional<String>> offered;
  private final Paper paper;
  private final Voice voice;
  private final Editing editing;
  private final Continued continued = new Continued();
  private volatile Desk running;
  private Desk opened;

  /**
   * A conversation.
   *
   * @param terminal where it takes place
   * @param desk gives the session with its words, once it is ready
   * @param environment the environment variables
   * @param looks how it is to look, asked again each time
   * @param offered code that a word offered for the next input
   */
  Conversation(
      Terminal terminal,
      Supplier<Desk> desk,
      Map<String, String> environment,
      Supplier<Preferences> looks,
      Function<Desk, Optional<String>> offered) {
    this.offered = offered;
    this.terminal = terminal;
    this.desk = desk;
    this.palette = new Palette(terminal, environment, looks);
    this.paper = new Paper(terminal);
    PictureShow pictures = new PictureShow(terminal, environment, palette, looks);
    Voice.Manner manner =
        new Voice.Manner(
            this::fitted,
            text -> styled(text, Role.ERROR),
            text -> styled(text, Role.ASIDE),
            pictures::of);
    PrintWriter out = new PrintWriter(new OutputStreamWriter(paper, terminal.encoding()));
    this.voice = new Voice(out, out, manner);
    giveItASize();
    this.editing = new Editing(terminal, desk, environment, palette);
  }

  /** Talks until the user leaves by {@code quit()} or the end of input. */
  void run() {
    PrintStream out = System.out;
    PrintStream err = System.err;
    PrintStream onPaper = new PrintStream(paper, true, terminal.encoding());
    LineEditor editor = editing.editor();
    // While a line is typed the editor handles the key itself; at all other times it is for us.
    Terminal.SignalHandler before = terminal.handle(Signal.INT, signal -> interrupt());
    try {
      System.setOut(onPaper);
      System.setErr(onPaper);
      voice.note(Greeting.TEXT);
      paper.whileTyping(editor::isReading, editor::printAbove);
      talk(editor);
    } finally {
      System.setOut(out);
      System.setErr(err);
      terminal.handle(Signal.INT, before);
      editor.hints().close();
      close();
    }
  }

  private void close() {
    try {
      desk.get().close();
    } catch (CompletionException e) {
      // It never stood, and that was told where it was missed.
      return;
    }
  }

  private void talk(LineEditor editor) {
    while (!Leaving.isAsked()) {
      try {
        answer(editor.readLine(editing.prompt(), null, (MaskingCallback) null, begun()));
      } catch (UserInterruptException e) {
        // Ctrl-C at the prompt clears what was typed.
        continue;
      } catch (EndOfFileException e) {
        break;
      } catch (CompletionException e) {
        voice.problem("The session could not start: " + e.getCause() + ".");
        break;
      } catch (IllegalStateException | IOException e) {
        // A terminal whose window was closed under the prompt says so only this way.
        if (isOpen()) {
          voice.problem("Leverbook itself failed here, and goes on: " + e + ".");
          continue;
        }
        break;
      }
    }
  }

  /** What stands behind the prompt already, ready for Enter; null for nothing. */
  private String begun() {
    return opened == null ? null : offered.apply(opened).orElse(null);
  }

  private boolean isOpen() {
    try {
      terminal.writer();
      return true;
    } catch (IllegalStateException e) {
      return false;
    }
  }

  private void answer(String typed) throws IOException {
    if (typed.isBlank()) {
      return;
    }
    paper.begin();
    String text = typed;
    if (Continued.isMeant(typed)) {
      text = continued.whole(typed).orElse("");
      if (text.isEmpty()) {
        voice.problem(
            "A line that begins with a dot goes on with the sentence before, and there is none yet.");
        return;
      }
    }
    Desk ready = desk.get();
    running = ready;
    opened = ready;
    ready.welcomeOffers(true);
    Progress.Listener listened = Progress.listen(new ProgressBar(paper));
    Stage.Audience watched = Stage.watch(audience());
    try {
      evaluate(ready, text);
    } catch (OutOfMemoryError e) {
      voice.problem("There is not enough memory to show this. All variables are kept.");
    } finally {
      running = null;
      Stage.watch(watched);
      Progress.listen(listened);
      paper.freshLine();
    }
  }

  private void evaluate(Desk ready, String text) {
    long lines = text.lines().count();
    if (lines >= MANY_LINES) {
      voice.aside(
          String.format(
              Locale.ROOT,
              "%,d lines; Ctrl-C stops them, and keeps what was done until then.",
              lines));
    }
    Evaluation evaluation = ready.evaluate(text, this::say);
    paper.freshLine();
    evaluation.notes().forEach(voice::note);
    boolean severalLines = text.contains("\n");
    evaluation
        .problem()
        .ifPresent(p -> voice.problem(p, severalLines ? "line " + p.line() + ": " : ""));
    continued.evaluated(text, evaluation);
    editing.evaluated(evaluation).ifPresent(voice::aside);
  }

  private void say(Value value) {
    paper.freshLine();
    voice.value(value);
  }

  /** Whatever is shown on the way stands there at once; what takes its place follows below. */
  private Stage.Audience audience() {
    return new Stage.Audience() {
      @Override
      public void shows(long scene, Object value) {
        say(new Value(value, 1));
      }

      @Override
      public void changes(long scene, Object value) {
        say(new Value(value, 1));
      }
    };
  }

  private void interrupt() {
    Desk now = running;
    if (now != null) {
      // The terminal has shown ^C: the answer begins on a line of its own.
      paper.smudged();
      paper.freshLine();
      now.session().stop();
    }
  }

  private String fitted(String text) {
    Size size = terminal.getSize();
    return new Fitting(size.getColumns(), size.getRows()).fit(text);
  }

  private String styled(String text, Role role) {
    List<String> lines = text.lines().toList();
    return lines.stream()
        .map(line -> new AttributedString(line, palette.style(role)).toAnsi(terminal))
        .collect(Collectors.joining("\n"));
  }

  /** Some terminals do not know their size, and say zero. */
  private void giveItASize() {
    Size size = terminal.getSize();
    if (size.getColumns() <= 0 || size.getRows() <= 0) {
      terminal.setSize(USUAL);
    }
  }
}
