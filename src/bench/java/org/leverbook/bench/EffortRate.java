package org.leverbook.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.BenchPress;
import org.leverbook.lift.BentOverRow;
import org.leverbook.lift.ChestSupportedRow;
import org.leverbook.lift.Lift;
import org.leverbook.lift.RomanianDeadlift;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/**
 * Ten thousand positions with their supports and all muscles, postures known: twenty places of five
 * lifts, on feet, on a bench, on a pad; on one core and on two. The best of several rounds each.
 */
final class EffortRate {

  private static final int ROUNDS = 4;
  private static final int POSITIONS = 10_000;
  private static final int PLACES = 20;

  private EffortRate() {}

  static void measure(ObjectNode root) {
    List<Position> places = places();
    double one = Double.POSITIVE_INFINITY;
    double two = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      one = Math.min(one, seconds(1, places));
      two = Math.min(two, seconds(2, places));
    }
    root.put("10,000 positions with muscles on one core (s)", one);
    root.put("10,000 positions with muscles on two cores (s)", two);
  }

  private static List<Position> places() {
    Person lifter = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
    List<Position> places = new ArrayList<>();
    for (Lift<?> lift :
        List.of(
            RomanianDeadlift.of(lifter),
            BackSquat.of(lifter),
            BentOverRow.of(lifter),
            BenchPress.of(lifter),
            ChestSupportedRow.of(lifter))) {
      for (int n = 0; n < PLACES; n++) {
        Position place = lift.at(Units.percent(100.0 * n / (PLACES - 1)));
        if (place.held()) {
          places.add(place);
        }
      }
    }
    return places;
  }

  private static double seconds(int cores, List<Position> places) {
    ForkJoinPool pool = new ForkJoinPool(cores);
    try {
      long start = System.nanoTime();
      double sum =
          pool.submit(
                  () ->
                      java.util.stream.IntStream.range(0, POSITIONS)
                          .parallel()
                          .mapToDouble(n -> hardest(places.get(n % places.size())))
                          .sum())
              .join();
      double seconds = (System.nanoTime() - start) / 1e9;
      if (!(sum > 0)) {
        throw new IllegalStateException("No muscle pulls.");
      }
      return seconds;
    } finally {
      pool.shutdown();
    }
  }

  /** Everything anew: supports, moments, muscles. */
  private static double hardest(Position place) {
    return Position.of(
            place.name(),
            place.body(),
            place.placement().pose(),
            place.loads(),
            place.supports(),
            List.of(),
            List.of())
        .effort()
        .stress(0);
  }

  /**
   * Only this measurement.
   *
   * @param arguments none
   */
  public static void main(String[] arguments) {
    ObjectNode root = new com.fasterxml.jackson.databind.ObjectMapper().createObjectNode();
    measure(root);
    System.out.println(root.toPrettyString());
  }
}
