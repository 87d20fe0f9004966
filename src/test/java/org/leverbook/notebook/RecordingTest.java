package org.leverbook.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintStream;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leverbook.display.OnStage;

/** What cells give while they run, as it is kept. */
class RecordingTest {

  private final Recording recording = new Recording(MimeBundle::of);

  private static Output text(boolean isResult, String text) {
    return new Output.Given(isResult, new MimeBundle(Map.of("text/plain", text)));
  }

  @Test
  void prints_of_one_stream_become_one_output_and_order_is_kept() {
    recording.begin(0);
    PrintStream out = recording.stream("stdout");
    out.print("a");
    out.println("b");
    recording.stream("stderr").print("c");
    recording.value(1);
    out.print("d");

    assertThat(recording.outputs(0))
        .containsExactly(
            new Output.Printed("stdout", "ab" + System.lineSeparator()),
            new Output.Printed("stderr", "c"),
            text(false, "1"),
            new Output.Printed("stdout", "d"));
  }

  @Test
  void a_letter_written_byte_by_byte_stays_whole() {
    recording.begin(0);
    PrintStream out = recording.stream("stdout");
    for (byte b : "°🏋".getBytes(java.nio.charset.StandardCharsets.UTF_8)) {
      out.write(b);
    }
    out.flush();

    assertThat(recording.outputs(0)).containsExactly(new Output.Printed("stdout", "°🏋"));
  }

  @Test
  void the_last_value_becomes_the_result_and_those_before_it_stay_shown() {
    recording.begin(0);
    recording.value(1);
    recording.value(2);
    recording.lastIsResult();

    assertThat(recording.outputs(0)).containsExactly(text(false, "1"), text(true, "2"));
  }

  @Test
  void what_was_shown_can_change_later_also_from_another_cell() {
    recording.begin(0);
    recording.shows(7, "first");
    recording.value(new OnStage(7));
    recording.begin(1);
    recording.changes(7, "second");
    recording.changes(8, "of another session");

    assertThat(recording.outputs(0)).containsExactly(text(false, "second"));
    assertThat(recording.outputs(1)).isEmpty();
  }

  @Test
  void a_hundred_megabytes_printed_by_one_cell_are_cut_with_a_note() {
    recording.begin(0);
    PrintStream out = recording.stream("stdout");
    String line = "x".repeat(99) + "\n";
    for (int i = 0; i < 1_000_000; i++) {
      out.print(line);
    }
    recording.value("still there");

    List<Output> outputs = recording.outputs(0);
    assertThat(((Output.Printed) outputs.get(0)).text()).hasSizeBetween(9_999_000, 10_000_000);
    assertThat(outputs.get(1)).isEqualTo(text(false, "still there"));
    assertThat(((Output.Printed) outputs.get(2)).text())
        .matches(
            "90,000,\\d{3} more characters were printed; of one cell the first 10,000,000 are"
                + " kept\\.\n");
  }

  @Test
  void values_shown_without_end_are_cut_with_a_note() {
    recording.begin(0);
    String text = "y".repeat(20_000);
    for (int i = 0; i < 6_000; i++) {
      recording.shows(i, text);
    }

    List<Output> outputs = recording.outputs(0);
    assertThat(outputs).hasSizeBetween(4_800, 5_001);
    assertThat(((Output.Printed) outputs.get(outputs.size() - 1)).text())
        .matches("1,\\d{3} more values were shown; of one cell 100 MB are kept\\.\n");
  }
}
