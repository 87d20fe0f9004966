package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.kernel.Client.Heard;
import org.leverbook.kernel.Client.Ran;

class RequestsTest {

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

  private static ObjectNode code(String code) {
    return Client.object().put("code", code);
  }

  private static ObjectNode at(String code, JsonNode cursor) {
    ObjectNode content = code(code);
    content.set("cursor_pos", cursor);
    return content;
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(each -> texts.add(each.asText()));
    return texts;
  }

  private static int counter() {
    return client.run("1").reply().path("execution_count").asInt();
  }

  @Test
  void a_notebook_learns_what_speaks_here() {
    JsonNode info = client.answer("kernel_info_request", Client.object());

    assertThat(info.path("status").asText()).isEqualTo("ok");
    assertThat(info.path("protocol_version").asText()).isEqualTo("5.4");
    assertThat(info.path("implementation").asText()).isEqualTo("leverbook");
    assertThat(info.path("language_info").path("name").asText()).isEqualTo("java");
    assertThat(info.path("language_info").path("file_extension").asText()).isEqualTo(".java");
    assertThat(info.path("language_info").path("mimetype").asText()).isEqualTo("text/x-java");
    assertThat(info.path("banner").asText()).contains("help() lists the words");
    assertThat(info.path("help_links").get(0).path("url").asText()).startsWith("https://");
  }

  @Test
  void a_cell_is_busy_its_input_its_output_its_result_and_idle_in_this_order() {
    Ran ran = client.run("System.out.println(\"a\"); 40 + 2");

    List<String> order =
        ran.told().stream().map(e -> e.state().isEmpty() ? e.type() : e.state()).toList();
    assertThat(order).containsExactly("busy", "execute_input", "stream", "execute_result", "idle");
    assertThat(ran.printed("stdout")).isEqualTo("a\n");
    assertThat(ran.result()).isEqualTo("42");
    assertThat(ran.status()).isEqualTo("ok");
    assertThat(ran.reply().path("payload").isArray()).isTrue();
    assertThat(ran.reply().path("user_expressions").isObject()).isTrue();
  }

  @Test
  void input_result_and_reply_bear_one_number_that_grows_by_one() {
    int before = counter();

    Ran ran = client.run("7");

    assertThat(ran.reply().path("execution_count").asInt()).isEqualTo(before + 1);
    for (Heard each : ran.told()) {
      if (!each.type().equals("status")) {
        assertThat(each.content().path("execution_count").asInt()).isEqualTo(before + 1);
      }
    }
  }

  @Test
  void a_cell_that_is_not_to_be_remembered_keeps_the_number() {
    int before = counter();

    Ran ran = client.run(Client.cell("8").put("store_history", false));

    assertThat(ran.kinds()).containsExactly("execute_input", "execute_result");
    assertThat(ran.reply().path("execution_count").asInt()).isEqualTo(before);
    assertThat(counter()).isEqualTo(before + 1);
  }

  @Test
  void a_silent_cell_shows_nothing_and_counts_nothing_but_has_its_effect() {
    int before = counter();

    Ran ran =
        client.run(Client.cell("int quiet = 5; System.out.println(1); 6").put("silent", true));

    assertThat(ran.kinds()).isEmpty();
    assertThat(ran.status()).isEqualTo("ok");
    assertThat(client.run("quiet").result()).isEqualTo("5");
    assertThat(counter()).isEqualTo(before + 2);
    assertThat(client.run(Client.cell("nope").put("silent", true)).kinds()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   \n\n", "// a remark", "/* two\nlines */"})
  void a_cell_without_code_is_fine(String code) {
    Ran ran = client.run(code);

    assertThat(ran.status()).isEqualTo("ok");
    assertThat(ran.kinds()).containsExactly("execute_input");
  }

  @Test
  void statements_and_declarations_have_no_result() {
    assertThat(client.run("int a1 = 3;").kinds()).containsExactly("execute_input");
    assertThat(client.run("a1 = 4;").kinds()).containsExactly("execute_input");
    assertThat(client.run("for (int i = 0; i < 2; i++) { a1++; }").kinds())
        .containsExactly("execute_input");
  }

  @Test
  void values_before_the_last_are_shown_on_the_way_in_their_order() {
    Ran ran = client.run("1 + 1\nSystem.out.println(\"between\");\n3 + 3\n4 + 4");

    assertThat(ran.kinds())
        .containsExactly(
            "execute_input", "display_data", "stream", "display_data", "execute_result");
    assertThat(ran.result()).isEqualTo("8");
    assertThat(client.run("5\nint after = 1;").kinds())
        .containsExactly("execute_input", "display_data");
  }

  @Test
  void an_error_tells_reason_and_place_once_and_nothing_on_stderr() {
    Ran ran = client.run("int kept = 9;\nbarbell(kg(20)).nope()");

    assertThat(ran.kinds()).containsExactly("execute_input", "error");
    JsonNode error = ran.told("error").get(0).content();
    for (String field : List.of("ename", "evalue", "traceback")) {
      assertThat(error.path(field)).isEqualTo(ran.reply().path(field));
    }
    assertThat(ran.status()).isEqualTo("error");
    List<String> lines = texts(error.path("traceback"));
    assertThat(lines.get(0)).startsWith("\u001B[31m2:").endsWith("\u001B[0m");
    assertThat(lines.get(1)).isEqualTo("barbell(kg(20)).nope()");
    assertThat(lines.get(2)).matches(" +\\^");
    assertThat(error.path("evalue").asText()).doesNotContain("\u001B").contains("nope");
    assertThat(client.run("kept").result()).isEqualTo("9");
  }

  @Test
  void what_a_word_refuses_is_an_error_with_its_sentence() {
    Ran ran = client.run("person(MALE, kg(-3), cm(178))");

    assertThat(ran.reply().path("ename").asText()).isEqualTo("Refused");
    assertThat(ran.reply().path("evalue").asText())
        .isEqualTo(
            "The body mass is -3 kg, but must lie between 30 and 300 kg. A mass cannot be negative:"
                + " is the minus a slip?");
  }

  @Test
  void expressions_beside_a_cell_have_values_or_reasons_of_their_own() {
    ObjectNode cell = Client.cell("int base = 20;");
    ObjectNode wanted = cell.putObject("user_expressions");
    wanted.put("good", "base + 1").put("bad", "missing").put("none", "int z9 = 1;");

    Ran ran = client.run(cell);

    JsonNode answers = ran.reply().path("user_expressions");
    assertThat(answers.path("good").path("data").path("text/plain").asText()).isEqualTo("21");
    assertThat(answers.path("good").path("status").asText()).isEqualTo("ok");
    assertThat(answers.path("bad").path("status").asText()).isEqualTo("error");
    assertThat(answers.path("bad").path("evalue").asText())
        .isEqualTo("There is no word \"missing\".");
    assertThat(answers.path("none").path("ename").asText()).isEqualTo("NoValue");
    assertThat(ran.kinds()).containsExactly("execute_input");
  }

  @Test
  void cells_behind_a_failing_one_are_given_up_and_what_comes_later_runs() {
    client.run("int effects = 0;");
    String slow = client.execute("Thread.sleep(300); throw new IllegalStateException(\"x\");");
    String first = client.execute("effects++;");
    String between = client.ask("shell", "kernel_info_request", Client.object());
    String second = client.execute("effects++;");

    assertThat(client.done(slow).status()).isEqualTo("error");
    Ran given = client.done(first);
    assertThat(given.status()).isEqualTo("aborted");
    assertThat(given.kinds()).isEmpty();
    assertThat(given.reply().path("execution_count").isInt()).isTrue();
    assertThat(client.done(between).status()).isEqualTo("ok");
    assertThat(client.done(second).status()).isEqualTo("aborted");
    assertThat(client.run("effects").result()).isEqualTo("0");
  }

  @Test
  void with_stop_on_error_off_the_queue_goes_on() {
    client.run("int ran = 0;");
    String failing =
        client.ask(
            "shell",
            "execute_request",
            Client.cell("Thread.sleep(200); int x = nope;").put("stop_on_error", false));
    String next = client.execute("ran++;");

    assertThat(client.done(failing).status()).isEqualTo("error");
    assertThat(client.done(next).status()).isEqualTo("ok");
    assertThat(client.run("ran").result()).isEqualTo("1");
  }

  @Test
  void quit_in_a_cell_leaves_the_rest_and_tells_a_console_to_go() {
    Ran ran = client.run("quit();\nSystem.out.println(\"after\");");

    assertThat(ran.reply().path("payload").get(0).path("source").asText()).isEqualTo("ask_exit");
    assertThat(ran.printed("stdout")).isEmpty();
    assertThat(ran.printed("stderr"))
        .isEqualTo("quit() ends a shell. A notebook's kernel is ended by the notebook itself.\n");
    assertThat(client.run("1 + 1").result()).isEqualTo("2");
  }

  @Test
  void completion_counts_letters_as_the_reader_sees_them() {
    // Each of the two faces is one letter to the protocol and two to Java.
    String before = "String s = \"\uD83D\uDE00\uD83D\uDE00\"; ";
    String text = before + "barb";
    int cursor = text.codePointCount(0, text.length());

    JsonNode reply =
        client.answer(
            "complete_request", at(text, Client.JSON.getNodeFactory().numberNode(cursor)));

    assertThat(texts(reply.path("matches"))).contains("barbell(", "barbellCurl(");
    assertThat(reply.path("cursor_start").asInt()).isEqualTo(cursor - 4);
    assertThat(reply.path("cursor_end").asInt()).isEqualTo(cursor);
  }

  @Test
  void nothing_to_complete_is_an_empty_list() {
    JsonNode reply = client.answer("complete_request", code("zzqq").put("cursor_pos", 4));

    assertThat(reply.path("status").asText()).isEqualTo("ok");
    assertThat(reply.path("matches")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "1180591620717411303424", "1.5", "\"3\"", "null", "[]", "-1e300"})
  void a_wild_cursor_is_answered(String cursor) throws Exception {
    JsonNode place = Client.JSON.readTree(cursor);

    JsonNode completed = client.answer("complete_request", at("kg", place));
    JsonNode inspected = client.answer("inspect_request", at("kg", place));

    assertThat(completed.path("status").asText()).isEqualTo("ok");
    assertThat(completed.path("cursor_start").asInt()).isBetween(0, 2);
    assertThat(completed.path("cursor_end").asInt()).isBetween(0, 2);
    assertThat(inspected.path("status").asText()).isEqualTo("ok");
  }

  @Test
  void a_word_is_explained_and_an_unknown_one_is_not_found() {
    JsonNode known =
        client.answer(
            "inspect_request",
            code("\"\uD83D\uDE00\"; barbell(").put("cursor_pos", 9).put("detail_level", 0));
    JsonNode unknown =
        client.answer("inspect_request", code("zzqq").put("cursor_pos", 2).put("detail_level", 1));

    assertThat(known.path("found").asBoolean()).isTrue();
    assertThat(known.path("data").path("text/plain").asText()).contains("barbell(");
    assertThat(unknown.path("found").asBoolean()).isFalse();
    assertThat(unknown.path("status").asText()).isEqualTo("ok");
  }

  @Test
  void a_text_is_complete_or_not_and_nothing_runs() {
    JsonNode open = client.answer("is_complete_request", code("if (true) {\n  int i = 0;"));
    JsonNode block = client.answer("is_complete_request", code("  for (;;) {"));

    assertThat(client.answer("is_complete_request", code("int never = 1;")).path("status").asText())
        .isEqualTo("complete");
    assertThat(open.path("status").asText()).isEqualTo("incomplete");
    assertThat(open.path("indent").asText()).isEqualTo("  ");
    assertThat(block.path("indent").asText()).isEqualTo("    ");
    assertThat(client.answer("is_complete_request", code("foo ) bar")).path("status").asText())
        .isEqualTo("invalid");
    assertThat(client.run("never").status()).isEqualTo("error");
  }

  @Test
  void an_unknown_request_is_busy_and_idle_and_gets_no_reply() {
    String id = client.ask("shell", "dance_request", Client.object().put("tune", 1));

    assertThat(client.told(id)).extracting(Heard::state).containsExactly("busy", "idle");
    assertThat(counter()).isPositive();
  }

  @Test
  void a_channel_for_widgets_is_closed_at_once() {
    String id =
        client.ask(
            "shell", "comm_open", Client.object().put("comm_id", "c1").put("target_name", "none"));
    List<Heard> told = client.told(id);

    assertThat(told).extracting(Heard::type).containsExactly("status", "comm_close", "status");
    assertThat(told.get(1).content().path("comm_id").asText()).isEqualTo("c1");
    String later = client.ask("shell", "comm_msg", Client.object().put("comm_id", "c1"));
    assertThat(client.told(later)).hasSize(2);
    JsonNode all = client.answer("comm_info_request", Client.object());
    assertThat(all.path("comms").isObject()).isTrue();
    assertThat(all.path("comms")).isEmpty();
  }

  @Test
  void a_request_without_code_is_an_error_and_not_the_end() {
    assertThat(client.run(Client.object()).status()).isEqualTo("error");
    assertThat(client.run("2").result()).isEqualTo("2");
  }
}
