package org.leverbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What fails inside a row is told there as the shell tells it at the prompt. */
class FailureSentencesTest {

  private final Typed typed = new Typed();

  @BeforeEach
  void a_lifter_and_a_lift() {
    typed.works("var lifter = person(MALE, kg(85), cm(178));");
    typed.works("var pull = hinge(lifter).holding(barbell(kg(100))).hipHeight(cm(60));");
    typed.works("int[] plates = {20, 15};");
    typed.works("String label = null;");
  }

  @AfterEach
  void leave() {
    typed.close();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "100 / (plates[0] - 20) | A whole number is divided by zero.",
        "plates[2]              | There is no place 2 here: places count from 0, and the last one is 1.",
        "Integer.parseInt(\"6o\") | This is no number: \"6o\".",
        "label.length()         | A value is missing (null): label is empty where length() is asked of it.",
        "List.of(1).remove(0)   | This cannot be changed once it is made: what List.of(...) or .toList()"
            + " gives stays as it is; new ArrayList<>(...) makes a list that can be changed.",
      })
  void a_row_and_a_claim_give_the_sentence_of_the_prompt(String code, String sentence) {
    assertThat(typed.fails(code)).isEqualTo(sentence);
    String position = "{ int n = " + code + "; return pull.start(); }";
    assertThat(typed.answer("sweep(\"bar\", List.of(\"a\"), x -> " + position + ")"))
        .contains("The lambda failed here: " + sentence)
        .doesNotContain("Exception");
    assertThat(
            typed.answer(
                "claim(\"c\").that(p -> "
                    + code
                    + " > 0).over(List.of(lifter), w -> pull.start())"))
        .contains("The test failed: " + sentence + "\n")
        .doesNotContain("Exception");
    assertThat(
            typed.answer(
                "claim(\"c\").that(p -> true).over(List.of(lifter), w -> " + position + ")"))
        .contains("A lambda failed: " + sentence + "\n")
        .doesNotContain("Exception");
  }

  @Test
  void why_it_came_follows_in_the_same_line_of_the_row() {
    String failing =
        "new IllegalStateException(\"the film ends\", new RuntimeException(\"no light\"))";
    typed.works("int ends() { throw " + failing + "; }");
    assertThat(typed.fails("ends()"))
        .isEqualTo(
            "Illegal state exception: the film ends\nbecause of runtime exception: no light");
    assertThat(
            typed.answer("sweep(\"bar\", List.of(\"a\"), x -> ends() > 0 ? pull.start() : null)"))
        .contains(
            "The lambda failed here: Illegal state exception: the film ends because of runtime"
                + " exception: no light");
  }
}
