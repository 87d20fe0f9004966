package org.leverbook.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import jdk.jshell.JShell;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.VarSnippet;
import org.leverbook.language.Leaving;

/** One life of a session, from start to reset: the compiler, the engine and what they know. */
final class Workbench {

  /** Said where code that was asked to stop came to a good end all the same. */
  private static final String KEPT = "Stopped; what was done until then is kept.";

  private final ReentrantLock compiling;
  private final Engine engine;
  private final JShell shell;
  private final Splitter splitter;
  private final Assistance assistance;
  private final Origins origins = new Origins();
  private final Results results;
  private final Findings findings;

  Workbench(Preamble preamble, ReentrantLock compiling) {
    this.compiling = compiling;
    SnippetLoader loader = new SnippetLoader();
    this.engine = new Engine(loader, compiling);
    this.shell = JShell.builder().executionEngine(new EngineProvider(engine), Map.of()).build();
    this.splitter = new Splitter(shell.sourceCodeAnalysis());
    this.assistance = new Assistance(shell, loader, splitter, preamble);
    this.results = new Results(shell, origins);
    this.findings = new Findings(shell, engine, origins, assistance, preamble);
    Evaluation start = evaluate(preamble.source(), value -> {});
    if (!start.ok()) {
      throw new IllegalStateException(
          "preamble: " + start.problem().map(p -> p.text("")).orElse(start.status().toString()));
    }
  }

  /** See {@link Session#evaluate(String, Consumer)}; one at a time. */
  Evaluation evaluate(String text, Consumer<Value> each) {
    SourceText source = new SourceText(text);
    List<String> notes = new ArrayList<>();
    Optional<Value> last = Optional.empty();
    int done = 0;
    int from = 0;
    engine.begin();
    try {
      while (true) {
        int at = from;
        Unit unit = compiled(() -> splitter.next(source, at));
        if (unit.kind() == Unit.Kind.NOTHING) {
          if (engine.stopAsked()) {
            notes.add(KEPT);
          }
          return new Evaluation(Evaluation.Status.OK, last, Optional.empty(), notes, done);
        }
        Outcome outcome = outcome(source, unit);
        notes.addAll(outcome.notes());
        if (outcome.problem().isPresent()) {
          return ended(outcome, notes, done);
        }
        done++;
        last = outcome.value();
        try {
          last.ifPresent(each);
        } catch (Stopped e) {
          // Showing a value runs the user's toString, which can be stopped like any code.
          return ended(findings.stopped(source, unit), notes, done);
        }
        from = unit.end();
        if (engine.stopAsked() && hasMore(source, from)) {
          return ended(findings.stopped(source, unit), notes, done);
        }
        if (Leaving.isAsked()) {
          return new Evaluation(Evaluation.Status.OK, last, Optional.empty(), notes, done);
        }
      }
    } finally {
      engine.end();
    }
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
    compiling.lock();
    try {
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
          results.add(variable);
        }
      }
      return outcome;
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
