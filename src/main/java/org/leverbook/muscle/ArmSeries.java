package org.leverbook.muscle;

import java.util.List;

/**
 * The arms of one muscle about one axis, as published or remembered: values over an angle.
 *
 * @param muscle its key, as in "gluteus_maximus"
 * @param joint the joint in the table's words, as in "hip" or "spine_L5/S1"
 * @param axis the axis in the table's words, as in "flexion_extension"
 * @param action what a positive arm does, as in "extension"
 * @param angleOf which coordinate varies, as in "hip_flexion"
 * @param curve arms of the reference man, metres, over that coordinate
 * @param sources where the values come from, each once
 * @param status "found", "from memory", or both where the values differ
 * @param confidence the least of all values: high, medium or low
 */
public record ArmSeries(
    String muscle,
    String joint,
    String axis,
    String action,
    String angleOf,
    ArmCurve curve,
    List<String> sources,
    String status,
    String confidence) {

  /** Keeps its own copy of the list. */
  public ArmSeries {
    sources = List.copyOf(sources);
  }
}
