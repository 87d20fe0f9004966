package org.leverbook.lift;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.leverbook.body.Body;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.solve.Answer;

/**
 * How a person of middle size does a lift with nothing set: the neighbour that the search for
 * anybody's pose starts from. So one build or setting leads smoothly to the next, and every answer
 * depends on its own lift alone, not on what was asked before.
 */
final class Typical {

  private static final Body MIDDLE = Person.of(Sex.MALE, Units.kg(80), Units.cm(172)).body();

  private static final Map<Key, Optional<Ends>> KNOWN = new ConcurrentHashMap<>();

  /** What makes a lift another movement, rather than the same with other numbers. */
  private record Key(
      String name,
      boolean alike,
      Optional<Grip> grip,
      Optional<Side> side,
      Optional<Site> barPlace) {}

  private record Ends(Answer start, Answer finish) {}

  private Typical() {}

  /**
   * The answer for the person of middle size.
   *
   * @param lift which
   * @param finish whether its finish is asked rather than its start
   * @return empty where that person cannot do it, or the lift is that person's
   */
  static Optional<Answer> of(Lift<?> lift, boolean finish) {
    Setup setup = lift.setup();
    if (setup.body().person().equals(MIDDLE.person())) {
      return Optional.empty();
    }
    Key key =
        new Key(lift.name(), lift.bothSidesAlike(), setup.grip(), setup.side(), setup.barPlace());
    return KNOWN
        .computeIfAbsent(key, k -> ends(lift))
        .map(ends -> finish ? ends.finish : ends.start);
  }

  private static Optional<Ends> ends(Lift<?> lift) {
    try {
      Way way = new Way(lift.changed(lift.setup().bare(MIDDLE)));
      return Optional.of(new Ends(way.startAnswer(), way.finishAnswer()));
    } catch (Refused e) {
      return Optional.empty();
    }
  }
}
