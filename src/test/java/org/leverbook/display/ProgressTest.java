package org.leverbook.display;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** How far long work has come, and who hears of it. Time is a number that the test moves. */
class ProgressTest {

  private final AtomicLong now = new AtomicLong();
  private final List<String> heard = new ArrayList<>();
  private Progress.Listener before;

  @BeforeEach
  void listen() {
    before =
        Progress.listen(
            new Progress.Listener() {
              @Override
              public void at(Progress progress) {
                heard.add(progress.text());
              }

              @Override
              public void over() {
                heard.add("over");
              }
            });
  }

  @AfterEach
  void stopListening() {
    Progress.listen(before);
  }

  private void work(int steps, long nanosEach) {
    try (Meter meter = Meter.of("sweep over hip height", steps, now::get)) {
      for (int i = 0; i < steps; i++) {
        now.addAndGet(nanosEach);
        meter.step();
      }
    }
  }

  @Test
  void short_work_says_nothing() {
    work(100, 9_000_000);
    assertThat(heard).isEmpty();
  }

  @Test
  void long_work_tells_how_much_is_done_and_how_long_the_rest_takes() {
    work(1000, 36_000_000);
    assertThat(heard)
        .startsWith(
            "sweep over hip height: 28 of 1,000, about 35 s left",
            "sweep over hip height: 35 of 1,000, about 35 s left")
        .endsWith("over");
    // 36 s, the first second silent, then one in each quarter of a second at most.
    assertThat(heard).hasSizeBetween(100, 36 * 4);
  }

  @Test
  void lines_come_five_seconds_apart() {
    List<String> lines = new ArrayList<>();
    Progress.listen(new ProgressLines(lines::add, now::get));
    work(1000, 36_000_000);
    assertThat(lines).hasSize(7);
    assertThat(lines.get(6)).isEqualTo("sweep over hip height: 868 of 1,000, about 5 s left");
  }

  @Test
  void the_time_left_is_told_in_minutes_and_hours_where_it_is_long() {
    assertThat(new Progress("claim", 10, 1000, 2).text())
        .isEqualTo("claim: 10 of 1,000, about 4 min left");
    assertThat(new Progress("claim", 1, 10_000, 2).text())
        .isEqualTo("claim: 1 of 10,000, about 5.6 h left");
    assertThat(new Progress("claim", 0, 1000, 2).left()).isEqualTo(2);
  }
}
