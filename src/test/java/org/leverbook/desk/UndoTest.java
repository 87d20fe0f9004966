package org.leverbook.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.display.OutputFolder;

/** What was typed can be taken back, listed and run again. */
class UndoTest {

  private final Typed typed = new Typed();

  @AfterEach
  void close() {
    typed.close();
  }

  @Test
  void a_new_variable_goes_and_a_replaced_one_has_its_earlier_value_again() {
    typed.works("var x = 1;");
    typed.works("var x = 2;");

    assertThat(typed.answer("undo()"))
        .isEqualTo("Taken back: input 2, var x = 2;\nx is as it was before.");
    assertThat(typed.answer("x")).isEqualTo("1");
    assertThat(typed.answer("undo()"))
        .isEqualTo(
            "Taken back: input 4, x\nIt had changed no variable of yours; save(…) leaves it out"
                + " now.");
    assertThat(typed.answer("undo()")).isEqualTo("Taken back: input 1, var x = 1;\nx is gone.");
    assertThat(typed.fails("x")).contains("x");
    assertThat(typed.answer("undo()")).isEqualTo("There is nothing left to take back.");
  }

  @Test
  void a_variable_of_another_type_an_assignment_and_a_method_come_back() {
    typed.works("var x = 1;\nint twice(int n) { return 2 * n; }");
    typed.works("var x = \"long\"; int twice(int n) { return n + n + x.length(); }");
    assertThat(typed.answer("twice(3)")).isEqualTo("10");
    typed.works("undo()");

    assertThat(typed.answer("undo()"))
        .isEqualTo(
            "Taken back: input 2, var x = \"long\"; int twice(int n) { return n + n + x.length …\n"
                + "twice() and x are as before.");
    assertThat(typed.answer("twice(3) + x")).isEqualTo("7");
    typed.works("x = 5;");
    typed.works("undo()");
    assertThat(typed.answer("x")).isEqualTo("1");
  }

  @Test
  void a_lifter_that_was_changed_by_a_method_of_the_user_comes_back() {
    typed.works("Person lifter = person(MALE, kg(85), cm(178));");
    typed.works("void grow() { lifter = lifter.longer(THIGH, percent(8)); }");
    typed.works("grow()");
    assertThat(typed.answer("lifter.text()")).contains("8.0 % longer");
    typed.works("undo()");
    typed.works("undo()");
    assertThat(typed.answer("lifter.text()")).doesNotContain("longer");
  }

  @Test
  void in_one_text_of_many_statements_the_statement_before_is_taken_back() {
    assertThat(typed.works("var a = 1;\nvar b = 2;\nundo()\na"))
        .containsExactly("Taken back: var b = 2;\nb is gone.", "1");
    assertThat(typed.fails("b")).contains("b");
  }

  @Test
  void a_line_that_fails_leaves_the_variable_it_would_have_replaced() {
    typed.works("var bar = barbell(kg(140));");
    typed.fails("var bar = barbell(kg(-3));");
    assertThat(typed.answer("bar.mass()")).isEqualTo("140.0");
    typed.fails("var other = barbell(kg(-3));");
    assertThat(typed.answer("mine()")).contains("bar ").doesNotContain("other");
  }

  @Test
  void files_that_were_written_are_told_to_stay(@TempDir Path folder) {
    OutputFolder.choose(folder);
    try {
      typed.works("var saved = kg(85);\nmine().save(\"mine.csv\")");
      assertThat(typed.answer("undo()"))
          .endsWith("saved is gone.\nFiles that it wrote stay: mine.csv.");
    } finally {
      OutputFolder.choose(Path.of(""));
    }
  }

  @Test
  void an_object_of_a_class_that_was_declared_anew_is_told_to_be_lost() {
    typed.works("class Plan { int sets = 3; }");
    typed.works("var plan = new Plan();");
    typed.works("class Plan { int sets = 4; int reps; }");
    assertThat(typed.answer("undo()")).contains("Plan");
    assertThat(typed.answer("new Plan().sets")).isEqualTo("3");
  }

  @Test
  void inputs_are_listed_with_numbers_and_what_came_of_them() {
    typed.works("var x = 2;");
    typed.fails("var y = nothing;");
    typed.works("x + 1\nx + 2");
    assertThat(typed.answer("inputs()"))
        .isEqualTo(
            """
            Inputs
            number  input             what came of it
                 1  var x = 2;        worked
                 2  var y = nothing;  failed
                 3  x + 1 …           worked
                 4  inputs()          running
            again(1) runs one again, undo() takes the last one back.""");
  }

  @Test
  void an_input_runs_again_by_its_number_and_what_follows_sees_it() {
    typed.works("var n = 1;");
    typed.works("n = n * 3;");
    assertThat(typed.works("again(2)\nn")).containsExactly("9");
    typed.works("again()");
    assertThat(typed.answer("n")).isEqualTo("27");
    typed.works("mine()");
    assertThat(typed.answer("again()")).isEqualTo("27");
    assertThat(typed.fails("again(40)"))
        .isEqualTo("There is no input 40 before this one: there are 1 to 7. inputs() lists them.");
    assertThat(typed.fails("again(0)")).isEqualTo("Inputs are counted from 1; 0 was asked for.");
  }

  @Test
  void an_input_that_fails_again_says_where() {
    typed.fails("kg(-1);\nperson(MALE, kg(-1), cm(178))");
    String message = typed.fails("again()");
    assertThat(message).startsWith("input 1, line 2: ");
  }

  @Test
  void own_variables_methods_and_classes_are_listed_with_their_values() {
    typed.works("var lifter = person(MALE, kg(85), cm(178));");
    typed.works("double part(Person who, double share) { return share; }");
    typed.works("record Pair(int a, int b) {}");
    typed.works("String none = null;");
    typed.works("new int[3]");
    String mine = typed.answer("mine()");
    assertThat(mine.lines().map(String::strip))
        .contains(
            "Pair                  record            record Pair(int a, int b) {}",
            "none                  variable  String  nothing (null)");
    assertThat(mine)
        .contains("lifter ", "Person  man, 85.0 kg, 178.0 cm")
        .contains("part(Person, double)  method    double")
        .doesNotContain("$");
  }
}
