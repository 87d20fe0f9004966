package org.leverbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a text gives: values, order, memory of what was declared. */
class EvaluationTest {

  private final Session session = Session.open(Preamble.NONE);

  @AfterEach
  void close() {
    session.close();
  }

  @Test
  void the_object_itself_comes_back_not_a_text_of_it() {
    Evaluation evaluation = session.evaluate("new StringBuilder(\"abc\")");

    assertThat(evaluation.status()).isEqualTo(Evaluation.Status.OK);
    assertThat(evaluation.value()).isPresent();
    assertThat(evaluation.value().get().object()).isInstanceOf(StringBuilder.class);
  }

  @Test
  void null_is_a_value_too() {
    assertThat(session.evaluate("(String) null").value()).contains(new Value(null, 1));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "var x = 3;",
        "int y = 0; y = 4;",
        "int f() { return 1; }",
        "System.out.flush();",
        "if (1 > 2) { }",
        "import java.util.*;",
        "// only a comment",
        "/* and\nanother */",
        "",
        "\n \r\n\t",
        ";"
      })
  void a_declaration_an_assignment_a_statement_and_a_comment_have_no_value(String text) {
    Evaluation evaluation = session.evaluate(text);

    assertThat(evaluation.ok()).isTrue();
    assertThat(evaluation.value()).isEmpty();
  }

  @Test
  void every_bare_expression_hands_over_its_value_in_order_with_its_line() {
    List<Value> values = new ArrayList<>();

    Evaluation evaluation =
        session.evaluate("1 + 1\nvar a = 5;\n\na\n// c\na * 2; a * 3", values::add);

    assertThat(values)
        .containsExactly(new Value(2, 1), new Value(5, 4), new Value(10, 6), new Value(15, 6));
    assertThat(evaluation.value()).contains(new Value(15, 6));
    assertThat(evaluation.unitsDone()).isEqualTo(5);
  }

  @Test
  void a_word_alone_on_its_line_is_not_glued_to_the_next_line() {
    List<Value> values = new ArrayList<>();
    session.evaluate("var s = \"ab\";\ns\n\n// why\ns.length()", values::add);

    assertThat(values).extracting(Value::object).containsExactly("ab", 2);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"ab\"\n    .concat(\"c\")\n    // why\n    .length()",
        "1\n + 2",
        "true\n  ? 3\n  : 4",
        "int r = 0;\nif (r > 1) r = 5;\nelse r = 3;\nr",
        "int g(int x)\n{\n  // }\n  return x;\n}\ng(3)",
        "Math\r\n  .max(1,\r\n    3)\r\n",
        "java.util.function.IntUnaryOperator f = x -> {\n  int y = x;\n\n  return y;\n};\nf.applyAsInt(3)",
        "String t = \"\"\"\n  a(\n  \\\"\"\"\n  \"\"\";\n3",
        "var c = '\\''; var d = \"(\\\"\"; /* ( */ 3 // (",
        "record P(int a) { int b() { return a; } }\nnew P(3).b()",
        "int[] n = {\n  1,\n  2,\n};\nn[0] + n[1]",
        "int k = 0;\ndo {\n  k++;\n}\nwhile (k < 3);\nk",
        "int z = 0;\ntry {\n  z = 3;\n}\nfinally {\n}\nz",
        "@Deprecated\nint h() { return 3; }\nh()"
      })
  void what_belongs_together_stays_together(String text) {
    Evaluation evaluation = session.evaluate(text);

    assertThat(evaluation.problem()).isEmpty();
    assertThat(evaluation.value()).isPresent();
    assertThat(evaluation.value().get().object()).isIn(3);
  }

  @Test
  void a_method_may_use_what_is_declared_later() {
    Evaluation early = session.evaluate("int f() { return g() + 1; }");
    assertThat(early.ok()).isTrue();
    assertThat(early.notes()).containsExactly("f needs method g(), which is not there yet.");

    Evaluation call = session.evaluate("f()");
    assertThat(call.status()).isEqualTo(Evaluation.Status.FAILED);
    assertThat(call.problem().get().kind()).isEqualTo(Problem.Kind.UNRESOLVED);
    assertThat(call.problem().get().message())
        .isEqualTo("f needs method g(), which is not there yet.");

    assertThat(session.evaluate("int g() { return 1; }\nf()").value()).contains(new Value(2, 2));
  }

  @Test
  void a_changed_declaration_says_which_variables_it_took_along() {
    session.evaluate("class A { }\nvar q = new A();\nA r = new A();\nint n = 4;");

    Evaluation change = session.evaluate("class A { int i; }");

    assertThat(change.ok()).isTrue();
    assertThat(change.notes())
        .containsExactly(
            "q is gone because A changed: give its line again.",
            "r is empty again because A changed: give its line again.");
    assertThat(session.evaluate("n").value()).contains(new Value(4, 1));
  }

  @Test
  void giving_a_variable_a_new_line_is_no_reason_for_a_note() {
    session.evaluate("var x = 1;");
    assertThat(session.evaluate("var x = \"a\";").notes()).isEmpty();
    assertThat(session.evaluate("x").value()).contains(new Value("a", 1));
  }

  @Test
  void what_ran_before_a_failing_unit_stays() {
    Evaluation evaluation = session.evaluate("var a = 1;\nvar b = 1 / 0;\nvar c = 3;");

    assertThat(evaluation.status()).isEqualTo(Evaluation.Status.FAILED);
    assertThat(evaluation.unitsDone()).isEqualTo(1);
    assertThat(session.evaluate("a").value()).contains(new Value(1, 1));
    assertThat(session.evaluate("c").ok()).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 + 1|COMPLETE",
        "var x = 3|COMPLETE",
        "''|COMPLETE",
        "// only this|COMPLETE",
        "Math.max(1,|INCOMPLETE",
        "for (;;) {|INCOMPLETE",
        "int m()|INCOMPLETE",
        "x ->|INCOMPLETE",
        "var x =|INCOMPLETE",
        "/* open|INCOMPLETE",
        "String s = \"\"\"|INCOMPLETE",
        "1 + 1; int f() {|INCOMPLETE",
        ")|INVALID",
        "f(]|INVALID",
        "/exit|INVALID"
      })
  void completeness_tells_a_shell_whether_to_wait_for_more(String text, Completeness expected) {
    assertThat(session.completeness(text)).isEqualTo(expected);
  }

  @Test
  void a_hundred_results_leave_only_the_last_few_behind() {
    long before = session.liveSnippets();
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < 100; i++) {
      text.append(i).append(" + 1\n");
    }
    Evaluation evaluation = session.evaluate(text.toString());

    assertThat(evaluation.unitsDone()).isEqualTo(100);
    // Every living name would be compiled into each later unit: the last five are kept, no more.
    assertThat(session.liveSnippets() - before).isEqualTo(5);
  }

  @Test
  void a_result_that_is_used_by_its_name_is_kept() {
    session.evaluate("40 + 1");
    session.evaluate("int next() { return $1 + 1; }");
    session.evaluate("1\n2\n3\n4\n5\n6\n7\n8\n9");

    assertThat(session.evaluate("next()").value()).contains(new Value(42, 1));
  }

  @Test
  void a_reset_forgets_everything_but_the_preamble() {
    try (Session own = Session.open(new Preamble("import java.util.*;", List.of()))) {
      own.evaluate("var x = List.of(1);");
      own.reset();

      assertThat(own.evaluate("x").ok()).isFalse();
      assertThat(own.evaluate("List.of(2).get(0)").value()).contains(new Value(2, 1));
    }
  }

  @Test
  void a_value_whose_toString_fails_is_still_told() {
    session.evaluate(
        "class Bad { public String toString() { throw new IllegalStateException(\"no\"); } }");

    Evaluation evaluation = session.evaluate("new Bad()");

    assertThat(evaluation.value().get().text())
        .startsWith("a Bad that cannot show itself")
        .contains("no");
  }

  private static final String LATE =
      "class Late implements org.leverbook.display.Shown {\n"
          + "  public String text() {\n"
          + "    throw new org.leverbook.quantity.Refused(\"The hips are too low: raise them.\");\n"
          + "  }\n}\n";

  @Test
  void a_value_that_turns_out_to_be_impossible_is_a_failure_of_its_line() {
    List<Value> values = new ArrayList<>();

    Evaluation evaluation =
        session.evaluate(LATE + "var a = 1;\na\n  new Late()\na + 1", values::add);

    assertThat(values).containsExactly(new Value(1, 7));
    assertThat(evaluation.status()).isEqualTo(Evaluation.Status.FAILED);
    assertThat(evaluation.unitsDone()).isEqualTo(3);
    Problem problem = evaluation.problem().get();
    assertThat(problem.kind()).isEqualTo(Problem.Kind.REFUSAL);
    assertThat(problem.text("x.jsh:"))
        .isEqualTo("x.jsh:8:3: The hips are too low: raise them.\n  new Late()\n  ^");
    assertThat(problem.thrown()).containsInstanceOf(org.leverbook.quantity.Refused.class);
  }

  @Test
  void a_value_that_is_kept_under_a_name_fails_only_when_it_is_shown() {
    session.evaluate(LATE);

    assertThat(session.evaluate("var late = new Late();").ok()).isTrue();
    assertThat(session.evaluate("late").problem().get().message())
        .isEqualTo("The hips are too low: raise them.");
  }

  @Test
  void a_value_that_breaks_while_it_shows_itself_is_a_failure_told_in_words() {
    session.evaluate(
        "class Broken implements org.leverbook.display.Shown {\n"
            + "  public String text() { return \"\" + 1 / 0; }\n}");

    Problem problem = session.evaluate("new Broken()").problem().get();

    assertThat(problem.kind()).isEqualTo(Problem.Kind.EXCEPTION);
    assertThat(problem.message()).isEqualTo("A whole number is divided by zero.");
    assertThat(problem.line()).isEqualTo(1);
  }

  @Test
  void a_picture_that_cannot_be_drawn_leaves_its_text() {
    session.evaluate(
        "class Half implements org.leverbook.display.Shown {\n"
            + "  public String text() { return \"half\"; }\n"
            + "  public java.util.Optional<String> html() { throw new IllegalStateException(); }\n"
            + "  public java.util.Optional<String> svg() { return null; }\n"
            + "  public java.util.Optional<byte[]> png() { throw new StackOverflowError(); }\n}");

    Value value = session.evaluate("new Half()").value().get();

    assertThat(value.text()).isEqualTo("half");
    assertThat(value.shown().html()).isEmpty();
    assertThat(value.shown().svg()).isEmpty();
    assertThat(value.shown().png()).isEmpty();
  }
}
