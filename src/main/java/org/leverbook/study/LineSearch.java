package org.leverbook.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.leverbook.quantity.Refused;

/**
 * The best of one setting.
 *
 * <ol>
 *   <li>A scan over the whole range, in parallel.
 *   <li>Each place of the scan that is lower than its neighbours begins a search of its own: where
 *       a neighbour is a wall, its edge is found by halving; then Brent's method in the bracket.
 *   <li>The best of all; of a level stretch, its middle.
 * </ol>
 *
 * <p>A valley between two places of the scan that shows at neither is not seen: scan finer. Each
 * search depends on its start alone, so the outcome is the same on any number of processors.
 */
final class LineSearch {

  private static final int MOST_STARTS = 8;

  private final Ground ground;
  private final Span<?> span;
  private final List<Trial> scan = new ArrayList<>();
  private double plateau;

  /** A stretch of the scan of one level, lower than what lies beside it. */
  private record Floor(int first, int last, Trial level) {}

  private LineSearch(Ground ground, Span<?> span) {
    this.ground = ground;
    this.span = span;
  }

  /**
   * Searches.
   *
   * @param ground the cost of each setting
   * @param span its values are the scan's
   * @return what was found
   * @throws Refused if every setting of the scan is a wall; tells the most frequent reason
   */
  static Sought best(Ground ground, Span<?> span) {
    LineSearch search = new LineSearch(ground, span);
    search.look();
    return search.refined();
  }

  private void look() {
    Searches.each(
        "scan over " + span.name(),
        span.values(),
        i -> ground.at(span.value(i), 0),
        (i, trial) -> scan.add(trial));
    Searches.someFree(scan, "settings of " + span.name());
    plateau = Searches.plateau(scan);
  }

  private Sought refined() {
    List<Floor> floors = floors();
    List<Trial> found = new ArrayList<>();
    Searches.each(
        "search over " + span.name(),
        floors.size(),
        i -> refined(floors.get(i)),
        (i, trial) -> found.add(trial));
    List<Trial> valleys = Searches.apart(found, Math.abs(span.value(1) - span.value(0)), 1);
    return new Sought(scan, valleys.get(0), valleys);
  }

  private List<Floor> floors() {
    List<Floor> floors = new ArrayList<>();
    int i = 0;
    while (i < scan.size()) {
      int first = i++;
      Trial level = scan.get(first);
      while (i < scan.size() && level.level(scan.get(i))) {
        i++;
      }
      boolean left = first == 0 || level.trulyBelow(scan.get(first - 1));
      boolean right = i == scan.size() || level.trulyBelow(scan.get(i));
      if (level.free() && left && right) {
        floors.add(new Floor(first, i - 1, level));
      }
    }
    floors.sort(Comparator.comparingDouble(f -> f.level().cost()));
    return floors.subList(0, Math.min(MOST_STARTS, floors.size()));
  }

  private Trial refined(Floor floor) {
    Ground.Line line = t -> ground.at(t, 0);
    double from = bound(line, floor.first(), -1);
    double to = bound(line, floor.last(), 1);
    Trial middle = middle(floor);
    // The start of the bracket must lie inside it; at an end of the range it does not.
    double start =
        middle.x() > low(from, to) && middle.x() < high(from, to) ? middle.x() : mid(from, to);
    double lowest = Ground.lowest(line, low(from, to), start, high(from, to), plateau);
    boolean flat = floor.last() > floor.first() && middle.level(floor.level());
    Trial best = middle;
    for (double candidate : new double[] {from, to, lowest}) {
      Trial here = line.at(candidate);
      // A level stretch keeps its middle unless something is lower by more than rounding.
      best = flat ? (here.trulyBelow(best) ? here : best) : best.orBetter(here);
    }
    return best;
  }

  /** As far as a lower place may lie: the neighbour in the scan, or the edge before its wall. */
  private double bound(Ground.Line line, int index, int step) {
    int beside = index + step;
    double here = span.value(index);
    if (beside < 0 || beside >= scan.size()) {
      return here;
    }
    double there = span.value(beside);
    return scan.get(beside).free() ? there : Ground.edge(line, here, there, Trial::free);
  }

  private Trial middle(Floor floor) {
    Trial between = ground.at(mid(span.value(floor.first()), span.value(floor.last())), 0);
    return between.level(floor.level()) ? between : floor.level();
  }

  private static double low(double a, double b) {
    return Math.min(a, b);
  }

  private static double high(double a, double b) {
    return Math.max(a, b);
  }

  private static double mid(double a, double b) {
    return (a + b) / 2;
  }
}
