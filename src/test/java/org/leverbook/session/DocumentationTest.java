package org.leverbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.desk.Desk;
import org.leverbook.language.Vocabulary;

/** Documentation of the word at the cursor, which a bar marks. */
class DocumentationTest {

  private static Desk desk;

  @BeforeAll
  static void open() {
    desk = Desk.open();
    assertThat(desk.evaluate(CompletionTest.MADE, value -> {}).problem()).isEmpty();
  }

  @AfterAll
  static void close() {
    desk.close();
  }

  private static List<String> at(String marked, boolean whole) {
    return desk.session().documentation(marked.replace("|", ""), marked.indexOf('|'), whole);
  }

  @Test
  void a_word_is_explained_by_its_signature_its_text_and_its_example() {
    assertThat(at("hin|ge(lifter)", true))
        .containsExactly(
            """
            hinge(Person lifter): Hinge
            A hip hinge of this lifter, as in
            hinge(lifter).holding(barbell(kg(140))).hipHeight(cm(58)).start().

              lifter  who lifts
              gives   the hinge, hands still empty""");
  }

  @Test
  void a_word_with_two_forms_is_explained_twice() {
    assertThat(at("dumbbell|(", true))
        .containsExactly(
            """
            dumbbell(Quantity<Mass> mass): HandWeights
            One dumbbell in both hands, as in dumbbell(kg(20)).

              mass     0 to 150 kg
              gives    the dumbbell
              refused  if the mass is missing or outside""",
            """
            dumbbell(Quantity<Mass> mass, Side side): HandWeights
            One dumbbell, as in dumbbell(kg(20), RIGHT).

              mass     0 to 150 kg
              side     LEFT or RIGHT
              gives    the dumbbell
              refused  if the mass is missing or outside, or the side is neither""");
  }

  @Test
  void a_long_text_is_folded_and_its_paragraphs_stay_apart() {
    String text = at("Hing|e", true).get(0);
    assertThat(text)
        .startsWith(
            """
            class Hinge
            The hip hinge with a bar in straight arms, from where it leaves the floor to
            standing.

            The coach says how low: hipHeight, kneeBend or trunkLean; the last one said
            """);
    assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
    assertThat(text).doesNotContain("{@", "<p>", "#");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiterString = "=>",
      value = {
        "pull.hipHe|ight(cm(58)) => Hinge.hipHeight(Quantity<Length> height): Hinge",
        "backSquat(lifter).dep|th( => With the thighs this far below level",
        "start.moment|( => The moment at a joint of one side.",
        "HI|P => HIP: JointId",
        "Site.CHES|T => Site.CHEST: Site",
        "lifter.mas|s() => Body mass",
        "lap.rep|s() => Lap.reps(): int",
        "pul|l => pull: Hinge",
        "low|( => low(double centimetres): Position",
        "new Hash|Map => HashMap",
        "Quan|tity => interface Quantity",
        "va|r => var: names a value, as in var pull = hinge(lifter).",
        "person(MALE, | => A lifter of usual proportions",
        "sweep(\"h\", cm(1), cm(2), 5, h -> pull.hipHei|ght(h) => Hinge.hipHeight(",
        "var y = hinge(lifter);y.knee|Bend => With the knees bent by this much.",
        "\"abc\".subs|tring(1) => String.substring(int beginIndex): String"
      })
  void words_steps_constants_types_and_variables_are_explained(String marked, String expected) {
    assertThat(String.join("\n", at(marked, true))).contains(expected.strip());
  }

  @Test
  void what_a_step_does_is_found_where_it_was_first_described() {
    // The lift itself says nothing of it; the interface that it shares with others does.
    assertThat(at("goodMorning(lifter).kneeBend|(", true).get(0)).contains("With the knees bent");
    assertThat(at("backSquat(lifter).start|(", true).get(0)).contains("Where the lift starts.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"hin|ge(lifter)", "hinge|(lifter)", "hinge(|", "var a = 1; hinge(|"})
  void without_its_text_the_signature_alone_is_told(String marked) {
    assertThat(at(marked, false)).containsExactly("hinge(Person lifter): Hinge");
  }

  @ParameterizedTest
  @ValueSource(strings = {"|", "zzzz|", "\"hin|ge\"", "// hin|ge", "1|", "1 + |"})
  void where_there_is_no_word_nothing_is_told(String marked) {
    assertThat(at(marked, true)).isEmpty();
  }

  @Test
  void every_word_has_a_text_with_an_example() {
    Set<String> words = new TreeSet<>();
    Arrays.stream(Vocabulary.class.getMethods())
        .filter(m -> m.getDeclaringClass() != Object.class)
        .forEach(m -> words.add(m.getName()));
    Arrays.stream(Vocabulary.class.getFields()).forEach(f -> words.add(f.getName()));
    assertThat(words).hasSizeGreaterThan(150);

    assertThat(words)
        .allSatisfy(
            word ->
                assertThat(String.join("\n", at(word + "|", true)).replaceAll("\\s+", " "))
                    .as(word)
                    .containsPattern(", as in .*\\b" + word + "\\b"));
  }

  @Test
  void every_form_of_every_word_has_a_first_sentence() {
    assertThat(Vocabulary.class.getMethods())
        .filteredOn(m -> m.getDeclaringClass() != Object.class)
        .allSatisfy(
            method ->
                assertThat(new Javadocs().of(method).map(Javadocs.Text::first))
                    .as(method.toString())
                    .hasValueSatisfying(first -> assertThat(first).endsWith(".")));
  }
}
