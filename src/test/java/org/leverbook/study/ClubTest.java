package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.body.Links;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Training;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/** Lifters from a club's list. */
class ClubTest {

  @TempDir private Path folder;

  private static Club club(String... lines) {
    return Club.of(ClubFile.parse("club.csv", String.join("\n", lines)), MassUnit.AS_WRITTEN);
  }

  private static List<Object> reasons(Club club) {
    return club.rejected().rows().stream().map(row -> row.get(4)).toList();
  }

  @Test
  void the_sample_list_has_eight_lifters_and_nothing_to_complain_of() {
    Club club = Club.read("notebooks/club.csv");
    assertThat(club).hasSize(8);
    assertThat(club.notes()).isEmpty();
    assertThat(club.rejected().rows()).isEmpty();
    Person longThighs = club.named("lifter A");
    assertThat(Links.of(longThighs).thigh()).isCloseTo(0.455, within(1e-9));
    assertThat(longThighs.condition().training()).isEqualTo(Training.TRAINED);
    assertThat(club.longFor(Part.THIGH, Units.percent(90)).title())
        .isEqualTo("notebooks/club.csv, 2 lifters, thighs over the 90th percentile for stature");
  }

  @Test
  void pounds_inches_and_metres_are_read_as_their_headings_say() {
    Club club =
        club(
            "Name,Sex,Weight [lbs],Height (in),thighs (mm)", "A,M,187.4,70,430", "B,woman,130,65,");
    assertThat(club.get(0).kilograms()).isCloseTo(187.4 * 0.45359237, within(1e-9));
    assertThat(club.get(0).metres()).isCloseTo(1.778, within(1e-9));
    assertThat(Links.of(club.get(0)).thigh()).isCloseTo(0.430, within(1e-9));
    assertThat(club.get(1)).isEqualTo(Person.of(Sex.FEMALE, Units.lb(130), Units.cm(165.1)));
  }

  @Test
  void semicolons_or_tabs_with_a_decimal_comma_read_the_same_as_commas_with_a_point() {
    Club point = club("label,sex,mass (kg),stature (m)", "A,male,82.5,1.785");
    assertThat(club("label;sex;mass (kg);stature (m)", "A;male;82,5;1,785").get(0))
        .isEqualTo(point.get(0));
    assertThat(club("label\tsex\tmass (kg)\tstature (m)", "A\tmale\t82,5\t1,785").get(0))
        .isEqualTo(point.get(0));
    assertThat(club("\uFEFFlabel,sex,mass (kg),stature (m)", "A,male,\"82,5\",1.785").get(0))
        .isEqualTo(point.get(0));
    assertThat(club("sep=;", "# ours", "label;sex;mass (kg);stature (m)", "", "A;male;82.5;1,785"))
        .containsExactlyElementsOf(point);
  }

  @Test
  void a_decimal_comma_between_commas_keeps_its_row_out_and_says_what_to_change() {
    Club club =
        club(
            "label,sex,mass (kg),stature (cm)",
            "A,male,82,5,178",
            "B,male,82.5,178",
            "C,male,\"1,785\",178");
    assertThat(club).hasSize(1);
    assertThat(club.label(0)).isEqualTo("B");
    assertThat(reasons(club))
        .containsExactly(
            "The row has 5 cells, the header 4. Is a comma in it a decimal comma? Then separate the"
                + " columns by semicolons, or write decimal points.",
            "Does the comma part thousands, or is it a decimal comma? Write the number without it.");
  }

  @Test
  void bad_cells_are_told_by_row_and_column_and_the_good_rows_stay() {
    Club club =
        club(
            "# invented",
            "label,sex,mass (kg),stature (cm),age,training,thigh (cm)",
            "A,male,82,178,30,trained,43",
            "B,x,abc,178,30,trained,43",
            "C,male,82,,17,often,43",
            "D,male,82,178,30.5,2,90",
            "A,male,80,178,30,trained,43",
            "\"E,male,82,178",
            "F,female,60,165,,,");
    assertThat(club.stream().map(Person::kilograms)).containsExactly(82.0, 60.0);
    assertThat(club.rejected().rows().stream().map(row -> row.get(0) + " " + row.get(2)))
        .containsExactly(
            "4 sex",
            "4 mass (kg)",
            "5 stature (cm)",
            "5 training",
            "5 age",
            "6 age",
            "6 thigh (cm)",
            "7 label",
            "8 ");
    assertThat(reasons(club).get(1)).isEqualTo("\"abc\" is no number.");
    assertThat(reasons(club).get(7))
        .isEqualTo("Row 3 has this label already: give each lifter a label of their own.");
    assertThat(club.text())
        .contains("Of 7 rows 5 were kept out.", "Row 4, column sex: \"x\" is not known")
        .contains("6 more faults: .rejected() lists all.");
  }

  @Test
  void pounds_in_a_column_of_kilograms_are_asked_about() {
    Club asked =
        club(
            "label,sex,mass (kg),stature (cm)",
            "A,male,185,178",
            "B,male,201,183",
            "C,female,135,165",
            "D,female,310,165");
    String question =
        "club.csv: are the masses of the column \"mass (kg)\" pounds? Read as kilograms they are 2.2"
            + " times what people of these statures weigh (median of 4; survey's mean for stature"
            + " and sex). If so, write mass (lb) in the heading or add .inPounds(); if the heading"
            + " is right, add .inKilograms().";
    assertThat(asked.question()).contains(question);
    assertThat(asked.text()).isEqualTo(question);
    assertThatThrownBy(asked::size).isInstanceOf(Refused.class).hasMessage(question);
    assertThatThrownBy(() -> asked.named("A")).isInstanceOf(Refused.class).hasMessage(question);

    assertThat(asked.inPounds()).hasSize(4);
    assertThat(asked.inPounds().get(0).kilograms()).isCloseTo(83.9, within(0.1));
    assertThat(asked.inKilograms()).hasSize(3);
    assertThat(asked.inKilograms().get(0).kilograms()).isEqualTo(185);
  }

  @Test
  void kilograms_in_a_column_of_pounds_are_asked_about_too() {
    Club asked = club("sex,mass (lb),stature (cm)", "male,84,178", "male,92,183", "female,61,165");
    assertThat(asked.question().orElseThrow())
        .contains("are the masses of the column \"mass (lb)\" kilograms?", "add .inKilograms();");
    assertThat(asked.inKilograms().get(2).kilograms()).isEqualTo(61);
  }

  @Test
  void one_lifter_in_pounds_among_others_is_kept_out_and_asked_about() {
    Club club =
        club(
            "label,sex,mass (kg),stature (cm)",
            "A,male,84,178",
            "B,male,118,186",
            "C,female,140,166",
            "D,female,61,165");
    assertThat(club.question()).isEmpty();
    assertThat(club).hasSize(3);
    assertThat(reasons(club))
        .containsExactly(
            "140.0 kg at 166.0 cm is 2.0 times what people of this stature weigh: is it in pounds?"
                + " If it is right, add .inKilograms().");
    assertThat(club.inKilograms()).hasSize(4);
  }

  @Test
  void columns_that_are_not_known_are_named_and_a_slip_of_the_pen_is_guessed() {
    Club club =
        club("label,sex,mass (kg),stature (cm),thihg (cm),bench (kg)", "A,male,84,178,43,100");
    assertThat(club).hasSize(1);
    assertThat(club.notes())
        .contains("The column \"thihg (cm)\" is not known and was left out; did you mean thigh?")
        .anyMatch(
            n -> n.startsWith("The column \"bench (kg)\" is not known and was left out; known"));
  }

  @Test
  void a_header_that_cannot_be_used_is_refused_with_the_fix() {
    assertThatThrownBy(() -> club("label,sex,mass,stature (cm)", "A,male,84,178"))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "club.csv, column \"mass\": its unit is missing. Write one of kg, kgs, lb, lbs in the"
                + " heading, as in mass (kg).");
    assertThatThrownBy(() -> club("label,sex,mass (stone),stature (cm)", "A,male,13,178"))
        .hasMessageContaining("the unit \"stone\" is not known");
    assertThatThrownBy(() -> club("label,mass (kg),stature (cm)", "A,84,178"))
        .hasMessageStartingWith(
            "club.csv has no column for the sex; it has label, mass (kg), stature (cm).");
    assertThatThrownBy(() -> club("sex,mass (kg),stature (cm),height (in)", "m,84,178,70"))
        .hasMessage(
            "club.csv has two columns for the stature: \"stature (cm)\" and \"height (in)\". Leave"
                + " one out.");
  }

  @Test
  void a_list_without_anybody_is_refused() {
    assertThatThrownBy(() -> club(""))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("club.csv is empty: it needs a header line");
    assertThatThrownBy(() -> club("label,sex,mass (kg),stature (cm)"))
        .hasMessageContaining("a header but no rows below it");
    assertThatThrownBy(() -> club("label,sex,mass (kg),stature (cm)", "A,male,84,17.8"))
        .hasMessageStartingWith(
            "None of the 1 rows of club.csv can be used. Row 2, column stature (cm): The stature is"
                + " 17.8 cm, but must lie between 120 and 230 cm.");
    assertThatThrownBy(() -> Club.read("nobody.csv"))
        .hasMessageStartingWith("There is no list \"nobody.csv\" in ");
    Club one = club("label,sex,mass (kg),stature (cm)", "A,male,84,178");
    assertThatThrownBy(() -> one.statureBetween(Units.cm(180), Units.cm(190)))
        .isInstanceOf(Refused.class)
        .hasMessage("None of 1 lifters of club.csv fits: stature 180 cm to 190 cm.");
  }

  @Test
  void an_older_spreadsheets_letters_are_read() throws Exception {
    Path file = folder.resolve("alt.csv");
    Files.write(
        file,
        "label;sex;mass (kg);stature (cm)\r\nHeber Ä;m;82,5;178\r\n"
            .getBytes(Charset.forName("windows-1252")));
    assertThat(Club.read(file.toString()).label(0)).isEqualTo("Heber Ä");
  }

  @Test
  void the_trunk_follows_where_stature_shank_and_thigh_are_measured_and_that_is_told() {
    Club club =
        club(
            "label,sex,mass (kg),stature (cm),shank (cm),thigh (cm),trunk (cm),shoulder width (cm)",
            "A,male,84,178,43,43.5,50,40");
    Links links = Links.of(club.get(0));
    assertThat(links.stature()).isCloseTo(1.78, within(1e-9));
    assertThat(links.shank()).isCloseTo(0.43, within(1e-9));
    assertThat(links.thigh()).isCloseTo(0.435, within(1e-9));
    assertThat(links.shoulderHalfWidth()).isCloseTo(0.20, within(1e-9));
    assertThat(club.notes())
        .singleElement()
        .asString()
        .contains(
            "A, row 2: with this stature, shank and thigh the trunk has 56.",
            "50.0 cm were not used");
  }

  @Test
  void a_lifter_is_found_by_how_the_label_begins_and_a_slip_is_guessed() {
    Club club =
        club("label,sex,mass (kg),stature (cm)", "Lifter AB,m,84,178", "lifter ac,m,84,178");
    assertThat(club.named("lifter ab")).isSameAs(club.get(0));
    assertThatThrownBy(() -> club.named("lifter a"))
        .hasMessage(
            "club.csv has more than one lifter \"lifter a\" that can be used; did you mean Lifter AB"
                + " or lifter ac?");
    assertThatThrownBy(() -> club.named("lfter ab")).hasMessageContaining("did you mean Lifter AB");
    assertThatThrownBy(() -> club.named("somebody"))
        .hasMessageEndingWith("there are Lifter AB or lifter ac.");
  }
}
