package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.BentOverRow;
import org.leverbook.lift.Hinge;
import org.leverbook.lift.InvertedRow;
import org.leverbook.load.Barbell;
import org.leverbook.muscle.Effort;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.statics.Position;

/** How sure an answer is, and what moves it. */
class DoubtTest {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));
  private static final Hinge PULL = Hinge.of(LIFTER).holding(Barbell.of(kg(140))).hipHeight(cm(58));
  private static final Position START = PULL.start();

  /** The 95th of a hundred in a normal distribution, from any table of it. */
  private static final double Z = 1.6448536;

  /** A fixed posture, only the bar on it varies: the moment above the hips is a straight line. */
  private static Position held(double kilograms) {
    return START.without("bar").with(Barbell.of(kg(kilograms)));
  }

  private static double lowBack(double kilograms) {
    return held(kilograms).moment(JointId.L5_S1).size();
  }

  private static Doubt straight() {
    BiFunction<Person, Draw, Position> make =
        (who, draw) -> held(Si.kilograms(draw.around("bar", kg(140), kg(2))));
    return Doubt.of(LIFTER, make).only("bar").without("bar in the hand");
  }

  @Test
  void of_a_straight_line_the_band_is_that_of_the_bar_alone() {
    DoubtBand band = straight().band(JointId.L5_S1);
    double slope = lowBack(141) - lowBack(140);
    // One of 1,000 equal parts is 0.01 deviations wide at the 5 % point; the band ends within two.
    double part = 0.02 * 2 * slope;
    assertThat(band.plain()).isCloseTo(lowBack(140), within(1e-9));
    assertThat(band.low()).isCloseTo(lowBack(140 - 2 * Z), within(part));
    assertThat(band.high()).isCloseTo(lowBack(140 + 2 * Z), within(part));
    assertThat(band.median()).isCloseTo(band.plain(), within(part));
    assertThat(band.deviation()).isCloseTo(2 * slope, within(0.01 * 2 * slope));
    assertThat(band.held()).isEqualTo(1000);
  }

  @Test
  void the_band_reads_as_a_sentence_with_the_caution_below() {
    DoubtBand band = straight().band(JointId.L5_S1);
    assertThat(band.text())
        .startsWith("hinge, start: moment at L5/S1 539")
        .contains(" N·m (5–95 %: ")
        .contains("1,000 cases, all could be held.")
        .endsWith(Caution.TEXT);
    assertThat(band.sentence()).matches("539\\.0 N·m \\(5–95 %: \\d{3}\\.\\d to \\d{3}\\.\\d\\)");
  }

  @Test
  void the_order_is_that_of_the_partial_derivatives_and_so_are_the_shares() {
    // The bar weighs a + 2 b: b, off by 3, moves it three times as far as a, off by 2.
    Sensitivity found =
        Doubt.of(
                LIFTER,
                (who, draw) ->
                    held(
                        Si.kilograms(draw.around("bar a", kg(100), kg(2)))
                            + 2 * Si.kilograms(draw.around("bar b", kg(20), kg(3)))))
            .only("bar a", "bar b")
            .sensitivity(JointId.L5_S1);
    double slope = lowBack(141) - lowBack(140);
    assertThat(found.rows()).extracting(Sensitivity.Row::input).containsExactly("bar b", "bar a");
    assertThat(found.rows().get(0).swing()).isCloseTo(2 * Z * 6 * slope, within(1e-6 * slope));
    assertThat(found.rows().get(1).swing()).isCloseTo(2 * Z * 2 * slope, within(1e-6 * slope));
    assertThat(found.rows().get(0).from()).isEqualTo("−4.9 kg");
    // 36 : 4; two inputs of 1,000 cases go together by chance by about 0.03.
    assertThat(found.rows().get(0).share()).isCloseTo(0.9, within(0.02));
    assertThat(found.rows().get(1).share()).isCloseTo(0.1, within(0.02));
    assertThat(found.explained().orElseThrow()).isCloseTo(1, within(1e-9));
  }

  @Test
  void what_lies_within_limits_never_leaves_them() {
    DoubtBand band =
        Doubt.of(LIFTER, (who, draw) -> held(Si.kilograms(draw.within("bar", kg(140), kg(5)))))
            .only("bar")
            .without("bar in the hand")
            .band("bar", "kg", p -> p.loads().get(p.loads().size() - 1).mass());
    assertThat(band.low()).isCloseTo(135.5, within(0.02));
    assertThat(band.high()).isCloseTo(144.5, within(0.02));
  }

  @Test
  void the_same_seed_gives_the_same_band_on_any_number_of_processors() throws Exception {
    Doubt doubt = Doubt.of(PULL, Hinge::start).draws(100);
    DoubtBand here = doubt.band(JointId.HIP);
    ForkJoinPool alone = new ForkJoinPool(1);
    try {
      assertThat(alone.submit(() -> doubt.band(JointId.HIP)).get()).isEqualTo(here);
    } finally {
      alone.shutdown();
    }
    assertThat(doubt.seed(2).band(JointId.HIP).low()).isNotEqualTo(here.low());
  }

  @Test
  void body_mass_stays_whatever_segments_weigh() {
    DoubtBand band =
        Doubt.of(PULL, Hinge::start)
            .draws(100)
            .without("body mass")
            .band("mass", "kg", p -> p.body().tree().mass());
    assertThat(band.high() - band.low()).isLessThan(1e-9);
    assertThat(band.plain()).isCloseTo(85, within(1e-9));
  }

  @Test
  void stature_and_settings_stay_while_the_posture_is_found_anew() {
    Doubt doubt = Doubt.of(PULL, Hinge::start).draws(100).only("thigh length", "thigh mass");
    DoubtBand hips = doubt.band("hip height", "cm", p -> p.fact("hip height"));
    assertThat(hips.high() - hips.low()).isLessThan(1e-9);
    DoubtBand knees = doubt.band("knee bend", "°", p -> p.fact("knee bend"));
    assertThat(knees.high() - knees.low()).isGreaterThan(2);
  }

  @Test
  void the_plain_answer_lies_in_the_band_of_a_pull_a_squat_and_a_row() {
    BackSquat squat = BackSquat.of(LIFTER).holding(Barbell.of(kg(100)));
    BentOverRow row = BentOverRow.of(LIFTER).holding(Barbell.of(kg(60)));
    List<DoubtBand> bands =
        List.of(
            Doubt.of(PULL, Hinge::start).draws(150).band(JointId.HIP),
            Doubt.of(squat, BackSquat::finish).draws(150).band(JointId.KNEE, Side.LEFT),
            Doubt.of(row, BentOverRow::start).draws(150).band(JointId.L5_S1));
    for (DoubtBand band : bands) {
      assertThat(band.plain()).as(band.text()).isBetween(band.low(), band.high());
      assertThat(band.high() - band.low()).isGreaterThan(0.02 * band.plain());
    }
  }

  @Test
  void feet_stay_whole_where_the_ankle_lies_elsewhere_on_them() {
    Doubt doubt = Doubt.of(InvertedRow.of(LIFTER), InvertedRow::finish).draws(100).only("ankle");
    assertThat(doubt.band(JointId.L5_S1).held()).isEqualTo(100);
    Sensitivity ankle =
        Doubt.of(PULL, Hinge::start).draws(100).only("ankle").sensitivity(JointId.ANKLE);
    // 2.7 % of a foot of 27 cm under 225 kg.
    assertThat(ankle.rows().get(0).swing()).isGreaterThan(5);
  }

  @Test
  void cases_that_cannot_be_held_are_counted_and_told() {
    DoubtBand band =
        Doubt.of(
                LIFTER,
                (who, draw) -> {
                  double kilograms = Si.kilograms(draw.around("bar", kg(140), kg(2)));
                  if (kilograms > 142) {
                    throw new Refused("The rack gives way under " + kilograms + " kg.");
                  }
                  return held(kilograms);
                })
            .only("bar")
            .without("bar in the hand")
            .band(JointId.L5_S1);
    // Beyond one deviation lie 15.9 % of a normal distribution.
    assertThat(band.draws() - band.held()).isBetween(157, 161);
    assertThat(band.left()).hasSize(1);
    assertThat(band.text()).contains("could not be held and are left out").contains("The rack");
    assertThat(band.high()).isLessThan(lowBack(142));
  }

  @Test
  void with_hardly_a_case_that_holds_there_is_no_band() {
    assertThatThrownBy(
            () ->
                Doubt.of(
                        LIFTER,
                        (who, draw) -> {
                          if (Si.kilograms(draw.around("bar", kg(140), kg(2))) != 140) {
                            throw new Refused("Only 140 kg will do.");
                          }
                          return START;
                        })
                    .draws(100)
                    .band(JointId.HIP))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("Of 100 cases only 0 could be held")
        .hasMessageContaining("Only 140 kg will do.");
  }

  @Test
  void a_measured_thigh_is_as_sure_as_the_tape_and_the_trunk_gives() {
    Hinge pull = Hinge.of(LIFTER.measured(Part.THIGH, cm(44))).holding(Barbell.of(kg(100)));
    String inputs = Doubt.of(pull, Hinge::start).text();
    assertThat(inputs).contains("thigh length as measured").contains("shank length  ");
    assertThat(inputs).doesNotContain("thigh length  ").doesNotContain("trunk length");
    Hinge trunk = Hinge.of(LIFTER.measured(Part.TRUNK, cm(60))).holding(Barbell.of(kg(100)));
    assertThat(Doubt.of(trunk, Hinge::start).text())
        .contains("trunk length as measured")
        .doesNotContain("shank length");
    assertThat(Doubt.of(trunk, Hinge::start).draws(100).band(JointId.HIP).held()).isEqualTo(100);
  }

  @Test
  void strength_counts_where_a_largest_load_is_asked_for() {
    Sensitivity found =
        Doubt.of(PULL, Hinge::start)
            .draws(100)
            .only("strength", "bar mass")
            .sensitivity("largest load", "kg", p -> p.largest().kilograms().orElseThrow());
    assertThat(found.rows().get(0).input()).isIn("trunk strength", "hip strength");
    assertThat(found.rows().get(0).swing()).isGreaterThan(20);
    assertThat(found.text()).contains("share of variance").contains(Caution.TEXT);
  }

  @Test
  void muscles_count_where_a_muscle_is_asked_for() {
    Sensitivity found =
        Doubt.of(PULL, Hinge::start)
            .draws(100)
            .only("spinal erectors", "quads, greatest pull")
            .sensitivity(
                "erectors' pull",
                "N",
                p ->
                    p.effort().pulls().stream()
                        .filter(pull -> pull.strand().muscle().group().equals("spinal erectors"))
                        .mapToDouble(Effort.Pull::force)
                        .sum());
    assertThat(found.rows().get(0).input()).startsWith("spinal erectors");
    assertThat(found.rows().get(0).swing()).isGreaterThan(0.02 * found.band().plain());
  }

  @Test
  void the_table_names_every_input_with_its_source() {
    Doubt doubt = Doubt.of(PULL, Hinge::start);
    assertThat(doubt.table().rows())
        .allSatisfy(row -> assertThat((String) row.get(3)).isNotBlank())
        .extracting(row -> row.get(0))
        .doesNotHaveDuplicates()
        .contains("bar mass", "hip height", "thigh mass", "hip centre up", "forearm length");
    Sensitivity found = doubt.draws(150).sensitivity(JointId.L5_S1);
    assertThat(found.table().columnNames())
        .contains("answer at 5 % (N·m)", "swing (N·m)", "share of variance (%)");
    assertThat(found.text()).contains("With masses by Winter 2009").contains(Caution.TEXT);
    assertThat(found.rows()).isSortedAccordingTo((a, b) -> Double.compare(b.swing(), a.swing()));
  }

  @Test
  void bad_questions_are_answered_with_a_sentence() {
    Doubt doubt = Doubt.of(PULL, Hinge::start);
    refused(() -> doubt.draws(5), "Between 100 and 20,000 cases");
    refused(
        () -> doubt.only("spoon"), "No input is called \"spoon\"; there are head and neck mass");
    refused(() -> doubt.band(null, "kg", p -> 1), "name of the number");
    refused(() -> doubt.band("none", "kg", p -> Double.NaN), "The lambda gave no number");
    refused(
        () -> Doubt.of(LIFTER, (who, d) -> held(Si.kilograms(d.around("bar", kg(140), kg(-2))))),
        "is -2 kg; how far a value may be off is zero or more");
    refused(
        () ->
            Doubt.of(LIFTER, (who, d) -> held(Si.kilograms(d.around("thigh mass", kg(9), kg(2))))),
        "\"thigh mass\" varies anyway");
    refused(
        () -> Doubt.of(PULL, h -> h.start().without("floor")).band(JointId.HIP),
        "As it stands this cannot be held");
  }

  private static void refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable asked, String words) {
    assertThatThrownBy(asked).isInstanceOf(Refused.class).hasMessageContaining(words);
  }
}
