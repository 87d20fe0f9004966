package org.leverbook.language;

import java.util.function.DoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.statics.Tempo;
import org.leverbook.study.Sweep;

/** The words for movement in time: a theme of {@link Vocabulary}, which sessions import. */
public abstract sealed class MovementWords extends SupportWords permits MarkWords {

  MovementWords() {}

  /**
   * A time in seconds, as in {@code seconds(1.5)}.
   *
   * @param value seconds
   * @return the time
   */
  public static Quantity<Time> seconds(double value) {
    return Units.seconds(value);
  }

  /**
   * Positions run through in time, as in {@code movement("pull", smooth(seconds(1.5)), share ->
   * pull.hipHeight(cm(60 + 10 * share)).start())}.
   *
   * @param name what to call it
   * @param tempo when it is where
   * @param positions from a share of the way, 0 to 1, to the position there, held still
   * @return the movement; its moments include the inertia of body and load
   * @throws Refused if something is missing
   */
  public static Movement movement(String name, Tempo tempo, DoubleFunction<Position> positions) {
    return Movement.of(name, tempo, positions);
  }

  /**
   * A tempo with a smooth start and stop, as in {@code smooth(seconds(1.5))}.
   *
   * @param duration 0.05 to 600 s
   * @return the tempo
   * @throws Refused if the duration is missing or outside
   */
  public static Tempo smooth(Quantity<Time> duration) {
    return Tempo.smooth(duration);
  }

  /**
   * A tempo of the same speed all the way, as in {@code steady(seconds(3))}.
   *
   * @param duration 0.05 to 600 s
   * @return the tempo
   * @throws Refused if the duration is missing or outside
   */
  public static Tempo steady(Quantity<Time> duration) {
    return Tempo.steady(duration);
  }

  /**
   * A movement from its start to its end, as in {@code sweep(raise, 41)}.
   *
   * @param movement which
   * @param values how many instants, both ends included
   * @return the sweep over time
   * @throws Refused if there are too few or too many values
   */
  public static Sweep sweep(Movement movement, int values) {
    return Sweep.over(movement, values);
  }
}
