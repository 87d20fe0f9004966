package org.leverbook.study;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.Position;

/**
 * The numbers of one joint that a comparison keeps after its position is gone.
 *
 * <p>They are kept about every anatomical axis, because a comparison tells all its positions about
 * one and the same axis, whichever is the main one of each.
 *
 * @param main the axis the position itself tells about, as in "flexion"
 * @param moments by axis, newton metres, positive towards the motion
 * @param arms of the main load by axis, metres, with the sign of what that load gives; none where
 *     no load acts beyond the joint
 */
record Reading(String main, Map<String, Double> moments, Map<String, Double> arms) {

  /** All joints whose moment is known, one way for each side. */
  static Map<Slot, Reading> all(Position position) {
    Map<Slot, Reading> readings = new LinkedHashMap<>();
    for (Slot slot : Slot.ALL) {
      if (position.knows(slot.joint(), slot.side())) {
        readings.put(slot, of(position.moment(slot.joint(), slot.side())));
      }
    }
    return readings;
  }

  private static Reading of(JointMoment moment) {
    Map<String, Double> moments = new LinkedHashMap<>();
    Map<String, Double> arms = new LinkedHashMap<>();
    Optional<JointMoment.Part> load = Optional.ofNullable(moment.parts().get(moment.mainLoad()));
    double newtons = load.map(p -> p.force().getNorm()).orElse(0.0);
    for (JointMoment.Axis axis : moment.axes()) {
      String name = axis.motion().axis();
      moments.put(name, moment.moment().dotProduct(axis.direction()));
      if (newtons > 0) {
        arms.put(name, load.get().moment().dotProduct(axis.direction()) / newtons);
      }
    }
    return new Reading(moment.motion().axis(), moments, arms);
  }

  /** Newton metres; zero where the joint has no such axis. */
  double moment(String axis) {
    return moments.getOrDefault(axis, 0.0);
  }

  /** Centimetres; empty where no load acts beyond the joint. */
  Optional<Double> armInCm(String axis) {
    return arms.isEmpty() ? Optional.empty() : Optional.of(100 * arms.getOrDefault(axis, 0.0));
  }
}
