package org.leverbook.statics;

import org.leverbook.muscle.Effort;
import org.leverbook.quantity.Refused;

/** What a position answers about muscles. */
public sealed interface MuscleQuestions permits Position {

  /**
   * Who pulls how hard, all joints together, with the least stress that holds.
   *
   * @return the effort
   * @throws Refused if the supports cannot hold the position
   */
  default Effort effort() {
    return ((Position) this).sums.effort();
  }
}
