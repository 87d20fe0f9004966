package org.leverbook.statics;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.leverbook.display.Caution;
import org.leverbook.display.Shown;
import org.leverbook.load.Load;
import org.leverbook.load.NoLoad;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.strength.Capacity;
import org.leverbook.strength.Demand;
import org.leverbook.strength.Demands;

/**
 * The largest load that can be held still in one posture.
 *
 * @param name of the position
 * @param factor how many times the load that was there; zero where not even nothing can be held
 * @param load the load at that size; empty where not even nothing can be held
 * @param limiter the joint at its limit; empty where the supports give out first, or nothing limits
 * @param reason what stops it, in words
 * @param limited whether anything stops it
 */
public record Largest(
    String name,
    double factor,
    Optional<Load> load,
    Optional<Demand> limiter,
    String reason,
    boolean limited)
    implements Shown {

  /** A hundredth of a kilogram in a hundred. */
  private static final double NEAR = 1e-4;

  private static final double MOST_TIMES = 10_000;

  /** Where every try needs a posture of its own. */
  private static final double ROUGHLY = 5e-3;

  /**
   * Lets the main load of a position grow; the posture stays, what the supports give is found anew.
   *
   * @param position which
   * @param capacity of its lifter
   * @return the largest
   * @throws Refused if nothing there can grow
   */
  public static Largest of(Position position, Capacity capacity) {
    Load main = growing(position);
    return of(
        position.name(),
        main,
        Growth.of(
            k -> {
              Load grown = k == 0 ? new NoLoad() : main.times(k).orElseThrow();
              return tried(
                  position.changed(
                      position.setting.changing(load -> load.equals(main) ? grown : load)),
                  capacity);
            },
            0.05,
            NEAR));
  }

  /**
   * Lets a load grow, the posture found anew for each size.
   *
   * @param name of the position
   * @param main the load at its size now
   * @param posture the position with the load so many times its size; its refusal counts as a limit
   * @param capacity of the lifter
   * @return the largest
   * @throws Refused if the name is missing
   */
  public static Largest of(
      String name, Load main, DoubleFunction<Position> posture, Capacity capacity) {
    Ask.present("name of the position", name, "\"hinge, start\"");
    return of(
        name,
        main,
        Growth.of(
            k -> {
              try {
                return tried(posture.apply(k), capacity);
              } catch (Refused e) {
                return new Growth.Tried(false, 0, Optional.empty(), e.getMessage());
              }
            },
            0.5,
            ROUGHLY));
  }

  private static Largest of(String name, Load main, Growth.Found found) {
    Growth.Tried limit = found.limit();
    return new Largest(
        name,
        found.factor(),
        found.possible() ? main.times(found.factor()) : Optional.empty(),
        limit.limiter(),
        found.unlimited()
            ? "no strength that is known limits it"
            : limit.held() ? limit.limiter().map(Demand::what).orElse("") : limit.reason(),
        !found.unlimited());
  }

  /** The load that pulls hardest among those that can grow. */
  static Load growing(Position position) {
    String hardest = Partition.hardest(position.forces());
    List<Load> able = position.loads().stream().filter(Largest::grows).toList();
    return able.stream()
        .filter(l -> l.source().equals(hardest))
        .findFirst()
        .or(() -> able.stream().findFirst())
        .orElseThrow(
            () ->
                new Refused(
                    "There is no load here that could grow: hold one, or wear one with"
                        + " .with(beltWeight(kg(10)))."));
  }

  /**
   * A load at another size.
   *
   * @param load which; one that can grow
   * @param times how many times its size; zero or more
   * @return the changed load
   * @throws Refused if it is no such number, or the load has no size that grows
   */
  public static Load times(Load load, double times) {
    if (!(times >= 0 && times <= MOST_TIMES)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A load can be 0 to %.0f times its size, not %s times: 1 keeps it.",
              MOST_TIMES,
              times));
    }
    if (times == 0) {
      return new NoLoad();
    }
    return load.times(times)
        .orElseThrow(
            () ->
                new Refused(
                    "The size of "
                        + load.description()
                        + " is no single number, so it cannot be made "
                        + times
                        + " times as large: make one of another size."));
  }

  /**
   * Whether a load has a size that can grow.
   *
   * @param load which
   * @return true if so
   */
  public static boolean grows(Load load) {
    return load.times(2).isPresent() && load.counted().orElse(1) > 0;
  }

  private static Growth.Tried tried(Position there, Capacity capacity) {
    if (!there.held()) {
      return new Growth.Tried(false, 0, Optional.empty(), there.holding().sentence());
    }
    Demands demands = there.demands(capacity);
    return new Growth.Tried(true, demands.effort(), demands.limiter(), "");
  }

  /**
   * The load's size as a coach counts it.
   *
   * @return kilograms; zero where not even nothing can be held; empty where it is not counted so
   */
  public OptionalDouble kilograms() {
    return load.map(Load::counted).orElse(OptionalDouble.of(0));
  }

  @Override
  public String text() {
    String what =
        load.map(l -> String.format(Locale.ROOT, "at most %s", l.description()))
            .orElse("not even without the load");
    return name + ": " + what + "; limited by: " + reason + "\n" + Caution.TEXT;
  }

  @Override
  public String toString() {
    return text();
  }
}
