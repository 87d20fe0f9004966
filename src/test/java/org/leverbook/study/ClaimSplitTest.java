package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.study.ClaimsTest.crowd;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.quantity.Si;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/** What separates holders from exceptions, where it is known beforehand. */
class ClaimSplitTest {

  private static final int PEOPLE = 400;

  private static double mass(Position p) {
    return Si.kilograms(p.body().person().mass());
  }

  private static boolean woman(Position p) {
    return p.body().person().sex() == Sex.FEMALE;
  }

  @Test
  void a_limit_on_one_input_is_found_again() {
    ClaimAnswer answer =
        Claim.of("at most 75 kg").that(p -> mass(p) <= 75).over(crowd(PEOPLE), ClaimsTest::start);

    ClaimSplit split = answer.splits().get(0);
    assertThat(split.inputs()).isEqualTo("body mass (kg)");
    assertThat(split.rule()).matches("body mass over 7[45](\\.\\d)? kg");
    assertThat(split.insideHolds()).isFalse();
    // The nearest masses on both sides of 75 kg leave the limit a kilogram of room.
    assertThat(split.accuracy()).isGreaterThan(0.97);
    assertThat(split.apart()).isTrue();
    assertThat(split.inside() + split.outside()).isEqualTo(PEOPLE);
    assertThat(answer.splits()).as("two inputs would not do better").hasSize(1);
  }

  @Test
  void a_corner_of_two_inputs_is_found_where_one_does_not_do() {
    ClaimAnswer answer =
        Claim.of("not both a woman and over 62 kg")
            .that(p -> !(woman(p) && mass(p) > 62))
            .over(crowd(PEOPLE), ClaimsTest::start);

    ClaimSplit one = answer.splits().get(0);
    ClaimSplit two = answer.splits().get(1);
    assertThat(one.balanced()).isLessThan(two.balanced() - 0.02);
    assertThat(two.rule()).matches("a woman and body mass over 6[0-3](\\.\\d)? kg");
    assertThat(two.balanced()).isGreaterThan(0.93);
  }

  @Test
  void a_limit_among_a_few_settings_lies_between_them() {
    ClaimAnswer answer =
        Claim.of("not both a woman and hips at 62 cm or more")
            .that(p -> !(woman(p) && p.fact("hip height") > 61))
            .over(
                crowd(60),
                List.of(new NamedLift<>("hinge", ClaimsTest::hinge)),
                NamedSetting.over(
                    Span.of("hip height", Units.cm(58), Units.cm(66), 3),
                    (l, h) -> l.hipHeight(h).start()));

    assertThat(answer.splits().get(1).rule()).isEqualTo("a woman and hip height over 60 cm");
    assertThat(answer.splits().get(1).balanced()).isEqualTo(1);
  }

  /** Of 18 inputs the best of coin tosses on 200 people reaches some 60 %, unseen about 50. */
  @Test
  void coin_tosses_are_told_as_not_separated() {
    ClaimAnswer answer =
        Claim.of("heads")
            .that(p -> new SplittableRandom(Double.doubleToLongBits(mass(p))).nextBoolean())
            .over(crowd(PEOPLE), ClaimsTest::start);

    assertThat(answer.splits()).noneMatch(ClaimSplit::good);
    assertThat(answer.text()).contains("No input separates");
  }

  @Test
  void a_handful_of_exceptions_is_not_explained() {
    double heaviest =
        crowd(100).stream().mapToDouble(who -> Si.kilograms(who.mass())).max().orElseThrow();
    ClaimAnswer answer =
        Claim.of("not the heaviest")
            .that(p -> mass(p) < heaviest)
            .over(crowd(100), ClaimsTest::start);

    assertThat(answer.splits()).isEmpty();
    assertThat(answer.text())
        .contains("99.0 % of 100 cases: 1 exception.")
        .contains("With 1 exception there is no telling what separates it.");
  }

  @Test
  void the_groups_by_the_splitting_input_add_up_to_all_cases() {
    ClaimAnswer answer =
        Claim.of("at most 75 kg").that(p -> mass(p) <= 75).over(crowd(PEOPLE), ClaimsTest::start);

    List<ClaimGroup> groups = answer.groups();
    assertThat(groups).hasSize(10);
    assertThat(groups.stream().mapToInt(ClaimGroup::tested).sum()).isEqualTo(PEOPLE);
    assertThat(groups.stream().mapToInt(ClaimGroup::holding).sum()).isEqualTo(answer.holding());
    assertThat(groups.get(0).share()).isEqualTo(1);
    assertThat(groups.get(9).share()).isZero();
  }

  @Test
  void every_case_is_a_row_of_the_table_and_of_the_file(@TempDir Path folder) throws Exception {
    List<Person> people = crowd(50);
    ClaimAnswer answer =
        Claim.of("over 60 kg, \"heavy\"")
            .margin("kg", p -> mass(p) - 60)
            .over(people, ClaimsTest::start);

    var table = answer.table();
    assertThat(table.rowCount()).isEqualTo(50);
    assertThat(table.columnNames())
        .startsWith("case", "person", "sex", "body mass (kg)", "stature (cm)")
        .endsWith("load (kg)", "holds", "margin (kg)", "reason");
    for (int i = 0; i < 50; i++) {
      double kilograms = Si.kilograms(people.get(i).mass());
      // Inputs are kept in four bytes.
      assertThat(table.doubleColumn("body mass (kg)").get(i))
          .isEqualTo(kilograms, within(1e-5 * kilograms));
      assertThat(table.doubleColumn("margin (kg)").get(i)).isEqualTo(kilograms - 60);
      assertThat(table.stringColumn("holds").get(i)).isEqualTo(kilograms > 60 ? "yes" : "no");
    }

    Path file = folder.resolve("cases.csv");
    answer.save(file.toString());
    List<String> lines = Files.readAllLines(file);
    assertThat(lines).hasSize(51);
    assertThat(lines.get(0)).isEqualTo(String.join(",", table.columnNames()) + ",note");
    assertThat(lines.get(1)).endsWith("\"Claim: over 60 kg, \"\"heavy\"\". " + Caution.TEXT + "\"");
    assertThat(lines.get(50)).startsWith("50,50,female,");
  }
}
