package org.leverbook.session;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * A Java session: texts are evaluated one after the other, each knowing what those before it
 * declared.
 *
 * <p>All methods may be called from any thread. Evaluation, completion and documentation share one
 * compiler and take turns at it; while the user's code runs, the compiler is free.
 */
public final class Session implements AutoCloseable {

  private final Preamble preamble;
  private final ReentrantLock turn = new ReentrantLock();
  private final ReentrantLock compiling = new ReentrantLock();
  private volatile Workbench bench;

  private Session(Preamble preamble) {
    this.preamble = preamble;
    this.bench = new Workbench(preamble, compiling);
  }

  /**
   * Starts a session.
   *
   * @param preamble what it knows at the start
   * @return the session, ready
   * @throws IllegalStateException if the preamble does not compile
   */
  public static Session open(Preamble preamble) {
    return new Session(preamble);
  }

  /**
   * Evaluates a text, unit after unit, until one fails, the text is stopped, or a word asked to
   * leave.
   *
   * @param text any number of statements, expressions and declarations
   * @return what came of it; never an exception for what the user wrote
   */
  public Evaluation evaluate(String text) {
    return evaluate(text, value -> {});
  }

  /**
   * Evaluates a text and hands over each value as it comes.
   *
   * @param text any number of statements, expressions and declarations
   * @param each takes the value of every unit that is a bare expression, on the calling thread
   * @return what came of it
   */
  public Evaluation evaluate(String text, Consumer<Value> each) {
    return evaluate(text, 0, each::accept);
  }

  /**
   * Evaluates a text from a place on.
   *
   * @param text any number of statements, expressions and declarations
   * @param from where to begin, in UTF-16 units; lines are counted from the text's beginning
   * @param course sees each piece as it takes effect
   * @return what came of it
   */
  public Evaluation evaluate(String text, int from, Course course) {
    turn.lock();
    try {
      return bench.evaluate(text, within(text, from), course);
    } finally {
      turn.unlock();
    }
  }

  /**
   * What the user declared and what it holds, in the order in which it was declared first. May be
   * asked while a text is evaluated.
   *
   * @return variables, methods, classes and imports
   */
  public List<Belonging> belongings() {
    return bench.belongings();
  }

  /**
   * Takes back what a piece changed: what it declared goes, what was there before comes back with
   * its value. Pieces are taken back last one first.
   *
   * @param change what the piece changed
   * @return what is gone, back or lost
   */
  public TakenBack takeBack(Change change) {
    turn.lock();
    try {
      return bench.takeBack(change);
    } finally {
      turn.unlock();
    }
  }

  /**
   * Whether a thread runs code of this session.
   *
   * @param thread any
   * @return true for the threads of the user's code and those that it started
   */
  public boolean runs(Thread thread) {
    return bench.runs(thread);
  }

  /**
   * Whether a text can be evaluated as it stands. Nothing is evaluated.
   *
   * @param text the text
   * @return complete, incomplete or invalid
   */
  public Completeness completeness(String text) {
    return compiled(() -> bench.completeness(text));
  }

  /**
   * The ways to go on.
   *
   * @param text the text
   * @param cursor a place in it, in UTF-16 units; one outside the text is moved to its nearest end
   * @return each way once, in the order of the alphabet
   */
  public List<Completion> completions(String text, int cursor) {
    return compiled(() -> bench.assistance().completions(text, within(text, cursor)));
  }

  /** Reads what the first completion would wait for; beside anything else, on any thread. */
  public void prepareCompletion() {
    bench.assistance().prepare();
  }

  /**
   * What is known of the word at a place.
   *
   * @param text the text
   * @param cursor a place in it, in UTF-16 units
   * @param whole whether to add what the documentation says, where its source is at hand
   * @return one entry for each signature; empty where nothing is known
   */
  public List<String> documentation(String text, int cursor, boolean whole) {
    return compiled(() -> bench.assistance().documentation(text, within(text, cursor), whole));
  }

  /**
   * What the call takes in whose brackets a place stands.
   *
   * @param text the text
   * @param cursor a place in it, in UTF-16 units
   * @return the forms of the innermost open call; empty where there is none, or it is not known
   */
  public Optional<CallHint> callAt(String text, int cursor) {
    return compiled(() -> bench.assistance().callAt(text, within(text, cursor)));
  }

  /**
   * Stops the text that is being evaluated; what it did so far stays. Does nothing when none is.
   * Code that does not answer within three seconds (a library's loop, a lock) is left behind on a
   * thread of its own, and the evaluation says so.
   *
   * @return whether there was something to stop
   */
  public boolean stop() {
    return bench.stop();
  }

  /** Forgets everything declared and starts afresh; what is running is stopped first. */
  public void reset() {
    stop();
    turn.lock();
    try {
      bench.close();
      bench = new Workbench(preamble, compiling);
    } finally {
      turn.unlock();
    }
  }

  /**
   * Whether memory was full, and has not been seen otherwise since: who keeps values only to bring
   * them back should let them go.
   *
   * @return true if so
   */
  public boolean isShortOfMemory() {
    return Memory.isShort();
  }

  /**
   * How many snippets the compiler keeps: imports, declarations, and the last few results.
   *
   * @return the count
   */
  public long liveSnippets() {
    return compiled(() -> bench.liveSnippets());
  }

  /** Ends the session; what is running is stopped first. */
  @Override
  public void close() {
    stop();
    turn.lock();
    try {
      bench.close();
    } finally {
      turn.unlock();
    }
  }

  private <T> T compiled(Supplier<T> work) {
    compiling.lock();
    try {
      return work.get();
    } finally {
      compiling.unlock();
    }
  }

  private static int within(String text, int cursor) {
    return Math.max(0, Math.min(cursor, text.length()));
  }
}
