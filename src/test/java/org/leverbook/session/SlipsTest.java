package org.leverbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.language.Imports;
import org.leverbook.language.Vocabulary;

/** What a coach with a little code mistypes, and the whole sentence that answers. */
class SlipsTest {

  private static Session session;

  @BeforeAll
  static void open() {
    session = Session.open(new Preamble(Imports.SOURCE, List.of(Vocabulary.class)));
    Evaluation start =
        session.evaluate(
            """
            var lifter = person(MALE, kg(85), cm(178));
            var pull = hinge(lifter).holding(barbell(kg(140)));
            var load = 140;
            var masses = List.of(60, 80);
            double half(double x) { return x / 2; }
            """);
    assertThat(start.problem()).isEmpty();
  }

  @AfterAll
  static void close() {
    session.close();
  }

  /**
   * A slip of the table.
   *
   * @param typed what is typed
   * @param column where the caret stands
   * @param sentence what is said
   */
  record Slip(String typed, int column, String sentence) {
    @Override
    public String toString() {
      return typed;
    }
  }

  /** Reads pairs of lines: what is typed; then, indented, the column and the sentence. */
  static List<Slip> slips() throws IOException {
    List<Slip> slips = new ArrayList<>();
    try (InputStream in = SlipsTest.class.getResourceAsStream("slips.txt")) {
      String typed = "";
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
        if (line.startsWith("  ")) {
          String[] parts = line.strip().split(" ", 2);
          slips.add(new Slip(typed, Integer.parseInt(parts[0]), parts[1]));
        } else if (!line.isBlank() && !line.startsWith("//")) {
          typed = line;
        }
      }
    }
    return slips;
  }

  @ParameterizedTest
  @MethodSource("slips")
  void a_slip_is_answered_by_what_to_type_instead(Slip slip) {
    Evaluation evaluation = session.evaluate(slip.typed());

    assertThat(evaluation.problem()).as("a problem").isPresent();
    Problem problem = evaluation.problem().get();
    assertThat(problem.message()).isEqualTo(slip.sentence());
    assertThat(problem.column()).isEqualTo(slip.column());
    assertThat(problem.line()).isEqualTo(1);
  }

  @Test
  void the_table_holds_the_slips_of_many_a_lesson() throws IOException {
    assertThat(slips()).hasSizeGreaterThan(150).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1/2|1 / 2 divides whole numbers and drops the rest: it gives 0. Write 1.0 / 2 for decimals.",
        "kg(1/2)|1 / 2 divides whole numbers and drops the rest: it gives 0. Write 1.0 / 2 for decimals.",
        "2^3|^ is no power in Java: Math.pow(2, 3) is.",
        "2147483647 + 1|2147483647 + 1 is more than a whole number holds, so it comes out wrong: write"
            + " 2147483647.0 + 1.",
        "2000000 * 2000000|2000000 * 2000000 is more than a whole number holds, so it comes out wrong:"
            + " write 2000000.0 * 2000000.",
        "return 5|return means nothing outside a method: to see the value, write 5 alone."
      })
  void what_runs_but_surprises_is_noted(String text, String note) {
    Evaluation evaluation = session.evaluate(text);

    assertThat(evaluation.ok()).isTrue();
    assertThat(evaluation.notes()).containsExactly(note);
  }

  @ParameterizedTest
  @CsvSource({"4/2", "1/2.0", "\"1/2\"", "3 * 4", "1.5/2"})
  void what_comes_out_as_expected_is_not_noted(String text) {
    assertThat(session.evaluate(text).notes()).isEmpty();
  }
}
