package org.leverbook.muscle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The scale's numbers, at their edges, and the groups it is told of. */
class VerdictWordTest {

  private static final double MOVES = Math.toRadians(15);
  private static final double STAYS = Math.toRadians(14.9);

  @Test
  void below_a_tenth_a_group_is_idle_whatever_it_does() {
    assertThat(VerdictWord.of(0.0999, true, MOVES)).isEqualTo(VerdictWord.IDLE);
    assertThat(VerdictWord.of(0, false, 0)).isEqualTo(VerdictWord.IDLE);
  }

  @Test
  void from_a_tenth_on_it_holds_or_helps_by_fifteen_degrees() {
    assertThat(VerdictWord.of(0.1, false, STAYS)).isEqualTo(VerdictWord.HOLDS);
    assertThat(VerdictWord.of(0.1, false, MOVES)).isEqualTo(VerdictWord.HELPS);
    assertThat(VerdictWord.of(0.2999, false, MOVES)).isEqualTo(VerdictWord.HELPS);
  }

  @Test
  void from_three_tenths_on_it_holds_or_is_worked() {
    assertThat(VerdictWord.of(0.3, false, STAYS)).isEqualTo(VerdictWord.HOLDS);
    assertThat(VerdictWord.of(0.3, false, MOVES)).isEqualTo(VerdictWord.WORKED);
    assertThat(VerdictWord.of(1, false, MOVES)).isEqualTo(VerdictWord.WORKED);
  }

  @Test
  void the_first_to_give_out_limits_moving_or_not_but_only_from_three_tenths_on() {
    assertThat(VerdictWord.of(0.3, true, 0)).isEqualTo(VerdictWord.LIMITER);
    assertThat(VerdictWord.of(0.9, true, MOVES)).isEqualTo(VerdictWord.LIMITER);
    assertThat(VerdictWord.of(0.2999, true, MOVES)).isEqualTo(VerdictWord.HELPS);
  }

  @Test
  void every_muscle_belongs_to_exactly_one_group() {
    List<String> told = TradeGroup.ALL.stream().flatMap(g -> g.keys().stream()).toList();
    List<String> all = MuscleTable.SHIPPED.all().stream().map(MuscleRow::key).toList();
    assertThat(told).containsExactlyInAnyOrderElementsOf(all);
  }
}
