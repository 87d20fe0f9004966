package org.leverbook.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.load.Load;

/** A position in a dozen lines. */
final class PositionText {

  private PositionText() {}

  static String of(Position position) {
    StringBuilder text = new StringBuilder(position.name());
    text.append(": ").append(position.body().person().text()).append('\n');
    for (Load load : position.loads()) {
      // A band may be slack, a chain may lie on the floor.
      boolean idle = load.forces(position.placement()).isEmpty();
      text.append(load.description()).append(idle ? ": slack, pulls nothing here\n" : "\n");
    }
    text.append(position.facts().stream().map(Fact::toString).collect(Collectors.joining(", ")));
    text.append('\n');
    if (!position.held()) {
      text.append(position.holding().sentence())
          .append(' ')
          .append(KnownMoments.LEFT_OUT)
          .append('\n');
    }
    position
        .onGround()
        .filter(b -> position.held())
        .ifPresent(b -> text.append(b.text()).append('\n'));
    boolean floorAlone = position.supports().size() == 1 && position.onGround().isPresent();
    if (!floorAlone) {
      position.supportForces().forEach(reaction -> text.append(reaction.text()).append('\n'));
    }
    position.pressed().forEach(push -> text.append(push.text()).append('\n'));
    for (JointId joint : List.of(JointId.HIP, JointId.KNEE, JointId.L5_S1, JointId.SHOULDER)) {
      if (position.knows(joint, Side.RIGHT) || position.knows(joint, Side.LEFT)) {
        text.append(position.moment(joint).text()).append('\n');
      }
    }
    position.notes().forEach(note -> text.append(note).append('\n'));
    return text.append(Caution.TEXT).toString();
  }

  /** Why there is no balance to tell. */
  static String withoutBalance(Position position) {
    return position.held()
        ? "Nothing stands on level ground here, so there is no balance to tell: ask for"
            + " .reactions()."
        : position.holding().sentence();
  }

  /** The notes of a position with what its loads have to say. */
  static List<String> withLoads(List<String> notes, List<Load> loads) {
    List<String> told = new ArrayList<>();
    loads.forEach(load -> load.note().ifPresent(told::add));
    told.addAll(notes);
    return List.copyOf(told);
  }
}
