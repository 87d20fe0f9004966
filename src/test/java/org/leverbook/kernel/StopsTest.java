package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.kernel.Client.Heard;
import org.leverbook.kernel.Client.Ran;

class StopsTest {

  @TempDir static Path folder;
  private static Open open;
  private static Client client;

  @BeforeAll
  static void opens() {
    open = new Open(folder);
    client = open.client();
  }

  @AfterAll
  static void closes() {
    open.close();
  }

  private static void interrupt() {
    String id = client.ask("control", "interrupt_request", Client.object());
    assertThat(client.reply("control", id).content().path("status").asText()).isEqualTo("ok");
  }

  private static String started(String code) {
    return started("", code);
  }

  /** Starts a cell and waits until the first part of its code is done. */
  private static String started(String first, String code) {
    String id = client.execute(first + "System.out.print(\"on\");\n" + code);
    client.next(each -> each.answers(id) && each.type().equals("stream"));
    return id;
  }

  private static ObjectNode asking(String code) {
    return Client.cell(code).put("allow_stdin", true);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "while (true) { }",
        "Thread.sleep(600_000);",
        "IntStream.range(0, 1_000_000_000).parallel().forEach(i -> { while (true) { } });",
        "for (;;) { System.out.print(\"flood of text\"); }",
        "new Object() { public String toString() { while (true) { } } }",
        "sweep(\"s\", cm(40), cm(70), 1_000_000, h -> hinge(person(MALE, kg(85), cm(178)))"
            + ".holding(barbell(kg(60))).hipHeight(h).start())"
      })
  void a_busy_cell_stops_and_what_was_there_stays(String code) {
    client.run("var kept = new ArrayList<>(List.of(1, 2, 3));");
    String id = started("kept.add(4);", code);

    interrupt();

    Ran ran = client.done(id);
    assertThat(ran.status()).isIn("error", "ok");
    if (!code.startsWith("sweep")) {
      // A sweep may keep what is done, and end well.
      assertThat(ran.reply().path("ename").asText()).isEqualTo("Stopped");
    }
    assertThat(client.run("kept.size()").result()).isEqualTo("4");
  }

  @Test
  void a_stop_that_finds_nothing_does_nothing_twenty_times_in_a_row() {
    for (int i = 0; i < 20; i++) {
      interrupt();
    }

    assertThat(client.run("20 + 3").result()).isEqualTo("23");
  }

  @Test
  void every_stop_just_when_a_cell_begins_stops_that_cell_or_none() {
    for (int i = 0; i < 10; i++) {
      String id = client.execute("while (true) { }");
      client.next(each -> each.answers(id) && each.type().equals("execute_input"));
      interrupt();
      assertThat(client.done(id).reply().path("ename").asText()).isEqualTo("Stopped");
      assertThat(client.run("1 + " + i).result()).isEqualTo(String.valueOf(1 + i));
    }
  }

  @Test
  void control_answers_while_a_cell_runs() {
    String id = started("while (true) { }");

    String info = client.ask("control", "kernel_info_request", Client.object());
    assertThat(client.reply("control", info).content().path("implementation").asText())
        .isEqualTo("leverbook");
    assertThat(client.told(info)).extracting(Heard::state).containsExactly("busy", "idle");

    interrupt();
    client.done(id);
  }

  @Test
  void a_stopped_cell_gives_up_those_behind_it() {
    String running = started("while (true) { }");
    String waiting = client.execute("int neverMade = 1;");
    // Answered only after the cell before it: both have arrived.
    interrupt();

    assertThat(client.done(running).status()).isEqualTo("error");
    assertThat(client.done(waiting).status()).isEqualTo("aborted");
    assertThat(client.run("neverMade").status()).isEqualTo("error");
  }

  @Test
  void code_that_reads_asks_whoever_sent_the_cell() {
    String id =
        client.ask(
            "shell",
            "execute_request",
            asking(
                "System.out.print(\"Mass? \"); var in = new Scanner(System.in);"
                    + " in.nextLine() + \"/\" + in.nextLine()"));

    Heard first = client.asked();
    assertThat(first.answers(id)).isTrue();
    assertThat(first.content().path("password").asBoolean(true)).isFalse();
    assertThat(first.content().path("prompt").isTextual()).isTrue();
    // The text before the question is there already.
    assertThat(client.next(e -> e.type().equals("stream")).content().path("text").asText())
        .isEqualTo("Mass? ");
    client.type(first, "85 kg ü");
    client.type(client.asked(), "second");

    assertThat(client.done(id).result()).isEqualTo("85 kg ü/second");
  }

  @Test
  void an_answer_that_comes_too_early_is_thrown_away() {
    String first =
        client.ask("shell", "execute_request", asking("new Scanner(System.in).nextLine()"));
    Heard asked = client.asked();
    client.type(asked, "right");
    assertThat(client.done(first).result()).isEqualTo("right");
    client.type(asked, "stale");
    client.run("Thread.sleep(200);");

    String second =
        client.ask("shell", "execute_request", asking("new Scanner(System.in).nextLine()"));
    client.type(client.asked(), "fresh");

    assertThat(client.done(second).result()).isEqualTo("fresh");
  }

  @Test
  void the_end_of_input_is_the_end_for_the_code_too() {
    String id = client.ask("shell", "execute_request", asking("System.in.read()"));

    client.type(client.asked(), "\u0004");

    assertThat(client.done(id).result()).isEqualTo("-1");
  }

  @Test
  void where_nobody_types_reading_fails_at_once_with_a_sentence() {
    Ran ran = client.run("int line = 1;\nnew Scanner(System.in).nextLine()");

    assertThat(ran.reply().path("evalue").asText())
        .isEqualTo(
            "This asks for input, and whoever runs the cell types none. Give the value in the code"
                + " instead.");
    assertThat(ran.reply().path("traceback").get(0).asText()).contains("2:1: ");
  }

  @Test
  void a_stop_frees_a_cell_that_waits_for_input() {
    String id = client.ask("shell", "execute_request", asking("System.in.read()"));
    client.asked();

    interrupt();

    assertThat(client.done(id).reply().path("ename").asText()).isEqualTo("Stopped");
    assertThat(client.run("6 * 7").result()).isEqualTo("42");
  }

  @Test
  void a_client_that_dies_while_it_is_asked_can_be_helped_by_another() {
    try (Client dying = new Client(open.connection())) {
      dying.ask("shell", "execute_request", asking("System.in.read()"));
      dying.asked();
    }
    String waiting = client.execute("5 + 5");
    interrupt();

    // Queued behind a cell that failed: given up; the next one runs.
    assertThat(client.done(waiting).status()).isEqualTo("aborted");
    assertThat(client.run("5 + 5").result()).isEqualTo("10");
  }
}
