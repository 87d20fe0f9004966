package org.leverbook.muscle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Sheet;
import org.leverbook.language.Vocabulary;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/** A number made by muscles at their limit says so. */
class FullPullTest {

  private static final String JUST =
      " They give all they have, and it is just enough: for a little more others must help, or it is"
          + " not held.";
  private static final String LESS =
      ": the forces are what they can give; holding it would press harder.";

  private static Position pull(double kilograms) {
    return Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178)))
        .holding(Barbell.of(Units.kg(kilograms)))
        .hipHeight(Units.cm(60))
        .start();
  }

  private static List<String> told(Sheet sheet) {
    return sheet.notes().stream()
        .filter(note -> note.contains("At full pull") || note.contains("Muscles do not hold"))
        .toList();
  }

  @Test
  void a_load_that_muscles_hold_with_something_left_says_nothing() {
    Position light = pull(60);
    assertThat(told(light.muscles())).isEmpty();
    assertThat(told(light.discs())).isEmpty();
    assertThat(told(light.boneLoads())).isEmpty();
    assertThat(told(light.heldBy())).isEmpty();
  }

  @Test
  void where_all_is_just_enough_the_muscles_are_named() {
    assertThat(told(pull(80).muscles()))
        .containsExactly("At full pull, wholly or in part: glutes, spinal erectors." + JUST);
    assertThat(told(pull(80).discs()))
        .containsExactly("At full pull, wholly or in part: spinal erectors." + JUST);
  }

  @Test
  void where_it_is_not_enough_forces_are_told_to_be_too_small() {
    Position heavy = pull(260);
    String all =
        "At full pull, wholly or in part: calves, glutes, hamstrings, rotator cuff and 9 more. They"
            + " give all they have, and it is not enough.";
    assertThat(told(heavy.muscles())).containsExactly(all);
    assertThat(told(heavy.heldBy())).containsExactly(all);
    assertThat(told(heavy.opposing(JointId.HIP)))
        .containsExactly(
            "At full pull, wholly or in part: glutes, hamstrings, adductors, adductors (act as"
                + " hamstring). They give all they have, and it is not enough.");
    assertThat(told(heavy.discs()))
        .containsExactly(
            "At full pull, wholly or in part: spinal erectors, low back (side). Muscles do not hold"
                + " all of it (614 N·m of L5/S1 extension uncovered)"
                + LESS);
    assertThat(told(heavy.boneLoads()))
        .containsExactly(
            "At full pull, wholly or in part: glutes, hamstrings, rotator cuff, triceps and 3 more."
                + " Muscles do not hold all of it (304 N·m of right hip extension uncovered)"
                + LESS);
  }

  @Test
  void side_by_side_it_is_told_of_which_position() {
    Sheet discs = Vocabulary.compare(pull(60), pull(260)).called("light", "heavy").compression();
    assertThat(told(discs))
        .containsExactly(
            "heavy: At full pull, wholly or in part: spinal erectors, low back (side). Muscles do not"
                + " hold all of it (614 N·m of L5/S1 extension uncovered)"
                + LESS);
  }
}
