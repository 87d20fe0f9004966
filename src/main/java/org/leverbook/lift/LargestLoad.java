package org.leverbook.lift;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.display.Shown;
import org.leverbook.load.Load;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Largest;
import org.leverbook.statics.Position;
import org.leverbook.strength.Capacity;

/**
 * The largest load that can be held still at each share of a lift's way, and over the whole way the
 * smallest of these: where the lift would stick.
 *
 * <p>At every share the load grows in the posture of the load before; then the posture is solved
 * anew with the load found, since balance moves with it, until the load no longer changes.
 *
 * @param name of the lift
 * @param lifter in words
 * @param points in the order of the way
 */
public record LargestLoad(String name, String lifter, List<Point> points) implements Shown {

  /** Steps of the way. */
  private static final int STEPS = 20;

  /** Loads within this share of the smallest belong to the sticking region: our convention. */
  private static final double REGION = 0.05;

  private static final int MOST_ROUNDS = 8;

  /** The load no longer changes, as a share of it. */
  private static final double STILL = 2e-3;

  /**
   * One share of the way.
   *
   * @param share 0 at the start, 1 at the finish
   * @param largest what can be held there; empty where nobody of this build gets there
   * @param reason what stops it, in words
   */
  public record Point(double share, Optional<Largest> largest, String reason) {

    /**
     * The load's size.
     *
     * @return kilograms; empty where it is not known
     */
    public OptionalDouble kilograms() {
      return largest.isPresent() && largest.get().limited()
          ? largest.get().kilograms()
          : OptionalDouble.empty();
    }
  }

  /** Keeps its own copy. */
  public LargestLoad {
    points = List.copyOf(points);
  }

  LargestLoad called(String other) {
    return new LargestLoad(other, lifter, points);
  }

  static LargestLoad of(Lift<?> lift, Capacity capacity) {
    Position usual = lift.start();
    Load main = main(lift, usual);
    Map<Double, Lift<?>> sizes = new ConcurrentHashMap<>();
    DoubleFunction<Lift<?>> sized = k -> sizes.computeIfAbsent(k, size -> lift.with(main, size));
    List<Point> points =
        IntStream.rangeClosed(0, STEPS)
            .parallel()
            .mapToObj(i -> at(sized, main, (double) i / STEPS, capacity))
            .toList();
    return new LargestLoad(
        lift.name(),
        lift.body().person().text()
            + ". Taken as "
            + lift.body().person().condition().years()
            + " years old and "
            + lift.body().person().condition().training().word(),
        points);
  }

  /** What the lift is done with; in lifts with the body alone what is worn besides. */
  static Load main(Lift<?> lift, Position usual) {
    List<Load> more = lift.setup().more();
    return usual.loads().stream()
        .filter(Largest::grows)
        .min(Comparator.comparing(more::contains))
        .orElseThrow(
            () ->
                new Refused(
                    "The "
                        + lift.name()
                        + " has no load that could grow: hold one, or wear one with"
                        + " .with(beltWeight(kg(10)))."));
  }

  private static Point at(
      DoubleFunction<Lift<?>> sized, Load main, double share, Capacity capacity) {
    try {
      Largest found = byRounds(sized, share, capacity);
      if (found.limited() && found.limiter().isEmpty()) {
        // It fell over only because its posture was that of another load.
        found = Largest.of(name(share), main, k -> posture(sized, k, share), capacity);
      }
      return new Point(share, Optional.of(found), found.reason());
    } catch (Refused e) {
      return new Point(share, Optional.empty(), e.getMessage());
    }
  }

  private static Largest byRounds(DoubleFunction<Lift<?>> sized, double share, Capacity capacity) {
    double factor = 1;
    for (int round = 0; ; round++) {
      Largest found = Largest.of(posture(sized, factor, share), capacity);
      double next = factor * found.factor();
      boolean still = Math.abs(next - factor) <= STILL * factor;
      if (still || next == 0 || !found.limited() || round == MOST_ROUNDS) {
        return found;
      }
      factor = next;
    }
  }

  private static Position posture(DoubleFunction<Lift<?>> sized, double factor, double share) {
    return sized.apply(factor).way().at(share, name(share));
  }

  private static String name(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  /**
   * The share of the way at which the least can be held.
   *
   * @return the sticking point; empty where no limit was met anywhere
   */
  public Optional<Point> sticking() {
    return points.stream()
        .filter(p -> p.kilograms().isPresent())
        .min(Comparator.comparingDouble(p -> p.kilograms().getAsDouble()));
  }

  /**
   * The largest load that can be held at every share of the way.
   *
   * @return kilograms
   * @throws Refused if no limit was met anywhere
   */
  public double kilograms() {
    return sticking()
        .orElseThrow(
            () ->
                new Refused(
                    "No strength that is known limits this lift: " + points.get(0).reason()))
        .kilograms()
        .getAsDouble();
  }

  /** Whether a share belongs to the sticking region. */
  private boolean sticks(Point point) {
    return sticking().isPresent()
        && point.kilograms().orElse(Double.MAX_VALUE) <= (1 + REGION) * kilograms();
  }

  /**
   * The largest load at each share of the way.
   *
   * @return a row for each
   */
  public Sheet table() {
    List<Column> columns =
        List.of(
            new Column("share of the way", "%", 0),
            new Column("largest load", "kg", 1),
            Column.text("limited by"),
            Column.text("sticking region"));
    List<List<Object>> rows = new ArrayList<>();
    for (Point point : points) {
      List<Object> row = new ArrayList<>();
      row.add(100 * point.share());
      row.add(point.kilograms().isPresent() ? point.kilograms().getAsDouble() : null);
      row.add(point.reason());
      row.add(sticks(point) ? "yes" : "");
      rows.add(row);
    }
    return new Sheet(
            "Largest load, " + name,
            columns,
            rows,
            List.of(
                "For " + lifter + ".",
                "Held still at each share, 0 % the start, 100 % the finish; the sticking region is"
                    + " within 5 % of the smallest (our convention). Strengths are published means of"
                    + " single joints; between people they vary by 20 to 30 % (from memory), so does"
                    + " this.",
                Caution.TEXT))
        .about(this);
  }

  @Override
  public String text() {
    return sticking()
            .map(
                p ->
                    String.format(
                        Locale.ROOT,
                        "%s: over the whole way at most %.1f kg; least at %.0f %% of the way, limited by: %s",
                        name,
                        p.kilograms().getAsDouble(),
                        100 * p.share(),
                        p.reason()))
            .orElse(name + ": no strength that is known limits it")
        + "\n"
        + table().text();
  }

  @Override
  public Optional<String> html() {
    return table().html();
  }

  @Override
  public String toString() {
    return text();
  }
}
