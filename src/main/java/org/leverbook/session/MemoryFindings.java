package org.leverbook.session;

import java.lang.reflect.Field;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.JShell;
import jdk.jshell.VarSnippet;

/** What is told where memory was full. Whoever calls holds the compile lock. */
final class MemoryFindings {

  private final JShell shell;
  private final Engine engine;

  MemoryFindings(JShell shell, Engine engine) {
    this.shell = shell;
    this.engine = engine;
  }

  /** What is said of a text that was stopped for it. */
  String stopped() {
    return MemoryWording.stopped(engine.fullness(), hoard());
  }

  /** A unit that was stopped for it. */
  Outcome stopped(SourceText source, Unit unit) {
    return outcome(stopped(), source, unit);
  }

  /** A unit for which the compiler, or showing its value, had too little. */
  Outcome ranOut(OutOfMemoryError full, SourceText source, Unit unit) {
    return outcome(refused(full), source, unit);
  }

  /** What is said of code that asked for more than there was. */
  String refused(OutOfMemoryError full) {
    Memory.ranOut();
    return MemoryWording.refused(full, hoard());
  }

  private Optional<Hoard> hoard() {
    try {
      Map<String, Object> values = new HashMap<>();
      shell.variables().forEach(variable -> values.put(variable.name(), value(variable)));
      return Hoard.in(values);
    } catch (OutOfMemoryError e) {
      // Who holds most is not worth another failure.
      return Optional.empty();
    }
  }

  private Object value(VarSnippet variable) {
    try {
      Field field = engine.fieldOf(shell, variable);
      return field == null ? null : field.get(null);
    } catch (IllegalArgumentException | IllegalAccessException e) {
      // It was declared with something that is not there yet, and holds nothing.
      return null;
    }
  }

  private static Outcome outcome(String message, SourceText source, Unit unit) {
    int line = source.lineAt(unit.start());
    Problem problem =
        new Problem(
            Problem.Kind.EXCEPTION,
            OutOfMemoryError.class.getSimpleName(),
            message,
            line,
            source.columnAt(unit.start()),
            source.line(line),
            List.of(),
            "",
            Optional.empty());
    return Outcome.bad(Evaluation.Status.FAILED, problem, List.of());
  }
}
