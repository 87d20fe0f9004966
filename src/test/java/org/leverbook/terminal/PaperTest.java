package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Prints and the bar on one screen. */
class PaperTest {

  private VirtualScreen screen;
  private Paper paper;
  private PrintStream print;

  @BeforeEach
  void open() throws Exception {
    screen = new VirtualScreen("xterm-256color", 40, 6);
    paper = new Paper(screen.terminal());
    print = new PrintStream(paper, true, StandardCharsets.UTF_8);
  }

  @Test
  void a_print_wipes_the_bar_and_the_bar_comes_back_below() {
    paper.bar("[==   ] 40 %");
    assertThat(screen.seen()).isEqualTo("[==   ] 40 %");
    print.println("a line of the user");
    assertThat(screen.seen()).isEqualTo("a line of the user");
    paper.bar("[=== ] 60 %");
    assertThat(screen.seen()).isEqualTo("a line of the user\n[=== ] 60 %");
    paper.bar("");
    assertThat(screen.seen()).isEqualTo("a line of the user");
  }

  @Test
  void the_bar_waits_while_a_printed_line_is_unfinished() {
    print.print("half");
    paper.bar("[==   ] 40 %");
    assertThat(screen.seen()).isEqualTo("half");
    print.println(" and whole");
    paper.bar("[==   ] 40 %");
    assertThat(screen.seen()).isEqualTo("half and whole\n[==   ] 40 %");
  }

  @Test
  void an_answer_begins_a_line_after_an_unfinished_print() {
    print.print("half");
    paper.freshLine();
    print.println("answer");
    paper.freshLine();
    assertThat(screen.seen()).isEqualTo("half\nanswer");
  }

  @Test
  void a_bar_longer_than_the_window_stays_in_its_line() {
    paper.bar("=".repeat(100));
    assertThat(screen.seen()).isEqualTo("=".repeat(39));
  }

  @Test
  void what_forgotten_code_prints_while_a_line_is_typed_goes_above_it_in_whole_lines() {
    StringBuilder above = new StringBuilder();
    paper.whileTyping(() -> true, above::append);
    print.print("still ");
    assertThat(above).isEmpty();
    print.println("here");
    assertThat(above.toString()).isEqualTo("still here" + System.lineSeparator());
    assertThat(screen.seen()).isEmpty();
  }
}
