package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/**
 * What is sought: the settings, what is made of them, the quantity, and the limits.
 *
 * @param <T> what is made of the settings
 * @param spans one or two
 * @param made from the settings' values to what is looked at
 * @param quantity what is to be lowest or highest
 * @param sign 1 where the lowest is sought, -1 where the highest
 * @param limits what must hold
 */
record Quest<T>(
    List<Span<?>> spans,
    Function<double[], T> made,
    Named<T> quantity,
    int sign,
    List<Limit<T>> limits)
    implements Ground {

  /**
   * A quantity with its name.
   *
   * @param <T> of what
   * @param name as in "L5/S1 moment"
   * @param unit as in "N·m"; may be empty
   * @param of the number
   */
  record Named<T>(String name, String unit, ToDoubleFunction<T> of) {

    /** With its unit. */
    String text(double value) {
      String gap = unit.isEmpty() || unit.equals("°") ? "" : " ";
      return Numbers.four(value) + (Double.isFinite(value) ? gap + unit : "");
    }

    String heading() {
      return unit.isEmpty() ? name : name + " (" + unit + ")";
    }
  }

  /**
   * A limit that the coach set.
   *
   * @param <T> on what
   * @param sentence as in "knee below 100°"
   * @param broken what is wrong, empty where it is kept
   */
  record Limit<T>(String sentence, Function<T, Optional<String>> broken) {}

  /** Keeps its own copies of the lists. */
  Quest {
    spans = List.copyOf(spans);
    limits = List.copyOf(limits);
  }

  Quest<T> with(Limit<T> limit) {
    List<Limit<T>> more = new ArrayList<>(limits);
    more.add(limit);
    return new Quest<>(spans, made, quantity, sign, more);
  }

  Quest<T> called(String name, String unit) {
    return new Quest<>(spans, made, new Named<>(name, unit, quantity.of()), sign, limits);
  }

  Quest<T> over(List<Span<?>> others) {
    return new Quest<>(others, made, quantity, sign, limits);
  }

  boolean two() {
    return spans.size() == 2;
  }

  T make(double x, double y) {
    return made.apply(two() ? new double[] {x, y} : new double[] {x});
  }

  double value(Trial trial) {
    return sign * trial.cost();
  }

  Sought search() {
    return two()
        ? PlaneSearch.best(this, spans.get(0), spans.get(1))
        : LineSearch.best(this, spans.get(0));
  }

  @Override
  public Trial at(double x, double y) {
    return tried(x, y, quantity).trial();
  }

  /**
   * What came of a setting, with one more quantity.
   *
   * @param trial with the cost by this quest's own quantity
   * @param other the other quantity's value; zero at a wall
   */
  record Pair(Trial trial, double other) {}

  /** A setting with one more quantity. */
  Pair tried(double x, double y, Named<T> other) {
    if (Thread.currentThread().isInterrupted()) {
      throw new Refused("Stopped before the search was done.");
    }
    try {
      T there = make(x, y);
      if (there == null) {
        return wall(x, y, Trial.Wall.IMPOSSIBLE, "The lambda gave nothing (null).");
      }
      if (there instanceof Position position && !position.held()) {
        return wall(x, y, Trial.Wall.IMPOSSIBLE, position.holding().sentence());
      }
      for (Limit<T> limit : limits) {
        Optional<String> broken = limit.broken().apply(there);
        if (broken.isPresent()) {
          return wall(x, y, Trial.Wall.LIMIT, broken.get());
        }
      }
      double value = number(quantity, there);
      double beside = other == quantity ? value : number(other, there);
      return new Pair(Trial.found(x, y, sign * value), beside);
    } catch (Refused e) {
      return wall(x, y, Trial.Wall.IMPOSSIBLE, String.valueOf(e.getMessage()));
    } catch (RuntimeException e) {
      return wall(x, y, Trial.Wall.IMPOSSIBLE, "The lambda failed: " + Attempt.ending(e));
    }
  }

  private static Pair wall(double x, double y, Trial.Wall wall, String reason) {
    return new Pair(Trial.blocked(x, y, wall, reason), 0);
  }

  private static <T> double number(Named<T> quantity, T there) {
    double value = quantity.of().applyAsDouble(there);
    if (!Double.isFinite(value)) {
      throw new Refused("The " + quantity.name() + " is no finite number here: " + value + ".");
    }
    return value;
  }
}
