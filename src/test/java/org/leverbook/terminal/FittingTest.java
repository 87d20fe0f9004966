package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Tables and sentences on terminals of different sizes. */
class FittingTest {

  private static String table(int rows) {
    return "Title of the table\n"
        + IntStream.range(0, rows)
            .mapToObj(i -> "row %02d   %s".formatted(i, "x".repeat(30)))
            .collect(Collectors.joining("\n"))
        + "\nA note.";
  }

  @Test
  void a_table_that_fits_is_left_alone() {
    assertThat(new Fitting(80, 24).fit(table(18))).isEqualTo(table(18));
  }

  @Test
  void a_long_table_keeps_its_beginning_its_last_rows_and_its_notes() {
    assertThat(new Fitting(80, 15).fit(table(40)).lines())
        .hasSize(1 + 11 + 1 + 1 + 1)
        .contains("Title of the table", "…", "A note.")
        .anyMatch(line -> line.startsWith("row 00"))
        .anyMatch(line -> line.startsWith("row 39"))
        .last()
        .isEqualTo("(cut to this terminal: 11 of 40 lines; a saved file holds everything)");
  }

  @Test
  void a_wide_table_is_cut_at_the_edge_and_says_so() {
    assertThat(new Fitting(20, 24).fit(table(3)).lines())
        .contains("row 00   xxxxxxxxxx…")
        .anyMatch(line -> line.startsWith("(cut to this"));
    assertThat(new Fitting(20, 24).fit(table(3))).contains("20 of 39");
  }

  @Test
  void a_sentence_is_broken_between_words() {
    assertThat(new Fitting(12, 24).fit("one two three four")).isEqualTo("one two\nthree four");
    assertThat(new Fitting(7, 24).fit("one two three")).isEqualTo("one two\nthree");
  }

  @Test
  void a_word_longer_than_the_terminal_is_left_to_it() {
    assertThat(new Fitting(5, 24).fit("abcdefghij k")).isEqualTo("abcdefghij k");
  }
}
