package org.leverbook.language;

import java.util.function.BiFunction;
import java.util.function.Function;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.lift.Lift;
import org.leverbook.statics.Position;
import org.leverbook.study.Doubt;
import org.leverbook.study.Draw;
import org.leverbook.study.Sensitivity;

/** The words for how sure an answer is; {@link Vocabulary} hands them on. */
public abstract sealed class DoubtWords extends CompareWords permits ClaimWords {

  DoubtWords() {}

  /**
   * How sure the start of a lift is, as in {@code doubt(pull).band(L5_S1)}.
   *
   * <p>{@code doubt(pull).draws(5)} is refused: "Between 100 and 20,000 cases can be drawn, but 5
   * were asked for."
   *
   * @param <L> the kind of lift
   * @param lift what is done
   * @return what may be off; {@code band} and {@code sensitivity} of it compute
   * @throws org.leverbook.quantity.Refused if the lift cannot be set up
   */
  public static <L extends Lift<L>> Doubt doubt(L lift) {
    return Doubt.of(lift, Lift::start);
  }

  /**
   * How sure another position of a lift is, as in {@code doubt(squat, s -> s.finish()).band(KNEE)}.
   *
   * @param <L> the kind of lift
   * @param lift what is done
   * @param at from the lift to the position
   * @return what may be off
   * @throws org.leverbook.quantity.Refused if the lift cannot be set up
   */
  public static <L extends Lift<L>> Doubt doubt(L lift, Function<L, Position> at) {
    return Doubt.of(lift, at);
  }

  /**
   * How sure a position of one's own making is, as in {@code doubt(lifter, (who, draw) ->
   * hinge(who).holding(barbell(draw.around("bar", kg(140), kg(2)))).start())}.
   *
   * @param lifter whose build may be off
   * @param position from a person and a draw to a position
   * @return what may be off
   * @throws org.leverbook.quantity.Refused if the position cannot be made
   */
  public static Doubt doubt(Person lifter, BiFunction<Person, Draw, Position> position) {
    return Doubt.of(lifter, position);
  }

  /**
   * Which inputs move the moment at a joint most at the start of a lift, as in {@code
   * sensitivity(pull, L5_S1)}; short for {@code doubt(lift).sensitivity(joint)}.
   *
   * @param <L> the kind of lift
   * @param lift what is done
   * @param joint which
   * @return a row an input, the strongest first
   * @throws org.leverbook.quantity.Refused if the start cannot be held
   */
  public static <L extends Lift<L>> Sensitivity sensitivity(L lift, JointId joint) {
    return doubt(lift).sensitivity(joint);
  }
}
