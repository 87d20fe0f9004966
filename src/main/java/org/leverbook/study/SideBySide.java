package org.leverbook.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;

/**
 * Which joints of which sides a comparison tells in rows of their own, and about which axis: both
 * sides in one row where they are alike everywhere.
 *
 * @param slot the joint and side whose numbers stand in the row
 * @param side as the row tells it: "each" where left and right are alike, "" on the midline
 * @param axis about which
 */
record SideBySide(Slot slot, String side, String axis) {

  /** Sides are told in one row where they differ by less than this share, or by this. */
  private static final double ALIKE = 1e-3;

  private static final double NEARLY = 0.05;

  /** Less is rounding, and nothing can be set against it, N·m. */
  static final double NOTHING = 0.5;

  /** The rows for these joints; those of which nothing is known anywhere are left out. */
  static List<SideBySide> of(List<JointId> joints, List<Map<Slot, Reading>> all) {
    List<SideBySide> rows = new ArrayList<>();
    for (JointId joint : joints.stream().distinct().toList()) {
      List<Slot> slots = Slot.of(List.of(joint));
      Optional<String> axis = axis(slots, all);
      if (axis.isEmpty()) {
        continue;
      }
      if (joint.paired() && alike(joint, axis.get(), all)) {
        rows.add(new SideBySide(slots.get(0), "each", axis.get()));
      } else {
        slots.stream()
            .filter(slot -> all.stream().anyMatch(r -> r.containsKey(slot)))
            .forEach(slot -> rows.add(new SideBySide(slot, slot.side().word(), axis.get())));
      }
    }
    return rows;
  }

  /** The same with each side in a row of its own. */
  static List<SideBySide> split(List<SideBySide> rows) {
    return rows.stream()
        .flatMap(
            one ->
                one.side().equals("each")
                    ? Slot.of(List.of(one.slot().joint())).stream()
                        .map(slot -> new SideBySide(slot, slot.side().word(), one.axis()))
                    : Stream.of(one))
        .toList();
  }

  /** The axis about which the first tells most. */
  private static Optional<String> axis(List<Slot> slots, List<Map<Slot, Reading>> all) {
    Map<String, Double> most = new LinkedHashMap<>();
    for (Map<Slot, Reading> readings : all) {
      for (Slot slot : slots) {
        Reading reading = readings.get(slot);
        if (reading != null) {
          most.merge(reading.main(), Math.abs(reading.moment(reading.main())), Math::max);
        }
      }
      if (!most.isEmpty() && most.values().stream().anyMatch(m -> m >= NOTHING)) {
        break;
      }
    }
    return most.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
  }

  private static boolean alike(JointId joint, String axis, List<Map<Slot, Reading>> all) {
    for (Map<Slot, Reading> readings : all) {
      Reading right = readings.get(new Slot(joint, Side.RIGHT));
      Reading left = readings.get(new Slot(joint, Side.LEFT));
      if ((right == null) != (left == null)) {
        return false;
      }
      if (right != null) {
        double apart = Math.abs(right.moment(axis) - left.moment(axis));
        if (apart > NEARLY && apart > ALIKE * Math.abs(right.moment(axis))) {
          return false;
        }
      }
    }
    return true;
  }

  /** One ratio; empty where there is nothing to set it against. */
  static Optional<Double> ratio(double value, double first) {
    return Math.abs(first) < NOTHING ? Optional.empty() : Optional.of(value / first);
  }
}
