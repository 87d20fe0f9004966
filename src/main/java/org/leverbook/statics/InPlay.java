package org.leverbook.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leverbook.load.Force;
import org.leverbook.load.Inertia;
import org.leverbook.load.Load;

/** Names what the supports have to answer, for sentences. */
final class InPlay {

  /** A force within this share of straight down is a weight. */
  private static final double STRAIGHT = 1e-9;

  private InPlay() {}

  /**
   * What bears on the ground.
   *
   * @param loads of the position
   * @param forces what they give
   * @return as in "the weight of lifter and bar together", or, where something pulls aside, "the
   *     line of force of lifter and cable together"
   */
  static String told(List<Load> loads, List<Force> forces) {
    List<String> names = new ArrayList<>(List.of("lifter"));
    loads.stream()
        .filter(load -> !(load instanceof Inertia))
        .map(Load::source)
        .filter(source -> forces.stream().anyMatch(f -> f.source().equals(source)))
        .distinct()
        .forEach(names::add);
    boolean weights =
        forces.stream().allMatch(f -> -f.force().getY() >= f.force().getNorm() * (1 - STRAIGHT));
    String all = joined(names);
    if (loads.stream().anyMatch(Inertia.class::isInstance)) {
      all += " in motion";
    }
    return String.format(
        Locale.ROOT,
        "the %s of %s%s",
        weights ? "weight" : "line of force",
        all,
        names.size() > 1 ? " together" : "");
  }

  private static String joined(List<String> names) {
    int last = names.size() - 1;
    return last == 0
        ? "the " + names.get(0)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }
}
