package org.leverbook.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Training;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.display.Caution;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

class CapacityTest {

  private static final Person MAN = Person.of(Sex.MALE, Units.kg(80), Units.cm(180));

  private static final Person WOMAN = Person.of(Sex.FEMALE, Units.kg(60), Units.cm(165));

  private static double most(Person person, JointId joint, String action, double degrees) {
    return Capacity.of(person.body()).most(joint, action, Math.toRadians(degrees), 0).orElseThrow();
  }

  /** Classes of the pooled measurements; the angles in each class are our reading. */
  @ParameterizedTest
  @CsvSource({
    "extension, extend, mid-range, 65",
    "extension, extend, extended, 20",
    "extension, extend, flexed, 90",
    "flexion, flex, mid-range, 30",
    "flexion, flex, extended, 10",
    "flexion, flex, flexed, 75",
  })
  void knees_are_near_the_pooled_measurements(
      String measured, String action, String place, double degrees) {
    // Women's knee flexion was not pooled by class.
    for (Person person : measured.equals("extension") ? List.of(MAN, WOMAN) : List.of(MAN)) {
      DataRow row =
          DataTable.read("strength/torque_angle_lower_isometric.csv")
              .only(
                  place,
                  r ->
                      r.is("source", "SARABON2021")
                          && r.is("action", measured)
                          && r.is("sex", person == MAN ? "M" : "F")
                          && r.is("group", "adult healthy")
                          && r.text("angle_definition").endsWith(place));
      double ours = most(person, JointId.KNEE, action, degrees) / person.kilograms();
      // The intervals are those of a pooled mean; a remembered model may miss them by a fifth.
      assertThat(ours)
          .as(person + ", knee " + action + ", " + place)
          .isBetween(0.8 * row.number("p05_or_ci_low"), 1.25 * row.number("p95_or_ci_high"));
    }
  }

  /** Stobbe's employed adults, seated (from memory): our 80 kg man within their spread. */
  @Test
  void hips_knees_and_ankles_are_within_the_spread_of_employed_men() {
    assertThat(most(MAN, JointId.HIP, "extend", 80)).isBetween(94.0, 309.0);
    assertThat(most(MAN, JointId.KNEE, "extend", 60)).isBetween(84.0, 318.0);
    assertThat(most(MAN, JointId.KNEE, "flex", 45)).isBetween(58.0, 157.0);
    assertThat(most(MAN, JointId.ANKLE, "plantarflex", 0)).isBetween(69.0, 237.0);
  }

  /** The model falls with hip flexion; Stobbe's 5th percentile, 118 N·m at 70°, is above it. */
  @Test
  void hip_flexors_come_out_weaker_than_measured_when_bent() {
    assertThat(most(MAN, JointId.HIP, "flex", 70)).isCloseTo(80, within(3.0)).isLessThan(118);
  }

  /** Solianik et al. measured 207.8 N·m in ten untrained men, SD 38.1. */
  @Test
  void calves_come_out_weaker_than_measured_and_say_so() {
    Capacity capacity = Capacity.of(MAN.body());
    assertThat(most(MAN, JointId.ANKLE, "plantarflex", 25))
        .isCloseTo(134, within(1.0))
        .isLessThan(207.8 - 38.1);
    assertThat(capacity.strength(JointId.ANKLE, "plantarflex").orElseThrow().evidence().note())
        .contains("208");
  }

  /** K07 and K08 at any size: the rig's 72° is the whole lumbar range of the body. */
  @Test
  void a_low_back_is_stronger_the_more_it_is_bent() {
    Strength back = Capacity.of(MAN.body()).strength(JointId.L5_S1, "extend").orElseThrow();
    assertThat(Math.toDegrees(back.to() - back.from())).isCloseTo(75, within(0.5));
    double before = 0;
    for (double a = back.from(); a <= back.to(); a += 0.05) {
      assertThat(back.at(a)).isGreaterThan(before);
      before = back.at(a);
    }
    assertThat(back.at(0) / back.at(back.to())).isBetween(0.68, 0.78);
  }

  @Test
  void where_nothing_was_measured_nothing_is_claimed() {
    Capacity capacity = Capacity.of(MAN.body());
    assertThat(capacity.most(JointId.HIP, "rotate inward", 0, 0)).isEmpty();
    assertThat(capacity.most(JointId.T7_T8, "extend", 0, 0)).isEmpty();
    assertThat(capacity.most(JointId.ELBOW, "flex", 1, 1)).as("at speed").isEmpty();
    assertThat(capacity.most(JointId.KNEE, "extend", 1, 1)).isPresent();
    assertThatThrownBy(() -> capacity.curve(JointId.FOREARM))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "No strength against the angle was found for the forearm: take another joint, such as KNEE.");
  }

  @Test
  void faster_is_weaker_and_lengthening_is_stronger_or_alike() {
    Capacity capacity = Capacity.of(MAN.body());
    double still = capacity.most(JointId.HIP, "extend", 1, 0).orElseThrow();
    assertThat(capacity.most(JointId.HIP, "extend", 1, 1.578).orElseThrow() / still)
        .as("C4 of the model: three quarters")
        .isCloseTo(0.75, within(1e-9));
    assertThat(capacity.most(JointId.HIP, "extend", 1, 3.19).orElseThrow() / still)
        .as("C5 of the model: one half")
        .isCloseTo(0.5, within(1e-9));
    assertThat(capacity.most(JointId.HIP, "extend", 1, 50).orElseThrow()).isZero();
  }

  @ParameterizedTest
  @EnumSource(Training.class)
  void nobody_is_weaker_for_training_or_stronger_for_age(Training training) {
    for (Person person : List.of(MAN, WOMAN)) {
      Capacity now = Capacity.of(person.trained(training).body());
      for (Object[] joint :
          new Object[][] {
            {JointId.ELBOW, "flex"}, {JointId.L5_S1, "extend"}, {JointId.SHOULDER, "flex"}
          }) {
        JointId id = (JointId) joint[0];
        String action = (String) joint[1];
        double young = now.most(id, action, 1, 0).orElseThrow();
        assertThat(young).isGreaterThanOrEqualTo(most(person, id, action, Math.toDegrees(1)));
        double last = young;
        for (int years : new int[] {30, 50, 75}) {
          double aged =
              Capacity.of(person.trained(training).aged(years).body())
                  .most(id, action, 1, 0)
                  .orElseThrow();
          assertThat(aged).isLessThan(last);
          last = aged;
        }
        assertThat(last / young).as("what is left at 75").isCloseTo(0.715, within(1e-9));
      }
    }
  }

  @Test
  void published_ratios_of_the_trained_come_back() {
    assertThat(ratio(JointId.KNEE, "extend", Training.TRAINED)).isCloseTo(1.25, within(1e-9));
    assertThat(ratio(JointId.ELBOW, "extend", Training.TRAINED)).isCloseTo(1.73, within(1e-9));
    assertThat(ratio(JointId.SHOULDER, "abduct", Training.TRAINED)).isCloseTo(1.4, within(1e-9));
    assertThat(ratio(JointId.HIP, "extend", Training.COMPETITIVE)).isCloseTo(2.81, within(1e-9));
  }

  private static double ratio(JointId joint, String action, Training training) {
    return most(MAN.trained(training), joint, action, 50) / most(MAN, joint, action, 50);
  }

  /** Danneskiold-Samsøe et al.: men 1.5 to 2 times women in most muscle groups. */
  @Test
  void men_are_stronger_than_women_of_usual_build_as_published() {
    Person man = Person.of(Sex.MALE, Units.kg(75), Units.cm(175));
    Person woman = Person.of(Sex.FEMALE, Units.kg(60), Units.cm(163));
    for (Object[] joint :
        new Object[][] {
          {JointId.KNEE, "extend"},
          {JointId.ANKLE, "plantarflex"},
          {JointId.L5_S1, "extend"},
          {JointId.SHOULDER, "flex"},
          {JointId.ELBOW, "flex"},
          {JointId.WRIST, "flex"}
        }) {
      double ratio =
          most(man, (JointId) joint[0], (String) joint[1], 50)
              / most(woman, (JointId) joint[0], (String) joint[1], 50);
      assertThat(ratio).as(joint[0] + " " + joint[1]).isBetween(1.2, 2.1);
    }
  }

  @Test
  void an_age_or_level_outside_the_data_is_refused_with_the_range() {
    assertThatThrownBy(() -> MAN.aged(7))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The age is 7 years, but the published strengths are of people between 18 and 80.");
    assertThatThrownBy(() -> MAN.trained(0))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The training level is 0, but must be 1 (untrained), 2 (trained) or 3 (competitive).");
    assertThat(MAN.trained(3).aged(40).text())
        .startsWith("man, 80.0 kg, 180.0 cm, 40 years, competitive;");
  }

  @Test
  void every_row_names_its_source_and_whether_it_was_found() {
    String table = Capacity.of(MAN.body()).text();
    assertThat(table).endsWith(Caution.TEXT).contains("from memory").contains("found");
    assertThat(Capacity.of(MAN.body()).table().rows())
        .allSatisfy(
            row -> {
              assertThat(row.get(4).toString().toLowerCase(Locale.ROOT))
                  .matches("from memory|found|found, shape from memory");
              assertThat(row.get(5).toString()).isNotBlank();
            });
    assertThat(Capacity.of(WOMAN.body()).table().cell(0, "doubt").toString()).contains("doubtful");
  }
}
