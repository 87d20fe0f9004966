package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.language.Vocabulary;
import org.leverbook.lift.Hinge;
import org.leverbook.lift.OneArmRow;
import org.leverbook.lift.PullUp;
import org.leverbook.load.Barbell;
import org.leverbook.load.Cable;
import org.leverbook.load.NoLoad;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import tech.tablesaw.api.Table;

class ComparisonTest {

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private static final Position BENT = bent(60);

  private static final Position PADDED = BENT.on(Vocabulary.chestPad(Units.deg(30)));

  /** Tips forward by a centimetre or so. */
  private static final Position TIPPED =
      BENT.with(Cable.of(Units.kg(90), new Vector3D(2.0, 0.8, 0)));

  private static Position bent(double kilograms) {
    return Hinge.of(LIFTER)
        .holding(Barbell.of(Units.kg(kilograms)))
        .hipHeight(Units.cm(72))
        .start();
  }

  private static Comparison both() {
    return Comparison.of(BENT, PADDED).called("free", "on the pad");
  }

  @Test
  void each_column_holds_the_numbers_of_its_position_and_what_they_are_against_the_first() {
    Sheet sheet = both().moments(JointId.HIP, JointId.L5_S1);
    double free = BENT.moment(JointId.L5_S1).signed();
    double padded = PADDED.moment(JointId.L5_S1).signed();
    assertThat(sheet.cell(0, "joint")).isEqualTo("hip");
    assertThat(sheet.cell(0, "side")).isEqualTo("each");
    assertThat(sheet.cell(1, "free, moment")).isEqualTo(free);
    assertThat(sheet.cell(1, "on the pad, moment")).isEqualTo(padded);
    assertThat(sheet.cell(1, "on the pad, difference")).isEqualTo(padded - free);
    assertThat(sheet.cell(1, "on the pad, ratio")).isEqualTo(padded / free);
    // Summed by axis instead of by the main load's own arm: the same but for rounding.
    assertThat((Double) sheet.cell(1, "free, arm"))
        .isCloseTo(100 * BENT.moment(JointId.L5_S1).signedArm(), within(1e-9));
    assertThat(sheet.notes()).contains(Caution.TEXT);
  }

  @Test
  void positions_of_one_name_are_told_apart_by_what_differs() {
    assertThat(Comparison.of(BENT, PADDED).rows())
        .extracting(Comparison.Row::name)
        .containsExactly("hinge, start", "hinge, start, chest pad");
    assertThat(Comparison.of(BENT, bent(80), BENT).rows())
        .extracting(Comparison.Row::name)
        .containsExactly(
            "hinge, start, barbell 60.0 kg",
            "hinge, start, barbell 80.0 kg",
            "hinge, start, barbell 60.0 kg (2)");
  }

  @Test
  void as_given_it_says_when_the_loads_or_the_lifters_differ() {
    Position other =
        Hinge.of(LIFTER.longer(Part.THIGH, Units.percent(8)))
            .holding(Barbell.of(Units.kg(50)))
            .hipHeight(Units.cm(72))
            .start();
    assertThat(Comparison.of(BENT, other).called("a", "b").summary().notes())
        .contains("The loads differ. a: barbell 60.0 kg; b: barbell 50.0 kg.")
        .anyMatch(n -> n.startsWith("The lifters differ") && n.contains("thighs 8.0 % longer"));
    assertThat(both().summary().notes())
        .noneMatch(n -> n.contains("differ, ") || n.contains("ds differ."));
  }

  @Test
  void at_equal_load_all_hold_as_much_as_the_first_or_as_was_said() {
    Comparison given = Comparison.of(bent(60), bent(80));
    assertThat(given.atEqualLoad().rows().get(1).load()).isEqualTo("barbell 60.0 kg");
    assertThat(given.atEqualLoad(Units.kg(45)).rows())
        .extracting(Comparison.Row::load)
        .containsOnly("barbell 45.0 kg");
    // The posture stays that of the heavier bar.
    assertThat(given.atEqualLoad().rows().get(1).position().placement().pose())
        .isSameAs(given.rows().get(1).position().placement().pose());
    assertThat(given.atEqualLoad().notes())
        .contains("Postures stay as they were given while the loads change.");
  }

  @Test
  void at_equal_effort_each_limiter_gives_the_same_share_of_its_strength() {
    for (Comparison.Row row : both().atEqualEffort(Units.percent(70)).rows()) {
      // The load is found to a ten-thousandth; the effort follows it at most in proportion.
      assertThat(row.limiter().orElseThrow().effort().orElseThrow())
          .as(row.name())
          .isCloseTo(0.70, within(2e-4));
    }
    double first = BENT.limiter().effort().orElseThrow();
    assertThat(both().atEqualEffort().rows().get(1).limiter().orElseThrow().effort().orElseThrow())
        .isCloseTo(first, within(2e-4));
  }

  @Test
  void at_an_equal_share_of_the_largest_each_holds_that_share_of_its_own() {
    Comparison shared = both().atEqualShareOfLargest(Units.percent(70));
    Position[] positions = {BENT, PADDED};
    for (int i = 0; i < 2; i++) {
      double largest = positions[i].largest().kilograms().orElseThrow();
      double held = shared.rows().get(i).position().mainLoad().counted().orElseThrow();
      assertThat(held).isCloseTo(0.7 * largest, within(1e-9 * largest));
    }
  }

  @Test
  void a_position_that_is_not_held_says_why_and_keeps_what_is_known() {
    Comparison comparison = Comparison.of(BENT, TIPPED).called("free", "pulled");
    Sheet sheet = comparison.moments(JointId.HIP, JointId.SHOULDER);
    assertThat(sheet.cell(0, "pulled, moment")).isEqualTo("not known");
    assertThat(sheet.cell(0, "pulled, ratio")).isEqualTo("not known");
    assertThat(sheet.cell(1, "pulled, moment")).isEqualTo(TIPPED.moment(JointId.SHOULDER).signed());
    assertThat(sheet.notes()).anyMatch(n -> n.startsWith("pulled: Tips forward"));
    assertThat((String) comparison.summary().cell(1, "held")).startsWith("Tips forward");
    Table table = comparison.table();
    assertThat(
            table.where(table.stringColumn("position").isEqualTo("pulled")).stringColumn("reason"))
        .allMatch(reason -> reason.startsWith("Tips forward"));
    assertThat(comparison.compression().cell(0, "pulled, compression")).isEqualTo("not known");
  }

  @Test
  void what_cannot_have_such_a_load_stays_with_its_reason() {
    Position empty = Hinge.of(LIFTER).holding(new NoLoad()).hipHeight(Units.cm(72)).start();
    Comparison comparison = Comparison.of(BENT, empty).called("bar", "empty").atEqualLoad();
    assertThat(comparison.rows().get(1).position()).isNull();
    assertThat(comparison.rows().get(1).reason())
        .isEqualTo(
            "There is no load here that could grow: hold one, or wear one with"
                + " .with(beltWeight(kg(10))).");
    assertThat(comparison.text()).contains("not known");
    assertThat(Comparison.of(BENT, TIPPED).atEqualEffort(Units.percent(20)).rows().get(0).reason())
        .startsWith("Even without the load more is asked than that: ");
  }

  @Test
  void nothing_is_divided_by_nothing() {
    Comparison comparison =
        Comparison.of(OneArmRow.of(LIFTER).start(), PullUp.of(LIFTER).start(), BENT, TIPPED);
    for (Sheet sheet :
        new Sheet[] {
          comparison.moments(JointId.values()),
          comparison.spine(),
          comparison.compression(),
          comparison.reactions(),
          ComparisonTables.tidy(comparison),
          ComparisonTables.wide(comparison, ComparisonSheets.USUAL)
        }) {
      assertThat(sheet.csv()).doesNotContain("NaN").doesNotContain("Infinity");
    }
    // The toes carry nothing in a pull-up; a ratio to them is none.
    assertThat(Comparison.of(PullUp.of(LIFTER).start(), BENT).moments(JointId.BALL).text())
        .contains("not comparable");
  }

  @Test
  void sides_stand_apart_where_they_are_not_alike() {
    Position row = OneArmRow.of(LIFTER).start();
    Sheet sheet = Comparison.of(BENT, row).called("hinge", "row").moments(JointId.SHOULDER);
    assertThat(sheet.rows()).hasSize(2);
    assertThat(sheet.cell(0, "side")).isEqualTo("right");
    assertThat(sheet.cell(1, "side")).isEqualTo("left");
    assertThat(sheet.cell(1, "row, moment"))
        .isEqualTo(row.moment(JointId.SHOULDER, Side.LEFT).about("flexion"));
    assertThat(sheet.cell(1, "row, arm")).isEqualTo("none");
  }

  @Test
  void what_lies_behind_the_moments_stands_side_by_side_too() {
    Comparison both = both();
    assertThat(both.spine().rows()).hasSize(18);
    assertThat(both.compression().cell(0, "on the pad, compression"))
        .isEqualTo(PADDED.disc(JointId.L5_S1).compression());
    Sheet reactions = both.reactions();
    int pad =
        IntStream.range(0, reactions.rows().size())
            .filter(i -> reactions.cell(i, "support").equals("chest pad"))
            .findFirst()
            .orElseThrow();
    assertThat(reactions.cell(pad, "free")).isEqualTo("none");
    assertThat(reactions.cell(pad, "on the pad, difference"))
        .isEqualTo(reactions.cell(pad, "on the pad"));
    Sheet verdicts = both.verdicts();
    Sheet beside = BENT.verdict().beside(PADDED.verdict());
    assertThat(verdicts.rows()).hasSameSizeAs(beside.rows());
    assertThat(verdicts.rows().get(0).subList(0, 7)).isEqualTo(beside.rows().get(0).subList(0, 7));
  }

  @Test
  void tables_are_tidy_and_wide_with_units() {
    Table tidy = both().table();
    assertThat(tidy.rowCount()).isEqualTo(2 * Slot.ALL.size());
    assertThat(tidy.columnNames())
        .contains("moment (N·m)", "arm (cm)", "difference (N·m)", "ratio", "compression (N)");
    Table wide = both().wideTable(JointId.HIP);
    assertThat(wide.rowCount()).isEqualTo(2);
    assertThat(wide.doubleColumn("hip moment (N·m)").get(1))
        .isEqualTo(PADDED.moment(JointId.HIP).signed());
  }

  @Test
  void the_same_comparison_gives_the_same_table_each_time() {
    assertThat(ComparisonTables.tidy(both().atEqualEffort(Units.percent(60))).csv())
        .isEqualTo(ComparisonTables.tidy(both().atEqualEffort(Units.percent(60))).csv());
  }

  @Test
  void what_makes_no_comparison_is_refused_in_a_sentence() {
    assertThatThrownBy(() -> Comparison.of(BENT))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "A comparison takes 2 to 12 positions, not 1: give another, as in compare(bent,"
                + " bent.on(chestPad(deg(30)))).");
    Position[] twelve = new Position[12];
    java.util.Arrays.fill(twelve, BENT);
    assertThatThrownBy(() -> Comparison.of(BENT, twelve))
        .hasMessage(
            "A comparison takes 2 to 12 positions, not 13: leave some for a second comparison.");
    assertThatThrownBy(() -> both().called("a"))
        .hasMessage(
            "2 are compared, but .called(…) gives 1 names: give one for each, in their order.");
    assertThatThrownBy(() -> both().called("a", "a"))
        .hasMessage("Two are called \"a\": give each its own name.");
    assertThatThrownBy(() -> both().atEqualEffort(Units.percent(0)))
        .hasMessage("The effort of each limiter is 0 %, but must lie between 1 and 150 %.");
    assertThatThrownBy(() -> both().save("both.txt"))
        .hasMessage(
            "A comparison is saved as .csv (its table), .svg or .png (its picture), not as"
                + " \"both.txt\".");
    assertThatThrownBy(() -> Comparison.of(BENT, (Position) null))
        .hasMessage("The position is missing (null): give one, such as pull.start().");
  }
}
