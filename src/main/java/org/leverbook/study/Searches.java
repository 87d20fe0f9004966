package org.leverbook.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntFunction;
import org.leverbook.quantity.Refused;

/** What the searches over one and over two settings have in common. */
final class Searches {

  private Searches() {}

  /** All of them, in parallel and in order; half a search is none. */
  static <T> void each(String what, int count, IntFunction<T> work, Many.Taker<T> taker) {
    if (Many.each(what, count, work, taker) < count) {
      throw new Refused("Stopped before the search was done.");
    }
  }

  /** Refuses where nothing is free, with the most frequent reason. */
  static void someFree(List<Trial> scan, String what) {
    if (scan.stream().anyMatch(Trial::free)) {
      return;
    }
    Map<String, List<Trial>> alike = new LinkedHashMap<>();
    scan.forEach(
        t -> alike.computeIfAbsent(Gap.wording(t.reason()), w -> new ArrayList<>()).add(t));
    List<Trial> most =
        alike.values().stream().max(Comparator.comparingInt(List::size)).orElseThrow();
    throw new Refused(
        String.format(
            Locale.ROOT,
            "None of the %,d %s gives anything to choose from. %s: %s",
            scan.size(),
            what,
            most.size() == scan.size() ? "Each says" : "Most, " + most.size() + ", say",
            most.get(0).reason()));
  }

  /** What a wall counts for an optimiser that needs a number: more than anything seen. */
  static double plateau(List<Trial> scan) {
    double[] costs = scan.stream().filter(Trial::free).mapToDouble(Trial::cost).sorted().toArray();
    double highest = costs[costs.length - 1];
    return highest + Math.max(highest - costs[0], Math.abs(highest)) + 1;
  }

  /** The best first; of those that lie within a step of a better one, none. */
  static List<Trial> apart(List<Trial> found, double step, double other) {
    List<Trial> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparingDouble(Trial::cost));
    List<Trial> kept = new ArrayList<>();
    for (Trial trial : sorted) {
      boolean known =
          kept.stream()
              .anyMatch(
                  k ->
                      Math.abs(k.x() - trial.x()) < 0.999 * step
                          && Math.abs(k.y() - trial.y()) < 0.999 * other);
      if (!known) {
        kept.add(trial);
      }
    }
    return kept;
  }
}
