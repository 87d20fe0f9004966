package org.leverbook.session;

import java.util.List;
import java.util.Optional;

/**
 * What came of a text.
 *
 * @param status how it ended
 * @param value the value of its last unit, where that was an expression
 * @param problem what went wrong; empty where nothing did
 * @param notes what the user should know although nothing failed, one sentence each
 * @param unitsDone how many statements, expressions and declarations took effect
 */
public record Evaluation(
    Status status,
    Optional<Value> value,
    Optional<Problem> problem,
    List<String> notes,
    int unitsDone) {

  /** How a text ended. */
  public enum Status {
    /** All of it took effect. */
    OK,
    /** One unit failed; those before it took effect. */
    FAILED,
    /** It was stopped; units before that took effect. */
    STOPPED,
    /** The last unit needs more text; those before it took effect. */
    INCOMPLETE
  }

  /** Keeps its own copy of the notes. */
  public Evaluation {
    notes = List.copyOf(notes);
  }

  /**
   * Whether all of it took effect.
   *
   * @return true if so
   */
  public boolean ok() {
    return status == Status.OK;
  }
}
