package org.leverbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.display.Display;
import org.leverbook.display.Preferences;

/** Answers are shown as their reader prefers; values stay what they are. */
class PreferencesTest {

  @AfterEach
  void putBack() {
    Preferences.choose(Preferences.USUAL);
  }

  @Test
  void in_pounds_sentences_tables_headings_and_refusals_have_pounds_and_inches() {
    try (Typed typed = new Typed()) {
      assertThat(typed.answer("preferences().pounds()"))
          .startsWith("masses and lengths: pounds and inches");
      typed.works("var pull = hinge(person(MALE, kg(85), cm(178))).holding(barbell(lb(315)));");
      assertThat(typed.answer("pull.hipHeight(cm(58)).start()"))
          .contains("man, 187.4 lb, 70.1 in", "barbell 315.0 lb", "hip height 22.8 in", "N·m")
          .doesNotContain(" kg", " cm");
      String moments = typed.answer("pull.start().moments()");
      assertThat(moments).contains("arm (in)", "moment (N·m)").doesNotContain("(cm)");
      assertThat(typed.fails("pull.hipHeight(cm(20)).start()"))
          .startsWith("A hip height of 7.9 in would put");
      // 1 in = 2.54 cm.
      double shown = Double.parseDouble(typed.answer("pull.start().moments().cell(0, \"arm\")"));
      typed.works("preferences().kilograms()");
      assertThat(typed.answer("pull.start().moments().cell(0, \"arm\")")).isEqualTo("" + shown);
      assertThat(typed.answer("pull.start().moments()")).contains("arm (cm)");
      assertThat(typed.answer("undo()"))
          .isEqualTo(
              "Taken back: input 9, pull.start().moments()\nIt had changed no variable of yours;"
                  + " save(…) leaves it out now.");
      typed.works("undo()");
      assertThat(typed.answer("undo()"))
          .isEqualTo(
              "Taken back: input 7, preferences().kilograms()\nAnswers and pictures look as"
                  + " before.");
      assertThat(typed.answer("people(10, 1).sizes(THIGH)"))
          .containsPattern("thigh +in +1[2-6]\\.");
    }
  }

  @Test
  void what_is_no_mass_or_length_stays() {
    Preferences.choose(Preferences.USUAL.with(Preferences.Measure.POUNDS));
    assertThat(Display.sentence("between 48.0 and 72 cm, 60 to 140 kg, 4.0 kg/m, 30 cm², 1,200 m"))
        .isEqualTo("between 18.9 and 28.3 in, 132.3 to 308.6 lb, 4.0 kg/m, 30 cm², 47244.1 in");
    assertThat(Display.sentence("339 N·m, 1.5 m/s, L5/S1, step 3, 20 kg, 5 mm, -2.5 cm"))
        .isEqualTo("339 N·m, 1.5 m/s, L5/S1, step 3, 44.1 lb, 0.2 in, -1.0 in");
  }

  @Test
  void digits_are_more_or_fewer_in_tables_and_refused_beyond_sense() {
    try (Typed typed = new Typed()) {
      typed.works("var pull = hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(140)));");
      typed.works("preferences().digits(2)");
      assertThat(typed.answer("pull.start().moments()")).containsPattern("\\d\\.\\d{3} ");
      assertThat(typed.fails("preferences().digits(9)"))
          .isEqualTo("Tables can show up to 6 places more or fewer than usual, not 9.");
      assertThat(typed.answer("preferences().usual()"))
          .isEqualTo(
              """
              masses and lengths: kilograms and centimetres   .pounds() .kilograms()
              digits in tables:   as usual   .digits(2)
              terminal colours:   for a dark background   .dark() .light() .plain()
              terminal pictures:  shown   .withPictures() .withoutPictures()
              Only what is shown changes: values, saved files and pictures stay in SI units. Forces and moments are shown in N and N·m always.""");
    }
  }

  @Test
  void a_shell_remembers_them_in_its_file_and_starts_as_usual_where_the_file_is_no_good(
      @TempDir Path folder) throws IOException {
    Path file = folder.resolve("preferences");
    try {
      RememberedPreferences.in(file);
      assertThat(Preferences.current()).isEqualTo(Preferences.USUAL);
      Preferences light = Preferences.USUAL.with(Preferences.Theme.LIGHT);
      Preferences.choose(light);
      Preferences.onChoice(null);
      Preferences.choose(Preferences.USUAL);
      RememberedPreferences.in(file);
      assertThat(Preferences.current()).isEqualTo(light);

      Files.write(file, new byte[] {(byte) 0xff, 0, 10});
      RememberedPreferences.in(file);
      assertThat(Preferences.current()).isEqualTo(Preferences.USUAL);
      RememberedPreferences.in(folder);
      Preferences.choose(light);
      assertThat(Preferences.current()).isEqualTo(light);
    } finally {
      Preferences.onChoice(null);
    }
  }

  @Test
  void a_choice_comes_back_out_of_its_lines_and_bad_lines_are_passed_over() {
    Preferences chosen =
        new Preferences(Preferences.Measure.POUNDS, 1, Preferences.Theme.LIGHT, false);
    assertThat(Preferences.ofLines(chosen.lines())).isEqualTo(chosen);
    assertThat(Preferences.ofLines("theme = pink\ndigits = 99\n\0\nmeasure = pounds"))
        .isEqualTo(Preferences.USUAL.with(Preferences.Measure.POUNDS));
  }
}
