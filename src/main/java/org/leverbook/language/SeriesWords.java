package org.leverbook.language;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.measure.Quantity;
import org.leverbook.body.JointId;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.study.Grid;
import org.leverbook.study.GridOfThree;
import org.leverbook.study.Span;
import org.leverbook.study.Sweep;
import org.leverbook.study.ThreeWay;
import org.leverbook.study.ToFile;

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

  /**
   * Values of a quantity, evenly spaced, as in {@code span("hip height", cm(48), cm(72), 9)}; for
   * {@code sweep} and {@code grid}.
   *
   * @param <Q> what kind of quantity
   * @param name what is varied
   * @param from first value; its unit is the table's
   * @param to last value; may be the smaller one
   * @param values how many, both ends included
   * @return the span
   * @throws Refused if the range is no range
   */
  public static <Q extends Quantity<Q>> Span<Q> span(
      String name, Quantity<Q> from, Quantity<Q> to, int values) {
    return Span.of(name, from, to, values);
  }

  /**
   * One quantity varied over a span, as in {@code sweep(span("hip height", cm(50), cm(72), 23), h
   * -> pull.hipHeight(h).start())}.
   *
   * @param <Q> what kind of quantity
   * @param span its values
   * @param position from a value to a position
   * @return the sweep; what cannot be held is kept as a row with its reason
   */
  public static <Q extends Quantity<Q>> Sweep sweep(
      Span<Q> span, Function<Quantity<Q>, Position> position) {
    return Sweep.over(span, position);
  }

  /**
   * One thing after another, as in {@code sweep("lifter", people(FEMALE, 5, 1), l ->
   * backSquat(l).finish())}.
   *
   * @param <T> what kind of thing
   * @param name what they are
   * @param things which; each is called what it calls itself
   * @param position from a thing to a position
   * @return the sweep, plotted as bars
   * @throws Refused if the list is empty
   */
  public static <T> Sweep sweep(
      String name, List<? extends T> things, Function<? super T, Position> position) {
    return Sweep.over(name, things, position);
  }

  /**
   * Two quantities varied against each other, as in {@code grid(span("hip height", cm(48), cm(72),
   * 9), span("bar mass", kg(40), kg(200), 9), (h, m) ->
   * pull.holding(barbell(m)).hipHeight(h).start())}.
   *
   * @param <A> what kind of quantity the first is
   * @param <B> what kind of quantity the second is
   * @param first varies slowest
   * @param second varies fastest
   * @param position from a pair of values to a position
   * @return the grid; a pair that cannot be held is kept with its reason
   * @throws Refused if there are more than 100,000 pairs
   */
  public static <A extends Quantity<A>, B extends Quantity<B>> Grid<A, B> grid(
      Span<A> first, Span<B> second, BiFunction<Quantity<A>, Quantity<B>, Position> position) {
    return Grid.over(first, second, position);
  }

  /**
   * Three quantities varied against each other, as in {@code grid(span("grip width", cm(45),
   * cm(75), 3), span("hip height", cm(60), cm(70), 5), span("bar mass", kg(40), kg(200), 5), (g, h,
   * m) -> pull.gripWidth(g).holding(barbell(m)).hipHeight(h).start())}.
   *
   * @param <A> what kind of quantity the first is
   * @param <B> what kind of quantity the second is
   * @param <C> what kind of quantity the third is
   * @param first varies slowest; the plot has a map for each of its values
   * @param second in between
   * @param third varies fastest
   * @param position from three values to a position
   * @return the grid; what cannot be held is kept with its reason
   * @throws Refused if there are more than 100,000 cells
   */
  public static <A extends Quantity<A>, B extends Quantity<B>, C extends Quantity<C>>
      GridOfThree<A, B, C> grid(
          Span<A> first, Span<B> second, Span<C> third, ThreeWay<A, B, C> position) {
    return GridOfThree.over(first, second, third, position);
  }

  /**
   * A lift from start to finish, as in {@code through(backSquat(lifter), 21)}.
   *
   * @param lift which
   * @param values how many positions, start and finish included
   * @return the sweep over the way in per cent
   * @throws Refused if there are too few or too many values
   */
  public static Sweep through(Lift<?> lift, int values) {
    return Sweep.through(lift, values);
  }

  /**
   * A lift from start to finish against a joint's angle, as in {@code through(backSquat(lifter),
   * KNEE, 21)}.
   *
   * @param lift which
   * @param joint whose flexion stands along the axis; of a paired joint the right side
   * @param values how many positions, start and finish included
   * @return the sweep over the angle
   * @throws Refused if there are too few or too many values
   */
  public static Sweep through(Lift<?> lift, JointId joint, int values) {
    return Sweep.through(lift, values).against(joint);
  }

  /**
   * A movement from start to end, moving, as in {@code through(raise, 21)}.
   *
   * @param movement which
   * @param values how many positions, both ends included
   * @return the sweep over the way in per cent
   * @throws Refused if there are too few or too many values
   */
  public static Sweep through(Movement movement, int values) {
    return Sweep.through(movement, values);
  }

  /**
   * A movement from start to end against a joint's angle, as in {@code through(raise, HIP, 21)}.
   *
   * @param movement which
   * @param joint whose flexion stands along the axis; of a paired joint the right side
   * @param values how many positions, both ends included
   * @return the sweep over the angle
   * @throws Refused if there are too few or too many values
   */
  public static Sweep through(Movement movement, JointId joint, int values) {
    return Sweep.through(movement, values).against(joint);
  }

  /**
   * A file for sweeps and grids of any size, as in {@code toFile("bars.csv").sweep("bar mass",
   * kg(20), kg(200), 1_000_000, m -> start.without("bar").with(barbell(m)))}.
   *
   * @param name ends in {@code .csv}
   * @return the file; {@code .sweep}, {@code .grid} or {@code .through} writes it row by row
   * @throws Refused if the name has another ending
   */
  public static ToFile toFile(String name) {
    return ToFile.named(name);
  }
}
