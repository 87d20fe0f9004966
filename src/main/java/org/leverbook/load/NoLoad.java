package org.leverbook.load;

import java.util.List;
import org.leverbook.pose.Placement;

/**
 * Nothing lifted: it fits wherever a load does, and a position keeps no trace of it.
 *
 * <p>{@code hinge(lifter).holding(noLoad())} empties the hands; {@code start.with(noLoad())} is
 * {@code start}.
 */
public record NoLoad() implements Load {

  @Override
  public String source() {
    return "no load";
  }

  @Override
  public String description() {
    return "empty hands";
  }

  @Override
  public double mass() {
    return 0;
  }

  @Override
  public List<Force> forces(Placement where) {
    return List.of();
  }

  @Override
  public boolean deadWeight() {
    return true;
  }

  @Override
  public String toString() {
    return "no load: empty hands";
  }
}
