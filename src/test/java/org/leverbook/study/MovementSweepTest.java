package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.seconds;

import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Tempo;

/** A movement as a table over time. */
class MovementSweepTest {

  /** Hips and bar rise together. */
  private static Sweep pull(double hips, double hipsTo, double bar, double barTo) {
    Hinge hinge = Hinge.of(Person.of(Sex.MALE, kg(85), cm(178))).holding(Barbell.of(kg(100)));
    Movement pull =
        Movement.of(
            "pull",
            Tempo.smooth(seconds(1)),
            share ->
                hinge
                    .hipHeight(cm(hips + (hipsTo - hips) * share))
                    .barHeight(cm(bar + (barTo - bar) * share))
                    .start());
    return Sweep.over(pull, 41);
  }

  @Test
  void a_movement_is_swept_over_time_and_starts_and_ends_as_the_still_positions_do() {
    Sweep sweep = pull(66, 68, 22.5, 25.5);
    assertThat(sweep.held()).isEqualTo(41);
    assertThat(sweep.table().columnNames().get(0)).isEqualTo("time (s)");
    assertThat(sweep.text()).contains("    0.03 ").contains("    0.98 ");
    assertThat(sweep.rows().get(0).position().forces())
        .noneMatch(force -> force.source().endsWith("inertia"));
    // Faster first, slower at the end: the back has more to do on the way up, then less.
    JointMoment early = sweep.rows().get(10).position().moment(JointId.L5_S1);
    JointMoment late = sweep.rows().get(30).position().moment(JointId.L5_S1);
    assertThat(early.from("bar inertia")).isGreaterThan(2);
    assertThat(late.from("bar inertia")).isLessThan(-2);
  }

  @Test
  void where_the_spine_hands_over_to_the_hips_the_way_has_a_corner_and_the_row_says_so() {
    Sweep sweep = pull(66, 84, 22.5, 45);
    assertThat(sweep.held()).isBetween(30L, 40L);
    assertThat(sweep.rows())
        .filteredOn(row -> !row.held())
        .allSatisfy(row -> assertThat(row.reason()).startsWith("The movement turns a corner near"));
  }
}
