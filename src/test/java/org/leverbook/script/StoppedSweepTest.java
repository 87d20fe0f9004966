package org.leverbook.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.leverbook.language.Imports;
import org.leverbook.language.Vocabulary;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Preamble;
import org.leverbook.session.Session;

/** A sweep or grid that the user stops keeps what is done. Real sessions, really stopped. */
@Timeout(value = 120, unit = TimeUnit.SECONDS)
public class StoppedSweepTest {

  private final Session session =
      Session.open(new Preamble(Imports.SOURCE, List.of(Vocabulary.class)));

  /** Told by the code under test how far it is. */
  public static volatile CountDownLatch reached = new CountDownLatch(1);

  @AfterEach
  void close() {
    session.close();
  }

  private Evaluation stopped(String text) throws Exception {
    reached = new CountDownLatch(40);
    CompletableFuture<Evaluation> evaluation =
        CompletableFuture.supplyAsync(
            () -> session.evaluate(text), task -> new Thread(task, "test").start());
    while (!reached.await(50, TimeUnit.MILLISECONDS)) {
      assertThat(evaluation).as("ended before it was stopped").isNotDone();
    }
    assertThat(session.stop()).isTrue();
    return evaluation.get(60, TimeUnit.SECONDS);
  }

  private Object value(String text) {
    Evaluation evaluation = session.evaluate(text);
    assertThat(evaluation.problem()).isEmpty();
    return evaluation.value().orElseThrow().object();
  }

  private static final String SLOWLY =
      "{ org.leverbook.script.StoppedSweepTest.reached.countDown();"
          + " java.util.concurrent.locks.LockSupport.parkNanos(4_000_000L);"
          + " return ";

  @Test
  void a_stopped_sweep_is_assigned_with_the_rows_that_are_done() throws Exception {
    session.evaluate(
        "var start = hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(60))).start();");

    Evaluation evaluation =
        stopped(
            "var s = sweep(\"bar\", kg(20), kg(200), 5_000, m -> "
                + SLOWLY
                + "start.without(\"bar\").with(barbell(m)); });");

    assertThat(evaluation.ok()).isTrue();
    assertThat(evaluation.notes()).containsExactly("Stopped; what was done until then is kept.");
    int rows = (Integer) value("s.rows().size()");
    assertThat(rows).isBetween(35, 4_900);
    assertThat(value("s.held()")).isEqualTo((long) rows);
    assertThat((String) value("s.text()"))
        .contains("The work was stopped after %,d of 5,000".formatted(rows));
    assertThat(value("sweep(\"bar\", kg(20), kg(200), 3, m -> start).rows().size()")).isEqualTo(3);
  }

  @Test
  void a_stopped_grid_is_assigned_with_the_cells_that_are_done() throws Exception {
    stopped(
        "var g = grid(\"a\", cm(1), cm(2), 100, \"b\", cm(1), cm(2), 100, (a, b) -> "
            + SLOWLY
            + "null; });");

    int cells = (Integer) value("g.cells().size()");
    assertThat(cells).isBetween(35, 9_900);
    assertThat((String) value("g.text()"))
        .contains("The work was stopped after %,d of 10,000".formatted(cells));
  }
}
