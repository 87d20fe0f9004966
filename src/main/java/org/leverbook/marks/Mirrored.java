package org.leverbook.marks;

import java.util.List;

/**
 * A solution with its parts turned out of the picture the other way.
 *
 * @param solved the pose
 * @param stayed the parts that the joints or the stance do not let turn the other way, by name, as
 *     in "right thigh"; empty where all turned
 */
record Mirrored(Solved solved, List<String> stayed) {

  /** Keeps its own copy. */
  Mirrored {
    stayed = List.copyOf(stayed);
  }

  /** The same with another solution: a mirror of the mirror. */
  Mirrored back(Solved first) {
    return new Mirrored(first, stayed);
  }
}
