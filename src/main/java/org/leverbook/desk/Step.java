package org.leverbook.desk;

import java.util.function.Predicate;
import org.leverbook.body.Person;
import org.leverbook.display.Picture;
import org.leverbook.display.Sheet;
import org.leverbook.lift.Lift;
import org.leverbook.statics.Position;
import org.leverbook.study.Comparison;
import org.leverbook.study.Sweep;
import org.leverbook.support.Pad;

/** The steps of the first lesson: when each is done. What each says stands in lesson.txt. */
enum Step {
  PERSON(sight -> sight.gave(Person.class)),
  HINGE(sight -> sight.gave(Lift.class)),
  TABLE(sight -> sight.gave(Sheet.class, Step::tellsMoments)),
  PICTURE(sight -> sight.gave(Picture.class)),
  SWEEP(sight -> sight.gave(Sweep.class)),
  PLOT(sight -> sight.gave(Picture.class)),
  BUILD(Step::otherBuild),
  PAD(sight -> sight.gave(Position.class, Step::onPad)),
  COMPARE(sight -> sight.gave(Comparison.class)),
  SAVE(sight -> sight.wrote(".jsh") || sight.wrote(".ipynb"));

  private final Predicate<Sight> done;

  Step(Predicate<Sight> done) {
    this.done = done;
  }

  boolean isDoneBy(Sight sight) {
    return done.test(sight);
  }

  private static boolean tellsMoments(Sheet sheet) {
    return sheet.columns().stream().anyMatch(column -> column.name().contains("moment"));
  }

  /** A person beside another one, of the same sex. */
  private static boolean otherBuild(Sight sight) {
    return sight.gave(
        Person.class,
        one -> sight.had(Person.class, other -> !other.equals(one) && other.sex() == one.sex()));
  }

  private static boolean onPad(Position position) {
    return position.supports().stream().anyMatch(Pad.class::isInstance);
  }
}
