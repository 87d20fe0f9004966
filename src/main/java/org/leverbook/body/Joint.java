package org.leverbook.body;

import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * What holds a segment to its parent.
 *
 * @param name as in "hip" or "L5/S1", without its side
 * @param side which half of the body
 * @param muscles whose action moves it, as in "hip" for "hip extensors"
 * @param centre its centre in the parent's frame, metres
 * @param freedoms how it turns, in order; may be empty for a fixed joint
 */
public record Joint(
    String name, Side side, String muscles, Vector3D centre, List<Freedom> freedoms) {

  /** Keeps its own copy of the list. */
  public Joint {
    freedoms = List.copyOf(freedoms);
  }

  /**
   * The name with its side.
   *
   * @return as in "right hip"
   */
  public String fullName() {
    return side.of(name);
  }

  /**
   * The freedom about an anatomical axis.
   *
   * @param axis flexion, abduction or rotation
   * @return the freedom, or empty where the joint has none
   */
  public Optional<Freedom> freedom(String axis) {
    return freedoms.stream().filter(f -> f.motion().axis().equals(axis)).findFirst();
  }
}
