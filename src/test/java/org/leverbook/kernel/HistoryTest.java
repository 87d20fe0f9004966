package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HistoryTest {

  @TempDir private Path folder;
  private final ByteArrayOutputStream said = new ByteArrayOutputStream();
  private final Log log = new Log(new PrintStream(said, true));
  private Path file;
  private History history;

  @BeforeEach
  void threeSessions() {
    file = folder.resolve("state").resolve("notebook-history");
    History first = opened();
    first.add(1, "one");
    first.add(2, "int two = 2;");
    History second = opened();
    second.add(1, "one");
    history = opened();
    history.add(1, "three");
    history.gave("3");
    history.add(2, "a\nb");
  }

  private History opened() {
    return new History(new HistoryFile(file, log));
  }

  private List<String> rows(ObjectNode asked) {
    List<String> rows = new ArrayList<>();
    JsonNode reply = history.answer(asked);
    assertThat(reply.path("status").asText()).isEqualTo("ok");
    reply.path("history").forEach(row -> rows.add(row.toString()));
    return rows;
  }

  private static ObjectNode asked(String kind) {
    return Client.object().put("hist_access_type", kind).put("output", false).put("raw", true);
  }

  private static ObjectNode range(int session) {
    return asked("range").put("session", session);
  }

  @Test
  void the_last_cells_come_with_session_and_number() {
    assertThat(rows(asked("tail").put("n", 3)))
        .containsExactly("[2,1,\"one\"]", "[3,1,\"three\"]", "[3,2,\"a\\nb\"]");
    assertThat(rows(asked("tail").put("n", 99))).hasSize(5);
    assertThat(rows(asked("tail").put("n", -1))).isEmpty();
  }

  @Test
  void what_a_cell_gave_comes_where_it_is_asked_for() {
    assertThat(rows(asked("tail").put("n", 2).put("output", true)))
        .containsExactly("[3,1,[\"three\",\"3\"]]", "[3,2,[\"a\\nb\",null]]");
  }

  @Test
  void a_range_is_of_one_session_and_ends_before_its_stop() {
    assertThat(rows(range(1).put("start", 1).put("stop", 2))).containsExactly("[1,1,\"one\"]");
    assertThat(rows(range(0).put("start", 2))).containsExactly("[3,2,\"a\\nb\"]");
    assertThat(rows(range(3).put("start", 1).put("stop", 3))).hasSize(2);
    assertThat(rows(range(-1))).containsExactly("[2,1,\"one\"]");
    assertThat(rows(range(-2))).hasSize(2);
    assertThat(rows(range(-9))).isEmpty();
    assertThat(rows(range(Integer.MIN_VALUE))).isEmpty();
  }

  @Test
  void a_search_knows_stars_and_question_marks_and_takes_the_rest_as_it_is() {
    assertThat(rows(asked("search").put("pattern", "*o*"))).hasSize(3);
    assertThat(rows(asked("search").put("pattern", "on?"))).hasSize(2);
    assertThat(rows(asked("search").put("pattern", "a*b"))).containsExactly("[3,2,\"a\\nb\"]");
    assertThat(rows(asked("search").put("pattern", "on[e]"))).isEmpty();
    assertThat(rows(asked("search").put("pattern", "on?").put("n", 1)))
        .containsExactly("[2,1,\"one\"]");
    assertThat(rows(asked("search").put("pattern", "on?").put("unique", true)))
        .containsExactly("[2,1,\"one\"]");
  }

  @Test
  void an_unknown_kind_of_question_finds_nothing() {
    assertThat(rows(asked("dance"))).isEmpty();
  }

  @Test
  void a_damaged_line_is_passed_over_and_the_others_stay() throws Exception {
    Files.writeString(file, Files.readString(file) + "garbage\n[1]\n\u0000\n[9,1,\"nine\"]\n");

    history = opened();

    assertThat(rows(asked("tail").put("n", 1))).containsExactly("[9,1,\"nine\"]");
    history.add(1, "next");
    assertThat(rows(asked("tail").put("n", 1))).containsExactly("[10,1,\"next\"]");
  }

  @Test
  void a_last_line_that_was_cut_off_does_not_take_the_next_one_with_it() throws Exception {
    Files.writeString(file, Files.readString(file) + "[8,1,\"cut o");

    history = opened();
    history.add(1, "next");

    assertThat(rows(asked("tail").put("n", 1))).containsExactly("[4,1,\"next\"]");
    assertThat(rowsReadAgain()).contains("[4,1,\"next\"]");
  }

  private List<String> rowsReadAgain() {
    history = opened();
    return rows(asked("tail").put("n", 2));
  }

  @Test
  void the_file_does_not_grow_for_ever() throws Exception {
    StringBuilder many = new StringBuilder();
    for (int i = 1; i <= 7000; i++) {
      many.append("[1,").append(i).append(",\"x\"]\n");
    }
    Files.writeString(file, many);

    history = opened();

    assertThat(rows(asked("tail").put("n", 9999))).hasSize(5000);
    assertThat(Files.readAllLines(file)).hasSize(5001).contains("[1,7000,\"x\"]");
  }

  @Test
  void where_nothing_can_be_written_the_session_remembers_its_own() throws Exception {
    Path blocked = Files.writeString(folder.resolve("plain"), "a file");
    History own = new History(new HistoryFile(blocked.resolve("below"), log));

    own.add(1, "kept");

    history = own;
    assertThat(rows(asked("tail").put("n", 5))).containsExactly("[1,1,\"kept\"]");
    assertThat(said.toString()).contains("The history is not kept");
    assertThat(blocked).hasContent("a file");
  }
}
