package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;
import static org.leverbook.quantity.Units.seconds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.Grip;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.statics.Tempo;
import tech.tablesaw.api.Table;

/** The forms of a sweep's table, sweeps over things and through lifts, and what goes wrong. */
@Timeout(value = 300, unit = TimeUnit.SECONDS)
class SweepFormsTest {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));
  private static final Hinge PULL = Hinge.of(LIFTER).holding(Barbell.of(kg(140)));

  /** Two of five heights are below the knees. */
  private static Sweep byHip() {
    return Sweep.over("hip height", cm(44), cm(68), 5, SweepFormsTest::pull);
  }

  private static Position pull(Quantity<Length> hips) {
    return PULL.hipHeight(hips).start();
  }

  @Test
  void the_tidy_table_has_a_row_for_each_position_and_joint() {
    Table tidy = byHip().tidyTable(JointId.HIP, JointId.L5_S1, JointId.KNEE);

    assertThat(tidy.columnNames())
        .containsExactly(
            "hip height (cm)",
            "joint",
            "side",
            "moment (N·m)",
            "arm (cm)",
            "tends to",
            "opposed by",
            "reason");
    assertThat(tidy.rowCount()).isEqualTo(15);
    assertThat(tidy.stringColumn("joint").asList()).startsWith("hip", "L5/S1", "knee", "hip");
    Position last = PULL.hipHeight(cm(68)).start();
    assertThat(tidy.doubleColumn("moment (N·m)").get(12))
        .isEqualTo(last.moment(JointId.HIP).signed());
    assertThat(tidy.doubleColumn("arm (cm)").get(12))
        .isEqualTo(100 * last.moment(JointId.HIP).signedArm());
    assertThat(tidy.stringColumn("side").get(12)).isEqualTo("right");
    assertThat(tidy.stringColumn("side").get(13)).isEmpty();
    assertThat(tidy.stringColumn("tends to").get(12)).isEqualTo("flex");
    assertThat(tidy.stringColumn("opposed by").get(13)).isEqualTo("trunk extensors");
    assertThat(tidy.doubleColumn("moment (N·m)").isMissing(0)).isTrue();
    assertThat(tidy.stringColumn("reason").get(0)).contains("below the knees");
    assertThat(tidy.stringColumn("reason").get(12)).isEmpty();
  }

  @Test
  void both_forms_hold_the_same_moments() {
    Sweep sweep = byHip();
    Table wide = sweep.table(JointId.HIP, JointId.KNEE);
    Table tidy = sweep.tidyTable(JointId.HIP, JointId.KNEE);
    for (int i = 2; i < 5; i++) {
      assertThat(tidy.doubleColumn("moment (N·m)").get(2 * i))
          .isEqualTo(wide.doubleColumn("hip moment (N·m)").get(i));
      assertThat(tidy.doubleColumn("arm (cm)").get(2 * i + 1))
          .isEqualTo(wide.doubleColumn("knee arm (cm)").get(i));
    }
    assertThat(sweep.tidySheet().csv()).contains(Caution.TEXT).doesNotContain("NaN");
  }

  @Test
  void one_thread_and_three_give_the_same_table() throws Exception {
    List<String> tables = new ArrayList<>();
    for (int threads : List.of(1, 3)) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      tables.add(pool.submit(() -> byHip().tidySheet().csv()).get());
      pool.shutdown();
    }
    assertThat(tables.get(0)).isEqualTo(tables.get(1));
  }

  @Test
  void things_are_rows_by_the_name_they_give_themselves() {
    Sweep sweep =
        Sweep.over(
            "grip",
            List.of(Grip.OVERHAND, Grip.UNDERHAND),
            grip -> new Position[] {PULL.hipHeight(cm(66)).start()}[grip.ordinal()]);
    assertThat(sweep.named()).isTrue();
    assertThat(sweep.table(JointId.HIP).columnNames()).startsWith("grip", "hip moment (N·m)");
    assertThat(sweep.table().stringColumn("grip").asList())
        .containsExactly("overhand", "underhand");
    assertThat(sweep.rows().get(0).held()).isTrue();
    assertThat(sweep.rows().get(1).reason())
        .isEqualTo(
            "The lambda failed here: There is no place 1 here: places count from 0, and the last"
                + " one is 0.");
    assertThat(sweep.title()).isEqualTo("by grip");
  }

  @Test
  void lifters_are_named_briefly_and_things_called_alike_are_numbered() {
    Person other = LIFTER.longer(org.leverbook.body.Part.TRUNK, percent(6));
    Sweep sweep =
        Sweep.over(
            "lifter",
            List.of(LIFTER, other, other),
            l -> Hinge.of(l).holding(Barbell.of(kg(60))).hipHeight(cm(66)).start());
    assertThat(sweep.rows().stream().map(SweepRow::name))
        .allSatisfy(name -> assertThat(name).startsWith("man, 85.0 kg, 178.0 cm"))
        .doesNotHaveDuplicates();
  }

  @Test
  void an_empty_list_and_a_missing_thing_are_refused() {
    assertThatThrownBy(() -> Sweep.over("grip", List.of(), g -> null))
        .isInstanceOf(Refused.class)
        .hasMessage("The list of what is tried for \"grip\" is empty: give one thing or more.");
    assertThatThrownBy(() -> Sweep.over("grip", Arrays.asList(Grip.NEUTRAL, null), g -> null))
        .isInstanceOf(Refused.class)
        .hasMessage("The grip number 2 of 2 is missing (null): leave it out, or give it.");
  }

  @Test
  void a_lift_is_run_through_from_start_to_finish() {
    BackSquat squat = BackSquat.of(LIFTER).holding(Barbell.of(kg(100)));
    Sweep sweep = Sweep.through(squat, 5);
    assertThat(sweep.title()).isEqualTo("through the back squat");
    assertThat(sweep.table().columnNames().get(0)).isEqualTo("way (%)");
    assertThat(sweep.rows())
        .extracting(SweepRow::value)
        .containsExactly(0.0, 25.0, 50.0, 75.0, 100.0);
    assertThat(sweep.rows().get(4).moment(JointId.HIP))
        .isEqualTo(squat.finish().moment(JointId.HIP).signed());

    Sweep byKnee = sweep.against(JointId.KNEE);
    assertThat(byKnee.title()).isEqualTo("through the back squat, against knee flexion");
    assertThat(byKnee.table().columnNames().get(0)).isEqualTo("knee flexion (°)");
    assertThat(byKnee.rows().get(4).value())
        .isEqualTo(
            Math.toDegrees(
                squat.finish().placement().pose().angle(JointId.KNEE, Side.RIGHT, "flexion")));
    assertThat(byKnee.rows().get(4).moment(JointId.HIP))
        .isEqualTo(sweep.rows().get(4).moment(JointId.HIP));
  }

  @Test
  void a_movement_is_run_through_at_even_shares_of_its_way_not_of_its_time() {
    Movement rise =
        Movement.of(
            "rise",
            Tempo.smooth(seconds(1)),
            share -> PULL.hipHeight(cm(66 + 2 * share)).barHeight(cm(22.5 + 3 * share)).start());
    Sweep sweep = Sweep.through(rise, 5);
    assertThat(sweep.held()).isEqualTo(5);
    // A smooth start: after a quarter of the time only a tenth of the way.
    for (SweepRow row : sweep.rows()) {
      assertThat(row.position().fact("hip height"))
          .isCloseTo(66 + 2 * row.value() / 100, within(1e-6));
    }
    assertThat(sweep.title()).isEqualTo("through the rise");
  }

  @Test
  void what_a_lambda_throws_for_some_values_is_the_reason_of_those_rows() {
    Sweep sweep =
        Sweep.over(
            "hip height",
            cm(60),
            cm(70),
            11,
            h -> {
              if (h.getValue().doubleValue() > 67.5) {
                throw new IllegalStateException("the video ends here");
              }
              return PULL.hipHeight(h).start();
            });
    assertThat(sweep.held()).isEqualTo(8);
    assertThat(sweep.rows().get(8).reason())
        .isEqualTo("The lambda failed here: Illegal state exception: the video ends here.");
    assertThatThrownBy(() -> sweep.position(8))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("There is no position here: The lambda failed here");
    assertThatThrownBy(() -> sweep.position(11))
        .isInstanceOf(Refused.class)
        .hasMessage("There is no row 11: the rows are 0 to 10.");
  }

  @Test
  void what_the_jdk_says_of_a_missing_value_is_told_without_packages() {
    Sweep sweep =
        Sweep.over(
            "h",
            cm(1),
            cm(2),
            2,
            h -> {
              Position none = h.getValue().doubleValue() > 0 ? null : pull(h);
              return none.without("bar");
            });
    assertThat(sweep.rows().get(0).reason())
        // The name of a variable is known where the code was compiled with it.
        .matches(
            "The lambda failed here: A value is missing \\(null\\): (none|a value) is empty where"
                + " without\\(\\) is asked of it\\.");
  }

  @Test
  void a_range_of_no_steps_or_no_width_or_no_number_is_refused_and_a_falling_one_is_not() {
    assertThatThrownBy(() -> Sweep.over("hip height", cm(60), cm(40), 0, h -> null))
        .isInstanceOf(Refused.class)
        .hasMessage("The hip height from 60 cm to 40 cm takes 2 to 1,000,000 values, not 0.");
    assertThatThrownBy(() -> Sweep.over("hip height", cm(60), null, 5, h -> null))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("last value of the hip height");
    assertThatThrownBy(() -> Sweep.over("hip height", cm(Double.NaN), cm(60), 5, h -> null))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("cm(NaN) is no amount");
    assertThatThrownBy(() -> Sweep.over("hip height", cm(1), cm(60), 100_001, h -> null))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "A sweep of 100,001 values is too large: at most 100,000 positions fit. Take fewer, or"
                + " write them straight into a file: toFile(\"sweep.csv\").sweep(...).");
    assertThat(Sweep.over("hip height", cm(68), cm(60), 3, SweepFormsTest::pull).rows())
        .extracting(SweepRow::value)
        .containsExactly(68.0, 64.0, 60.0);
  }

  @Test
  void a_long_sweep_keeps_numbers_and_makes_its_positions_anew() {
    Position start = PULL.hipHeight(cm(64)).start().without("bar");
    Sweep sweep =
        Sweep.over("bar mass", kg(20), kg(200), 600, mass -> start.with(Barbell.of(mass)));
    SweepRow row = sweep.rows().get(300);
    assertThat(sweep.position(300)).isNotSameAs(sweep.position(300));
    assertThat(sweep.position(300).moment(JointId.HIP).signed()).isEqualTo(row.moment(JointId.HIP));
    assertThat(sweep.text()).contains("The first 50 and the last 10 of 600 rows");
    Sweep byHip = sweep.against(JointId.HIP);
    assertThat(byHip.rows()).hasSize(600);
    assertThat(byHip.notes()).isEmpty();
  }

  @Test
  void a_stopped_sweep_holds_the_rows_that_were_done_and_says_so() throws Exception {
    ForkJoinPool pool = new ForkJoinPool(1);
    List<Sweep> made = new ArrayList<>();
    Position start = PULL.hipHeight(cm(64)).start();
    pool.submit(
            () ->
                made.add(
                    Sweep.over(
                        "bar mass",
                        kg(1),
                        kg(1000),
                        1000,
                        mass -> {
                          if (mass.getValue().doubleValue() > 339.5) {
                            Thread.currentThread().interrupt();
                          }
                          return start;
                        })))
        .get();
    pool.shutdown();
    Sweep sweep = made.get(0);
    String note = "The work was stopped after 340 of 1,000; what was done is kept.";
    assertThat(sweep.rows()).hasSize(340);
    assertThat(sweep.notes()).containsExactly(note);
    assertThat(sweep.sheet().notes()).startsWith(note);
    assertThat(sweep.text()).contains(note).contains("340 of 340 could be held.");
    // Threads that were never interrupted draw and turn it.
    assertThat(sweep.against(JointId.HIP).notes()).containsExactly(note);
  }
}
