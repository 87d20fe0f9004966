package org.leverbook.script;

import java.util.stream.Stream;
import org.leverbook.notebook.Output;
import org.leverbook.session.Problem;

/**
 * The mistake at which a notebook ended.
 *
 * @param cell which one of the cells that were run, from 1
 * @param problem what went wrong there
 */
record Trouble(int cell, Problem problem) {

  /** As the cell's last output. */
  Output.Failed output() {
    Stream<String> lines = problem.text("line ").lines();
    return new Output.Failed(problem.name(), problem.message(), lines.toList());
  }

  /** As a complaint: file, cell, line, reason, the line with a caret, the trail. */
  String text(String file) {
    StringBuilder text = new StringBuilder(file);
    text.append(": cell ").append(cell).append(", line ").append(problem.line()).append(": ");
    text.append(problem.message()).append('\n').append(problem.caret());
    problem.trail().forEach(step -> text.append("\n  ").append(step));
    return text.toString();
  }
}
