package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Sheet;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.Dip;
import org.leverbook.lift.FrontSquat;
import org.leverbook.lift.PullUp;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.statics.Tempo;
import tech.tablesaw.api.Table;

class WayComparisonTest {

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
  private static final BackSquat BACK = BackSquat.of(LIFTER).holding(Barbell.of(Units.kg(60)));
  private static final FrontSquat FRONT = FrontSquat.of(LIFTER).holding(Barbell.of(Units.kg(40)));
  private static final WayComparison SQUATS = WayComparison.of(BACK, FRONT);

  private static double effort(Position position) {
    return position.limiter().effort().orElseThrow();
  }

  /** The greatest effort at the twenty-one shares that a comparison looks at. */
  private static double hardest(WayComparison comparison, int which) {
    return IntStream.rangeClosed(0, 20)
        .mapToObj(i -> comparison.at(Units.percent(5 * i)).rows().get(which).position())
        .mapToDouble(WayComparisonTest::effort)
        .max()
        .orElseThrow();
  }

  @Test
  void the_largest_moment_of_each_joint_is_told_with_its_place() {
    Sheet peaks = SQUATS.peaks(JointId.KNEE);
    double most = 0;
    int at = 0;
    for (int i = 0; i <= 20; i++) {
      double here = BACK.at(Units.percent(5 * i)).moment(JointId.KNEE).signed();
      if (here > most + 1e-6) {
        most = here;
        at = 5 * i;
      }
    }
    // A position is solved anew here, to the solver's 1e-7.
    assertThat((Double) peaks.cell(0, "back squat, largest moment")).isCloseTo(most, within(1e-4));
    assertThat((Double) peaks.cell(0, "back squat, at")).isCloseTo(at, within(1e-9));
    double front = (Double) peaks.cell(0, "front squat, largest moment");
    assertThat((Double) peaks.cell(0, "front squat, ratio")).isCloseTo(front / most, within(1e-6));
  }

  @Test
  void a_share_of_the_way_gives_positions_side_by_side() {
    Comparison half = SQUATS.at(Units.percent(50));
    assertThat(half.rows())
        .extracting(Comparison.Row::name)
        .containsExactly("back squat", "front squat");
    assertThat((Double) half.moments(JointId.HIP).cell(0, "front squat, moment"))
        .isCloseTo(FRONT.middle().moment(JointId.HIP).signed(), within(1e-4));
    assertThat(SQUATS.finish().rows().get(0).position().name()).isEqualTo("back squat, finish");
  }

  @Test
  void loads_are_made_equal_over_the_whole_way() {
    assertThat(SQUATS.atEqualLoad().start().rows().get(1).load()).startsWith("barbell 60.0 kg");
    WayComparison alike = SQUATS.atEqualEffort(Units.percent(60));
    for (int i = 0; i < 2; i++) {
      // The largest load of a lift is found to half a per cent, and effort follows it.
      assertThat(hardest(alike, i)).isCloseTo(0.60, within(0.004));
    }
    WayComparison shared = SQUATS.atEqualShareOfLargest(Units.percent(50));
    double held = shared.start().rows().get(1).position().mainLoad().counted().orElseThrow();
    assertThat(held).isCloseTo(0.5 * FRONT.largest().kilograms(), within(1e-6 * held));
  }

  @Test
  void movements_count_inertia_and_take_other_loads_too() {
    Movement slow = BACK.moving(Tempo.smooth(Units.seconds(3)));
    Movement fast = BACK.moving(Tempo.smooth(Units.seconds(1)));
    WayComparison comparison = WayComparison.of(slow, fast);
    Sheet peaks = comparison.peaks(JointId.HIP);
    assertThat(peaks.columns().get(2).name()).isEqualTo("back squat in 3.00 s, largest moment");
    assertThat((Double) peaks.cell(0, "back squat in 1.00 s, ratio")).isGreaterThan(1.05);
    WayComparison alike = comparison.atEqualEffort(Units.percent(80));
    for (int i = 0; i < 2; i++) {
      assertThat(hardest(alike, i)).isCloseTo(0.80, within(0.005));
    }
    assertThat(alike.tracks().get(0).load()).isNotEqualTo(alike.tracks().get(1).load());
  }

  @Test
  void what_has_no_load_that_grows_stays_with_its_reason() {
    WayComparison comparison =
        WayComparison.of(BACK, PullUp.of(LIFTER)).atEqualEffort(Units.percent(60));
    assertThat((String) comparison.summary().cell(1, "held"))
        .startsWith("The pull-up has no load that could grow");
    assertThat(comparison.finish().rows().get(1).reason())
        .startsWith("The pull-up has no load that could grow");
    assertThat(comparison.peaks(JointId.HIP).cell(0, "pull-up, ratio")).isEqualTo("not known");
    Table table = comparison.table();
    assertThat(table.stringColumn("reason").get(table.rowCount() - 1)).startsWith("The pull-up");
    WayComparison none =
        WayComparison.of(Dip.of(LIFTER), PullUp.of(LIFTER)).atEqualEffort(Units.percent(60));
    assertThatThrownBy(() -> none.plot(JointId.ELBOW))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith(
            "There is nothing to plot: the moment at the elbow is not known anywhere.");
  }

  @Test
  void tables_have_a_row_for_each_share_and_are_the_same_each_time() {
    Table wide = SQUATS.wideTable(JointId.HIP);
    assertThat(wide.rowCount()).isEqualTo(42);
    assertThat(wide.columnNames())
        .contains("share of the way (%)", "hip moment (N·m)", "limiter's effort (%)");
    assertThat(SQUATS.table().rowCount()).isEqualTo(42 * Slot.ALL.size());
    assertThat(WaySheets.tidy(WayComparison.of(BACK, FRONT)).csv())
        .isEqualTo(WaySheets.tidy(SQUATS).csv())
        .doesNotContain("NaN")
        .doesNotContain("Infinity");
  }

  @Test
  void each_group_has_its_word_over_the_whole_way() {
    Sheet verdicts = SQUATS.verdicts();
    assertThat(verdicts.text()).contains("quads").contains("worked");
    assertThat(verdicts.rows().get(0).subList(0, 4))
        .isEqualTo(BACK.verdict().beside(FRONT.verdict()).rows().get(0).subList(0, 4));
  }

  @Test
  void one_alone_is_refused() {
    assertThatThrownBy(() -> WayComparison.of(BACK))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "A comparison takes 2 to 12 lifts, not 1: give another, as in"
                + " compare(backSquat(lifter), frontSquat(lifter)).");
    assertThatThrownBy(() -> SQUATS.plot(JointId.HIP, JointId.KNEE))
        .hasMessage("A plot of several ways shows one joint: give one, as in .plot(HIP).");
  }
}
