package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leverbook.body.Links;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Population;
import org.leverbook.body.Sex;
import org.leverbook.body.Training;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.quantity.Units;
import tech.tablesaw.api.Table;

/** Groups of people drawn by wishes. */
class DrawnPeopleTest {

  private static final DrawnPeople LONG_THIGHS =
      DrawnPeople.of(200, 7).longFor(Part.THIGH, Units.percent(90));

  private static long women(List<Person> people) {
    return people.stream().filter(p -> p.sex() == Sex.FEMALE).count();
  }

  @Test
  void men_of_a_seed_are_those_of_the_survey_in_order() {
    assertThat(DrawnPeople.of(Sex.MALE, 20, 1)).isEqualTo(Population.draw(Sex.MALE, 20, 1));
    assertThat(DrawnPeople.of(Sex.FEMALE, 20, 1)).isEqualTo(Population.draw(Sex.FEMALE, 20, 1));
  }

  @Test
  void everyone_fits_what_was_wished_and_the_group_keeps_its_size() {
    assertThat(LONG_THIGHS).hasSize(200);
    assertThat(LONG_THIGHS).allMatch(p -> p.percentileForStature(Part.THIGH) > 90);
    assertThat(DrawnPeople.of(50, 7).shortFor(Part.TRUNK, Units.percent(5)))
        .hasSize(50)
        .allMatch(p -> p.percentileForStature(Part.TRUNK) < 5);
    assertThat(
            DrawnPeople.of(Sex.FEMALE, 50, 7)
                .statureBetween(Units.cm(170), Units.cm(175))
                .massBetween(Units.kg(60), Units.kg(70)))
        .allMatch(p -> p.metres() >= 1.70 && p.metres() <= 1.75)
        .allMatch(p -> p.kilograms() >= 60 && p.kilograms() <= 70);
  }

  @Test
  void who_fits_a_wish_from_the_start_stays_who_they_were() {
    DrawnPeople all = DrawnPeople.of(Sex.MALE, 300, 5);
    DrawnPeople tall = all.statureBetween(Units.cm(176), Units.cm(200));
    int same = 0;
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).metres() >= 1.76 && all.get(i).metres() <= 2) {
        assertThat(tall.get(i)).isEqualTo(all.get(i));
        same++;
      }
    }
    assertThat(same).isBetween(100, 200);
  }

  @Test
  void person_seven_is_the_same_in_a_small_group_and_a_large_one() {
    Person seven = LONG_THIGHS.get(7);
    assertThat(DrawnPeople.of(8, 7).longFor(Part.THIGH, Units.percent(90)).get(7)).isEqualTo(seven);
    assertThat(DrawnPeople.of(100_000, 7).longFor(Part.THIGH, Units.percent(90)).get(7))
        .isEqualTo(seven);
  }

  @Test
  void the_people_are_the_same_on_one_thread_and_on_four() throws Exception {
    List<Person> inOrder = IntStream.range(0, 200).mapToObj(LONG_THIGHS::get).toList();
    for (int threads : new int[] {1, 4}) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      try {
        assertThat(
                pool.submit(
                        () ->
                            DrawnPeople.of(200, 7)
                                .longFor(Part.THIGH, Units.percent(90))
                                .parallelStream()
                                .toList())
                    .get())
            .isEqualTo(inOrder);
      } finally {
        pool.shutdown();
      }
    }
  }

  @Test
  void the_share_of_women_is_met_exactly_also_among_those_who_fit() {
    assertThat(women(DrawnPeople.of(100, 1))).isEqualTo(50);
    assertThat(women(DrawnPeople.of(100, 1).women(Units.percent(29)))).isEqualTo(29);
    assertThat(women(DrawnPeople.of(100, 1).women(Units.percent(0)))).isZero();
    assertThat(women(DrawnPeople.of(100, 1).women(Units.percent(100)))).isEqualTo(100);
    // Rare among women, common among men.
    DrawnPeople tall = DrawnPeople.of(20, 1).statureBetween(Units.cm(178), Units.cm(230));
    assertThat(women(tall)).isEqualTo(10);
    assertThat(tall.notes().get(0))
        .matches(
            "Who fits: .* men drawn, .* women drawn; the share of women is kept among them\\.");
  }

  @Test
  void ages_and_training_change_strength_and_nothing_else() {
    DrawnPeople plain = DrawnPeople.of(Sex.MALE, 500, 3);
    DrawnPeople aged = plain.aged(18, 60).trained(Training.TRAINED);
    for (int i = 0; i < 500; i++) {
      assertThat(Links.of(aged.get(i))).isEqualTo(Links.of(plain.get(i)));
      assertThat(aged.get(i).kilograms()).isEqualTo(plain.get(i).kilograms());
    }
    List<Integer> years = aged.stream().map(p -> p.condition().years()).sorted().toList();
    assertThat(years.get(0)).isEqualTo(18);
    assertThat(years.get(499)).isEqualTo(60);
    double mean = years.stream().mapToInt(y -> y).average().orElseThrow();
    // Four standard errors of 500 ages spread evenly over 43 years (12.4 years each).
    assertThat(mean).isCloseTo(39, within(2.3));
    assertThat(aged.notes())
        .contains("Ages are drawn evenly (common practice, no source) and change strength only.");
    assertThat(aged).allMatch(p -> p.condition().training() == Training.TRAINED);
  }

  @Test
  void a_wish_about_age_is_met() {
    assertThat(
            DrawnPeople.of(30, 3).aged(18, 80).where("past sixty", p -> p.condition().years() > 60))
        .hasSize(30)
        .allMatch(p -> p.condition().years() > 60);
  }

  @ParameterizedTest
  @EnumSource(Sex.class)
  void percentiles_of_stature_are_those_the_survey_prints(Sex sex) {
    var survey =
        new Lookup(DataTable.read("body/population_anthropometry.csv"), "sex", "dimension")
            .row(sex.word(), "stature");
    var sizes = DrawnPeople.of(sex, 20_000, 9).sizes(Part.THIGH);
    assertThat(sizes.rows()).hasSize(3);
    // Drawn as normal where real people are nearly so; 4 standard errors of the 5th are 0.4 cm.
    assertThat((double) sizes.cell(1, "5th")).isCloseTo(100 * survey.number("p05"), within(0.9));
    assertThat((double) sizes.cell(1, "50th")).isCloseTo(100 * survey.number("p50"), within(0.5));
    assertThat((double) sizes.cell(1, "95th")).isCloseTo(100 * survey.number("p95"), within(0.9));
  }

  @Test
  void one_percentile_of_a_part_is_asked_alone() {
    DrawnPeople people = DrawnPeople.of(Sex.MALE, 1_001, 2);
    double median = Si.metres(people.percentile(Part.THIGH, Units.percent(50)));
    assertThat(people.stream().filter(p -> Links.of(p).thigh() < median - 1e-12)).hasSize(500);
    double longest = Si.metres(people.percentile(Part.THIGH, Units.percent(100)));
    assertThat(people).allMatch(p -> Links.of(p).thigh() <= longest + 1e-12);
  }

  @Test
  void a_million_people_cost_nothing_until_one_is_asked_for() {
    DrawnPeople million = DrawnPeople.of(1_000_000, 1);
    assertThat(million.get(999_999)).isEqualTo(Population.person(Sex.FEMALE, 1, 999_999));
    assertThat(million.text())
        .contains("500,000 men and 500,000 women, seed 1", "man 0", "woman 1", "999,995 more")
        .contains("Columns are percentiles of the first 500 people; lengths from joint to joint.")
        .contains("ANSUR II (Gordon et al. 2014)");
    assertThatThrownBy(million::table)
        .isInstanceOf(Refused.class)
        .hasMessageContaining("A table holds up to 100,000 people, but the group has 1,000,000");
  }

  @Test
  void nobody_who_fits_is_refused_with_how_many_were_drawn() {
    assertThatThrownBy(
            () -> DrawnPeople.of(Sex.MALE, 5, 1).where("taller than the door", p -> false))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "None of 1,000,000 men drawn fits: taller than the door. Ask for something less rare.");
  }

  @Test
  void where_the_condition_itself_was_refused_the_first_reason_is_told() {
    Casting.Wish wish =
        new Casting.Wish(
            "gets into the lift",
            p -> {
              throw new Refused("The pad is too low.");
            });
    // A shorter look than a group takes; a million refusals take half a minute.
    assertThatThrownBy(() -> Casting.open(1).with(wish).probe(Sex.FEMALE, true, 2_000))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "None of 2,000 women drawn fits: gets into the lift. The first could not be asked: The"
                + " pad is too low. Ask for something less rare, or for men alone.");
  }

  @Test
  void nearly_nobody_is_refused_and_so_is_more_drawing_than_would_end() {
    assertThatThrownBy(
            () -> DrawnPeople.of(Sex.FEMALE, 5, 1).statureBetween(Units.cm(194.5), Units.cm(230)))
        .isInstanceOf(Refused.class)
        .hasMessageMatching(
            "Only [1-9] of 1,000,000 women drawn fits?: stature 194.5 cm to 230 cm\\. Ask for"
                + " something less rare\\.");
    assertThatThrownBy(
            () -> DrawnPeople.of(Sex.MALE, 500_000, 1).longFor(Part.THIGH, Units.percent(99.9)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("million draws; at most 20 million are made. Ask for at most");
  }

  @Test
  void a_condition_that_breaks_is_told_with_its_name() {
    assertThatThrownBy(
            () ->
                DrawnPeople.of(5, 1)
                    .where(
                        "typed wrong",
                        p -> {
                          throw new IllegalStateException("no such thing");
                        }))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("The condition \"typed wrong\" failed for man, ")
        .hasMessageEndingWith(": Illegal state exception: no such thing.");
  }

  @Test
  void wishes_that_make_no_sense_are_refused_with_the_fix() {
    DrawnPeople people = DrawnPeople.of(5, 1);
    assertThatThrownBy(() -> DrawnPeople.of(0, 1)).hasMessageContaining("0 were asked");
    assertThatThrownBy(() -> DrawnPeople.of(Sex.MALE, 1_000_001, 1))
        .hasMessageContaining("1000001 were asked");
    assertThatThrownBy(() -> people.aged(60, 18)).hasMessageEndingWith("write aged(18, 60).");
    assertThatThrownBy(() -> people.aged(12, 18)).hasMessageContaining("12 years");
    assertThatThrownBy(() -> people.women(Units.percent(120))).hasMessageContaining("120 %");
    assertThatThrownBy(() -> people.longFor(Part.THIGH, Units.percent(100)))
        .hasMessage(
            "The percentile is 100 %, but must lie over 0 and under 100 %, as in percent(90).");
    assertThatThrownBy(() -> people.longFor(Part.NECK, Units.percent(90)))
        .hasMessageContaining("no neck of its own");
    assertThatThrownBy(() -> people.statureBetween(Units.cm(190), Units.cm(170)))
        .hasMessage(
            "The lowest stature (190 cm) is above the highest (170 cm): change them round.");
    assertThatThrownBy(() -> people.get(5))
        .hasMessage("There is no person 5: the group's numbers are 0 to 4.");
  }

  @Test
  void a_table_of_people_has_a_unit_in_each_heading_and_reads_back_as_the_same_people() {
    DrawnPeople people = DrawnPeople.of(40, 4).aged(20, 50);
    Table table = people.table();
    assertThat(table.columnNames())
        .startsWith("label", "sex", "mass (kg)", "stature (cm)", "age (years)", "training")
        .contains("thigh (cm)", "upper arm (cm)", "hip width (cm)");
    assertThat(table.rowCount()).isEqualTo(40);
    assertThat(table.doubleColumn("age (years)").get(3))
        .isEqualTo(people.get(3).condition().years());

    Club back = Club.of(ClubFile.parse("people.csv", people.sheet().csv()), MassUnit.AS_WRITTEN);
    assertThat(back).hasSize(40);
    assertThat(back.notes()).isEmpty();
    for (int i = 0; i < 40; i++) {
      Person one = people.get(i);
      assertThat(back.label(i)).isEqualTo(people.label(i));
      assertThat(back.get(i).condition()).isEqualTo(one.condition());
      // Files keep ten digits.
      assertThat(back.get(i).kilograms()).isCloseTo(one.kilograms(), within(1e-7));
      for (Part part : Part.values()) {
        assertThat(Links.of(back.get(i)).lengthOf(part))
            .isCloseTo(Links.of(one).lengthOf(part), within(1e-8));
      }
    }
  }
}
