package org.leverbook.language;

import java.util.function.BiFunction;
import java.util.function.Function;
import javax.measure.Quantity;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.study.Grid;
import org.leverbook.study.Span;
import org.leverbook.study.Sweep;

/** The words for many positions in a row; {@link Vocabulary} hands them on. */
public abstract sealed class SeriesWords extends MuscleWords permits PeopleWords {

  SeriesWords() {}

  /**
   * One quantity varied, as in {@code sweep("hip height", cm(50), cm(72), 23, h ->
   * pull.hipHeight(h).start())}.
   *
   * @param <Q> what kind of quantity
   * @param name what is varied
   * @param from first value
   * @param to last value
   * @param values how many, both ends included
   * @param position from a value to a position
   * @return the sweep; what cannot be held is kept as a row with its reason
   * @throws Refused if the range is no range
   */
  public static <Q extends Quantity<Q>> Sweep sweep(
      String name,
      Quantity<Q> from,
      Quantity<Q> to,
      int values,
      Function<Quantity<Q>, Position> position) {
    return Sweep.over(name, from, to, values, position);
  }

  /**
   * Two quantities varied against each other, as in {@code grid("hip height", cm(48), cm(72), 9,
   * "bar mass", kg(40), kg(200), 9, (h, m) ->
   * hinge(lifter).holding(barbell(m)).hipHeight(h).start())}.
   *
   * @param <A> what kind of quantity the first is
   * @param <B> what kind of quantity the second is
   * @param first what is varied slowest
   * @param firstFrom its first value
   * @param firstTo its last value
   * @param firstValues how many, both ends included
   * @param second what is varied fastest
   * @param secondFrom its first value
   * @param secondTo its last value
   * @param secondValues how many, both ends included
   * @param position from a pair of values to a position
   * @return the grid; a pair that cannot be held is kept with its reason
   * @throws Refused if a range is no range, or there are more than 100,000 pairs
   */
  public static <A extends Quantity<A>, B extends Quantity<B>> Grid<A, B> grid(
      String first,
      Quantity<A> firstFrom,
      Quantity<A> firstTo,
      int firstValues,
      String second,
      Quantity<B> secondFrom,
      Quantity<B> secondTo,
      int secondValues,
      BiFunction<Quantity<A>, Quantity<B>, Position> position) {
    return Grid.over(
        Span.of(first, firstFrom, firstTo, firstValues),
        Span.of(second, secondFrom, secondTo, secondValues),
        position);
  }
}
