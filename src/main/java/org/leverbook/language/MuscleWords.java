package org.leverbook.language;

import org.leverbook.body.Person;
import org.leverbook.display.Sheet;
import org.leverbook.muscle.MuscleGroup;
import org.leverbook.quantity.Refused;

/** The words for muscles; {@link Vocabulary} hands them on. */
public abstract sealed class MuscleWords extends PullLiftWords permits SeriesWords {

  MuscleWords() {}

  /**
   * A muscle or a group of muscles, as in {@code muscle("lats").actions()}; {@code
   * muscle("latisimus")} is refused and offers "latissimus".
   *
   * @param name the gym's, as in "hamstrings", or the anatomical one, as in "gluteus maximus"
   * @return what it is; {@code .actions()} tells what it can do, {@code .of(lifter)} whose it is
   * @throws Refused if nothing is called so; offers the nearest names
   */
  public static MuscleGroup muscle(String name) {
    return MuscleGroup.named(name);
  }

  /**
   * All muscles by trade group, of a man of 75 kg and 175 cm, as in {@code muscles()}.
   *
   * @return the table
   */
  public static Sheet muscles() {
    return MuscleGroup.all();
  }

  /**
   * All muscles by trade group, of a lifter, as in {@code muscles(lifter)}.
   *
   * @param lifter who
   * @return the table
   */
  public static Sheet muscles(Person lifter) {
    return MuscleGroup.all(lifter);
  }
}
