package org.leverbook.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import jdk.jshell.JShell;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.VarSnippet;
import org.leverbook.language.Leaving;

/** One life of a session, from start to reset: the compiler, the engine and what they know. */
final class Workbench {

  /** Said where code that was asked to stop came to a good end all the same. */
  private static final String KEPT = "Stopped; what was done until then is kept.";

  private final ReentrantLock compiling;
  private final SnippetLoader loader = new SnippetLoader();
  private final Engine engine;
  private final JShell shell;
  private final Splitter splitter;
  private final Assistance assistance;
  private final Origins origins = new Origins();
  private final Results results;
  private final MemoryFindings memory;
  private final Findings findings;
  private final Belongings belongings;
  private Change change = Change.NONE;
  private Optional<String> result = Optional.empty();

  Workbench(Preamble preamble, ReentrantLock compiling) {
    this.compiling = compiling;
    this.engine = new Engine(loader, compiling);
    this.shell = JShell.builder().executionEngine(new EngineProvider(engine), Map.of()).build();
    this.splitter = new Splitter(shell.sourceCodeAnalysis());
    this.assistance = new Assistance(shell, loader, splitter, preamble);
    this.results = new Results(shell, origins);
    this.memory = new MemoryFindings(shell, engine);
    this.findings = new Findings(shell, engine, origins, preamble, memory);
    this.belongings = new Belongings(shell, engine);
    begin(preamble.asOne());
  }

  private void begin(String imports) {
    List<SnippetEvent> events = imports.isEmpty() ? List.of() : shell.eval(imports);
    for (SnippetEvent event : events) {
      if (event.status() != Status.VALID) {
        String why =
            shell.diagnostics(event.snippet()).findFirst().map(d -> d.getMessage(null)).orElse("");
        throw new IllegalStateException("preamble: " + why);
      }
    }
  }

  /** See {@link Session#evaluate(String, int, Course)}; one at a time. */
  Evaluation evaluate(String text, int begin, Course course) {
    change = Change.NONE;
    Evaluation evaluation;
    Memory.textBegins();
    engine.begin();
    try {
      evaluation = pieces(new SourceText(text), begin, course);
    } finally {
      engine.end();
    }
    if (!evaluation.ok()) {
      // The line that failed declared an empty variable all the same: what was there stays.
      takeBack(change.declarationsOnly());
    }
    return evaluation;
  }

  private Evaluation pieces(SourceText source, int begin, Course course) {
    List<String> notes = new ArrayList<>();
    engine.fullBehind().map(MemoryWording::behind).ifPresent(notes::add);
    Optional<Value> last = Optional.empty();
    int done = 0;
    int from = begin;
    while (true) {
      int at = from;
      Unit unit = compiled(() -> splitter.next(source, at));
      if (unit.kind() == Unit.Kind.NOTHING) {
        if (engine.stopAsked()) {
          notes.add(engine.fullness() == null ? KEPT : compiled(memory::stopped));
        }
        return new Evaluation(Evaluation.Status.OK, last, Optional.empty(), notes, done);
      }
      Outcome outcome = outcome(source, unit);
      notes.addAll(outcome.notes());
      if (outcome.problem().isPresent()) {
        return ended(outcome, notes, done);
      }
      last = outcome.value();
      try {
        Optional<Outcome> unshown = last.flatMap(value -> findings.unshown(value, source, unit));
        if (unshown.isPresent()) {
          return ended(unshown.get(), notes, done);
        }
        done++;
        last.ifPresent(course::value);
      } catch (Stopped e) {
        // Showing a value runs the user's toString, which can be stopped like any code.
        return ended(findings.stopped(source, unit), notes, done);
      } catch (OutOfMemoryError e) {
        return ended(compiled(() -> memory.ranOut(e, source, unit)), notes, done);
      }
      course.done(piece(source, unit, from));
      from = unit.end();
      if (engine.stopAsked() && hasMore(source, from)) {
        return ended(findings.stopped(source, unit), notes, done);
      }
      if (Leaving.isAsked() || course.pauses()) {
        return new Evaluation(Evaluation.Status.OK, last, Optional.empty(), notes, done);
      }
    }
  }

  /** Hands over what the unit changed: it has taken effect, and is not to be taken back. */
  private Piece piece(SourceText source, Unit unit, int from) {
    String text = source.text().substring(from, unit.end());
    int line = source.lineAt(unit.start());
    Piece piece = new Piece(text, unit.code(), line, unit.end(), result, change);
    change = Change.NONE;
    return piece;
  }

  private static Evaluation ended(Outcome outcome, List<String> notes, int done) {
    return new Evaluation(outcome.status(), Optional.empty(), outcome.problem(), notes, done);
  }

  private boolean hasMore(SourceText source, int from) {
    return compiled(() -> splitter.next(source, from)).kind() != Unit.Kind.NOTHING;
  }

  private Outcome outcome(SourceText source, Unit unit) {
    if (unit.kind() != Unit.Kind.COMPLETE && unit.kind() != Unit.Kind.INVALID) {
      return findings.unreadable(source, unit);
    }
    if (engine.stopAsked()) {
      return findings.stopped(source, unit);
    }
    engine.clear();
    result = Optional.empty();
    compiling.lock();
    try {
      Belongings.Before before = belongings.before();
      results.noteUse(unit.code());
      List<SnippetEvent> events = shell.eval(unit.code());
      for (SnippetEvent event : events) {
        if (event.causeSnippet() == null) {
          origins.add(event.snippet().id(), source, unit.start());
        }
      }
      Outcome outcome = findings.of(events, source, unit);
      for (SnippetEvent event : events) {
        if (event.snippet() instanceof VarSnippet variable && event.causeSnippet() == null) {
          results.add(variable).ifPresent(name -> result = Optional.of(name));
        }
      }
      change = belongings.noted(events, before);
      return outcome;
    } catch (StackOverflowError | InternalError e) {
      // The compiler wraps its own overflow in an internal error.
      return findings.tooDeep(source, unit);
    } catch (OutOfMemoryError e) {
      return memory.ranOut(e, source, unit);
    } finally {
      engine.clear();
      compiling.unlock();
    }
  }

  /** See {@link Session#completeness}; the caller holds the compile lock. */
  Completeness completeness(String text) {
    SourceText source = new SourceText(text);
    int from = 0;
    while (true) {
      Unit unit = splitter.next(source, from);
      switch (unit.kind()) {
        case NOTHING:
          return Completeness.COMPLETE;
        case COMPLETE:
          from = unit.end();
          break;
        case INCOMPLETE:
          return Completeness.INCOMPLETE;
        default:
          return Completeness.INVALID;
      }
    }
  }

  Assistance assistance() {
    return assistance;
  }

  List<Belonging> belongings() {
    return belongings.told();
  }

  boolean runs(Thread thread) {
    return thread.getContextClassLoader() == loader;
  }

  /** See {@link Session#takeBack}. A change of an earlier life of the session has nothing left. */
  TakenBack takeBack(Change one) {
    if (one.owner() != belongings) {
      return new TakenBack(List.of(), List.of(), List.of());
    }
    engine.begin();
    try {
      return compiled(() -> belongings.takeBack(one));
    } finally {
      engine.end();
    }
  }

  boolean stop() {
    return engine.askToStop();
  }

  long liveSnippets() {
    return shell
        .snippets()
        .filter(s -> shell.status(s).isActive())
        .filter(s -> s.subKind() != SubKind.STATEMENT_SUBKIND && s.kind().isPersistent())
        .count();
  }

  void close() {
    shell.close();
    engine.close();
  }

  private <T> T compiled(java.util.function.Supplier<T> work) {
    compiling.lock();
    try {
      return work.get();
    } finally {
      compiling.unlock();
    }
  }
}
