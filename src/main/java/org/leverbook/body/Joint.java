package org.leverbook.body;

import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

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

  /** No joint lies farther from another, metres. */
  private static final double FARTHEST = 1_000;

  /**
   * Keeps its own copy of the list.
   *
   * @throws Refused if a part is missing, or the centre is beyond sense
   */
  public Joint {
    Ask.present("name of the joint", name, "\"hip\"");
    Ask.present("side of the " + name, side, "Side.RIGHT");
    Ask.vector("centre of the " + name, centre, FARTHEST, "m");
    Ask.present("ways the " + name + " turns", freedoms, "List.of()");
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
