package org.leverbook.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;
import org.leverbook.quantity.Refused;

/** People drawn from the survey, against what the survey prints. */
class PopulationTest {

  private static final Lookup SURVEY =
      new Lookup(DataTable.read("body/population_anthropometry.csv"), "sex", "dimension");

  private static double[] of(List<Person> people, ToDoubleFunction<Person> what) {
    return people.stream().mapToDouble(what).toArray();
  }

  private static double mean(double[] values) {
    return IntStream.range(0, values.length).mapToDouble(i -> values[i]).average().orElseThrow();
  }

  /** The covariance. */
  private static double together(double[] one, double[] other) {
    double a = mean(one);
    double b = mean(other);
    return IntStream.range(0, one.length)
        .mapToDouble(i -> (one[i] - a) * (other[i] - b))
        .average()
        .orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(Sex.class)
  void stature_and_mass_spread_and_go_together_as_in_the_survey(Sex sex) {
    List<Person> people = Population.draw(sex, 4000, 5);
    var stature = SURVEY.row(sex.word(), "stature");
    var mass = SURVEY.row(sex.word(), "mass");
    double[] tall = of(people, Person::metres);
    double[] heavy = of(people, Person::kilograms);
    // Four standard errors of 4,000 draws.
    assertThat(mean(tall)).isCloseTo(stature.number("mean"), within(0.0045));
    assertThat(Math.sqrt(together(tall, tall))).isCloseTo(stature.number("sd"), within(0.0032));
    assertThat(mean(heavy)).isCloseTo(mass.number("mean"), within(0.95));
    double together =
        together(tall, heavy) / Math.sqrt(together(tall, tall) * together(heavy, heavy));
    assertThat(together).isCloseTo(mass.number("r_stature"), within(0.06));
  }

  @ParameterizedTest
  @EnumSource(Sex.class)
  void thighs_have_the_length_and_the_spread_of_the_survey(Sex sex) {
    List<Person> people = Population.draw(sex, 1500, 6);
    double[] thighs = of(people, p -> Links.of(p).thigh());
    double mean = sex == Sex.MALE ? 0.4143 : 0.3844;
    assertThat(mean(thighs)).isCloseTo(mean, within(0.004));
    // Trochanter less knee: two heights of about 5 cm spread that go together.
    assertThat(Math.sqrt(together(thighs, thighs))).isBetween(0.018, 0.032);
  }

  @Test
  void person_number_seven_of_a_seed_is_always_the_same() {
    Person alone = Population.person(Sex.FEMALE, 3, 7);
    assertThat(Population.draw(Sex.FEMALE, 20, 3).get(7)).isEqualTo(alone);
    assertThat(Population.person(Sex.FEMALE, 4, 7)).isNotEqualTo(alone);
  }

  @Test
  void no_people_is_refused() {
    assertThatThrownBy(() -> Population.draw(Sex.MALE, 0, 1))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("0 were asked");
  }
}
