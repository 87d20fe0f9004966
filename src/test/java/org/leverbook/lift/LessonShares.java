package org.leverbook.lift;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.leverbook.muscle.Effort;
import org.leverbook.muscle.MuscleGroup;
import org.leverbook.muscle.MuscleRow;
import org.leverbook.statics.Position;

/**
 * How hard each trade group of trunk, hips and shoulders pulls in one position: the stress of its
 * muscles, both sides, weighed by their cross-sections, as a share of what they can give.
 *
 * <p>The groups are those that {@code muscle("...")} knows by these names; glutes and hamstrings
 * count as one, for the lessons speak of hip extensors. Arms, forearms and calves are left out: the
 * lessons speak of trunk, hips and shoulders.
 */
final class LessonShares {

  static final String ERECTORS = "spinal erectors";
  static final String HIP_EXTENSORS = "hip extensors";
  static final String ABDOMINALS = "abdominals";
  static final String LATS = "lats";
  static final String CHEST = "chest";
  static final String REAR_DELTS = "rear delts";
  static final String UPPER_BACK = "upper back";
  static final String UPPER_TRAPS = "upper traps";

  private static final Map<String, Set<String>> GROUPS =
      Map.ofEntries(
          Map.entry(ERECTORS, keys(ERECTORS)),
          Map.entry(HIP_EXTENSORS, keys("glutes", "hamstrings")),
          Map.entry(ABDOMINALS, keys(ABDOMINALS)),
          Map.entry("hip flexors", keys("hip flexors")),
          Map.entry("quads", keys("quads")),
          Map.entry("adductors", keys("adductors")),
          Map.entry(LATS, keys(LATS)),
          Map.entry(CHEST, keys(CHEST)),
          Map.entry("front delts", keys("front delts")),
          Map.entry("side delts", keys("side delts")),
          Map.entry(REAR_DELTS, keys(REAR_DELTS)),
          Map.entry("rotator cuff", keys("rotator cuff")),
          Map.entry(UPPER_BACK, keys(UPPER_BACK)),
          Map.entry(UPPER_TRAPS, keys(UPPER_TRAPS)));

  private final Effort effort;
  private final Map<String, Double> shares = new TreeMap<>();

  private LessonShares(Effort effort) {
    this.effort = effort;
    GROUPS.forEach((name, keys) -> shares.put(name, of(keys)));
  }

  static LessonShares of(Position position) {
    return new LessonShares(position.effort());
  }

  private static Set<String> keys(String... names) {
    return List.of(names).stream()
        .flatMap(name -> MuscleGroup.named(name).parts().stream())
        .map(MuscleRow::key)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** The share of one of the groups, 0 to 1. */
  double of(String group) {
    return shares.get(group);
  }

  /** The share of any muscle or group by its name, 0 to 1. */
  double named(String... names) {
    return of(keys(names));
  }

  /** The greatest share of all groups besides some. */
  double mostBesides(String... some) {
    Set<String> without = Set.of(some);
    return shares.entrySet().stream()
        .filter(e -> !without.contains(e.getKey()))
        .mapToDouble(Map.Entry::getValue)
        .max()
        .orElseThrow();
  }

  private double of(Set<String> keys) {
    double area = 0;
    double weighed = 0;
    for (Effort.Pull pull : effort.pulls()) {
      MuscleRow muscle = pull.strand().muscle();
      if (keys.contains(muscle.key())) {
        area += muscle.area();
        weighed += muscle.area() * pull.stress();
      }
    }
    return weighed / area;
  }

  @Override
  public String toString() {
    return shares.toString();
  }
}
