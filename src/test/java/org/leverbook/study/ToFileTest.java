package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/** Sweeps and grids written row by row. */
@Timeout(value = 300, unit = TimeUnit.SECONDS)
class ToFileTest {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));
  private static final Hinge PULL = Hinge.of(LIFTER).holding(Barbell.of(kg(140)));

  @TempDir private Path folder;

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  @Test
  void a_file_holds_the_very_bytes_that_a_sweep_saves() throws IOException {
    Sweep.over("hip height", cm(44), cm(68), 7, h -> PULL.hipHeight(h).start()).save(at("a.csv"));
    Written written =
        ToFile.named(at("b.csv"))
            .sweep("hip height", cm(44), cm(68), 7, h -> PULL.hipHeight(h).start());

    assertThat(folder.resolve("b.csv")).hasSameBinaryContentAs(folder.resolve("a.csv"));
    assertThat(written.rows()).isEqualTo(7);
    assertThat(written.text())
        .contains("7 rows; 5 of 7 positions could be held", "below the knees")
        .endsWith(Caution.TEXT);
  }

  @Test
  void grids_of_two_and_three_and_the_tidy_form_are_those_of_the_tables() throws IOException {
    Span<javax.measure.quantity.Length> hips = Span.of("hip height", cm(46), cm(70), 3);
    Span<javax.measure.quantity.Mass> bar = Span.of("bar mass", kg(50), kg(150), 2);
    Span<javax.measure.quantity.Length> width = Span.of("grip width", cm(45), cm(85), 2);
    var two = Grid.over(hips, bar, (h, m) -> PULL.holding(Barbell.of(m)).hipHeight(h).start());
    ToFile.named(at("two.csv"))
        .tidy()
        .joints(JointId.HIP, JointId.KNEE)
        .grid(hips, bar, (h, m) -> PULL.holding(Barbell.of(m)).hipHeight(h).start());
    assertThat(folder.resolve("two.csv"))
        .content()
        .isEqualTo(two.tidySheet(JointId.HIP, JointId.KNEE).csv());

    ThreeWay<
            javax.measure.quantity.Length,
            javax.measure.quantity.Length,
            javax.measure.quantity.Mass>
        pull = (g, h, m) -> PULL.gripWidth(g).holding(Barbell.of(m)).hipHeight(h).start();
    ToFile.named(at("three.csv")).joints(JointId.L5_S1).grid(width, hips, bar, pull);
    assertThat(folder.resolve("three.csv"))
        .content()
        .isEqualTo(GridOfThree.over(width, hips, bar, pull).sheet(JointId.L5_S1).csv());
  }

  @Test
  void a_lift_goes_into_a_file_too() throws IOException {
    ToFile.named(at("squat.csv")).through(BackSquat.of(LIFTER), 3);
    assertThat(Files.readAllLines(folder.resolve("squat.csv"))).hasSize(4);
  }

  @Test
  void after_a_stop_the_file_holds_what_was_done_and_its_last_row_says_so() throws Exception {
    Position start = PULL.hipHeight(cm(64)).start();
    List<Written> made = new ArrayList<>();
    ForkJoinPool pool = new ForkJoinPool(1);
    pool.submit(
            () ->
                made.add(
                    ToFile.named(at("stopped.csv"))
                        .joints(JointId.HIP)
                        .sweep(
                            "bar mass",
                            kg(1),
                            kg(1000),
                            1000,
                            mass -> {
                              if (mass.getValue().doubleValue() > 699.5) {
                                Thread.currentThread().interrupt();
                              }
                              return start;
                            })))
        .get();
    pool.shutdown();
    List<String> lines = Files.readAllLines(folder.resolve("stopped.csv"));
    assertThat(lines).hasSize(701);
    assertThat(lines.get(700))
        .startsWith("700,")
        .endsWith(",\"The work was stopped after 700 of 1,000; what was done is kept.\"");
    assertThat(made.get(0).text()).contains("The work was stopped after 700 of 1,000");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).as("no draft stays behind").hasSize(1);
    }
  }

  @Test
  void a_lambda_that_throws_gives_rows_with_reasons_and_other_endings_are_refused()
      throws IOException {
    ToFile.named(at("odd.csv"))
        .joints(JointId.HIP)
        .sweep(
            "h",
            cm(1),
            cm(2),
            2,
            h -> {
              throw new IllegalArgumentException("no, \"never\"");
            });
    assertThat(Files.readAllLines(folder.resolve("odd.csv")).get(2))
        .isEqualTo(
            "2,,,,\"The lambda failed here: Illegal argument exception: no, \"\"never\"\"\",");
    assertThatThrownBy(() -> ToFile.named("odd.txt"))
        .isInstanceOf(Refused.class)
        .hasMessage("A table is saved as .csv, not as \"odd.txt\".");
    assertThat(ToFile.named("odd.csv").tidy().joints(JointId.HIP).text())
        .isEqualTo(
            "odd.csv: nothing is written yet. A row for each position and joint: hip. Add"
                + " .sweep(…), .grid(…) or .through(…).");
  }
}
