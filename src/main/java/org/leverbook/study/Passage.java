package org.leverbook.study;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.leverbook.lift.Lift;
import org.leverbook.muscle.Effort;
import org.leverbook.muscle.Verdict;
import org.leverbook.quantity.Si;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;

/**
 * A whole way: a lift from start to finish, or a movement from its first instant to its last.
 *
 * @param at from a share of the way, 0 to 1, to the position there; refuses where there is none
 * @param verdict of the whole way
 */
record Passage(DoubleFunction<Position> at, Supplier<Verdict> verdict) {

  private static final int VERDICT_STEPS = 10;

  static Passage of(Lift<?> lift) {
    return new Passage(
        share ->
            share == 0
                ? lift.start()
                : share == 1 ? lift.finish() : lift.at(Units.percent(100 * share)),
        lift::verdict);
  }

  /** A movement: its share is one of its time. */
  static Passage of(Movement movement) {
    double seconds = Si.seconds(movement.duration());
    DoubleFunction<Position> at = share -> movement.at(Units.seconds(share * seconds));
    return new Passage(at, () -> verdict(movement, at));
  }

  private static Verdict verdict(Movement movement, DoubleFunction<Position> at) {
    List<Effort> efforts =
        IntStream.rangeClosed(0, VERDICT_STEPS)
            .mapToObj(i -> at.apply((double) i / VERDICT_STEPS).effort())
            .toList();
    return Verdict.of(movement.name(), at.apply(0).body(), efforts);
  }
}
