package org.leverbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Stopping what runs. Real endless loops: without a stop each test would never end. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
public class StopTest {

  private final Session session = Session.open(Preamble.NONE);

  /** Told by the code under test that it runs. */
  public static volatile CountDownLatch running = new CountDownLatch(1);

  @AfterEach
  void close() {
    session.close();
  }

  /** Evaluates, waits until the code says it runs, stops it, and waits for what came of it. */
  private Evaluation stopped(String text) throws Exception {
    running = new CountDownLatch(1);
    var evaluation = started(() -> session.evaluate(marked(text)));
    awaitRunning(evaluation);
    assertThat(session.stop()).isTrue();
    return evaluation.get(30, TimeUnit.SECONDS);
  }

  private static void awaitRunning(CompletableFuture<Evaluation> evaluation) throws Exception {
    while (!running.await(50, TimeUnit.MILLISECONDS)) {
      assertThat(evaluation).as("the code ended before it said that it runs").isNotDone();
    }
  }

  /** On a thread of its own: the common pool of a small machine has room for one task only. */
  private static <T> CompletableFuture<T> started(Supplier<T> work) {
    return CompletableFuture.supplyAsync(work, task -> new Thread(task, "test").start());
  }

  /** RUNS, in the code of these tests, says that the code runs. */
  private static String marked(String text) {
    return text.replace("RUNS", "org.leverbook.session.StopTest.running.countDown();");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{ RUNS while (true) { } }",
        "{ RUNS for (long i = 0; ; i++) { } }",
        "{ RUNS do { } while (true); }",
        "while (true) { RUNS try { Math.sqrt(2); } catch (Throwable t) { } }",
        "{ RUNS while (true) { try { while (true) { } } catch (Throwable t) { } } }",
        "while (true) { RUNS try { Thread.sleep(1); } catch (InterruptedException e) { } }",
        "{ RUNS Thread.sleep(60_000); }\nint unreached = 1;",
        "var lock = new Object();\nsynchronized (lock) { RUNS lock.wait(); }",
        "int deep(int n) { return n > 900 ? deep(0) : n == 900 ? 0 : deep(n + 1); }\n"
            + "{ RUNS while (deep(0) == 0) { } }",
        "{ RUNS java.util.stream.IntStream.iterate(0, i -> i).forEach(i -> { }); }",
        "{ RUNS java.util.stream.LongStream.range(0, Long.MAX_VALUE).parallel()"
            + ".map(i -> i + 1).sum(); }",
        "long n = 0;\n{ RUNS while (true) switch ((int) (n++ % 3)) { case 0: continue; default: } }"
      })
  void an_endless_loop_stops_and_the_session_goes_on(String endless) throws Exception {
    session.evaluate("var before = 41;");

    Evaluation evaluation = stopped(endless);

    assertThat(evaluation.status()).isEqualTo(Evaluation.Status.STOPPED);
    assertThat(evaluation.problem().get().message()).isEqualTo("Stopped.");
    assertThat(session.evaluate("before + 1").value()).contains(new Value(42, 1));
    assertThat(session.evaluate("int s = 0; for (int i = 0; i < 9; i++) s += i;\ns").value())
        .contains(new Value(36, 2));
  }

  @Test
  void what_comes_after_the_stopped_unit_is_not_run() throws Exception {
    stopped("{ RUNS while (true) { } }\nvar after = 1;");

    assertThat(session.evaluate("after").ok()).isFalse();
  }

  @Test
  void no_part_of_a_stopped_parallel_stream_goes_on_in_the_background() throws Exception {
    session.evaluate("var count = new java.util.concurrent.atomic.AtomicLong();");
    stopped(
        "java.util.stream.LongStream.range(0, Long.MAX_VALUE).parallel()"
            + ".forEach(i -> { RUNS count.incrementAndGet(); });");

    Object first = session.evaluate("count.get()").value().get().object();
    Thread.sleep(300);
    Object second = session.evaluate("count.get()").value().get().object();

    assertThat(second).isEqualTo(first);
  }

  @Test
  void a_toString_without_end_stops_too() throws Exception {
    session.evaluate(marked("class Slow { public String toString() { RUNS while (true) { } } }"));
    running = new CountDownLatch(1);
    var evaluation = started(() -> session.evaluate("new Slow()", value -> value.text()));
    awaitRunning(evaluation);
    session.stop();

    assertThat(evaluation.get(30, TimeUnit.SECONDS).status()).isEqualTo(Evaluation.Status.STOPPED);
  }

  /** Held by a test: code that waits for it hears no interrupt and meets no check. */
  public static final Object LOCK = new Object();

  @Test
  void code_that_hears_nothing_is_left_behind_and_the_evaluation_says_so() throws Exception {
    session.evaluate("var before = 41;");
    Evaluation evaluation;
    synchronized (LOCK) {
      evaluation = stopped("{ RUNS synchronized (org.leverbook.session.StopTest.LOCK) { } }");
    }

    assertThat(evaluation.status()).isEqualTo(Evaluation.Status.STOPPED);
    assertThat(evaluation.problem().get().message())
        .startsWith("Stopped waiting: this code does not answer");
    assertThat(session.evaluate("before").value()).contains(new Value(41, 1));
  }

  @Test
  void a_stop_when_nothing_runs_does_nothing_also_twenty_times() {
    for (int i = 0; i < 20; i++) {
      assertThat(session.stop()).isFalse();
    }
    assertThat(session.evaluate("1 + 1").value()).contains(new Value(2, 1));
  }

  @Test
  void stopping_one_session_leaves_another_running() throws Exception {
    try (Session other = Session.open(Preamble.NONE)) {
      running = new CountDownLatch(1);
      String wait = "while (!java.nio.file.Files.exists(java.nio.file.Path.of(\"/\"))) { }\n";
      var otherResult =
          started(() -> other.evaluate(wait + "long n = 0; while (n < 300_000_000L) n++;\nn"));
      stopped("{ RUNS while (true) { } }");

      assertThat(otherResult.get(30, TimeUnit.SECONDS).value().get().object())
          .isEqualTo(300_000_000L);
    }
  }

  @Test
  void completion_answers_while_code_runs() throws Exception {
    session.evaluate("String word = \"a\";");
    running = new CountDownLatch(1);
    var evaluation = started(() -> session.evaluate(marked("{ RUNS while (true) { } }")));
    awaitRunning(evaluation);

    var asked = started(() -> session.completions("word.isBl", 9));

    assertThat(asked.get(10, TimeUnit.SECONDS))
        .extracting(Completion::text)
        .containsExactly("isBlank()");
    session.stop();
    assertThat(evaluation).succeedsWithin(Duration.ofSeconds(30));
  }
}
