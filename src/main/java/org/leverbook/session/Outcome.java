package org.leverbook.session;

import java.util.List;
import java.util.Optional;

/** What came of one unit. */
record Outcome(
    Evaluation.Status status,
    Optional<Value> value,
    Optional<Problem> problem,
    List<String> notes) {

  static Outcome good(Optional<Value> value, List<String> notes) {
    return new Outcome(Evaluation.Status.OK, value, Optional.empty(), notes);
  }

  static Outcome bad(Evaluation.Status status, Problem problem, List<String> notes) {
    return new Outcome(status, Optional.empty(), Optional.of(problem), notes);
  }
}
