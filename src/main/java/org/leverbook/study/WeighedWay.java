package org.leverbook.study;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.leverbook.lift.LargestLoad;
import org.leverbook.lift.Lift;
import org.leverbook.load.Load;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Largest;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.strength.Capacity;

/** Whole ways whose load can have another size: the share that limits most decides. */
final class WeighedWay {

  /** Steps of the way at which efforts are looked at. */
  static final int STEPS = 20;

  private WeighedWay() {}

  /** The greatest effort on the way. */
  private static double effort(DoubleFunction<Position> at) {
    return IntStream.rangeClosed(0, STEPS)
        .parallel()
        .mapToObj(i -> at.apply((double) i / STEPS))
        .mapToDouble(p -> p.demands().effort())
        .max()
        .orElseThrow();
  }

  private static double known(double effort, String name) {
    if (effort <= 0) {
      throw new Refused(
          "Nothing in the "
              + name
              + " asks for a strength that is known, so its effort is not known either.");
    }
    return effort;
  }

  /** A lift: postures are found anew for each size of the load. */
  record OfLift(Lift<?> lift) implements Weighed<Passage> {

    @Override
    public Passage times(double factor) {
      return Passage.of(factor == 1 ? lift : lift.withLoadTimes(factor));
    }

    @Override
    public Load mainLoad() {
      return lift.mainLoad();
    }

    @Override
    public double effort() {
      return known(WeighedWay.effort(Passage.of(lift).at()), lift.name());
    }

    @Override
    public double timesAtEffort(double share) {
      LargestLoad found = lift.largestAtEffort(Units.percent(100 * share));
      Optional<Largest> there = found.sticking().flatMap(LargestLoad.Point::largest);
      there.ifPresent(largest -> Weighed.atLimiter(largest, share));
      return factor(found);
    }

    @Override
    public double timesAtLargest() {
      return factor(lift.largest());
    }

    private double factor(LargestLoad found) {
      Load main = lift.mainLoad();
      double kilograms = found.kilograms();
      if (kilograms == 0) {
        throw new Refused(
            "Even without the load more is asked than that: "
                + found.sticking().orElseThrow().reason()
                + ".");
      }
      return kilograms / main.counted().orElseThrow();
    }
  }

  /** A movement: the postures stay, the inertia of the load follows its size. */
  record OfMovement(Movement movement) implements Weighed<Passage> {

    @Override
    public Passage times(double factor) {
      return Passage.of(factor == 1 ? movement : movement.withLoadTimes(factor));
    }

    @Override
    public Load mainLoad() {
      return still(0).mainLoad();
    }

    private Position still(double seconds) {
      return movement.still(Units.seconds(seconds));
    }

    @Override
    public double effort() {
      return known(WeighedWay.effort(Passage.of(movement).at()), movement.name());
    }

    @Override
    public double timesAtEffort(double share) {
      return Weighed.atLimiter(least(share), share);
    }

    @Override
    public double timesAtLargest() {
      return Weighed.atAny(least(1));
    }

    /** The largest load of the instant at which it is least. */
    private Largest least(double share) {
      Load main = mainLoad();
      Capacity capacity = Capacity.of(still(0).body()).times(share);
      List<Largest> each =
          IntStream.rangeClosed(0, STEPS)
              .parallel()
              .mapToObj(
                  i ->
                      Largest.of(
                          movement.name(),
                          main,
                          k -> times(k).at().apply((double) i / STEPS),
                          capacity))
              .toList();
      Largest least = each.get(0);
      for (Largest largest : each) {
        boolean less = !least.limited() || largest.factor() < least.factor();
        least = largest.limited() && less ? largest : least;
      }
      return least;
    }
  }
}
