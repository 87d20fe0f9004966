package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;

/** Three quantities varied against each other. */
@Timeout(value = 300, unit = TimeUnit.SECONDS)
class GridOfThreeTest {

  private static final Hinge PULL = Hinge.of(Person.of(Sex.MALE, kg(85), cm(178)));

  private static final Span<Length> WIDTH = Span.of("grip width", cm(45), cm(85), 2);
  private static final Span<Length> HIPS = Span.of("hip height", cm(46), cm(70), 3);
  private static final Span<Mass> BAR = Span.of("bar mass", kg(50), kg(150), 2);

  /** The lowest hip height is below the knees. */
  private static GridOfThree<Length, Length, Mass> grid() {
    return GridOfThree.over(
        WIDTH,
        HIPS,
        BAR,
        (g, h, m) -> PULL.gripWidth(g).holding(Barbell.of(m)).hipHeight(h).start());
  }

  @Test
  void each_cell_is_the_position_of_its_three_values_the_first_varying_slowest() {
    var grid = grid();
    assertThat(grid.cells()).hasSize(12);
    Cell cell = grid.cells().get(11);
    assertThat(grid.words(cell))
        .isEqualTo("grip width 85.0 cm, hip height 70.0 cm, bar mass 150.0 kg");
    assertThat(cell.third()).isEqualTo(150);
    assertThat(cell.moment(JointId.KNEE))
        .isEqualTo(grid.at(cm(85), cm(70), kg(150)).moment(JointId.KNEE).signed())
        .isEqualTo(grid.at(cell).moment(JointId.KNEE).signed());
    assertThat(grid.held()).isEqualTo(8);
    assertThat(grid.text())
        .contains("8 of 12 positions could be held", "No position for 4 of 12 cells, as at grip")
        .endsWith(Caution.TEXT);
  }

  @Test
  void a_slice_is_the_grid_of_the_other_two() {
    Grid<Length, Mass> slice = grid().slice(1);
    assertThat(slice.cells()).hasSize(6);
    assertThat(slice.cells().get(5).moment(JointId.HIP))
        .isEqualTo(grid().cells().get(11).moment(JointId.HIP));
    assertThat(slice.at(cm(70), kg(150)).moment(JointId.HIP).signed())
        .isEqualTo(slice.cells().get(5).moment(JointId.HIP));
    assertThat(slice.crossTable(JointId.HIP).rowCount()).isEqualTo(3);
    assertThatThrownBy(() -> grid().slice(2))
        .isInstanceOf(Refused.class)
        .hasMessage("There is no slice 2: they are 0 to 1.");
  }

  @Test
  void its_tables_have_three_columns_of_values_and_are_alike_on_one_thread_and_on_three()
      throws Exception {
    List<String> tables = new ArrayList<>();
    for (int threads : List.of(1, 3)) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      tables.add(pool.submit(() -> grid().tidySheet(JointId.HIP).csv()).get());
      pool.shutdown();
    }
    assertThat(tables.get(0)).isEqualTo(tables.get(1));
    assertThat(grid().table(JointId.HIP).columnNames())
        .startsWith("grip width (cm)", "hip height (cm)", "bar mass (kg)", "hip moment (N·m)")
        .endsWith("reason");
    assertThat(grid().tidyTable(JointId.HIP, JointId.KNEE).rowCount()).isEqualTo(24);
  }

  @Test
  void too_large_grids_and_names_that_are_alike_are_refused() {
    Span<Length> many = Span.of("a", cm(1), cm(2), 1000);
    Span<Length> more = Span.of("b", cm(1), cm(2), 1000);
    assertThatThrownBy(() -> GridOfThree.over(many, more, HIPS, (a, b, c) -> null))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "A grid of 1,000 by 1,000 by 3 values has 3,000,000 cells; at most 100,000 positions"
                + " fit. Take fewer values, or write them straight into a file:"
                + " toFile(\"grid.csv\").grid(...).");
    assertThatThrownBy(() -> GridOfThree.over(WIDTH, HIPS, WIDTH, (a, b, c) -> null))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "Two quantities of the grid are called \"grip width\": give them different names, so"
                + " that the table's columns can be told apart.");
  }
}
