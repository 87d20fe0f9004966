package org.leverbook.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How it looks around the best: what it lies against, and how far one may stray from it.
 *
 * @param against sentences on limits, walls and edges; none where the best lies free
 * @param near how far each setting may stray for one per cent, in words; the others kept
 */
record Surroundings(List<String> against, List<String> near) {

  /** So near a limit or a wall, as a share of the range, is at it. */
  private static final double TOUCHING = 1e-5;

  /** One per cent of the best is what counts as nearly as good. */
  private static final double NEARLY = 0.01;

  /** Below this share of what the scan spans, one per cent of the best says nothing. */
  private static final double NEARLY_ZERO = 1e-3;

  /** So far from a limit the slope is judged, as a share of the range. */
  private static final double STEP_INSIDE = 0.02;

  /**
   * So much there is a slope, as a share of what the scan spans: a two-hundredth of an even one.
   */
  private static final double WORTH_TELLING = 1e-4;

  static <T> Surroundings of(Quest<T> quest, Sought found) {
    List<String> against = new ArrayList<>();
    List<String> near = new ArrayList<>();
    Map<String, String> walls = new LinkedHashMap<>();
    for (int i = 0; i < quest.spans().size(); i++) {
      Side side = new Side(quest, found.best(), i);
      side.limits(against, found.spread());
      side.walls(walls);
    }
    against.addAll(walls.values());
    if (found.spread() <= 1e-9 * Math.abs(found.best().cost())) {
      near.add(
          "The "
              + quest.quantity().name()
              + " is the same everywhere in the range: nothing is to be chosen here.");
    } else {
      for (int i = 0; i < quest.spans().size(); i++) {
        near.add(new Side(quest, found.best(), i).near(margin(found), found));
      }
    }
    return new Surroundings(against, near);
  }

  /** What one may lose: one per cent of the best; where that is next to nothing, of the spread. */
  private static double margin(Sought found) {
    double size = Math.abs(found.best().cost());
    return NEARLY * (nearlyZero(found) ? found.spread() : size);
  }

  private static boolean nearlyZero(Sought found) {
    return Math.abs(found.best().cost()) < NEARLY_ZERO * found.spread();
  }

  /** The surroundings along one setting. */
  private static final class Side {

    private final Quest<?> quest;
    private final Trial best;
    private final Span<?> span;
    private final boolean first;
    private final double here;
    private final double low;
    private final double high;

    Side(Quest<?> quest, Trial best, int which) {
      this.quest = quest;
      this.best = best;
      this.span = quest.spans().get(which);
      this.first = which == 0;
      this.here = first ? best.x() : best.y();
      this.low = Math.min(span.from(), span.to());
      this.high = Math.max(span.from(), span.to());
    }

    private Trial at(double t) {
      return first ? quest.at(t, best.y()) : quest.at(best.x(), t);
    }

    void limits(List<String> told, double spread) {
      double touching = TOUCHING * (high - low);
      for (int way : new int[] {-1, 1}) {
        double limit = way < 0 ? low : high;
        Trial inside = at(here - way * STEP_INSIDE * (high - low));
        if (way * (limit - here) > touching || inside.level(best)) {
          continue;
        }
        boolean steep = !inside.free() || inside.cost() - best.cost() > WORTH_TELLING * spread;
        told.add(
            String.format(
                Locale.ROOT,
                steep
                    ? "At the %s limit of the range, %s %s: %s may be better still."
                    : "At the %s limit of the range, %s %s, but nearby it hardly matters.",
                way < 0 ? "lower" : "upper",
                span.name(),
                span.text(limit),
                way < 0 ? "lower" : "higher"));
      }
    }

    void walls(Map<String, String> told) {
      double touching = TOUCHING * (high - low);
      for (int way : new int[] {-1, 1}) {
        double beyond = here + way * touching;
        if (beyond < low || beyond > high) {
          continue;
        }
        Trial there = at(beyond);
        if (!there.free()) {
          told.putIfAbsent(
              Gap.wording(there.reason()),
              String.format(
                  Locale.ROOT,
                  "On the edge of %s; with the %s: %s",
                  there.wall() == Trial.Wall.LIMIT ? "what was asked for" : "what can be done",
                  span.name() + " a little " + (way < 0 ? "lower" : "higher"),
                  there.reason()));
        }
      }
    }

    String near(double margin, Sought found) {
      double from = reach(-1, margin);
      double to = reach(1, margin);
      String kept = quest.two() ? " with the other setting kept" : "";
      String of =
          nearlyZero(found)
              ? "one per cent of all values seen (the best is next to zero)"
              : "one per cent of the best";
      String range =
          from <= low && to >= high
              ? "the whole range: it hardly matters"
              : Optima.text(span, from) + " to " + Optima.text(span, to);
      return "Within " + of + kept + ": " + span.name() + " " + range + ".";
    }

    private double reach(int way, double margin) {
      double step = (high - low) / (span.values() - 1) / 2;
      double end = way < 0 ? low : high;
      double last = here;
      while (way * (end - last) > 0) {
        double next = way < 0 ? Math.max(end, last - step) : Math.min(end, last + step);
        if (!within(at(next), margin)) {
          return Ground.edge(this::at, last, next, t -> within(t, margin));
        }
        last = next;
      }
      return last;
    }

    private boolean within(Trial there, double margin) {
      return there.free() && there.cost() <= best.cost() + margin;
    }
  }
}
