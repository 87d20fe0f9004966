package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.body.JointId.HIP;
import static org.leverbook.body.JointId.KNEE;
import static org.leverbook.body.JointId.SHOULDER;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Person;
import org.leverbook.body.Population;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.statics.Position;

/** What a coach gets who tests a sentence on many people. */
class ClaimsTest {

  /** People number i of seed 7, men and women taking turns. */
  record Crowd(int count) {

    List<Person> people() {
      return new AbstractList<>() {
        @Override
        public Person get(int i) {
          return Population.person(i % 2 == 0 ? Sex.MALE : Sex.FEMALE, 7, i);
        }

        @Override
        public int size() {
          return count;
        }
      };
    }
  }

  static List<Person> crowd(int count) {
    return new Crowd(count).people();
  }

  static Hinge hinge(Person who) {
    return Hinge.of(who).holding(Barbell.of(kg(60)));
  }

  static Position start(Person who) {
    return hinge(who).start();
  }

  private static double hipOverShoulder(Position p) {
    return p.moment(HIP).size() - 9 * p.moment(SHOULDER).size();
  }

  @Test
  void how_often_it_holds_and_the_closest_and_worst_cases_are_those_of_a_plain_loop() {
    List<Person> people = crowd(60);
    int holding = 0;
    int closest = 0;
    int worst = 0;
    double[] margins = new double[60];
    for (int i = 0; i < 60; i++) {
      margins[i] = hipOverShoulder(start(people.get(i)));
      holding += margins[i] > 0 ? 1 : 0;
      closest = Math.abs(margins[i]) < Math.abs(margins[closest]) ? i : closest;
      worst = margins[i] < margins[worst] ? i : worst;
    }

    ClaimAnswer answer =
        Claim.of("the hip carries nine times what the shoulder does")
            .margin("N·m", ClaimsTest::hipOverShoulder)
            .over(people, ClaimsTest::start);

    assertThat(answer.cases()).isEqualTo(60);
    assertThat(answer.holding()).isEqualTo(holding);
    assertThat(answer.exceptions()).isEqualTo(60 - holding);
    assertThat(answer.closest().number()).isEqualTo(closest + 1);
    assertThat(answer.worst().number()).isEqualTo(worst + 1);
    assertThat(answer.worst().margin()).hasValue(margins[worst]);
    assertThat(answer.margins()).containsExactly(margins);
    // Made anew from the person's number, it is the same position to the last digit.
    assertThat(hipOverShoulder(answer.worst().position())).isEqualTo(margins[worst]);
    assertThat(answer.worst().person()).isEqualTo(people.get(worst));
  }

  @Test
  void every_person_meets_every_lift_in_every_setting() {
    ClaimAnswer answer =
        Claim.of("the hips are higher than 62 cm")
            .margin("cm", p -> p.fact("hip height") - 62)
            .over(
                crowd(30),
                List.of(
                    new NamedLift<>("light", ClaimsTest::hinge),
                    new NamedLift<>("heavy", who -> hinge(who).holding(Barbell.of(kg(100))))),
                NamedSetting.over(
                    Span.of("hip height", cm(58), cm(66), 3), (l, h) -> l.hipHeight(h).start()));

    assertThat(answer.cases()).isEqualTo(180);
    assertThat(answer.at(1).text()).contains("person 1 ", ", light, hip height 58.0 cm");
    assertThat(answer.at(6).text()).contains("person 1 ", ", heavy, hip height 66.0 cm");
    assertThat(answer.at(7).text()).contains("person 2 ", ", light, hip height 58.0 cm");
    // 62 cm itself is not higher than 62 cm.
    assertThat(answer.share()).isEqualTo(1 / 3.0, within(0.02));
    assertThat(answer.splits().get(0).inputs()).isEqualTo("hip height (cm)");
    assertThat(answer.splits().get(0).balanced()).isEqualTo(1);
  }

  @Test
  void lifts_of_several_kinds_are_given_down_to_their_positions() {
    ClaimAnswer answer =
        Claim.of("hips")
            .margin("N·m", p -> p.moment(HIP).size() - 60)
            .over(
                crowd(4),
                List.of(
                    new NamedLift<>("hinge", ClaimsTest::start),
                    new NamedLift<>("squat", who -> BackSquat.of(who).finish())));

    assertThat(answer.cases()).isEqualTo(8);
    assertThat(answer.at(4).text()).contains("person 2 ", ", squat: ");
    assertThat(answer.at(4).position().name()).startsWith("back squat");
    assertThat(answer.table().stringColumn("lift").asList()).containsOnly("hinge", "squat");
  }

  @Test
  void two_positions_of_one_person_can_be_compared() {
    Claim higher =
        Claim.of("higher hips ask less of the knees")
            .margin("N·m", (low, high) -> low.moment(KNEE).size() - high.moment(KNEE).size());
    List<Person> people = crowd(20);

    ClaimAnswer answer =
        higher.over(
            people,
            who -> hinge(who).kneeBend(deg(80)).start(),
            who -> hinge(who).kneeBend(deg(60)).start());

    ClaimCase worst = answer.worst();
    assertThat(worst.margin().orElseThrow())
        .isEqualTo(worst.position().moment(KNEE).size() - worst.second().moment(KNEE).size());
    assertThat(worst.position().fact("knee bend")).isEqualTo(80, within(1e-4));
    assertThat(worst.second().fact("knee bend")).isEqualTo(60, within(1e-4));

    ClaimAnswer named =
        higher.over(
            people,
            List.of(new NamedLift<>("hinge", ClaimsTest::hinge)),
            NamedSetting.of("low", l -> l.kneeBend(deg(80)).start()),
            NamedSetting.of("high", l -> l.kneeBend(deg(60)).start()));
    assertThat(named.margins()).containsExactly(answer.margins());
  }

  @Test
  void a_plain_yes_or_no_knows_exceptions_but_no_closest_case() {
    ClaimAnswer answer =
        Claim.of("the lifter weighs over 75 kg")
            .that(p -> Si.kilograms(p.body().person().mass()) > 75)
            .over(crowd(40), ClaimsTest::start);

    assertThat(answer.exception()).isPresent();
    assertThat(Si.kilograms(answer.exception().get().person().mass())).isLessThanOrEqualTo(75);
    assertThat(answer.text())
        .contains("Which cases are closest or worst is not known, because the test says only yes");
    org.assertj.core.api.Assertions.assertThatThrownBy(answer::closest)
        .isInstanceOf(Refused.class)
        .hasMessage(
            "Which cases are closest or worst is not known, because the test of \"the lifter"
                + " weighs over 75 kg\" says only yes or no. Give a margin, as in .margin(\"N·m\","
                + " p -> p.moment(HIP).size() - 200); .exception() is the first exception.");
  }

  @Test
  void the_numbers_are_the_same_on_one_processor_and_on_three() throws Exception {
    Claim claim =
        Claim.of("the hip carries nine times what the shoulder does")
            .margin("N·m", ClaimsTest::hipOverShoulder);
    List<String> texts = new ArrayList<>();
    List<double[]> margins = new ArrayList<>();
    for (int threads : new int[] {1, 3}) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      try {
        ClaimAnswer answer = pool.submit(() -> claim.over(crowd(80), ClaimsTest::start)).get();
        texts.add(answer.text());
        margins.add(answer.margins());
      } finally {
        pool.shutdown();
      }
    }
    assertThat(texts.get(0)).isEqualTo(texts.get(1));
    assertThat(margins.get(0)).containsExactly(margins.get(1));
  }

  @Test
  void the_answer_says_how_often_for_whom_not_how_long_and_bears_the_caution() {
    ClaimAnswer answer =
        Claim.of("the lifter weighs over 60 kg")
            .margin("kg", p -> Si.kilograms(p.body().person().mass()) - 60)
            .over(crowd(200), ClaimsTest::start);

    assertThat(answer.text())
        .startsWith("Claim: the lifter weighs over 60 kg\nHolds in ")
        .contains(" % of 200 cases: ", "exceptions.", "Middle margin: ", "Closest: case ")
        .contains("Worst: case ", "What separates best: body mass over ", "balanced accuracy")
        .doesNotContain("Took", " s.")
        .endsWith(Caution.TEXT);
  }

  @Test
  void a_share_never_reads_100_or_0_per_cent_where_it_is_not() {
    assertThat(ClaimText.percent(1000, 1000)).isEqualTo("100.0 %");
    assertThat(ClaimText.percent(99_999, 100_000)).isEqualTo("99.999 %");
    assertThat(ClaimText.percent(1, 100_000)).isEqualTo("0.001 %");
    assertThat(ClaimText.percent(0, 10)).isEqualTo("0.0 %");
    assertThat(ClaimText.percent(974, 1000)).isEqualTo("97.4 %");
  }

  @Test
  void claims_stand_side_by_side_in_one_table() {
    Claim heavy = Claim.of("heavy").margin("kg", p -> Si.kilograms(p.body().person().mass()) - 60);
    ClaimAnswer some = heavy.over(crowd(100), ClaimsTest::start);
    ClaimAnswer none = heavy.over(crowd(3), who -> hinge(who).hipHeight(cm(20)).start());

    var sheet = ClaimSheet.of(List.of(some, none));

    assertThat(sheet.cell(0, "claim")).isEqualTo("heavy");
    assertThat(sheet.cell(0, "holds")).isEqualTo(100 * some.share());
    assertThat(sheet.cell(0, "splitting input")).isEqualTo("body mass (kg)");
    assertThat(sheet.cell(1, "holds")).as("tested in no case").isNull();
    assertThat(sheet.csv()).contains(Caution.TEXT).doesNotContain("seconds");
  }
}
