package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.leverbook.display.Stop;

/** Many computations in parallel, handed on in order, and stopped. */
@Timeout(value = 60, unit = TimeUnit.SECONDS)
class ManyTest {

  /** In a pool of its own: threads that were interrupted must not serve other tests. */
  private static <T> T on(int threads, Callable<T> work) throws Exception {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return pool.submit(work).get();
    } finally {
      pool.shutdown();
    }
  }

  @Test
  void results_come_in_order_and_alike_on_one_thread_and_on_three() throws Exception {
    for (int threads : List.of(1, 3)) {
      List<String> taken = new ArrayList<>();
      int done =
          on(
              threads,
              () -> Many.each("squares", 2000, i -> i * i, (i, r) -> taken.add(i + ":" + r)));
      assertThat(done).isEqualTo(2000);
      assertThat(taken).hasSize(2000).startsWith("0:0", "1:1", "2:4").endsWith("1999:3996001");
    }
  }

  @Test
  void after_a_stop_what_was_computed_is_handed_on_without_a_hole() throws Exception {
    for (int threads : List.of(1, 3)) {
      List<Integer> taken = new ArrayList<>();
      int done =
          on(
              threads,
              () -> {
                Thread asking = Thread.currentThread();
                return Many.each(
                    "numbers",
                    1000,
                    i -> {
                      if (i == 340) {
                        asking.interrupt();
                      }
                      return i;
                    },
                    (i, r) -> taken.add(r));
              });
      // Each thread may still finish what it holds, and others may have gone ahead meanwhile.
      assertThat(done).isGreaterThanOrEqualTo(340).isLessThan(1000);
      assertThat(taken).hasSize(done);
      assertThat(taken.get(done - 1)).isEqualTo(done - 1);
    }
  }

  @Test
  void a_stop_check_inside_the_work_stops_it_and_keeps_what_is_done() throws Exception {
    List<Integer> taken = new ArrayList<>();
    int done =
        on(
            1,
            () ->
                Many.each(
                    "numbers",
                    1000,
                    i -> {
                      if (i == 700) {
                        throw new Stop() {
                          private static final long serialVersionUID = 1L;
                        };
                      }
                      return i;
                    },
                    (i, r) -> taken.add(r)));
    assertThat(done).isEqualTo(700);
    assertThat(taken).hasSize(700);
  }

  @Test
  void of_several_failures_the_first_in_order_is_told() throws Exception {
    assertThatThrownBy(
            () ->
                on(
                    3,
                    () -> {
                      CountDownLatch both = new CountDownLatch(2);
                      return Many.each(
                          "numbers",
                          1000,
                          i -> {
                            if (i == 10 || i == 11) {
                              both.countDown();
                              await(both);
                              throw new IllegalStateException("at " + i);
                            }
                            return i;
                          },
                          (i, r) -> {});
                    }))
        .hasRootCauseMessage("at 10");
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await(5, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void work_inside_work_does_not_wait_for_itself() throws Exception {
    AtomicInteger sum = new AtomicInteger();
    int done =
        on(
            2,
            () ->
                Many.each(
                    "outer",
                    40,
                    i -> Many.each("inner", 40, k -> k, (k, r) -> sum.addAndGet(r)),
                    (i, r) -> {}));
    assertThat(done).isEqualTo(40);
    assertThat(sum.get()).isEqualTo(40 * (39 * 40 / 2));
  }
}
