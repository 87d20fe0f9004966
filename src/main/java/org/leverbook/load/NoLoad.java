package org.leverbook.load;

import java.util.List;
import org.leverbook.pose.Placement;

/** Nothing but the body's own weight, said on purpose. */
public record NoLoad() implements Load {

  @Override
  public String source() {
    return "no load";
  }

  @Override
  public String description() {
    return "no load";
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
  public String toString() {
    return description();
  }
}
