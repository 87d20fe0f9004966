package org.leverbook.language;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import javax.measure.Quantity;
import org.leverbook.body.Person;
import org.leverbook.display.Sheet;
import org.leverbook.statics.Position;
import org.leverbook.study.Claim;
import org.leverbook.study.ClaimAnswer;
import org.leverbook.study.ClaimSheet;
import org.leverbook.study.NamedLift;
import org.leverbook.study.NamedSetting;
import org.leverbook.study.Span;

/** The words for claims; {@link Vocabulary} hands them on. */
public abstract sealed class ClaimWords extends DoubtWords permits OptimumWords {

  ClaimWords() {}

  /**
   * A sentence that can be false, as in {@code claim("the hip carries more than the
   * knee").margin("N·m", p -> p.moment(HIP).size() - p.moment(KNEE).size()).over(people(FEMALE, 20,
   * 1), who -> hinge(who).holding(barbell(kg(60))).start())}; {@code over} without a test before it
   * is refused.
   *
   * @param words what is claimed
   * @return the claim, to be told its test
   * @throws org.leverbook.quantity.Refused if the sentence is empty
   */
  public static Claim claim(String words) {
    return Claim.of(words);
  }

  /**
   * Answers side by side, as in {@code claims(first, second).save("claims.csv")}.
   *
   * @param answers what came of claims
   * @return a row for each: claim, cases, holds, seconds, what separates
   * @throws org.leverbook.quantity.Refused if there is none
   */
  public static Sheet claims(ClaimAnswer... answers) {
    return ClaimSheet.of(List.of(answers));
  }

  /**
   * A lift of whoever is asked, as in {@code liftOf("low bar", who ->
   * backSquat(who).bar(Site.UPPER_BACK_LOW))}.
   *
   * @param <L> what the lambda makes
   * @param name how tables call it
   * @param lift from a person to the lift
   * @return the lift with its name
   * @throws org.leverbook.quantity.Refused if something is missing
   */
  public static <L> NamedLift<L> liftOf(String name, Function<Person, L> lift) {
    return new NamedLift<>(name, lift);
  }

  /**
   * A setting of a lift down to its position, as in {@code setting("hips low", pull ->
   * pull.hipHeight(cm(55)).start())}.
   *
   * @param <L> what is changed
   * @param name how tables call it
   * @param position from the lift to the position
   * @return the setting
   * @throws org.leverbook.quantity.Refused if something is missing
   */
  public static <L> NamedSetting<L> setting(String name, Function<L, Position> position) {
    return NamedSetting.of(name, position);
  }

  /**
   * Several values of one setting, as in {@code settings("hip height", cm(55), cm(65), 3, (pull, h)
   * -> pull.hipHeight(h).start())}.
   *
   * @param <L> what is changed
   * @param <Q> what kind of quantity
   * @param name of the quantity
   * @param from first value
   * @param to last value
   * @param values how many, both ends included
   * @param position from the lift and a value to the position
   * @return a setting for each value
   * @throws org.leverbook.quantity.Refused if the range is no range
   */
  public static <L, Q extends Quantity<Q>> List<NamedSetting<L>> settings(
      String name,
      Quantity<Q> from,
      Quantity<Q> to,
      int values,
      BiFunction<L, Quantity<Q>, Position> position) {
    return NamedSetting.over(Span.of(name, from, to, values), position);
  }
}
