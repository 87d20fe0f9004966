package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Display;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import tech.tablesaw.api.Table;

class SweepTest {

  private static final Hinge PULL =
      Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178))).holding(Barbell.of(Units.kg(140)));

  private static Sweep byHip() {
    return Sweep.over("hip height", Units.cm(40), Units.cm(72), 33, h -> PULL.hipHeight(h).start());
  }

  @Test
  void each_row_is_the_position_of_its_value() {
    Sweep sweep = byHip();
    assertThat(sweep.rows()).hasSize(33);
    assertThat(sweep.rows().get(0).value()).isEqualTo(40);
    assertThat(sweep.rows().get(32).value()).isEqualTo(72);
    SweepRow row = sweep.rows().get(25);
    assertThat(row.value()).isCloseTo(65, within(1e-12));
    assertThat(row.position().moment(JointId.HIP).size())
        .isEqualTo(PULL.hipHeight(Units.cm(row.value())).start().moment(JointId.HIP).size());
  }

  @Test
  void what_cannot_be_held_stays_as_a_row_with_its_reason() {
    Sweep sweep = byHip();
    Table table = sweep.table();
    assertThat(table.rowCount()).isEqualTo(33);
    assertThat(sweep.held()).isBetween(15L, 32L);
    assertThat(table.stringColumn("reason").get(0)).contains("below the knees");
    assertThat(table.doubleColumn("hip moment (N·m)").isMissing(0)).isTrue();
    assertThat(table.stringColumn("reason").get(32)).isEmpty();
    assertThat(table.doubleColumn("hip moment (N·m)").isMissing(32)).isFalse();
  }

  @Test
  void columns_carry_their_units() {
    assertThat(byHip().table(JointId.HIP, JointId.L5_S1).columnNames())
        .containsExactly(
            "hip height (cm)",
            "hip moment (N·m)",
            "L5/S1 moment (N·m)",
            "hip arm (cm)",
            "L5/S1 arm (cm)",
            "balance (% of foot from heel)",
            "reason");
  }

  @Test
  void the_same_sweep_gives_the_same_table_each_time() {
    assertThat(byHip().sheet().csv()).isEqualTo(byHip().sheet().csv());
  }

  @Test
  void no_table_holds_a_nan() {
    assertThat(byHip().sheet().csv()).doesNotContain("NaN").doesNotContain("Infinity");
  }

  @Test
  void any_quantity_can_be_varied() {
    Sweep byMass =
        Sweep.over(
            "bar",
            Units.kg(20),
            Units.kg(200),
            4,
            bar -> PULL.holding(Barbell.of(bar)).hipHeight(Units.cm(66)).start());
    assertThat(byMass.unit()).isEqualTo("kg");
    double[] moments =
        byMass.rows().stream()
            .mapToDouble(row -> row.position().moment(JointId.L5_S1).size())
            .toArray();
    assertThat(moments).isSorted();
  }

  @Test
  void a_lambda_that_gives_nothing_is_a_row_too() {
    Sweep sweep = Sweep.over("h", Units.cm(1), Units.cm(2), 2, h -> null);
    assertThat(sweep.rows().get(0).reason()).isEqualTo("The lambda gave no position (null).");
  }

  @Test
  void a_range_that_is_none_is_refused() {
    assertThatThrownBy(() -> Sweep.over("h", Units.cm(5), Units.cm(5), 3, h -> null))
        .isInstanceOf(Refused.class)
        .hasMessage("The h needs two different ends, but both are 5 cm.");
    assertThatThrownBy(() -> Sweep.over("h", Units.cm(5), Units.cm(9), 1, h -> null))
        .isInstanceOf(Refused.class)
        .hasMessage("The h from 5 cm to 9 cm takes 2 to 1,000,000 values, not 1.");
  }

  @Test
  void a_table_shows_itself_as_rows_with_units() {
    assertThat(Display.of(byHip().table(JointId.HIP)).text())
        .contains("hip moment (N·m)")
        .endsWith("33 rows");
  }

  @org.junit.jupiter.api.Test
  void what_slips_stays_in_the_sweep_with_its_reason() {
    var lifter =
        org.leverbook.body.Person.of(
            org.leverbook.body.Sex.MALE,
            org.leverbook.quantity.Units.kg(85),
            org.leverbook.quantity.Units.cm(178));
    var start =
        org.leverbook.lift.Hinge.of(lifter)
            .holding(org.leverbook.load.Barbell.of(org.leverbook.quantity.Units.kg(60)))
            .hipHeight(org.leverbook.quantity.Units.cm(70))
            .start();
    int hand = start.body().tree().indexOf("right fingers");
    int other = start.body().tree().indexOf("left fingers");
    var grip = start.placement().origin(hand);
    // On the floor's height the pull slides the feet rather than tipping the lifter.
    var pulley =
        new org.hipparchus.geometry.euclidean.threed.Vector3D(grip.getX() + 40, grip.getY(), 0);
    var zero = org.hipparchus.geometry.euclidean.threed.Vector3D.ZERO;
    Sweep sweep =
        Sweep.over(
            "stack",
            org.leverbook.quantity.Units.kg(1),
            org.leverbook.quantity.Units.kg(8),
            8,
            mass ->
                start
                    .without("floor")
                    .on(org.leverbook.support.Footing.feet(start.body()).friction(0.03))
                    .with(
                        new org.leverbook.load.Cable(
                            mass.getValue().doubleValue(),
                            1,
                            pulley,
                            java.util.List.of(
                                org.leverbook.load.Grasp.fixed(hand, zero),
                                org.leverbook.load.Grasp.fixed(other, zero)))));
    assertThat(sweep.rows().get(0).held()).isTrue();
    SweepRow last = sweep.rows().get(7);
    assertThat(last.held()).isFalse();
    assertThat(last.position()).isNotNull();
    assertThat(last.reason())
        .isEqualTo("Slips at the feet: needs friction 0.06, the floor gives 0.03.");
    assertThat(sweep.table().rowCount()).isEqualTo(8);
  }
}
