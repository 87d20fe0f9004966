package org.leverbook.muscle;

import java.util.List;
import org.leverbook.body.Side;

/**
 * One muscle of one side of a person: it can only pull, at most so hard.
 *
 * @param muscle what it is
 * @param side left or right
 * @param maxForce the greatest pull, newtons: cross-section times the stress that belongs to it
 * @param crossings the axes it turns
 */
public record Strand(MuscleRow muscle, Side side, double maxForce, List<Crossing> crossings) {

  /** Keeps its own copy of the list. */
  public Strand {
    crossings = List.copyOf(crossings);
  }

  /**
   * The muscle with its side.
   *
   * @return as in "right gluteus maximus"
   */
  public String fullName() {
    return side.of(muscle.name());
  }
}
