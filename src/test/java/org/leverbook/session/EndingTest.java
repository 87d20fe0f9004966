package org.leverbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Code that would take the whole process with it. Were it let through, this test would vanish. */
@Timeout(value = 120, unit = TimeUnit.SECONDS)
class EndingTest {

  private static final String REFUSAL =
      "This would end Leverbook itself, with all you made in it, so it was not done. quit() leaves;"
          + " a method is left by return.";

  private final Session session = Session.open(Preamble.NONE);

  @AfterEach
  void close() {
    session.close();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "System.exit(0)",
        "Runtime.getRuntime().exit(3)",
        "Runtime.getRuntime().halt(3)",
        "java.util.stream.IntStream.of(1).forEach(System::exit)",
        "java.util.stream.IntStream.of(1).forEach(Runtime.getRuntime()::halt)",
        "java.util.stream.IntStream.of(1).forEach(code -> System.exit(code))",
        "{ class Ends { void now() { System.exit(1); } } new Ends().now(); }"
      })
  void what_would_end_the_process_is_refused_and_the_variables_stay(String ending) {
    session.evaluate("int kept = 41");

    Evaluation evaluation = session.evaluate(ending);

    assertThat(evaluation.status()).isEqualTo(Evaluation.Status.FAILED);
    assertThat(evaluation.problem().get().kind()).isEqualTo(Problem.Kind.REFUSAL);
    assertThat(evaluation.problem().get().message()).isEqualTo(REFUSAL);
    assertThat(session.evaluate("kept + 1").value()).contains(new Value(42, 1));
  }

  @Test
  void a_method_of_the_users_own_that_is_called_exit_is_left_alone() {
    session.evaluate("int exit(int code) { return code + 1; }");

    assertThat(session.evaluate("exit(1)").value()).contains(new Value(2, 1));
  }

  @Test
  void a_method_without_end_is_told_and_the_variables_stay() {
    session.evaluate("int kept = 41; int deep(int n) { return deep(n + 1) + 1; }");

    Evaluation evaluation = session.evaluate("deep(0)");

    assertThat(evaluation.problem().get().message())
        .startsWith("A method calls itself without end");
    assertThat(session.evaluate("kept + 1").value()).contains(new Value(42, 1));
  }

  @Test
  void more_memory_than_there_is_is_told_and_the_variables_stay() {
    session.evaluate("int kept = 41");

    Evaluation evaluation = session.evaluate("new long[Integer.MAX_VALUE - 8][20_000_000].length");

    assertThat(evaluation.problem().get().message())
        .startsWith("There is not enough memory for this");
    assertThat(session.evaluate("kept + 1").value()).contains(new Value(42, 1));
  }

  @Test
  void a_statement_too_long_to_be_compiled_is_told_and_never_passed_over() {
    session.evaluate("int[] sum = {0};");

    Evaluation evaluation = session.evaluate("{\n" + "sum[0] += 1;\n".repeat(9_000) + "}");

    assertThat(evaluation.status()).isEqualTo(Evaluation.Status.FAILED);
    assertThat(evaluation.problem().get().original()).contains("code too large");
    assertThat(session.evaluate("sum[0]").value()).contains(new Value(0, 1));
  }
}
