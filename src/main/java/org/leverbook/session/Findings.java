package org.leverbook.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.PersistentSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.UnresolvedReferenceException;
import jdk.jshell.VarSnippet;

/** Reads what the compiler and the engine report of a unit. */
final class Findings {

  private final JShell shell;
  private final Engine engine;
  private final Origins origins;
  private final Trace trace;
  private final Makers makers;
  private final Knowledge knowledge;
  private final Wording wording;
  private final MemoryFindings memory;

  Findings(JShell shell, Engine engine, Origins origins, Preamble preamble, MemoryFindings memory) {
    this.memory = memory;
    this.shell = shell;
    this.engine = engine;
    this.origins = origins;
    this.trace = new Trace(origins);
    this.makers = new Makers(preamble.vocabulary());
    this.knowledge = new Knowledge(shell.sourceCodeAnalysis());
    this.wording = new Wording(makers, new FittingTypes(preamble.vocabulary()), knowledge);
  }

  /** What came of an evaluated unit. */
  Outcome of(List<SnippetEvent> events, SourceText source, Unit unit) {
    List<String> notes = new ArrayList<>();
    SnippetEvent own = null;
    for (SnippetEvent event : events) {
      if (event.causeSnippet() == null) {
        own = own == null ? event : own;
      } else {
        redefinition(event).ifPresent(notes::add);
      }
    }
    if (engine.stopAsked() && !ranThrough(own)) {
      return stopped(source, unit);
    }
    if (own == null) {
      return Outcome.good(Optional.empty(), notes);
    }
    if (own.status() == Status.REJECTED) {
      return failed(compilation(own.snippet(), source, unit), notes);
    }
    if (own.exception() != null) {
      return failed(thrown(own.exception(), source, unit), notes);
    }
    if (engine.failure() != null) {
      var none = new StackTraceElement[0];
      Problem problem = trace.of(engine.failure(), none, origin(source, unit));
      return failed(worded(problem, engine.failure()), notes);
    }
    if (lacksSomething(own.status()) && lacksNothingNamed(own.snippet())) {
      // Kept, it would fail again with every later unit.
      shell.drop(own.snippet());
      return failed(compilation(own.snippet(), source, unit), notes);
    }
    if (lacksSomething(own.status()) && !(own.snippet() instanceof DeclarationSnippet)) {
      // A statement that can never run, such as one too long for a class file.
      return failed(compilation(own.snippet(), source, unit), notes);
    }
    if (own.snippet() instanceof DeclarationSnippet declared && lacksSomething(own.status())) {
      String missing = missing(declared);
      if (own.status() == Status.RECOVERABLE_NOT_DEFINED && declared instanceof VarSnippet) {
        String message = unmade((VarSnippet) declared);
        shell.drop(declared);
        return failed(problem(Problem.Kind.UNRESOLVED, message, source, unit.start()), notes);
      }
      notes.add(declared.name() + " needs " + missing + ", which is not there yet.");
    }
    if (unit.kind() == Unit.Kind.INVALID) {
      String message = "Only the beginning of this could be read.";
      return failed(problem(Problem.Kind.COMPILATION, message, source, unit.start()), notes);
    }
    notes.addAll(Surprises.in(unit.code()));
    return Outcome.good(value(own.snippet(), source, unit), notes);
  }

  private boolean lacksNothingNamed(Snippet snippet) {
    return !(snippet instanceof DeclarationSnippet declared)
        || shell.unresolvedDependencies(declared).findAny().isEmpty();
  }

  /** A variable whose type is not there: often two words that belong together otherwise. */
  private String unmade(VarSnippet declared) {
    String type = declared.typeName();
    if (makers.has(type)) {
      return "What "
          + type
          + " is given stands in brackets behind it: "
          + type
          + "("
          + declared.name()
          + ").";
    }
    List<String> near =
        Spelling.nearest(type, knowledge.candidates("", 0)).stream()
            .filter(word -> Character.isUpperCase(word.charAt(0)) && !word.endsWith("("))
            .toList();
    String missing = missing(declared).replaceFirst("^class ", "kind of value ");
    return declared.name()
        + " cannot be made: there is no "
        + missing
        + (near.isEmpty() ? "." : ": did you mean " + Words.choice(near) + "?");
  }

  /** What came of a unit whose value turned out, when it showed itself, to be impossible. */
  Optional<Outcome> unshown(Value value, SourceText source, Unit unit) {
    boolean told = value.object() instanceof org.leverbook.display.Shown;
    return value
        .failure()
        .filter(failure -> told || failure instanceof org.leverbook.quantity.Refused)
        .map(failure -> trace.of(failure, new StackTraceElement[0], origin(source, unit)))
        .map(problem -> failed(problem, List.of()));
  }

  private static Origins.Origin origin(SourceText source, Unit unit) {
    return new Origins.Origin(source, unit.start());
  }

  private boolean ranThrough(SnippetEvent own) {
    return own != null
        && own.exception() == null
        && engine.failure() == null
        && engine.ranThrough();
  }

  private static Outcome failed(Problem problem, List<String> notes) {
    return Outcome.bad(Evaluation.Status.FAILED, problem, notes);
  }

  private static boolean lacksSomething(Status status) {
    return status == Status.RECOVERABLE_DEFINED || status == Status.RECOVERABLE_NOT_DEFINED;
  }

  private Optional<Value> value(Snippet snippet, SourceText source, Unit unit) {
    boolean bare =
        snippet.subKind() == SubKind.TEMP_VAR_EXPRESSION_SUBKIND
            || snippet.kind() == Snippet.Kind.EXPRESSION
                && snippet.subKind() != SubKind.ASSIGNMENT_SUBKIND;
    return bare
        ? Optional.of(new Value(engine.result(), source.lineAt(unit.start())))
        : Optional.empty();
  }

  private Problem compilation(Snippet snippet, SourceText source, Unit unit) {
    List<Diag> errors =
        shell
            .diagnostics(snippet)
            .filter(Diag::isError)
            .sorted(Comparator.comparingLong(Diag::getPosition))
            .toList();
    if (errors.isEmpty()) {
      String message =
          snippet instanceof DeclarationSnippet declared
              ? declared.name() + " cannot be declared here: there is no " + missing(declared) + "."
              : "This is not understood.";
      return problem(Problem.Kind.COMPILATION, message, source, unit.start());
    }
    Diag first = errors.get(0);
    Told told = told(first, unit.code());
    int place = Math.min(unit.start() + Math.max(0, told.at()), source.text().length());
    String original = Words.unwrapped(first.getMessage(Locale.ENGLISH));
    return problem(Problem.Kind.COMPILATION, told.message(), source, place, original);
  }

  private Told told(Diag diag, String code) {
    try {
      return wording.of(diag, code);
    } catch (RuntimeException | StackOverflowError e) {
      // A complaint that cannot be worded must not cost the session.
      return new Told("This is not understood.", (int) Math.max(0, diag.getPosition()));
    }
  }

  private Problem thrown(JShellException exception, SourceText source, Unit unit) {
    Origins.Origin origin = new Origins.Origin(source, unit.start());
    if (exception instanceof UnresolvedReferenceException unresolved) {
      DeclarationSnippet declared = unresolved.getSnippet();
      String message =
          declared.name() + " needs " + missing(declared) + ", which is not there yet.";
      return problem(Problem.Kind.UNRESOLVED, message, source, unit.start());
    }
    Throwable thrown = engine.failure() != null ? engine.failure() : exception;
    Throwable told = exception;
    Throwable real = thrown;
    // An exception that a parallel task wrapped or copied tells its lines in the innermost cause.
    while (told.getCause() instanceof EvalException inner
        && told.getStackTrace().length > 0
        && (noUserFrame(told) || (real != null && Copies.isCopy(real) && !noUserFrame(inner)))) {
      told = inner;
      real = real == null ? null : real.getCause();
    }
    return worded(trace.of(thrown, told.getStackTrace(), origin), thrown);
  }

  private Problem worded(Problem problem, Throwable thrown) {
    return Copies.essential(thrown) instanceof OutOfMemoryError full
        ? problem.saying(memory.refused(full))
        : problem;
  }

  private boolean noUserFrame(Throwable told) {
    for (StackTraceElement frame : told.getStackTrace()) {
      if (origins.of(frame).isPresent()) {
        return false;
      }
    }
    return true;
  }

  private String missing(DeclarationSnippet declared) {
    String missing = shell.unresolvedDependencies(declared).collect(Collectors.joining(", "));
    return missing.isEmpty() ? "something" : missing;
  }

  private static Optional<String> redefinition(SnippetEvent event) {
    Snippet changed = event.snippet();
    boolean sameName =
        changed instanceof PersistentSnippet self
            && event.causeSnippet() instanceof PersistentSnippet other
            && self.name().equals(other.name());
    if (sameName || !(changed instanceof PersistentSnippet named)) {
      return Optional.empty();
    }
    String cause = event.causeSnippet() instanceof PersistentSnippet p ? p.name() : "a declaration";
    if (event.status() == Status.VALID && changed instanceof VarSnippet) {
      return event.previousStatus() == Status.VALID && event.isSignatureChange()
          ? Optional.of(
              named.name() + " is empty again because " + cause + " changed: give its line again.")
          : Optional.empty();
    }
    if (lacksSomething(event.status()) && event.previousStatus() == Status.VALID) {
      return Optional.of(
          changed instanceof VarSnippet
              ? named.name() + " is gone because " + cause + " changed: give its line again."
              : named.name() + " does not fit " + cause + " any more.");
    }
    return Optional.empty();
  }

  /** The problem of a unit that was not handed to the compiler. */
  Outcome unreadable(SourceText source, Unit unit) {
    String text = source.text();
    return switch (unit.kind()) {
      case COMMAND ->
          failed(
              problem(
                  Problem.Kind.COMPILATION,
                  "\""
                      + unit.code().split("\\s", 2)[0]
                      + "\" is no word here: everything is Java. help() lists the words, quit()"
                      + " leaves.",
                  source,
                  unit.start()),
              List.of());
      case WRONG_CLOSER -> {
        Brackets brackets = new Brackets(text, unit.start());
        brackets.readTo(unit.end());
        String message =
            brackets
                .innermostOpen()
                .map(
                    open ->
                        String.format(
                            "This %s does not close the %s opened in line %d, column %d.",
                            text.charAt(unit.end()),
                            text.charAt(open),
                            source.lineAt(open),
                            source.columnAt(open)))
                .orElse("This " + text.charAt(unit.end()) + " closes nothing.");
        yield failed(problem(Problem.Kind.COMPILATION, message, source, unit.end()), List.of());
      }
      case UNSEEN ->
          failed(
              problem(
                  Problem.Kind.COMPILATION,
                  Characters.unseen(text, unit.end()),
                  source,
                  unit.end()),
              List.of());
      case TOO_DEEP -> tooDeep(source, unit);
      case TOO_LONG ->
          failed(
              problem(
                  Problem.Kind.COMPILATION,
                  "This quoted text is too long for the compiler, which takes 65534 bytes at most:"
                      + " read it from a file.",
                  source,
                  unit.end()),
              List.of());
      default -> incomplete(source, unit);
    };
  }

  /** A unit that is nested more deeply than the compiler can bear. */
  Outcome tooDeep(SourceText source, Unit unit) {
    String message =
        "This is nested too deeply, or goes on for too long, for the compiler: split it into steps,"
            + " each with a name.";
    return failed(problem(Problem.Kind.COMPILATION, message, source, unit.start()), List.of());
  }

  private Outcome incomplete(SourceText source, Unit unit) {
    Told told = Unfinished.told(source, unit);
    return Outcome.bad(
        Evaluation.Status.INCOMPLETE,
        problem(Problem.Kind.INCOMPLETE, told.message(), source, told.at()),
        List.of());
  }

  /** A unit that was stopped. */
  Outcome stopped(SourceText source, Unit unit) {
    if (engine.fullness() != null && !engine.leftBehind()) {
      return memory.stopped(source, unit);
    }
    String message =
        engine.leftBehind()
            ? "Stopped waiting: this code does not answer, and goes on in the background until it"
                + " ends. Start again if it keeps the machine busy."
            : "Stopped.";
    Problem problem =
        new Problem(
            Problem.Kind.EXCEPTION,
            "Stopped",
            message,
            source.lineAt(unit.start()),
            source.columnAt(unit.start()),
            source.line(source.lineAt(unit.start())),
            List.of(),
            "",
            Optional.empty());
    return Outcome.bad(Evaluation.Status.STOPPED, problem, List.of());
  }

  private static Problem problem(Problem.Kind kind, String message, SourceText source, int place) {
    return problem(kind, message, source, place, "");
  }

  private static Problem problem(
      Problem.Kind kind, String message, SourceText source, int place, String original) {
    int line = source.lineAt(place);
    String name = kind == Problem.Kind.UNRESOLVED ? "Unresolved" : "CompileError";
    return new Problem(
        kind,
        name,
        message,
        line,
        source.columnAt(place),
        source.line(line),
        List.of(),
        original,
        Optional.empty());
  }
}
