package org.leverbook.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.leverbook.body.JointId;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.strength.Demand;

/**
 * One of several ways compared, as numbers at even shares of it.
 *
 * @param name what to call it
 * @param lifter whose, in words; empty where there is no position
 * @param load what is lifted; empty where there is no position
 * @param reason why there is no way at all; empty where there is one
 * @param points from start to finish; none where there is no way
 */
public record Track(String name, String lifter, String load, String reason, List<Point> points) {

  /** Even steps of a way. */
  static final int STEPS = 20;

  /**
   * One share of the way.
   *
   * @param share 0 at the start, 1 at the finish
   * @param effort of the limiter, a share of what it can give; empty where not known
   * @param limiter which joint, in words; empty where not known
   * @param reason why there is no position, or why it cannot be held; empty where it is held
   * @param values the numbers that are known
   */
  public record Point(
      double share, OptionalDouble effort, String limiter, String reason, Values values) {

    static Point nowhere(String reason) {
      return nowhere(0, reason);
    }

    private static Point nowhere(double share, String reason) {
      return new Point(
          share, OptionalDouble.empty(), "", reason, new Values("", "", List.of(), Map.of()));
    }

    static Point at(double share, Passage passage) {
      Attempt tried = Attempt.at(() -> passage.at().apply(share));
      Position position = tried.position();
      if (position == null) {
        return nowhere(share, tried.reason());
      }
      Optional<Demand> limiter = tried.held() ? position.demands().limiter() : Optional.empty();
      return new Point(
          share,
          limiter.map(Demand::effort).orElse(OptionalDouble.empty()),
          limiter.map(Demand::what).orElse(""),
          tried.reason(),
          new Values(
              ComparedNames.who(position),
              ComparedNames.loads(position),
              ComparedNames.sizes(position),
              Reading.all(position)));
    }

    /**
     * The moment at a joint; of a paired joint, the side where it is greater.
     *
     * @param joint which
     * @return newton metres, positive where the resistance flexes; empty where it is not known
     */
    public OptionalDouble moment(JointId joint) {
      return Slot.of(List.of(joint)).stream()
          .map(values.readings()::get)
          .filter(r -> r != null)
          .map(r -> r.moment(r.main()))
          .max(Comparator.comparingDouble(Math::abs))
          .map(OptionalDouble::of)
          .orElse(OptionalDouble.empty());
    }

    Map<Slot, Reading> readings() {
      return values.readings();
    }
  }

  /**
   * What is kept of a position.
   *
   * @param lifter whose
   * @param load what is lifted
   * @param sizes how much of it
   * @param readings moments and arms
   */
  record Values(String lifter, String load, List<String> sizes, Map<Slot, Reading> readings) {}

  /** Keeps its own copy. */
  public Track {
    points = List.copyOf(points);
  }

  /** All ways, sampled in parallel. */
  static List<Track> of(List<Entrant<Passage>> entrants) {
    List<Entrant<Passage>> there = entrants.stream().filter(e -> e.shown() != null).toList();
    int each = STEPS + 1;
    Map<String, List<Point>> points = new LinkedHashMap<>();
    int done =
        Many.each(
            "comparison over the way",
            there.size() * each,
            i -> Point.at((double) (i % each) / STEPS, there.get(i / each).shown()),
            (i, point) ->
                points
                    .computeIfAbsent(there.get(i / each).name(), n -> new ArrayList<>())
                    .add(point));
    if (done < there.size() * each) {
      throw new Refused("Stopped before all positions of the comparison were computed.");
    }
    return entrants.stream()
        .map(e -> of(e.name(), e.reason(), points.getOrDefault(e.name(), List.of())))
        .toList();
  }

  private static Track of(String name, String reason, List<Point> points) {
    Optional<Values> first =
        points.stream().map(Point::values).filter(v -> !v.lifter().isEmpty()).findFirst();
    return new Track(
        name,
        first.map(Values::lifter).orElse(""),
        first.map(Values::load).orElse(""),
        reason,
        points);
  }

  /** How much is lifted where it begins. */
  List<String> sizes() {
    return points.stream()
        .map(Point::values)
        .filter(v -> !v.lifter().isEmpty())
        .map(Values::sizes)
        .findFirst()
        .orElse(List.of());
  }

  /** The point at which a moment is greatest, of the earliest where several are. */
  Optional<Point> peak(Slot slot, String axis) {
    Point most = null;
    for (Point point : points) {
      Reading here = point.readings().get(slot);
      if (here != null
          && (most == null
              || Math.abs(here.moment(axis))
                  > Math.abs(most.readings().get(slot).moment(axis)) + 1e-6)) {
        most = point;
      }
    }
    return Optional.ofNullable(most);
  }

  /** The point at which the limiter gives most. */
  Optional<Point> hardest() {
    return points.stream()
        .filter(p -> p.effort().isPresent())
        .max(Comparator.comparingDouble((Point p) -> p.effort().getAsDouble()));
  }

  /** Why there is nothing at some shares, or at all; empty where everything is held. */
  String missing() {
    List<Point> failed = points.stream().filter(p -> !p.reason().isEmpty()).toList();
    if (!reason.isEmpty() || failed.isEmpty()) {
      return reason;
    }
    return String.format(
        java.util.Locale.ROOT,
        "not held at %d of %d shares of the way, as at %.0f %%: %s",
        failed.size(),
        points.size(),
        100 * failed.get(0).share(),
        failed.get(0).reason());
  }
}
