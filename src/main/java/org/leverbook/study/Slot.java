package org.leverbook.study;

import java.util.Arrays;
import java.util.List;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;

/**
 * One joint of one side.
 *
 * @param joint which
 * @param side left, right, or the midline
 */
record Slot(JointId joint, Side side) {

  /** All of them, in the order of the joints, right before left. */
  static final List<Slot> ALL = of(Arrays.asList(JointId.values()));

  static List<Slot> of(List<JointId> joints) {
    return joints.stream()
        .distinct()
        .flatMap(joint -> joint.sides().stream().map(side -> new Slot(joint, side)))
        .toList();
  }
}
