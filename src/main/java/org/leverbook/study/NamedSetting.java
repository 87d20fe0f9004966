package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.measure.Quantity;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/**
 * A change of a lift with the name that tables give it, down to the position that is asked for.
 *
 * @param <L> what is changed; usually a lift
 * @param group what the setting is one of, as in "hip height"; settings with a value that share it
 *     are told apart by that value
 * @param unit of the value; empty where there is none
 * @param value in that unit; empty where the setting is a name alone
 * @param name as in "hips at 58.0 cm"
 * @param of from the lift to the position
 */
public record NamedSetting<L>(
    String group, String unit, OptionalDouble value, String name, Function<L, Position> of) {

  /**
   * Checks that nothing is missing.
   *
   * @throws Refused if something is
   */
  public NamedSetting {
    Ask.present("setting's name", name, "\"hips low\"");
    Ask.present("lambda of " + name, of, "lift -> lift.hipHeight(cm(55)).start()");
  }

  /**
   * A setting by its name alone.
   *
   * @param <L> what is changed
   * @param name as in "hips low"
   * @param of as in {@code pull -> pull.hipHeight(cm(52)).start()}
   * @return the setting
   * @throws Refused if something is missing
   */
  public static <L> NamedSetting<L> of(String name, Function<L, Position> of) {
    return new NamedSetting<>("", "", OptionalDouble.empty(), name, of);
  }

  /**
   * Several values of one quantity.
   *
   * @param <L> what is changed
   * @param <Q> what kind of quantity
   * @param span its name and values, both ends included
   * @param of as in {@code (pull, height) -> pull.hipHeight(height).start()}
   * @return one setting a value, in order
   * @throws Refused if something is missing
   */
  public static <L, Q extends Quantity<Q>> List<NamedSetting<L>> over(
      Span<Q> span, BiFunction<L, Quantity<Q>, Position> of) {
    Ask.present("lambda", of, "(pull, height) -> pull.hipHeight(height).start()");
    List<NamedSetting<L>> settings = new ArrayList<>();
    for (int i = 0; i < span.values(); i++) {
      double value = span.value(i);
      Quantity<Q> quantity = span.quantity(i);
      settings.add(
          new NamedSetting<>(
              span.name(),
              span.symbol(),
              OptionalDouble.of(value),
              span.name() + " " + span.text(value),
              lift -> of.apply(lift, quantity)));
    }
    return List.copyOf(settings);
  }
}
