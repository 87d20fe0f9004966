package org.leverbook.language;

import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import org.leverbook.body.JointId;
import org.leverbook.display.Saved;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.study.Optimum;
import org.leverbook.study.Span;
import org.leverbook.study.TableFiles;
import tech.tablesaw.api.Table;

/** The words for the best setting and for tables in files; {@link Vocabulary} hands them on. */
public abstract sealed class OptimumWords extends ClaimWords permits FigureWords {

  /** Ends of a range only; the search has its own number of looks. */
  private static final int ENDS = 2;

  OptimumWords() {}

  /**
   * The setting with the lowest quantity, as in {@code lowest("hip height", cm(48), cm(72), h ->
   * pull.hipHeight(h).start(), p -> p.moment(L5_S1).size())}.
   *
   * <p>Limits come after: {@code .where("knee moment small", p -> p.moment(KNEE).size() < 50)}. A
   * range from 60 to 60 cm is refused: "The hip height needs two different ends, but both are 60
   * cm."
   *
   * @param <Q> what kind of quantity the setting is
   * @param <T> what is looked at
   * @param name what is set
   * @param from one end of its range
   * @param to the other
   * @param made from a value to a position, or to anything else
   * @param quantity what is to be lowest
   * @return the best setting, worked out when it is first asked for
   * @throws Refused if something is missing, or the range is no range
   */
  public static <Q extends Quantity<Q>, T> Optimum<T> lowest(
      String name,
      Quantity<Q> from,
      Quantity<Q> to,
      Function<Quantity<Q>, T> made,
      ToDoubleFunction<T> quantity) {
    return Optimum.over(name, from, to, made, quantity, true);
  }

  /**
   * The setting with the smallest moment at a joint, as in {@code lowest("hip height", cm(48),
   * cm(72), h -> pull.hipHeight(h).start(), L5_S1)}.
   *
   * @param <Q> what kind of quantity the setting is
   * @param name what is set
   * @param from one end of its range
   * @param to the other
   * @param made from a value to a position
   * @param joint whose moment, by its size
   * @return the best setting, worked out when it is first asked for
   * @throws Refused if something is missing, or the range is no range
   */
  public static <Q extends Quantity<Q>> Optimum<Position> lowest(
      String name,
      Quantity<Q> from,
      Quantity<Q> to,
      Function<Quantity<Q>, Position> made,
      JointId joint) {
    return ofMoment(Optimum.over(name, from, to, made, moment(joint), true), joint);
  }

  /**
   * The pair of settings with the lowest quantity, as in {@code lowest("hip height", cm(55),
   * cm(70), "stance width", cm(20), cm(50), (h, w) -> pull.hipHeight(h).stance(w).start(), p ->
   * p.moment(L5_S1).size())}.
   *
   * @param <A> what kind of quantity the first setting is
   * @param <B> what kind of quantity the second setting is
   * @param <T> what is looked at
   * @param first what is set
   * @param firstFrom one end of its range
   * @param firstTo the other
   * @param second what else is set
   * @param secondFrom one end of its range
   * @param secondTo the other
   * @param made from a pair of values to a position, or to anything else
   * @param quantity what is to be lowest
   * @return the best pair, worked out when it is first asked for
   * @throws Refused if something is missing, or a range is no range
   */
  public static <A extends Quantity<A>, B extends Quantity<B>, T> Optimum<T> lowest(
      String first,
      Quantity<A> firstFrom,
      Quantity<A> firstTo,
      String second,
      Quantity<B> secondFrom,
      Quantity<B> secondTo,
      BiFunction<Quantity<A>, Quantity<B>, T> made,
      ToDoubleFunction<T> quantity) {
    return Optimum.over(
        Span.of(first, firstFrom, firstTo, ENDS),
        Span.of(second, secondFrom, secondTo, ENDS),
        made,
        quantity,
        true);
  }

  /**
   * The setting with the highest quantity, as in {@code highest("hip height", cm(50), cm(70), h ->
   * pull.hipHeight(h).start(), p -> p.moment(HIP).size())}; otherwise like {@code lowest}.
   *
   * @param <Q> what kind of quantity the setting is
   * @param <T> what is looked at
   * @param name what is set
   * @param from one end of its range
   * @param to the other
   * @param made from a value to a position, or to anything else
   * @param quantity what is to be highest
   * @return the best setting, worked out when it is first asked for
   * @throws Refused if something is missing, or the range is no range
   */
  public static <Q extends Quantity<Q>, T> Optimum<T> highest(
      String name,
      Quantity<Q> from,
      Quantity<Q> to,
      Function<Quantity<Q>, T> made,
      ToDoubleFunction<T> quantity) {
    return Optimum.over(name, from, to, made, quantity, false);
  }

  /**
   * The setting with the greatest moment at a joint, as in {@code highest("hip height", cm(50),
   * cm(70), h -> pull.hipHeight(h).start(), HIP)}; otherwise like {@code lowest}.
   *
   * @param <Q> what kind of quantity the setting is
   * @param name what is set
   * @param from one end of its range
   * @param to the other
   * @param made from a value to a position
   * @param joint whose moment, by its size
   * @return the best setting, worked out when it is first asked for
   * @throws Refused if something is missing, or the range is no range
   */
  public static <Q extends Quantity<Q>> Optimum<Position> highest(
      String name,
      Quantity<Q> from,
      Quantity<Q> to,
      Function<Quantity<Q>, Position> made,
      JointId joint) {
    return ofMoment(Optimum.over(name, from, to, made, moment(joint), false), joint);
  }

  /**
   * The pair of settings with the highest quantity, as in {@code highest("hip height", cm(55),
   * cm(70), "stance width", cm(25), cm(45), (h, w) -> pull.hipHeight(h).stanceWidth(w).start(), p
   * -> p.moment(HIP).size())}; otherwise like {@code lowest}.
   *
   * @param <A> what kind of quantity the first setting is
   * @param <B> what kind of quantity the second setting is
   * @param <T> what is looked at
   * @param first what is set
   * @param firstFrom one end of its range
   * @param firstTo the other
   * @param second what else is set
   * @param secondFrom one end of its range
   * @param secondTo the other
   * @param made from a pair of values to a position, or to anything else
   * @param quantity what is to be highest
   * @return the best pair, worked out when it is first asked for
   * @throws Refused if something is missing, or a range is no range
   */
  public static <A extends Quantity<A>, B extends Quantity<B>, T> Optimum<T> highest(
      String first,
      Quantity<A> firstFrom,
      Quantity<A> firstTo,
      String second,
      Quantity<B> secondFrom,
      Quantity<B> secondTo,
      BiFunction<Quantity<A>, Quantity<B>, T> made,
      ToDoubleFunction<T> quantity) {
    return Optimum.over(
        Span.of(first, firstFrom, firstTo, ENDS),
        Span.of(second, secondFrom, secondTo, ENDS),
        made,
        quantity,
        false);
  }

  /**
   * A table from a file, as in {@code table("hip-height.csv")}: what Leverbook wrote comes back
   * equal. Of other files, decimal commas are understood where semicolons stand between the
   * columns.
   *
   * <p>A text in a column of numbers is refused: "lift.csv, row 7, column moment (N·m): "about 300"
   * is no number, but the heading promises numbers."
   *
   * @param file a name that ends in {@code .csv} or {@code .json}
   * @return a Tablesaw table, named after the file
   * @throws Refused if there is no such file, or it is broken; says where
   */
  public static Table table(String file) {
    return TableFiles.read(file);
  }

  /**
   * Saves a Tablesaw table, as in {@code save(byHip.table(), "hip-height.json")}, with every digit
   * and the caution.
   *
   * @param table any
   * @param file a name that ends in {@code .csv} or {@code .json}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public static Saved save(Table table, String file) {
    return TableFiles.save(table, file);
  }

  private static ToDoubleFunction<Position> moment(JointId joint) {
    Ask.present("joint", joint, "L5_S1");
    return position -> position.moment(joint).size();
  }

  private static Optimum<Position> ofMoment(Optimum<Position> sought, JointId joint) {
    return sought.called(joint.word() + " moment", "N·m");
  }
}
