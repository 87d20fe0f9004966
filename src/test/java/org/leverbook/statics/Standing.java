package org.leverbook.statics;

import java.util.List;
import org.leverbook.body.Body;
import org.leverbook.load.Load;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.support.Floor;
import org.leverbook.support.Support;

/** Positions on the bare floor for tests that go on only where it holds them. */
public final class Standing {

  private Standing() {}

  /**
   * A person standing still on the floor, feet flat.
   *
   * @return the position
   * @throws Refused if it would tip or slip
   */
  public static Position position(
      String name, Body body, Pose pose, List<Load> loads, List<Fact> facts, Notes notes) {
    List<Support> floor = List.of(new Floor(body));
    Position position = Position.of(name, body, pose, loads, floor, facts, notes);
    if (!position.held()) {
      throw new Refused(position.holding().sentence());
    }
    return position;
  }
}
