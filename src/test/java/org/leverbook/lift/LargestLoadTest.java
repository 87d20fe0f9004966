package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Training;
import org.leverbook.data.DataTable;
import org.leverbook.display.Caution;
import org.leverbook.load.Barbell;
import org.leverbook.load.Worn;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Largest;
import org.leverbook.statics.Position;
import org.leverbook.strength.Demand;

/**
 * What a lifter can hold against published lifts. The estimate stands still where a lift moves, and
 * takes single joints' means; so it is compared with bands, and where it lies outside the published
 * value the test says so beside it.
 */
class LargestLoadTest {

  private static final Person MAN = Person.of(Sex.MALE, Units.kg(80), Units.cm(180));

  private static final Person WOMAN = Person.of(Sex.FEMALE, Units.kg(62), Units.cm(166));

  /** The root is found to a ten-thousandth; twice that for the slope of effort over load. */
  private static final double FOUND = 1e-3;

  private static double perBodyMass(Person lifter, Function<Person, Lift<?>> lift) {
    return lift.apply(lifter).largestWithStraps().kilograms() / lifter.kilograms();
  }

  private static double published(String lift, String sex, String group) {
    return DataTable.read("strength/strength_levels.csv")
        .only(
            lift,
            r ->
                r.is("kind", "ratio")
                    && r.is("item", lift)
                    && r.is("sex", sex)
                    && r.text("group").startsWith(group)
                    && r.is("age", "18-35"))
        .number("value");
  }

  @Test
  void at_the_largest_load_of_a_posture_its_limiter_is_at_its_limit() {
    Position start = Deadlift.of(MAN).holding(Barbell.of(Units.kg(100))).start();
    Largest largest = start.largest();
    Demand there = start.without("bar").with(largest.load().orElseThrow()).limiter();
    assertThat(there.effort().orElseThrow()).isCloseTo(1, within(FOUND));
    assertThat(there.what()).isEqualTo(largest.limiter().orElseThrow().what());
    assertThat(largest.text()).endsWith(Caution.TEXT).contains("limited by: L5/S1, extend");
  }

  @Test
  void what_is_asked_and_what_can_be_given_stand_in_one_table() {
    Position down = BackSquat.of(MAN).holding(Barbell.of(Units.kg(80))).finish();
    var table = down.strength();
    assertThat(table.cell(0, "effort")).isEqualTo(100 * down.limiter().effort().orElseThrow());
    assertThat(table.notes()).last().isEqualTo(Caution.TEXT);
    assertThat(table.rows())
        .anySatisfy(
            row -> {
              assertThat(row.get(0)).isEqualTo("hip");
              assertThat(row.get(6)).isEqualTo("not known");
              assertThat(row.get(5)).as("effort of what was not measured").isNull();
            });
  }

  @Test
  void what_no_support_holds_has_no_strength_told() {
    Position tips =
        BackSquat.of(MAN)
            .holding(Barbell.of(Units.kg(60)))
            .finish()
            .with(
                org.leverbook.load.DirectedForce.of(
                    "shove", Units.newton(600), org.leverbook.load.Direction.FORWARD));
    assertThatThrownBy(tips::strength)
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith(
            "What this asks of strength is not known, because the supports cannot hold it.");
  }

  @Test
  void a_squat_sticks_deep_and_a_trained_squatter_holds_more() {
    Map<Training, Double> squats = new EnumMap<>(Training.class);
    for (Training training : Training.values()) {
      LargestLoad squat = BackSquat.of(MAN.trained(training)).largest();
      assertThat(squat.sticking().orElseThrow().share()).isGreaterThan(0.9);
      squats.put(training, squat.kilograms() / MAN.kilograms());
    }
    // Untrained 1.0 and trained 1.6 (from memory, order of size); ours 1.03 and 1.80.
    assertThat(squats.get(Training.UNTRAINED))
        .isCloseTo(published("squat", "M", "healthy untrained"), within(0.25));
    assertThat(squats.get(Training.TRAINED))
        .isCloseTo(published("squat", "M", "trained two"), within(0.4));
    // The 90th of a hundred powerlifters lifts 2.83 (van den Hoek et al. 2024). Ours, 3.5, lies
    // above: the ratio of low backs and hips in national lifts is set on joints that grew too.
    assertThat(squats.get(Training.COMPETITIVE))
        .isCloseTo(3.47, within(0.1))
        .isGreaterThan(published("squat", "M", "drug-tested"));
  }

  @Test
  void a_flat_backed_deadlift_comes_out_too_light_for_the_untrained() {
    double ours = perBodyMass(MAN, Deadlift::of);
    // 1.25 is typical (from memory). A low back near its standing curve was measured at 72 % of
    // what it gives fully bent, with the hips excluded; lifters do bend theirs, and hold by
    // ligament and trunk pressure what is not counted here.
    assertThat(ours).isCloseTo(0.61, within(0.03));
    assertThat(ours).isLessThan(published("deadlift", "M", "healthy untrained"));
    assertThat(Deadlift.of(MAN).largest().sticking().orElseThrow().reason())
        .isEqualTo("L5/S1, extend");
  }

  @Test
  void a_bench_press_lies_within_the_general_population() {
    // Men of 20 to 29 on a machine: 10th centile 0.80, 90th 1.48 (from memory). Free, untrained,
    // 0.75 is typical (from memory); ours is 1.17, a hold and not a press.
    assertThat(perBodyMass(MAN, BenchPress::of)).isBetween(0.80, 1.48);
    // Women of 20 to 29 on a machine: 0.51 where "poor" starts, 1.00 where "superior" does.
    assertThat(perBodyMass(WOMAN, BenchPress::of)).isBetween(0.51, 1.00);
  }

  @Test
  void an_overhead_press_is_to_a_bench_press_as_published() {
    // Garcia-Ramos et al. 2019, seated: men 0.715, women 0.822.
    double men = perBodyMass(MAN, OverheadPress::of) / perBodyMass(MAN, BenchPress::of);
    double women = perBodyMass(WOMAN, OverheadPress::of) / perBodyMass(WOMAN, BenchPress::of);
    assertThat(men).isCloseTo(0.715, within(0.1));
    assertThat(women).isCloseTo(0.822, within(0.1));
  }

  @Test
  void bare_hands_give_out_before_a_trained_back_and_straps_help() {
    Person lifter = MAN.trained(Training.TRAINED);
    LargestLoad bare = SumoDeadlift.of(lifter).largest();
    LargestLoad strapped = SumoDeadlift.of(lifter).largestWithStraps();
    assertThat(bare.sticking().orElseThrow().reason()).isEqualTo("right grip, hold");
    assertThat(bare.kilograms()).isCloseTo(2 * 471 / 9.80665, within(1.0));
    assertThat(strapped.kilograms()).isGreaterThan(bare.kilograms());
  }

  @Test
  void a_belt_is_what_grows_in_a_pull_up() {
    assertThatThrownBy(() -> PullUp.of(MAN).largest())
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The pull-up has no load that could grow: hold one, or wear one with"
                + " .with(beltWeight(kg(10))).");
    LargestLoad belt =
        PullUp.of(MAN.trained(Training.TRAINED)).with(Worn.belt(Units.kg(10))).largestWithStraps();
    // Trained: 1.5 +- 0.34 of body mass, body included (Munoz-Lopez et al.).
    assertThat((MAN.kilograms() + belt.kilograms()) / MAN.kilograms()).isBetween(1.16, 1.84);
  }

  @Test
  void a_curl_is_limited_by_the_elbow_and_age_takes_from_it() {
    LargestLoad young = BarbellCurl.of(MAN).largest();
    LargestLoad old = BarbellCurl.of(MAN.aged(75)).largest();
    assertThat(young.sticking().orElseThrow().largest().orElseThrow().limiter().orElseThrow())
        .matches(d -> d.joint() == JointId.ELBOW && d.action().equals("flex"));
    assertThat(old.kilograms()).isLessThan(young.kilograms());
    assertThat(young.table().rows()).hasSize(21);
    assertThat(young.table().notes()).last().isEqualTo(Caution.TEXT);
  }

  @Test
  void a_leg_press_finds_its_sled_and_a_leg_extension_its_lever() {
    LargestLoad sled = LegPress.of(MAN).largest();
    assertThat(sled.sticking().orElseThrow().reason()).isEqualTo("right knee, extend");
    assertThat(sled.kilograms()).isBetween(150.0, 500.0);
    assertThat(LegExtension.of(MAN).largest().kilograms()).isBetween(20.0, 90.0);
  }
}
