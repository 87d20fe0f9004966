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
  private final Assistance assistance;
  private final Trace trace;
  private final Wording wording;

  Findings(JShell shell, Engine engine, Origins origins, Assistance assistance, Preamble preamble) {
    this.shell = shell;
    this.engine = engine;
    this.origins = origins;
    this.assistance = assistance;
    this.trace = new Trace(origins);
    this.wording = new Wording(new Makers(preamble.vocabulary()));
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
      var origin = new Origins.Origin(source, unit.start());
      return failed(trace.of(engine.failure(), new StackTraceElement[0], origin), notes);
    }
    if (lacksSomething(own.status()) && !(own.snippet() instanceof DeclarationSnippet)) {
      // A statement that can never run, such as one too long for a class file.
      return failed(compilation(own.snippet(), source, unit), notes);
    }
    if (own.snippet() instanceof DeclarationSnippet declared && lacksSomething(own.status())) {
      String missing = missing(declared);
      if (own.status() == Status.RECOVERABLE_NOT_DEFINED && declared instanceof VarSnippet) {
        String message = declared.name() + " cannot be made: there is no " + missing + ".";
        return failed(problem(Problem.Kind.UNRESOLVED, message, source, unit.start()), notes);
      }
      notes.add(declared.name() + " needs " + missing + ", which is not there yet.");
    }
    if (unit.kind() == Unit.Kind.INVALID) {
      String message = "Only the beginning of this could be read.";
      return failed(problem(Problem.Kind.COMPILATION, message, source, unit.start()), notes);
    }
    return Outcome.good(value(own.snippet(), source, unit), notes);
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
    String code = unit.code();
    String message = wording.of(first, code, at -> assistance.candidates(code, at));
    boolean symbol = String.valueOf(first.getCode()).startsWith("compiler.err.cant.resolve");
    int position = (int) Math.max(0, first.getPosition());
    int at = symbol ? Wording.nameStart(code, position) : position;
    int place = Math.min(unit.start() + at, source.text().length());
    String original = Words.unwrapped(first.getMessage(Locale.ENGLISH));
    return problem(Problem.Kind.COMPILATION, message, source, place, original);
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
    return trace.of(thrown, told.getStackTrace(), origin);
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
      default -> incomplete(source, unit);
    };
  }

  private Outcome incomplete(SourceText source, Unit unit) {
    Brackets brackets = new Brackets(source.text(), unit.start());
    brackets.readTo(source.text().length());
    int place = brackets.innermostOpen().orElse(unit.start());
    String message =
        brackets
            .innermostOpen()
            .map(open -> unclosed(source, open))
            .orElse("What begins here is not finished when the text ends.");
    return Outcome.bad(
        Evaluation.Status.INCOMPLETE,
        problem(Problem.Kind.INCOMPLETE, message, source, place),
        List.of());
  }

  private static String unclosed(SourceText source, int open) {
    int line = source.lineAt(open);
    return switch (source.text().charAt(open)) {
      case '/' -> "The comment opened at line " + line + " is never closed by */.";
      case '"' -> "The text block opened at line " + line + " is never closed by \"\"\".";
      default ->
          "The bracket "
              + source.text().charAt(open)
              + " opened at line "
              + line
              + " is never closed.";
    };
  }

  /** A unit that was stopped. */
  Outcome stopped(SourceText source, Unit unit) {
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
