package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;

import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.load.Barbell;
import org.leverbook.load.NoLoad;
import org.leverbook.statics.Position;

/** Nothing lifted, wherever a load can stand. */
class NoLoadTest {

  private static final Person LIFTER = Person.of(Sex.FEMALE, kg(62), cm(166));

  @Test
  void a_hinge_that_puts_its_bar_down_is_one_with_empty_hands() {
    Hinge empty = Hinge.of(LIFTER).hipHeight(cm(62));
    Hinge down =
        Hinge.of(LIFTER).hipHeight(cm(62)).holding(Barbell.of(kg(80))).holding(new NoLoad());
    assertThat(down.text()).isEqualTo(empty.text()).contains("nothing to lift");
    assertThat(down.start().text()).isEqualTo(empty.start().text());
    assertThat(down.start().loads()).isEmpty();
  }

  @Test
  void lifts_that_have_a_usual_load_can_be_done_without_one() {
    Position squat = BackSquat.of(LIFTER).holding(new NoLoad()).depth(deg(5)).finish();
    assertThat(squat.loads()).isEmpty();
    assertThat(squat.moment(JointId.KNEE).size())
        .isPositive()
        .isLessThan(BackSquat.of(LIFTER).depth(deg(5)).finish().moment(JointId.KNEE).size());
    assertThat(BenchPress.of(LIFTER).holding(new NoLoad()).finish().loads()).isEmpty();
  }

  @Test
  void no_load_added_leaves_a_position_as_it_was() {
    Position start = Hinge.of(LIFTER).holding(Barbell.of(kg(50))).hipHeight(cm(62)).start();
    Position same = start.with(new NoLoad());
    assertThat(same.loads()).isEqualTo(start.loads());
    assertThat(same.moments().rows()).isEqualTo(start.moments().rows());
    assertThat(BackSquat.of(LIFTER).with(new NoLoad()).start().loads()).hasSize(1);
  }
}
