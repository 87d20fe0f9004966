package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.support.Pad;
import tech.tablesaw.api.Table;

/** Two quantities varied against each other. */
class GridTest {

  private static final Hinge PULL = Hinge.of(Person.of(Sex.MALE, kg(85), cm(178)));

  private static Position pull(Quantity<Length> hips, Quantity<Mass> bar) {
    return PULL.holding(Barbell.of(bar)).hipHeight(hips).start();
  }

  /** The lowest of four hip heights is below this lifter's knees. */
  private static Grid<Length, Mass> byBoth() {
    return Grid.over(
        Span.of("hip height", cm(46), cm(70), 4),
        Span.of("bar mass", kg(50), kg(150), 3),
        GridTest::pull);
  }

  @Test
  void each_cell_is_the_moment_of_its_position_in_the_order_of_the_table() {
    Grid<Length, Mass> grid = byBoth();
    assertThat(grid.cells()).hasSize(12);
    assertThat(grid.cells()).extracting(Cell::first).startsWith(46.0, 46.0, 46.0, 54.0);
    assertThat(grid.cells()).extracting(Cell::second).startsWith(50.0, 100.0, 150.0, 50.0);
    Cell cell = grid.cells().get(7);
    Position same = pull(cm(62), kg(100));
    assertThat(cell.moment(JointId.HIP)).isEqualTo(same.moment(JointId.HIP).signed());
    assertThat(cell.arm(JointId.L5_S1)).isEqualTo(same.moment(JointId.L5_S1).signedArm());
    assertThat(grid.at(cm(62), kg(100)).moment(JointId.KNEE).signed())
        .isEqualTo(cell.moment(JointId.KNEE));
    assertThat(grid.pair(cell)).isEqualTo("hip height 62.0 cm, bar mass 100.0 kg");
  }

  @Test
  void a_pair_that_cannot_be_held_is_kept_with_its_reason() {
    Grid<Length, Mass> grid = byBoth();
    assertThat(grid.held()).isEqualTo(9);
    Cell low = grid.cells().get(0);
    assertThat(low.held()).isFalse();
    assertThat(low.reason()).contains("below the knees");
    assertThatThrownBy(() -> low.moment(JointId.HIP))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("There is no moment here: A hip height of 46.0 cm");
    assertThat(grid.reasons())
        .singleElement()
        .asString()
        .startsWith(
            "No position for 3 of 12 pairs, as at hip height 46.0 cm, bar mass 50.0 kg: A hip"
                + " height of 46.0 cm would put the hips below the knees");
  }

  @Test
  void the_table_has_a_row_for_each_pair_and_units_in_its_columns() {
    Table table = byBoth().table(JointId.HIP, JointId.L5_S1);
    assertThat(table.columnNames())
        .containsExactly(
            "hip height (cm)",
            "bar mass (kg)",
            "hip moment (N·m)",
            "L5/S1 moment (N·m)",
            "hip arm (cm)",
            "L5/S1 arm (cm)",
            "balance (% of foot from heel)",
            "reason");
    assertThat(table.rowCount()).isEqualTo(12);
    assertThat(table.doubleColumn("hip moment (N·m)").isMissing(0)).isTrue();
    assertThat(table.stringColumn("reason").get(0)).contains("below the knees");
    assertThat(table.doubleColumn("hip moment (N·m)").isMissing(3)).isFalse();
    assertThat(table.stringColumn("reason").get(3)).isEmpty();
    assertThat(byBoth().sheet().csv()).doesNotContain("NaN").contains(Caution.TEXT);
  }

  @Test
  void the_crossed_table_holds_the_same_moments_and_its_gaps_with_their_reason() {
    Grid<Length, Mass> grid = byBoth();
    Table wide = grid.crossTable(JointId.HIP);
    assertThat(wide.columnNames())
        .containsExactly(
            "hip height (cm)",
            "hip moment at bar mass 50.0 kg (N·m)",
            "hip moment at bar mass 100.0 kg (N·m)",
            "hip moment at bar mass 150.0 kg (N·m)",
            "reason");
    assertThat(wide.rowCount()).isEqualTo(4);
    for (int i = 1; i < 4; i++) {
      for (int k = 0; k < 3; k++) {
        assertThat(wide.doubleColumn(1 + k).get(i))
            .isEqualTo(grid.cells().get(3 * i + k).moment(JointId.HIP));
      }
      assertThat(wide.stringColumn("reason").get(i)).isEmpty();
    }
    assertThat(wide.doubleColumn(1).isMissing(0)).isTrue();
    assertThat(wide.stringColumn("reason").get(0))
        .startsWith("bar mass 50.0 kg to 150.0 kg: A hip height of 46.0 cm");
  }

  @Test
  void pads_count_and_a_pad_that_is_not_touched_is_a_reason() {
    Position leaning = PULL.holding(Barbell.of(kg(60))).trunkLean(deg(60)).start();
    Grid<Angle, Mass> grid =
        Grid.over(
            Span.of("pad angle", deg(40), deg(100), 3),
            Span.of("bar mass", kg(20), kg(60), 2),
            (angle, bar) -> leaning.without("bar").with(Barbell.of(bar)).on(Pad.chest(angle)));
    Cell first = grid.cells().get(0);
    Position same = leaning.without("bar").with(Barbell.of(kg(20))).on(Pad.chest(deg(40)));
    assertThat(first.moment(JointId.L5_S1)).isEqualTo(same.moment(JointId.L5_S1).signed());
    assertThat(Math.abs(first.moment(JointId.L5_S1)))
        .as("the pad takes a part")
        .isLessThan(leaning.without("bar").with(Barbell.of(kg(20))).moment(JointId.L5_S1).size());
    assertThat(grid.cells())
        .allSatisfy(c -> assertThat(c.held()).isNotEqualTo(!c.reason().isEmpty()));
  }

  @Test
  void one_core_and_three_give_the_same_table() throws Exception {
    List<String> tables = new ArrayList<>();
    for (int cores : List.of(1, 3)) {
      ForkJoinPool pool = new ForkJoinPool(cores);
      tables.add(pool.submit(() -> byBoth().sheet().csv()).get());
      pool.shutdown();
    }
    assertThat(tables.get(0)).isEqualTo(tables.get(1));
  }

  @Test
  void a_grid_that_is_stopped_keeps_the_cells_that_are_done_and_says_so() throws Exception {
    AtomicInteger asked = new AtomicInteger();
    List<Grid<Length, Length>> made = new ArrayList<>();
    // A pool of its own: threads that were interrupted must not serve other tests.
    ForkJoinPool pool = new ForkJoinPool(1);
    pool.submit(
            () ->
                made.add(
                    Grid.over(
                        Span.of("a", cm(1), cm(2), 300),
                        Span.of("b", cm(1), cm(2), 300),
                        (a, b) -> {
                          if (asked.incrementAndGet() == 1000) {
                            Thread.currentThread().interrupt();
                          }
                          return null;
                        })))
        .get();
    pool.shutdown();
    Grid<Length, Length> grid = made.get(0);
    assertThat(grid.cells()).hasSize(1000);
    String stopped = "The work was stopped after 1,000 of 90,000; what was done is kept.";
    assertThat(grid.reasons()).startsWith(stopped);
    assertThat(grid.text()).contains(stopped);
    assertThat(grid.sheet().notes()).startsWith(stopped);
    assertThat(grid.crossSheet(JointId.HIP).rows()).hasSize(300);
    assertThat(grid.crossSheet(JointId.HIP).notes()).startsWith(stopped);
  }

  @Test
  void a_grid_prints_its_most_loaded_joint_as_a_table_and_says_what_is_missing() {
    assertThat(byBoth().text())
        .startsWith(
            "grid over hip height (46.0 cm to 70.0 cm) and bar mass (50.0 kg to 150.0 kg): 9 of 12"
                + " positions could be held\nL5/S1 moment (N·m): hip height down, bar mass across\n"
                + "hip height (cm)  50.0 kg  100.0 kg  150.0 kg\n")
        .contains("No position for 3 of 12 pairs")
        .endsWith(Caution.TEXT);
  }

  @Test
  void impossible_grids_are_refused_in_a_sentence() {
    Span<Length> fine = Span.of("hip height", cm(40), cm(70), 1000);
    assertThatThrownBy(
            () -> Grid.over(fine, Span.of("bar mass", kg(1), kg(2), 200), GridTest::pull))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "A grid of 1,000 by 200 values has 200,000 pairs; at most 100,000 positions fit. Take"
                + " fewer values, or write them straight into a file:"
                + " toFile(\"grid.csv\").grid(...).");
    assertThatThrownBy(() -> Grid.over(fine, fine, (a, b) -> null))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "Both quantities of the grid are called \"hip height\": give them two names, so that"
                + " the table's columns can be told apart.");
    assertThatThrownBy(() -> Span.of("bar mass", kg(5), kg(9), 1))
        .isInstanceOf(Refused.class)
        .hasMessage("The bar mass from 5 kg to 9 kg takes 2 to 1,000,000 values, not 1.");
    assertThatThrownBy(() -> Span.of(null, kg(5), kg(9), 3))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The name of what is varied is missing (null): give one, such as \"hip height\".");
  }
}
