package org.leverbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.language.Imports;
import org.leverbook.language.Vocabulary;

/** Ways to go on. In the notation of these tests a bar marks the cursor. */
class CompletionTest {

  private static Session session;

  @BeforeAll
  static void open() {
    session = Session.open(new Preamble(Imports.SOURCE, List.of(Vocabulary.class)));
    session.evaluate("var lifter = person(MALE, kg(85), cm(178));");
  }

  @AfterAll
  static void close() {
    session.close();
  }

  private static List<Completion> at(String marked) {
    // A test table cannot hold a line end.
    String text = marked.replace("\\n", "\n");
    return session.completions(text.replace("|", ""), text.indexOf('|'));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '>',
      value = {
        "hinge(lifter).hol|> holding(",
        "hinge(lifter).kne|.start()> kneeBend(",
        "lifter.statureF|> statureFollows()",
        "leverM|> leverMachine(",
        "var pull = hin|> hinge(",
        "1 + 1; hinge(lifter).trunk|> trunkLean(",
        "var a = 1;\\nhinge(lifter)\\n  .hip|> hipHeight(",
        "hinge(lifter).holding(loadedB|> loadedBar(",
        "L5|> L5_S1",
        "lift|> liftOf( lifter lifters(",
        "lifter.getCl|> getClass()"
      })
  void a_word_begun_is_completed(String marked, String expected) {
    assertThat(at(marked)).extracting(Completion::text).containsExactly(expected.split(" "));
  }

  @Test
  void the_place_to_replace_begins_where_the_word_begins() {
    assertThat(at("1 + 1;\nhinge(lifter).hol|").get(0).from()).isEqualTo(21);
    assertThat(at("\"𝄞\" + lifter.statureF|").get(0).from()).isEqualTo(14);
  }

  @Test
  void after_a_dot_come_the_steps_of_the_value_each_once_and_not_what_every_object_can() {
    assertThat(at("hinge(lifter).|"))
        .extracting(Completion::text)
        .contains("holding(", "hipHeight(", "kneeBend(", "start()")
        .doesNotContain("notify()", "hashCode()")
        .doesNotHaveDuplicates();
  }

  @Test
  void a_short_list_tells_what_each_word_takes() {
    assertThat(at("hinge(lifter).hol|").get(0).signature())
        .isEqualTo("Hinge Hinge.holding(Barbell load) (and 1 more)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '>',
      value = {"zzzz|> 0", "\"quoted hin|> 0", "// hin|> 0", "hinge(lifter).zzz|> 0"})
  void where_nothing_fits_the_list_is_empty(String marked, int size) {
    assertThat(at(marked)).hasSize(size);
  }

  @ParameterizedTest
  @CsvSource({"-1", "999", "0"})
  void a_cursor_outside_the_text_does_no_harm(int cursor) {
    assertThat(session.completions("hin", cursor)).isNotNull();
    assertThat(session.documentation("hin", cursor, false)).isNotNull();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '>',
      value = {"hin|ge(lifter)", "hinge|(lifter)", "hinge(|", "var a = 1; hinge(|"})
  void documentation_of_the_word_at_the_cursor_is_its_signature(String marked) {
    int cursor = marked.indexOf('|');
    assertThat(session.documentation(marked.replace("|", ""), cursor, false))
        .containsExactly("Hinge Vocabulary.hinge(Person lifter)");
  }
}
