package org.leverbook.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.leverbook.quantity.Refused;

/** Exceptions of the user's code as problems: in words, with the line of the user's text. */
final class Trace {

  private static final int LONGEST = 12;

  private final Origins origins;

  Trace(Origins origins) {
    this.origins = origins;
  }

  /**
   * The problem that an exception is.
   *
   * @param thrown what the code threw
   * @param frames its stack, frames of user code named by snippet
   * @param unit where the unit that was running began
   */
  Problem of(Throwable thrown, StackTraceElement[] frames, Origins.Origin unit) {
    Throwable cause = Copies.essential(thrown);
    List<String> trail = new ArrayList<>();
    int line = 0;
    for (StackTraceElement frame : frames) {
      var origin = origins.of(frame);
      if (origin.isEmpty()) {
        continue;
      }
      boolean here = origin.get().source().equals(unit.source());
      int at = origin.get().line(frame.getLineNumber());
      if (here && line == 0) {
        line = at;
      } else if (here && at == line && trail.isEmpty()) {
        // The line calls itself, or a rule in it: it is told already.
        continue;
      } else if (trail.size() < LONGEST) {
        add(trail, (line == 0 ? "in line " : "called from line ") + at, here, origin.get(), at);
      }
    }
    line = line == 0 ? unit.line(1) : line;
    SourceText source = unit.source();
    int column = unit.column(line);
    boolean refused = cause instanceof Refused;
    return new Problem(
        refused ? Problem.Kind.REFUSAL : Problem.Kind.EXCEPTION,
        cause.getClass().getSimpleName(),
        refused ? String.valueOf(cause.getMessage()) : ExceptionWording.of(cause),
        line,
        column,
        source.line(line),
        trail,
        "",
        Optional.of(thrown));
  }

  private static void add(
      List<String> trail, String step, boolean here, Origins.Origin origin, int line) {
    String said =
        here ? step : step + " of an earlier input: " + origin.source().line(line).strip();
    if (trail.isEmpty() || !trail.get(trail.size() - 1).equals(said)) {
      trail.add(said);
    }
  }
}
