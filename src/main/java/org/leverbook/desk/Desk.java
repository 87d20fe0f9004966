package org.leverbook.desk;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import org.leverbook.article.Reproduction;
import org.leverbook.display.Display;
import org.leverbook.display.Meter;
import org.leverbook.display.OutputFolder;
import org.leverbook.language.Doorways;
import org.leverbook.language.Imports;
import org.leverbook.language.Leaving;
import org.leverbook.language.Vocabulary;
import org.leverbook.session.Course;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Piece;
import org.leverbook.session.Preamble;
import org.leverbook.session.Problem;
import org.leverbook.session.Session;
import org.leverbook.session.Value;

/**
 * A session with all words, and what its user did in it. Every door sits at one: script, shell,
 * notebook and kernel evaluate here, so that the same text gives the same values.
 *
 * <p>A word about the session, such as {@code undo()}, runs in the middle of a text. What needs the
 * session free is only noted then, and carried out before the next statement of that text.
 */
public final class Desk implements AutoCloseable {

  /** So many may take minutes, each being compiled on its own. */
  private static final int MANY_LINES = 200;

  private final Session session;
  private final Logbook logbook = new Logbook();
  private final Guide guide = new Guide();
  private final DeskDoorway doorway;
  private final ReentrantLock turn = new ReentrantLock();
  private final Deque<Request> requests = new ArrayDeque<>();
  private volatile Entry running = new Entry(0, "");
  private volatile boolean aside;
  private volatile boolean welcoming;
  private volatile Optional<String> offered = Optional.empty();
  private volatile Optional<Problem> lastProblem = Optional.empty();

  /** What a word asked for, to be carried out when its statement has ended. */
  @FunctionalInterface
  interface Request {

    /** Carries it out; values go where those of the text go. */
    Evaluation carryOut(Consumer<Value> each, int line);
  }

  private Desk(Session session) {
    this.session = session;
    this.doorway = new DeskDoorway(this, session, logbook, guide);
  }

  /**
   * A desk with a new session.
   *
   * @return the desk, ready
   */
  public static Desk open() {
    Preamble known =
        new Preamble(Imports.SOURCE, List.of(Vocabulary.class), List.of(new QuotedTexts()));
    Desk desk = new Desk(Session.open(known));
    Doorways.open(desk.doorway);
    return desk;
  }

  /**
   * Evaluates a text as the next input, and hands over each value as it comes.
   *
   * @param text any number of statements, expressions and declarations
   * @param each takes the value of every unit that is a bare expression, on the calling thread
   * @return what came of it
   */
  public Evaluation evaluate(String text, Consumer<Value> each) {
    turn.lock();
    try {
      Entry entry = logbook.begin(text);
      running = entry;
      requests.clear();
      List<Object> values = new ArrayList<>();
      Consumer<Path> before = OutputFolder.watch(entry.files()::add);
      var toldBefore = Reproduction.toldBy(() -> Optional.of(script()));
      Evaluation evaluation;
      try {
        evaluation =
            run(
                text,
                value -> {
                  values.add(value.object());
                  each.accept(value);
                });
      } finally {
        Reproduction.toldBy(toldBefore);
        OutputFolder.watch(before);
      }
      entry.ended(evaluation.status());
      if (session.isShortOfMemory()) {
        // Else a variable that is emptied to make room would live on for undo().
        logbook.forgetValues();
      }
      evaluation.problem().ifPresent(problem -> lastProblem = Optional.of(problem));
      return told(evaluation, entry, values);
    } finally {
      turn.unlock();
    }
  }

  private Evaluation told(Evaluation evaluation, Entry entry, List<Object> values) {
    List<String> notes = new ArrayList<>(evaluation.notes());
    guide.look(new Sight(values, entry, session)).ifPresent(notes::add);
    return new Evaluation(
        evaluation.status(),
        evaluation.value(),
        evaluation.problem().map(Desk::preferred),
        notes,
        evaluation.unitsDone());
  }

  private static Problem preferred(Problem problem) {
    String message = Display.sentence(problem.message());
    return message.equals(problem.message()) ? problem : problem.saying(message);
  }

  /** Runs a text as part of the running input, with what its words ask for on the way. */
  Evaluation run(String text, Consumer<Value> each) {
    long lines = text.lines().count();
    if (lines < MANY_LINES) {
      return run(text, new Reader(each, () -> {}));
    }
    try (Meter meter = Meter.of("lines", lines)) {
      return run(text, new Reader(each, meter::step));
    }
  }

  private Evaluation run(String text, Reader reader) {
    Evaluation all =
        new Evaluation(Evaluation.Status.OK, Optional.empty(), Optional.empty(), List.of(), 0);
    while (true) {
      all = Problems.joined(all, session.evaluate(text, reader.end, reader));
      while (all.ok() && !requests.isEmpty()) {
        all = Problems.joined(all, requests.removeFirst().carryOut(reader.each, reader.line));
      }
      if (!all.ok() || Leaving.isAsked() || !reader.paused) {
        return all;
      }
      reader.paused = false;
    }
  }

  /** Follows one text. */
  private final class Reader implements Course {
    private final Consumer<Value> each;
    private final Runnable lineDone;
    private int end;
    private int line = 1;
    private boolean paused;

    Reader(Consumer<Value> each, Runnable lineDone) {
      this.each = each;
      this.lineDone = lineDone;
    }

    @Override
    public void value(Value value) {
      each.accept(value);
    }

    @Override
    public void done(Piece piece) {
      running.add(piece, Logbook.isAside(piece, aside));
      aside = false;
      end = piece.end();
      while (line < piece.line()) {
        lineDone.run();
        line++;
      }
    }

    @Override
    public boolean pauses() {
      paused = !requests.isEmpty();
      return paused;
    }
  }

  void ask(Request request) {
    requests.addLast(request);
  }

  void sayAside() {
    aside = true;
  }

  Entry running() {
    return running;
  }

  Optional<Problem> lastProblem() {
    return lastProblem;
  }

  boolean offer(String code) {
    offered = Optional.of(code);
    return welcoming;
  }

  /**
   * Says that this door puts offered code where the user types: {@code example("hinge")} then does
   * not print it.
   *
   * @param welcome true if it calls {@link #takeOffered} before it reads the next input
   */
  public void welcomeOffers(boolean welcome) {
    welcoming = welcome;
  }

  /**
   * Code that a word offered for the next input.
   *
   * @return the code, once; empty where none was offered since
   */
  public Optional<String> takeOffered() {
    Optional<String> code = offered;
    offered = Optional.empty();
    return code;
  }

  /**
   * What worked in this session so far, as a script that runs again.
   *
   * @return its text; only a head line where nothing worked yet
   */
  public String script() {
    return ScriptText.of(logbook.entries());
  }

  /**
   * The name under which the last result can be asked for.
   *
   * @return as in "$7"; empty where the last input gave none
   */
  public Optional<String> lastResult() {
    return running.lastResult();
  }

  /**
   * The session, for completion, documentation and stopping. What is evaluated there directly is no
   * input: it is neither listed nor saved.
   *
   * @return the same one always
   */
  public Session session() {
    return session;
  }

  /** Forgets everything declared and typed, and starts afresh; what is running is stopped first. */
  public void reset() {
    session.reset();
    turn.lock();
    try {
      logbook.clear();
      lastProblem = Optional.empty();
      offered = Optional.empty();
    } finally {
      turn.unlock();
    }
  }

  @Override
  public void close() {
    Doorways.close(doorway);
    session.close();
  }
}
