package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.body.Population;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.load.Barbell;
import org.leverbook.muscle.GroupVerdict;
import org.leverbook.muscle.Verdict;
import org.leverbook.muscle.VerdictWord;
import org.leverbook.quantity.Refused;

/** What a lift asks of each trade group, in one word. */
class VerdictTest {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));

  private static Hinge hinge(double kilograms) {
    return Hinge.of(LIFTER).holding(Barbell.of(kg(kilograms)));
  }

  @Test
  void in_a_hinge_the_glutes_limit_the_hamstrings_are_worked_the_erectors_hold_hard() {
    Verdict verdict = hinge(60).verdict();
    assertThat(verdict.groups().get(0).group()).isEqualTo("glutes");
    assertThat(verdict.group("glutes").word()).isEqualTo(VerdictWord.LIMITER);
    assertThat(verdict.group("hamstrings").word()).isEqualTo(VerdictWord.WORKED);
    for (String fibres : new String[] {"lumbar fibres", "thoracic fibres"}) {
      GroupVerdict erectors = verdict.group("erectors, " + fibres);
      // The back keeps its shape: a stress of two thirds or more without any change of length.
      assertThat(erectors.word()).isEqualTo(VerdictWord.HOLDS);
      assertThat(erectors.most()).isGreaterThan(0.66);
      assertThat(erectors.change()).isLessThan(0.005);
    }
    assertThat(verdict.group("obliques").word()).isEqualTo(VerdictWord.IDLE);
    assertThat(verdict.uncovered()).isEmpty();
  }

  @Test
  void too_heavy_a_bar_says_what_these_muscles_cannot_hold() {
    Verdict verdict = hinge(140).verdict();
    assertThat(verdict.uncovered()).isNotEmpty();
    assertThat(verdict.text()).contains("Too much for these muscles: ", "L5/S1 extension");
    // Several groups pull fully; the word is for those that came there first.
    long full = verdict.groups().stream().filter(g -> g.most() > 0.99).count();
    long limiters = verdict.groups().stream().filter(g -> g.word() == VerdictWord.LIMITER).count();
    assertThat(limiters).isPositive().isLessThan(full);
  }

  @Test
  void the_band_holds_the_plain_value_and_is_a_real_width() {
    Verdict verdict = BackSquat.of(LIFTER).verdict();
    for (GroupVerdict group : verdict.groups()) {
      assertThat(group.most()).as(group.group()).isBetween(group.low(), group.high());
      assertThat(group.least()).isBetween(0.0, group.most());
      assertThat(group.strandStress()).isGreaterThanOrEqualTo(group.most() - 1e-9);
      assertThat(group.sure()).isBetween(0.0, 1.0);
    }
    GroupVerdict quads = verdict.group("quads");
    // Pulls of 25 % and arms of 10 to 30 % off: neither a hair's breadth nor everything.
    assertThat(quads.high() - quads.low()).isBetween(0.1, 0.5);
  }

  @Test
  void of_ten_people_of_either_sex_the_plain_value_lies_among_the_draws_without_help() {
    int asked = 0;
    int widened = 0;
    for (int i = 0; i < 10; i++) {
      Person person = Population.person(i % 2 == 0 ? Sex.MALE : Sex.FEMALE, 2026, i);
      for (GroupVerdict group : GobletSquat.of(person).verdict().groups()) {
        // Nearer to nothing or to all there is no room on one side.
        if (group.most() > VerdictWord.LITTLE && group.most() < 0.95) {
          asked++;
          boolean atEdge = group.most() == group.low() || group.most() == group.high();
          widened += atEdge ? 1 : 0;
        }
      }
    }
    assertThat(asked).isGreaterThan(60);
    // By chance alone a tenth of all would lie outside; ours is the middle of the draws.
    assertThat(widened).isLessThanOrEqualTo(asked / 20);
  }

  @Test
  void asked_twice_it_says_the_same() {
    assertThat(BackSquat.of(LIFTER).verdict().text())
        .isEqualTo(BackSquat.of(LIFTER).verdict().text());
  }

  @Test
  void sitting_under_a_pulldown_the_back_is_idle_and_the_lats_are_worked_or_limit() {
    Verdict verdict = LatPulldown.of(LIFTER).verdict();
    assertThat(verdict.group("lats").word()).isIn(VerdictWord.LIMITER, VerdictWord.WORKED);
    assertThat(verdict.group("lats").turn()).isGreaterThan(Math.toRadians(60));
    assertThat(verdict.group("erectors, lumbar fibres").word()).isEqualTo(VerdictWord.IDLE);
    assertThat(verdict.group("glutes").word()).isEqualTo(VerdictWord.IDLE);
  }

  @Test
  void a_group_worked_on_one_side_names_the_side() {
    Verdict verdict = OneArmRow.of(LIFTER).verdict();
    assertThat(verdict.group("lats").side()).isNotEqualTo("both");
    assertThat(BackSquat.of(LIFTER).verdict().group("quads").side()).isEqualTo("both");
  }

  @Test
  void one_position_tells_no_change_of_length_and_says_so() {
    Verdict verdict = hinge(60).start().verdict();
    assertThat(verdict.groups())
        .allMatch(g -> g.change() == 0)
        .noneMatch(g -> g.word() == VerdictWord.WORKED || g.word() == VerdictWord.HELPS);
    assertThat(verdict.text()).contains("One position tells no change of length");
    assertThat(verdict.group("hamstrings").word()).isEqualTo(VerdictWord.HOLDS);
  }

  @Test
  void every_table_says_that_it_is_an_estimate_and_no_promise() {
    Verdict squat = BackSquat.of(LIFTER).verdict();
    Sheet beside = hinge(60).verdict().beside(squat);
    for (Sheet sheet : new Sheet[] {squat.table(), beside}) {
      assertThat(sheet.text()).contains("no promise of growth", "40 draws", Caution.TEXT);
    }
  }

  @Test
  void two_lifts_side_by_side_tell_which_asks_more_of_what() {
    Verdict hinge = hinge(60).verdict();
    Verdict squat = BackSquat.of(LIFTER).verdict();
    Sheet sheet = hinge.beside(squat);
    for (int row = 0; row < sheet.rows().size(); row++) {
      String group = sheet.cell(row, "group").toString();
      double more = squat.group(group).most() - hinge.group(group).most();
      assertThat(sheet.cell(row, "more in the second")).isEqualTo(100 * more);
      assertThat(sheet.cell(row, "hinge")).isEqualTo(hinge.group(group).word().word());
      assertThat(sheet.cell(row, "back squat")).isEqualTo(squat.group(group).word().word());
    }
    assertThat(squat.group("quads").most()).isGreaterThan(hinge.group("quads").most());
    assertThat(hinge.beside(hinge).title()).isEqualTo("Verdict, hinge beside hinge (2)");
  }

  @Test
  void a_group_that_does_not_exist_is_refused_with_the_nearest() {
    Verdict verdict = hinge(60).start().verdict();
    assertThatThrownBy(() -> verdict.group("hamstring"))
        .isInstanceOf(Refused.class)
        .hasMessage("The verdict has no group \"hamstring\". Did you mean \"hamstrings\"?");
    assertThatThrownBy(() -> verdict.group(" "))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("glutes");
  }
}
