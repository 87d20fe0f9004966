package org.leverbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Problem;
import org.leverbook.session.Value;

/** Puts together what came of the parts of an input. */
final class Problems {

  private Problems() {}

  /** One evaluation after another. */
  static Evaluation joined(Evaluation first, Evaluation second) {
    List<String> notes = new ArrayList<>(first.notes());
    notes.addAll(second.notes());
    Optional<Value> last = second.unitsDone() == 0 ? first.value() : second.value();
    return new Evaluation(
        second.status(), last, second.problem(), notes, first.unitsDone() + second.unitsDone());
  }

  /**
   * A problem of a text that another text asked to run, told at the place that asked.
   *
   * @param problem what went wrong in the inner text
   * @param where the inner text, as in "lesson.jsh"
   * @param line of the outer text
   * @param source that line
   */
  static Problem within(Problem problem, String where, int line, String source) {
    List<String> trail = new ArrayList<>();
    trail.add(where + ", line " + problem.line() + ": " + problem.source().strip());
    trail.addAll(problem.trail());
    int column = source.length() - source.stripLeading().length() + 1;
    return new Problem(
        problem.kind(),
        problem.name(),
        where + ", line " + problem.line() + ": " + problem.message(),
        line,
        column,
        source,
        trail,
        problem.original(),
        problem.thrown());
  }

  /** The same evaluation with another problem. */
  static Evaluation with(Evaluation evaluation, Optional<Problem> problem) {
    return new Evaluation(
        evaluation.status(),
        evaluation.value(),
        problem,
        evaluation.notes(),
        evaluation.unitsDone());
  }
}
