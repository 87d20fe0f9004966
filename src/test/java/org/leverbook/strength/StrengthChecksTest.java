package org.leverbook.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.body.Condition;
import org.leverbook.body.Sex;
import org.leverbook.body.Training;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;

/** The check numbers of the strength tables, each read back through the code that uses them. */
class StrengthChecksTest {

  private static final Who MAN = who(Sex.MALE, 80, 1.80, 25);

  private static final Who WOMAN = who(Sex.FEMALE, 60, 1.65, 25);

  private static final Map<String, DoubleSupplier> ASKED = new LinkedHashMap<>();

  static {
    ASKED.put("K01", () -> limb("knee_extension", MAN, 60, 0));
    ASKED.put("K02", () -> limb("hip_extension", MAN, 90, 0));
    ASKED.put("K03", () -> limb("hip_extension", MAN, 30, 1.578));
    ASKED.put("K04", () -> limb("knee_extension", WOMAN, 60, 3.623));
    ASKED.put("K05", () -> limb("knee_extension", MAN, 60, -1));
    ASKED.put("K06", () -> limb("ankle_plantarflexion", MAN, 0, 0));
    ASKED.put("K07", () -> lumbar(72));
    ASKED.put("K08", () -> lumbar(0) / lumbar(72));
    ASKED.put("K09", () -> trained().trained("trunk", "extend", 72));
    ASKED.put("K10", () -> most("shoulder flex", 45) / most("shoulder flex", 0));
    ASKED.put(
        "K11", () -> atSample(Sex.FEMALE, "elbow flex", 60) / atSample(Sex.MALE, "elbow flex", 60));
    ASKED.put(
        "K12", () -> atSample(Sex.MALE, "wrist flex", 0) - atSample(Sex.MALE, "wrist extend", 0));
    ASKED.put("K13", () -> 83 * level("deadlift", "M", "90th percentile", "18-35"));
    ASKED.put(
        "K14", () -> level("seated military press", "M") / level("horizontal bench press", "M"));
    ASKED.put("K15", () -> 100 * (1 + 5 * formula("Epley", "").number("coef_b")));
    ASKED.put(
        "K16",
        () -> {
          DataRow row = formula("Brzycki", "");
          return 100 / (row.number("coef_a") - 5 * row.number("coef_b"));
        });
    ASKED.put("K17", () -> reynolds("barbell bench press", 100));
    ASKED.put("K18", () -> reynolds("plate-loaded leg press", 200));
    ASKED.put("K19", StrengthChecksTest::benchSpeed);
    ASKED.put("K20", StrengthChecksTest::squatSpeed);
  }

  static Stream<DataRow> checks() {
    return read("strength_checks.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void a_check_number_comes_back(DataRow check) {
    assertThat(ASKED.get(check.text("id")).getAsDouble())
        .as(check.text("check"))
        .isCloseTo(check.number("expected"), within(check.number("tolerance")));
  }

  @Test
  void all_twenty_are_asked() {
    assertThat(checks().map(r -> r.text("id")))
        .hasSize(20)
        .containsExactlyInAnyOrderElementsOf(ASKED.keySet());
  }

  /** Tolerance as the table of worked values states it. */
  @Test
  void the_worked_values_of_the_lower_limb_come_back() {
    List<DataRow> worked = read("strength_worked.csv");
    assertThat(worked).hasSize(12);
    for (DataRow row : worked) {
      Who who =
          who(
              row.is("sex", "M") ? Sex.MALE : Sex.FEMALE,
              row.number("mass_kg"),
              row.number("height_m"),
              row.is("age_group", "over65") ? 72 : 22);
      assertThat(
              new LowerLimb(row.text("action"), who)
                  .at(row.number("angle_rad"), row.number("velocity_rad_s")))
          .as(row.text("id"))
          .isCloseTo(row.number("torque_Nm"), within(0.05));
    }
  }

  private static Who who(Sex sex, double mass, double stature, int years) {
    return new Who(sex, mass, stature, new Condition(years, Training.UNTRAINED));
  }

  private static Who trained() {
    return new Who(Sex.MALE, 80, 1.8, new Condition(25, Training.TRAINED));
  }

  private static double limb(String action, Who who, double degrees, double speed) {
    return new LowerLimb(action, who).at(Math.toRadians(degrees), speed);
  }

  /** A person of the size that the samples are taken to have, so that scaling is one. */
  private static double atSample(Sex sex, String name, double degrees) {
    Map<String, Strength> strengths = new LinkedHashMap<>();
    boolean man = sex == Sex.MALE;
    ArmStrengths.into(strengths, who(sex, man ? 75 : 60, man ? 1.75 : 1.63, 25));
    return strengths.get(name).at(Math.toRadians(degrees));
  }

  private static double most(String name, double degrees) {
    return atSample(Sex.MALE, name, degrees);
  }

  private static double lumbar(double rig) {
    org.leverbook.body.Body body =
        org.leverbook.body.Person.of(
                Sex.MALE, org.leverbook.quantity.Units.kg(75), org.leverbook.quantity.Units.cm(175))
            .body();
    Strength extension =
        Capacity.of(body).strength(org.leverbook.body.JointId.L5_S1, "extend").orElseThrow();
    double range = extension.to() - extension.from();
    return extension.at(extension.from() + rig / 72 * range);
  }

  private static double level(String item, String sex, String statistic, String age) {
    return DataTable.read("strength/strength_levels.csv")
        .only(
            item,
            r ->
                r.is("kind", "ratio")
                    && r.is("item", item)
                    && r.is("sex", sex)
                    && r.is("statistic", statistic)
                    && r.is("age", age))
        .number("value");
  }

  private static double level(String item, String sex) {
    return DataTable.read("strength/strength_levels.csv")
        .only(item, r -> r.is("kind", "1RM") && r.is("item", item) && r.is("sex", sex))
        .number("value");
  }

  private static DataRow formula(String name, String exercise) {
    return DataTable.read("strength/force_velocity_effort.csv")
        .only(
            name,
            r -> r.is("kind", "rep_formula") && r.is("name", name) && r.is("exercise", exercise));
  }

  private static double reynolds(String exercise, double five) {
    DataRow row = formula("Reynolds 5RM", exercise);
    return row.number("coef_a") * five + row.number("coef_b");
  }

  private static double benchSpeed() {
    return DataTable.read("strength/force_velocity_effort.csv")
        .only(
            "bench press",
            r ->
                r.is("kind", "load_velocity")
                    && r.is("exercise", "bench press")
                    && r.is("velocity_m_s", "0.62"))
        .number("percent_1rm");
  }

  private static double squatSpeed() {
    DataRow row =
        DataTable.read("strength/force_velocity_effort.csv")
            .only(
                "squat",
                r -> r.is("kind", "load_velocity_formula") && r.is("exercise", "full back squat"));
    double v = 0.32;
    return row.number("coef_a") * v * v + row.number("coef_b") * v + row.number("coef_c");
  }

  private static List<DataRow> read(String name) {
    try {
      Path file = Path.of("src", "test", "resources", "checks", name);
      return DataTable.parse(name, Files.readString(file, StandardCharsets.UTF_8)).rows();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
