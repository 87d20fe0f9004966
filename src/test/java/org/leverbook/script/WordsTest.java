package org.leverbook.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.display.OutputFolder;
import org.leverbook.language.Help;
import org.leverbook.language.Imports;
import org.leverbook.language.Vocabulary;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Preamble;
import org.leverbook.session.Session;

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
  void help_lists_every_word_and_no_other() {
    Set<String> listed =
        Vocabulary.help()
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
        Vocabulary.help()
            .text()
            .lines()
            .filter(line -> line.matches(" {6}\\S.*"))
            .map(String::strip)
            .filter(line -> !line.equals("quit()"))
            .toList();
    try (Session session = Session.open(new Preamble(Imports.SOURCE, List.of(Vocabulary.class)))) {
      for (String example : examples) {
        Evaluation evaluation = session.evaluate(example);
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
          .isEqualTo("There is no word \"deadlyft\" to explain. help() lists the words there are.");
    }
  }
}
