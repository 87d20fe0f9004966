package org.leverbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.desk.Desk;

/** What a call takes, told while it is typed. A bar marks the cursor, brackets the parameter. */
class CallHintTest {

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

  private static Optional<CallHint> at(String marked) {
    String text = marked.replace("\\n", "\n");
    return desk.session().callAt(text.replace("|", ""), text.indexOf('|'));
  }

  private static String marked(CallHint hint, int form) {
    String line = hint.forms().get(form);
    return hint.marked(form)
        .map(
            m ->
                line.substring(0, m.from())
                    + "["
                    + line.substring(m.from(), m.to())
                    + "]"
                    + line.substring(m.to()))
        .orElse(line);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '>',
      ignoreLeadingAndTrailingWhitespace = true,
      quoteCharacter = '`',
      value = {
        "person(| > person([sex: MALE or FEMALE], mass, stature: length): person",
        "person(MALE, | > person(sex: MALE or FEMALE, [mass], stature: length): person",
        "person(MALE, kg(85), | > person(sex: MALE or FEMALE, mass, [stature: length]): person",
        "person(MALE, kg(|85), cm(178)) > kg([value: number]): mass",
        "hinge(lifter).hipHeight(| > hipHeight([height: length]): hinge",
        "hinge(lifter)\\n  .hipHeight(| > hipHeight([height: length]): hinge",
        "hinge(lifter).holding(barbell(| > barbell([mass]): barbell",
        "1 + 1; barbell(| > barbell([mass]): barbell",
        "at(cm(1), | > at(ahead: length, [up: length]): point",
        "at(cm(1), cm(2), | > at(ahead: length, up: length, [right: length]): point",
        "start.moment(| > moment([joint]): joint moment",
        "start.moment(KNEE, | > moment(joint, [side: LEFT or RIGHT or MIDLINE]): joint moment",
        "compare(start, pull.start(), | > compare(first: position, [others: position], …): comparison",
        "compare(pull, | > compare(first: lift, [others: lift], …): way comparison",
        "kg((1 + 2) * (3 + | > kg([value: number]): mass",
        "people(20, 1).statureBetween(| > statureBetween([from: length], to: length): drawn people",
        "var x = hinge(lifter);\\nx.kneeBend(| > kneeBend([bend: angle]): hinge",
        "new Lap(3, | > Lap(reps: whole number, [name: text])",
        "low(| > low([centimetres: number]): position",
        "lap.name().substring(| > substring([whole number]): text",
        "all.get(| > get([whole number]): position",
        "quit(| > quit()",
        "loadedBar(kg(20), kg(20), kg(10), | > loadedBar(bar: mass, [eachSide: mass], …): barbell"
      })
  void the_form_that_fits_comes_first_in_the_coachs_words(String place, String expected) {
    assertThat(at(place).map(hint -> marked(hint, 0))).contains(expected.strip());
  }

  @Test
  void a_lambda_is_shown_by_its_shape_and_what_is_inside_it_has_hints_of_its_own() {
    String sweep = "sweep(\"hip height\", cm(48), cm(72), 25, ";
    String form =
        "sweep(name: text, from: length, to: length, values: whole number, [position: length ->"
            + " position]): sweep";
    assertThat(marked(at(sweep + "|").get(), 0)).isEqualTo(form);
    assertThat(marked(at(sweep + "h -> |").get(), 0)).isEqualTo(form);
    assertThat(marked(at(sweep + "h -> pull.hipHeight(|").get(), 0))
        .isEqualTo("hipHeight([height: length]): hinge");
    assertThat(marked(at(sweep + "h -> pull.hipHeight(h).start()|").get(), 0)).isEqualTo(form);
    assertThat(
            at("grid(span(\"a\", cm(1), cm(2), 3), span(\"b\", kg(1), kg(2), 3), |").get().forms())
        .contains("grid(first: span, second: span, position: (length, mass) -> position): grid");
  }

  @Test
  void all_forms_are_told_those_first_that_take_what_is_there() {
    assertThat(at("hinge(lifter).holding(|").get().forms())
        .containsExactly("holding(load: barbell): hinge", "holding(nothing: no load): hinge");
    assertThat(at("hinge(lifter).holding(noLoad()|").get().parameter()).isZero();
    assertThat(at("partner(newton(200), |").get().forms()).hasSize(2);
    assertThat(at("sweep(start, |").get().forms()).isNotEmpty();
    assertThat(at("dumbbell(kg(20), |").get().forms().get(0))
        .isEqualTo("dumbbell(mass, side: LEFT or RIGHT or MIDLINE): hand weights");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '>',
      quoteCharacter = '`',
      value = {
        "person >",
        "person(MALE, kg(85), cm(178)) >",
        "photo(\"per >",
        "photo(\"a, b >",
        "// kg( >",
        "/* kg( >",
        "if ( >",
        "for (var p : >",
        "while (1 < >",
        "(1 + >",
        "int[] a = { >",
        "zzzz( >",
        "Position mine(Position >"
      })
  void where_nothing_is_called_there_is_no_hint(String text, String none) {
    assertThat(at(text + "|")).isEmpty();
  }

  @Test
  void a_comma_in_quotes_or_in_inner_brackets_is_not_counted() {
    assertThat(at("claim(\"a, b\", |").get().parameter()).isEqualTo(1);
    assertThat(at("compare(low(1), pull.at(percent(1)), |").get().parameter()).isEqualTo(2);
  }
}
