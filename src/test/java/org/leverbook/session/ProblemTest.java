package org.leverbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.language.Imports;
import org.leverbook.language.Vocabulary;

/** What went wrong, where, in words: whole sentences, exact places. */
class ProblemTest {

  private static final Session SESSION =
      Session.open(new Preamble(Imports.SOURCE, List.of(Vocabulary.class)));

  @AfterAll
  static void close() {
    SESSION.close();
  }

  private static Problem problem(String text) {
    return SESSION.evaluate(text).problem().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "hing(3)|1|There is no word \"hing\": did you mean hinge()?",
        "1 + barbel(kg(3)).hashCode()|5|There is no word \"barbel\": did you mean barbell()?",
        "barbell(kg(140)).moss()|18|A barbell has no \"moss\": did you mean mass()?",
        "person(MALE, kg(85), cm(178)).mass|31|\"mass\" needs its brackets: mass().",
        "\"a\".lenght()|5|A text has no \"lenght\": did you mean length()?",
        "barbell(140)|9|barbell(...) needs a mass such as kg(140), got 140.",
        "hinge(person(MALE, kg(85), cm(178))).holding(kg(140))|46|holding(...) needs a barbell such as"
            + " barbell(kg(140)), got kg(140), a mass. It also takes no load.",
        "at(cm(50))|1|at(...) also needs a length, as in at(cm(90), cm(150)).",
        "int n = \"a\";|9|n holds a whole number, but \"a\" is a text. With var it takes any kind: var n"
            + " = \"a\".",
        "xyzzy + 1|1|There is no word \"xyzzy\".",
        "kg(1) kg(2)|6|Two things stand side by side here with nothing between them: a dot, a comma, a"
            + " sign such as +, or a ; between two statements.",
        "int f(int x } {|13|This } does not close the ( opened in line 1, column 6."
      })
  void a_mistake_is_told_in_a_sentence_at_its_column(String text, int column, String message) {
    Problem problem = problem(text);

    assertThat(problem.message().replace("; lb()", "")).isEqualTo(message);
    assertThat(problem.line()).isEqualTo(1);
    assertThat(problem.column()).isEqualTo(column);
  }

  @Test
  void the_place_is_counted_in_the_text_that_was_given_not_in_the_unit() {
    Problem problem =
        problem("// one\r\nvar a = 1;\r\n\r\nint early() {\r\n  return hing(1);\r\n}\r\nearly()");

    // A method that lacks a word is kept until it is called, as a note says.
    assertThat(problem.message())
        .isEqualTo("early needs method hing(int), which is not there yet.");
    assertThat(problem.line()).isEqualTo(7);

    Problem second = problem("var b = 2; var c = hing(b); var d = 4;");
    assertThat(second.line()).isEqualTo(1);
    assertThat(second.column()).isEqualTo(20);
    assertThat(second.caret())
        .isEqualTo("var b = 2; var c = hing(b); var d = 4;\n                   ^");
  }

  @Test
  void tabs_before_the_place_stay_tabs_so_that_the_caret_stands_below() {
    assertThat(problem("\t\thing(1)").caret()).isEqualTo("\t\thing(1)\n\t\t^");
  }

  @Test
  void a_refusal_speaks_for_itself() {
    Problem problem = problem("var a = 1;\nbarbell(kg(-5))");

    assertThat(problem.kind()).isEqualTo(Problem.Kind.REFUSAL);
    assertThat(problem.message()).contains("-5").doesNotContain("Refused", "Exception");
    assertThat(problem.line()).isEqualTo(2);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 / 0|A whole number is divided by zero.",
        "Math.addExact(2147483647, 1)|Arithmetic exception: integer overflow",
        "Objects.checkIndex(3, 1)|There is no place 3 here: places count from 0, and the last one is 0.",
        "List.of().get(0)|There is no place 0 here: it is empty.",
        "Integer.parseInt(\"x\")|This is no number: \"x\".",
        "(Integer) (Object) \"x\"|A value is of another kind than the code says: it is a text, not a whole"
            + " number.",
        "new int[-1]|A length cannot be negative: -1.",
        "List.of(1).add(2)|This cannot be changed once it is made: what List.of(...) or .toList() gives stays"
            + " as it is; new ArrayList<>(...) makes a list that can be changed.",
        "Optional.empty().get()|There is nothing to take here: No value present.",
        "Files.readString(Path.of(\"no-such.csv\"))|There is no file no-such.csv.",
        "throw new IllegalStateException();|Illegal state exception.",
        "throw new java.io.IOException(\"gone\");|IO exception: gone"
      })
  void an_exception_is_told_in_words(String text, String message) {
    assertThat(problem(text).message()).isEqualTo(message);
  }

  /** Newer versions of Java also tell how long the text is. */
  @Test
  void a_place_behind_the_end_of_a_text_is_named() {
    assertThat(problem("\"abc\".charAt(7)").message())
        .startsWith("There is no place 7 here: places count from 0");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "s.length()|s is empty where length() is asked of it.",
        "new HashMap<String, String>().get(\"a\").length()|what get() gave is empty where length() is asked"
            + " of it."
      })
  void a_missing_value_is_named_as_the_user_names_it(String text, String message) {
    Problem problem = problem("String s = null;\n" + text);

    assertThat(problem.message()).isEqualTo("A value is missing (null): " + message);
    assertThat(problem.line()).isEqualTo(2);
  }

  @Test
  void causes_are_told_below() {
    assertThat(
            problem("throw new RuntimeException(\"a\", new IllegalStateException(\"b\"));")
                .message())
        .isEqualTo("Runtime exception: a\nbecause of illegal state exception: b");
  }

  @Test
  void an_exception_in_a_method_names_its_line_and_who_called_it() {
    Problem problem =
        problem("int f(int x) {\n  int y = x;\n  return 1 / y;\n}\nvar a = 1; f(0)\nvar b = 2;");

    assertThat(problem.line()).isEqualTo(3);
    assertThat(problem.column()).isEqualTo(3);
    assertThat(problem.source()).isEqualTo("  return 1 / y;");
    assertThat(problem.trail()).containsExactly("called from line 5");
  }

  @Test
  void an_exception_in_an_earlier_input_shows_that_line() {
    SESSION.evaluate("int f(int x) {\n  return 1 / x;\n}");

    Problem problem = problem("var a = 1;\nf(0)");

    assertThat(problem.line()).isEqualTo(2);
    assertThat(problem.trail()).containsExactly("in line 2 of an earlier input: return 1 / x;");
  }

  /** Another thread or the asking one may meet the bad value; either way the line is its own. */
  @Test
  void an_exception_in_a_parallel_task_names_the_line_of_its_lambda() {
    Problem problem =
        problem(
            "var n = IntStream.range(0, 100).parallel()\n    .map(i ->\n      1 / (i - 77))\n"
                + "    .sum();");

    assertThat(problem.message()).isEqualTo("A whole number is divided by zero.");
    assertThat(problem.line()).isEqualTo(3);
  }

  /** The library copies it: by a constructor that takes the cause, or by the one without any. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "new IllegalStateException(\"too heavy\")",
        "new java.util.concurrent.CompletionException(new IllegalStateException(\"too heavy\"))"
      })
  void an_exception_that_another_thread_met_is_told_once_with_its_line(String thrown) {
    Problem problem =
        problem(
            "java.util.concurrent.ForkJoinPool.commonPool()\n  .submit((Runnable) () -> {\n"
                + "    throw "
                + thrown
                + ";\n  })\n  .join();");

    assertThat(problem.message()).isEqualTo("Illegal state exception: too heavy");
    assertThat(problem.line()).isEqualTo(3);
  }

  @Test
  void a_users_own_exception_from_another_thread_is_told_once() {
    Problem problem =
        problem(
            "class Dropped extends RuntimeException {\n"
                + "  public String toString() { return \"the bar fell\"; }\n}\n"
                + "java.util.concurrent.ForkJoinPool.commonPool()\n"
                + "  .submit((Runnable) () -> { throw new Dropped(); }).join();");

    assertThat(problem.message()).isEqualTo("Dropped exception.");
    assertThat(problem.line()).isEqualTo(5);
  }

  @Test
  void an_exception_with_a_cause_of_its_own_kind_but_other_words_keeps_both() {
    Problem problem =
        problem(
            "throw new IllegalStateException(\"no lift\",\n"
                + "  new IllegalStateException(\"no bar\"));");

    assertThat(problem.message())
        .isEqualTo("Illegal state exception: no lift\nbecause of illegal state exception: no bar");
    assertThat(problem.line()).isEqualTo(1);
  }

  @Test
  void a_method_that_calls_itself_without_end_is_told_and_the_session_goes_on() {
    Problem problem = problem("int f(int x) { return f(x + 1); }\nf(0)");

    assertThat(problem.message()).isEqualTo("A method calls itself without end.");
    assertThat(SESSION.evaluate("1 + 1").value()).contains(new Value(2, 1));
  }

  @Test
  void a_bracket_that_is_never_closed_is_named_with_its_line() {
    Evaluation evaluation =
        SESSION.evaluate("var a = 1;\nvar b = Math.max(\n  1,\n  2;\nvar c = 3;");

    assertThat(evaluation.status()).isEqualTo(Evaluation.Status.INCOMPLETE);
    assertThat(evaluation.problem().get().message())
        .isEqualTo("The bracket ( opened at line 2, column 17 is never closed: a ) is missing.");
    assertThat(evaluation.problem().get().line()).isEqualTo(2);
    assertThat(evaluation.problem().get().column()).isEqualTo(17);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/exit", "/save x.jsh", "/?", "/!"})
  void commands_of_other_shells_are_refused_in_words(String command) {
    String word = command.split(" ")[0];
    assertThat(problem(command).message())
        .isEqualTo(
            "\""
                + word
                + "\" is no word here: everything is Java. help() lists the words, quit() leaves.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "int 3x = 1;",
        "List<String> l = List.of(1);",
        "Math.max()",
        "return 3;;)",
        "class A extends Nothing { }\nnew A()",
        "void toString() { }",
        "package a;",
        "\"never closed",
        "Runnable r = () -> { throw new Exception(); };",
        "else { }",
        "}",
        "#",
        "\u0000"
      })
  void whatever_is_wrong_the_answer_has_no_names_of_the_compiler(String text) {
    Problem problem = problem(text);

    assertThat(problem.message())
        .isNotBlank()
        .doesNotContain("REPL", "$JShell", "compiler.err", "do_it");
    assertThat(problem.caret()).contains("^");
  }
}
