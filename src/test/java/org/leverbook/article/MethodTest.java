package org.leverbook.article;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTable;
import org.leverbook.body.Sex;
import org.leverbook.data.DataTable;
import org.leverbook.figure.Charts;
import org.leverbook.figure.PicturePage;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.statics.Tempo;
import org.leverbook.study.Claim;
import org.leverbook.study.Doubt;
import org.leverbook.study.DrawnPeople;
import org.leverbook.study.Sweep;

/** The method of an article tells what was really used, and nothing else. */
class MethodTest {

  private static final List<String> OF_A_BODY =
      List.of(
          "body/links_from_ansur.csv",
          "body/joint_centres.csv",
          "body/spine_levels.csv",
          "body/joint_rom.csv",
          "body/places.csv",
          "body/segments_de_leva_1996.csv",
          "strength/joint_capacity.csv");

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private static final Hinge PULL =
      Hinge.of(LIFTER).holding(Barbell.of(Units.kg(140))).hipHeight(Units.cm(58));

  private static final Position START = PULL.start();

  private static Method method(Article article) {
    return article.back().method();
  }

  /** The data files that a method names. */
  private static List<String> files(Method method) {
    return method.data().stream()
        .map(line -> line.replaceAll(".*\\(([a-z_]+/[a-z0-9_]+\\.csv).*", "$1"))
        .toList();
  }

  private static String told(Method method, String topic) {
    return method.paragraphs().stream()
        .filter(p -> p.topic().equals(topic))
        .map(Method.Paragraph::text)
        .collect(Collectors.joining());
  }

  @Test
  void a_bare_hinge_names_its_body_its_posture_its_bar_and_no_muscles() {
    Method method = method(Article.of("x").table(START.moments(), "Moments"));
    assertThat(files(method)).containsExactlyElementsOf(OF_A_BODY);
    assertThat(method.paragraphs().stream().map(Method.Paragraph::topic))
        .containsExactly("Lifter", "Posture", "Loads", "Supports", "Sums", "Assumed");
    assertThat(told(method, "Lifter"))
        .isEqualTo("Man, 85.0 kg, 178.0 cm, taken as 25 years old and untrained.");
    assertThat(told(method, "Posture"))
        .startsWith("Hinge, start: barbell 140.0 kg; hip height 58.0 cm, ");
    assertThat(told(method, "Supports")).isEqualTo("Both feet on the floor, friction 0.60.");
    assertThat(told(method, "Sums")).contains("Everything is held still.", "Wu et al. 2002, 2005");
    assertThat(told(method, "Assumed")).contains("Usual posture: common practice, no source.");
    assertThat(method.limits().get(0)).startsWith("Of these 7 data files 7 hold some numbers");
  }

  @Test
  void the_picture_of_a_position_tells_the_same_as_its_table() {
    Method ofTable = method(Article.of("x").table(START.moments(), "y"));
    assertThat(method(Article.of("x").figure(START.picture(), "y"))).isEqualTo(ofTable);
    assertThat(method(Article.of("x").figure(START.drawing().withReactions(), "y")))
        .isEqualTo(ofTable);
    assertThat(method(Article.of("x").figure(PicturePage.beside(START), "y"))).isEqualTo(ofTable);
  }

  @Test
  void muscles_are_named_where_a_table_or_a_picture_shows_them() {
    for (Article article :
        List.of(
            Article.of("x").table(START.muscles(), "Muscles"),
            Article.of("x").figure(START.drawing().withMuscles(), "Muscles"),
            Article.of("x").figure(Charts.spine(START), "Spine"),
            Article.of("x").table(START.verdict(), "Verdict"))) {
      Method method = method(article);
      assertThat(files(method)).contains("muscle/muscles.csv", "muscle/moment_arms.csv");
      assertThat(told(method, "Muscles")).contains("squared stresses");
    }
    assertThat(files(method(Article.of("x").table(START.discs(), "Discs"))))
        .contains("muscle/muscles.csv", "muscle/disc_lines.csv");
  }

  @Test
  void strengths_are_named_where_they_were_asked() {
    for (Article article :
        List.of(
            Article.of("x").table(START.strength(), "Strength"),
            Article.of("x")
                .text("At most {}.", START.largest().kilograms().orElseThrow())
                .using(START.largest()))) {
      assertThat(files(method(article))).contains("strength/torque_angle_lower.csv");
    }
  }

  @Test
  void a_sweep_tells_its_span_and_what_could_not_be_held() {
    Sweep low =
        Sweep.over("hip height", Units.cm(48), Units.cm(72), 9, h -> PULL.hipHeight(h).start());
    String asked = told(method(Article.of("x").figure(low.plot(JointId.HIP), "y")), "Questions");
    assertThat(asked)
        .startsWith(
            "Sweep against hip height: 9 values from 48 cm to 72 cm, of which 8 could be held. Not"
                + " held: A hip height of 48.0 cm would put the hips below the knees");
    assertThat(method(Article.of("x").figure(Charts.arms(low, JointId.HIP), "y")))
        .isEqualTo(method(Article.of("x").table(low, "y")));
  }

  @Test
  void who_moves_is_not_told_to_be_held_still() {
    var movement = PULL.moving(Tempo.smooth(Units.seconds(1.5)));
    Method method = method(Article.of("x").table(movement.at(Units.seconds(0.3)).moments(), "y"));
    assertThat(told(method, "Sums")).contains("The body moves").doesNotContain("held still");
  }

  @Test
  void drawn_people_tell_their_survey_and_their_seed() {
    DrawnPeople people = DrawnPeople.of(Sex.FEMALE, 5, 7);
    var answer =
        Claim.of("the hip carries over 100 N·m")
            .that(p -> p.moment(JointId.HIP).size() > 100)
            .over(people, who -> BackSquat.of(who).finish());
    Article article = Article.of("x").table(answer, "y");
    assertThat(told(method(article), "Questions"))
        .contains("tested on 5 people in 5 cases", "5 women");
    assertThat(files(method(article))).contains("body/population_anthropometry.csv");
    assertThat(article.back().versions()).endsWith("Drawn: 5 women, seed 7.");
    // How long it took is no result.
    assertThat(Tables.of(answer, 10).columns().stream().map(c -> c.name()))
        .doesNotContain("seconds");
  }

  @Test
  void doubt_tells_its_spreads_its_cases_and_its_seed() {
    Doubt doubt = Doubt.of(PULL, Hinge::start).draws(100).seed(3);
    Article article = Article.of("x").table(doubt, "y");
    assertThat(told(method(article), "Questions")).contains("100 cases, seed 3.");
    assertThat(files(method(article))).contains("body/spreads.csv");
    assertThat(article.back().versions()).contains("doubt, seed 3");
  }

  @Test
  void the_other_table_of_masses_is_named_in_its_place() {
    Person other = LIFTER.weighedBy(SegmentTable.WINTER_2009);
    Method method = method(Article.of("x").table(Hinge.of(other).start().moments(), "y"));
    assertThat(files(method))
        .contains("body/segments_winter_dempster.csv")
        .doesNotContain("body/segments_de_leva_1996.csv");
  }

  @Test
  void what_does_not_tell_what_it_was_made_of_is_admitted() {
    Sweep sweep =
        Sweep.over("hip height", Units.cm(54), Units.cm(66), 2, h -> PULL.hipHeight(h).start());
    Article article = Article.of("x").table(sweep.table(JointId.HIP), "y");
    assertThat(article.back().untracedSentence())
        .contains("What Table 1 was made of is not recorded in it.");
    assertThat(article.text()).contains("Name it by .using(…).");
    assertThat(files(method(article.using(sweep)))).containsExactlyElementsOf(OF_A_BODY);
  }

  @Test
  void what_is_named_by_using_counts_though_it_is_not_shown() {
    assertThat(told(method(Article.of("x").using(PULL)), "Questions"))
        .startsWith("Hinge: usual posture common practice, no source; set to hip height 58.0 cm");
  }

  @Test
  void people_can_be_named_and_what_is_no_value_among_others_changes_nothing() {
    Article article =
        Article.of("x").using(DrawnPeople.of(Sex.MALE, 3, 1)).using(List.of(PULL, "a text"));
    assertThat(told(method(article), "Questions"))
        .contains("3 men, seed 1. Drawn from the means", "Hinge: usual posture");
    assertThat(article.back().versions()).endsWith("Drawn: 3 men, seed 1.");
  }

  @Test
  void every_source_line_speaks_of_a_file_that_travels_and_says_what_its_head_says() {
    List<DataSource> all = DataSource.all();
    assertThat(all).hasSizeGreaterThan(20);
    for (DataSource source : all) {
      DataTable table = DataTable.read(source.file());
      // The survey is named in full at the head of its own file.
      String whole =
          table.sources()
              + " "
              + DataTable.read("body/population_anthropometry.csv").sources()
              + " "
              + table.rows().stream()
                  .map(
                      row ->
                          table.columns().stream().map(row::text).collect(Collectors.joining(" ")))
                  .collect(Collectors.joining(" "));
      for (String year : source.whose().replaceAll("[^0-9]+", " ").strip().split(" ")) {
        if (year.length() == 4) {
          assertThat(whole).as(source.file() + " names " + year).contains(year);
        }
      }
      for (String name : authors(source.whose())) {
        assertThat(whole.toLowerCase(java.util.Locale.ROOT))
            .as(source.file() + " names " + name)
            .contains(name.toLowerCase(java.util.Locale.ROOT));
      }
    }
  }

  /** Names before a year: capital letters, no words of ours. */
  private static List<String> authors(String whose) {
    return Arrays.stream(whose.split("[^\\p{L}]+"))
        .filter(word -> word.matches("\\p{Lu}\\p{Ll}+"))
        .filter(
            word ->
                !List.of("Table", "American", "Academy", "Orthopaedic", "Surgeons").contains(word))
        .toList();
  }
}
