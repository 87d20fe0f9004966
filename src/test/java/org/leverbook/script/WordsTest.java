package org.leverbook.script;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.desk.Desk;
import org.leverbook.display.OutputFolder;
import org.leverbook.language.Help;
import org.leverbook.language.Imports;
import org.leverbook.language.Vocabulary;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Preamble;
import org.leverbook.session.Session;
import org.leverbook.session.Value;

/** The help texts know every word, and their examples work. */
class WordsTest {

  private static final Set<String> WORDS =
      Stream.concat(
              Arrays.stream(Vocabulary.class.getMethods())
                  .filter(m -> !m.getDeclaringClass().equals(Object.class))
                  .map(java.lang.reflect.Method::getName),
              Arrays.stream(Vocabulary.class.getFields()).map(java.lang.reflect.Field::getName))
          .collect(Collectors.toCollection(TreeSet::new));

  @Test
  void words_lists_every_word_and_no_other() {
    Set<String> listed =
        Vocabulary.words()
            .text()
            .lines()
            .filter(line -> line.matches(" {2}\\S.*"))
            .flatMap(line -> Arrays.stream(line.strip().split(": ")[0].split(" ")))
            .collect(Collectors.toCollection(TreeSet::new));

    assertThat(listed).isEqualTo(WORDS);
  }

  @Test
  void every_example_of_the_help_text_works_in_its_order(@TempDir Path folder) {
    OutputFolder.choose(folder);
    List<String> examples =
        WordExamples.lines().stream().filter(line -> !line.equals("quit()")).toList();
    try (Desk desk = Desk.open()) {
      for (String example : examples) {
        Evaluation evaluation = desk.evaluate(example, Value::text);
        assertThat(evaluation.problem()).as(example).isEmpty();
      }
    } finally {
      OutputFolder.choose(Path.of(""));
    }
    assertThat(examples).hasSizeGreaterThan(10);
  }

  @Test
  void help_about_a_lift_is_a_page_with_its_settings_its_source_and_a_picture() {
    var page = Vocabulary.help("backSquat");
    assertThat(page.text())
        .contains("Sit down and stand up", "stance width", "common practice, no source", ".depth(");
    assertThat(page.svg()).isPresent();
    assertThat(page.svg().get()).contains("Back squat, middle");
  }

  @Test
  void help_about_one_word_has_its_example_and_its_signature() {
    assertThat(Vocabulary.help("barbell").text())
        .isEqualTo(
            """
            barbell: a barbell with standard plates
                barbell(kg(140))
            barbell: the same bar lying elsewhere than in the hands
                barbell(kg(100)).on(Site.UPPER_BACK_HIGH)
            barbell: the same bar pulled at, with part of its weight still on the floor
                barbell(kg(140)).stillOnFloor(percent(40))
            barbell(Quantity<Mass> mass): Barbell""");
    assertThat(Vocabulary.help("barbell(").text()).isEqualTo(Vocabulary.help("barbell").text());
  }

  @Test
  void help_about_a_value_lists_what_can_be_asked_of_it() {
    Help help = Vocabulary.help(Vocabulary.barbell(Vocabulary.kg(140)));

    assertThat(help.text()).startsWith("A Barbell can be asked:").contains("  .mass()");
    assertThat(help.text()).doesNotContain("hashCode", "notify");
  }

  @Test
  void help_about_an_unknown_word_is_refused_with_where_to_look() {
    try (Session session = Session.open(new Preamble(Imports.SOURCE, List.of(Vocabulary.class)))) {
      assertThat(session.evaluate("help(\"deadlyft\")").problem().get().message())
          .isEqualTo(
              "There is no word or term \"deadlyft\" to explain. Nearest: deadlift. help() tells"
                  + " what there is, glossary() lists the terms.");
    }
  }

  @Test
  void help_fits_a_screen_and_leads_to_every_word_by_its_theme() {
    List<String> help = Vocabulary.help().text().lines().toList();
    // 80 columns and 24 lines, one of them for the next prompt; the caution takes two.
    assertThat(help).hasSizeLessThanOrEqualTo(22);
    assertThat(help.subList(0, help.size() - 1)).allSatisfy(l -> assertThat(l).hasSizeLessThan(81));
    String all = Vocabulary.words().text();
    String byTheme =
        help.stream()
            .filter(line -> line.matches(" {2}[a-z]+ .*") && !line.contains("("))
            .map(line -> Vocabulary.words(line.strip().split(" ")[0]).text())
            .collect(Collectors.joining("\n"));
    assertThat(all.lines().filter(line -> line.startsWith("  ")))
        .allSatisfy(line -> assertThat(byTheme).contains(line));
  }

  @Test
  void a_theme_that_is_not_there_is_refused_with_those_that_are() {
    assertThatThrownBy(() -> Vocabulary.words("cooking"))
        .hasMessageStartingWith("There is no theme \"cooking\"; there are people, loads, lifts, ");
  }

  @Test
  void help_knows_the_terms_of_the_trade_also_in_other_spellings() {
    assertThat(Vocabulary.help("Moment-Arms").text())
        .isEqualTo(
            "moment arm (also: lever arm, arm): The perpendicular distance from the joint to the"
                + " line of force. Twice the arm is twice the moment, with the same weight.\n"
                + "    see also: moment, effective arm, line of force");
    assertThat(Vocabulary.help("RIR").text()).startsWith("repetitions in reserve (also: RIR, ");
    // A word that is a term as well tells both.
    assertThat(Vocabulary.help("band").text())
        .contains("band(at(", "The term: band (also: elastic band)");
    assertThatThrownBy(() -> Vocabulary.help("mment arm"))
        .hasMessage(
            "There is no word or term \"mment arm\" to explain. Nearest: moment arm. help() tells"
                + " what there is, glossary() lists the terms.");
  }

  @Test
  void every_term_is_explained_in_whole_sentences_and_leads_to_terms_that_exist() {
    var terms = Vocabulary.glossary().terms();
    assertThat(terms).hasSizeGreaterThan(80);
    assertThat(terms)
        .allSatisfy(
            term -> {
              assertThat(term.meaning()).matches("[A-Z].*\\.");
              assertThat(term.see())
                  .as(term.name())
                  .isNotEmpty()
                  .doesNotContain(term.name())
                  .allSatisfy(other -> assertThat(Vocabulary.help(other).text()).isNotBlank());
            });
    assertThat(Vocabulary.glossary().text().lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThan(81));
  }
}
