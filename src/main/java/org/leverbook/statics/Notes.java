package org.leverbook.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What is said of a position in the coach's words.
 *
 * @param all the sentences, in order
 * @param ofLoads those among them that are true with these loads and supports only
 */
public record Notes(List<String> all, Set<String> ofLoads) {

  private static final String SAME_POSTURE =
      "Loads or supports were changed after the posture was found: posture, and what is said of it below, are those"
          + " of the lift as first described.";

  /** Keeps its own copies. */
  public Notes {
    all = List.copyOf(all);
    ofLoads = Set.copyOf(ofLoads);
  }

  /**
   * Sentences that stay true whatever is held.
   *
   * @param all in order
   * @return the notes
   */
  public static Notes ofPosture(List<String> all) {
    return new Notes(all, Set.of());
  }

  /** What still holds when the pads are used otherwise, or masses move. */
  Notes withoutThoseOfLoads() {
    return ofPosture(all.stream().filter(note -> !ofLoads.contains(note)).toList());
  }

  /** What still holds with other loads or supports, and whose posture it is. */
  Notes afterChange() {
    List<String> told = new ArrayList<>(withoutThoseOfLoads().all());
    if (!told.contains(SAME_POSTURE)) {
      told.add(0, SAME_POSTURE);
    }
    return ofPosture(told);
  }

  Notes and(String more) {
    List<String> told = new ArrayList<>(all);
    told.add(more);
    return new Notes(told, ofLoads);
  }
}
