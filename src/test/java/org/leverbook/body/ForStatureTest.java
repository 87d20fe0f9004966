package org.leverbook.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/** Long or short for one's stature. */
class ForStatureTest {

  private static final Lookup SURVEY =
      new Lookup(DataTable.read("body/population_anthropometry.csv"), "sex", "dimension");

  private static double spread(Sex sex, String dimension) {
    return SURVEY.row(sex.word(), dimension).number("sd");
  }

  private static double together(Sex sex, String one, String other) {
    return new Lookup(
                DataTable.read("body/population_correlation_" + sex.word() + ".csv"), "dimension")
            .row(one)
            .number(other)
        * spread(sex, one)
        * spread(sex, other);
  }

  /** By hand: a thigh is the height of the trochanter less that of the knee. */
  @ParameterizedTest
  @EnumSource(Sex.class)
  void thighs_at_a_stature_follow_from_three_printed_spreads_and_correlations(Sex sex) {
    String top = "trochanterionheight";
    String knee = "lateralfemoralepicondyleheight";
    double variance =
        together(sex, top, top) + together(sex, knee, knee) - 2 * together(sex, top, knee);
    double withStature = together(sex, top, "stature") - together(sex, knee, "stature");
    double ofStature = together(sex, "stature", "stature");
    ForStature thigh = ForStature.of(sex, Part.THIGH);
    // The usual link of the body differs from the survey's mean by its rounding, below 0.1 %.
    assertThat(thigh.spread() / Math.sqrt(variance - withStature * withStature / ofStature))
        .isCloseTo(1, within(1e-3));
    double slope = thigh.mean(1.8) - thigh.mean(1.7);
    assertThat(slope / (0.1 * withStature / ofStature)).isCloseTo(1, within(1e-3));
  }

  @ParameterizedTest
  @EnumSource(
      value = Part.class,
      mode = EnumSource.Mode.EXCLUDE,
      names = {"NECK"})
  void a_tenth_of_those_drawn_is_over_the_ninetieth_percentile_tall_or_not(Part part) {
    int people = 6_000;
    for (Sex sex : Sex.values()) {
      double[] over =
          IntStream.range(0, people)
              .mapToObj(i -> Population.person(sex, 31, i))
              .filter(p -> p.percentileForStature(part) > 90)
              .mapToDouble(Person::metres)
              .toArray();
      // Four standard errors of 6,000 draws.
      assertThat(over.length / (double) people).isCloseTo(0.1, within(0.0155));
      double mean = SURVEY.row(sex.word(), "stature").number("mean");
      // They are as tall as all others: four standard errors of some 600 people.
      assertThat(IntStream.range(0, over.length).mapToDouble(i -> over[i]).average().orElseThrow())
          .isCloseTo(mean, within(4 * spread(sex, "stature") / Math.sqrt(over.length)));
    }
  }

  @Test
  void thighs_eight_per_cent_longer_are_longer_than_those_of_nine_in_ten() {
    Person lifter = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
    assertThat(lifter.percentileForStature(Part.THIGH)).isBetween(45.0, 55.0);
    assertThat(lifter.longer(Part.THIGH, Units.percent(8)).percentileForStature(Part.THIGH))
        .isBetween(93.0, 95.0);
    assertThat(lifter.shorter(Part.THIGH, Units.percent(8)).percentileForStature(Part.THIGH))
        .isBetween(5.0, 7.0);
  }

  @Test
  void a_neck_has_no_percentile_because_the_survey_has_no_neck() {
    assertThatThrownBy(
            () ->
                Person.of(Sex.FEMALE, Units.kg(61), Units.cm(166)).percentileForStature(Part.NECK))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The survey's correlations hold no neck of its own: it is taken as a fixed share of"
                + " stature, so nobody's is long or short for the stature. Take another, such as THIGH.");
  }

  @Test
  void the_mass_that_goes_with_the_mean_stature_is_the_mean_mass() {
    for (Sex sex : Sex.values()) {
      double mean = SURVEY.row(sex.word(), "stature").number("mean");
      assertThat(Population.usualMass(sex, mean))
          .isCloseTo(SURVEY.row(sex.word(), "mass").number("mean"), within(1e-9));
    }
  }
}
