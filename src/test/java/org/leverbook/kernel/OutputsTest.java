package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.display.Meter;
import org.leverbook.kernel.Client.Heard;
import org.leverbook.kernel.Client.Ran;

class OutputsTest {

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

  private static String printedLater(String id) {
    return client
        .next(each -> each.answers(id) && each.type().equals("stream"))
        .content()
        .path("text")
        .asText();
  }

  private static JsonNode data(Heard told) {
    return told.content().path("data");
  }

  @Test
  void both_streams_come_in_the_order_they_were_printed() {
    Ran ran =
        client.run(
            "System.out.println(\"one\"); System.err.println(\"two\");"
                + " System.out.println(\"drei: ü, N·m, \uD83D\uDE00\");");

    assertThat(ran.kinds()).containsExactly("execute_input", "stream", "stream", "stream");
    assertThat(ran.printed("stdout")).isEqualTo("one\ndrei: ü, N·m, \uD83D\uDE00\n");
    assertThat(ran.printed("stderr")).isEqualTo("two\n");
  }

  @Test
  void a_thousand_lines_are_few_messages() {
    Ran ran = client.run("for (int i = 0; i < 5000; i++) { System.out.println(i); }");

    assertThat(ran.printed("stdout").lines()).hasSize(5000);
    // Some 24 kB: one message, or a few more where the machine is slow.
    assertThat(ran.told("stream")).hasSizeLessThan(40);
  }

  @Test
  void streams_that_take_turns_stay_few_messages_too() {
    Ran ran =
        client.run(
            "for (int i = 0; i < 2000; i++) { System.out.println(i); System.err.println(i); }");

    assertThat(ran.printed("stdout").lines()).hasSize(2000);
    assertThat(ran.printed("stderr").lines()).hasSize(2000);
    assertThat(ran.told("stream")).hasSizeLessThan(800);
  }

  @Test
  void text_appears_while_the_cell_runs() {
    String id =
        client.execute(
            "System.out.print(\"early\"); for (int i = 0; i < 600; i++) { Thread.sleep(100); }");

    assertThat(printedLater(id)).isEqualTo("early");
    String stop = client.ask("control", "interrupt_request", Client.object());
    client.reply("control", stop);
    assertThat(client.done(id).status()).isEqualTo("error");
  }

  @Test
  void a_letter_printed_byte_by_byte_arrives_whole() {
    Ran ran =
        client.run(
            "for (byte b : \"ü\uD83D\uDE00\".getBytes(java.nio.charset.StandardCharsets.UTF_8)) {"
                + " System.out.write(b); System.out.flush(); Thread.sleep(150); }");

    assertThat(ran.printed("stdout")).isEqualTo("ü\uD83D\uDE00");
  }

  @Test
  void a_thread_that_outlives_its_cell_speaks_under_it() {
    String starter =
        client.execute(
            "var gate = new java.util.concurrent.CountDownLatch(1); new Thread(() -> {"
                + " try { gate.await(); } catch (InterruptedException e) { return; }"
                + " System.out.println(\"late\"); }).start();");
    client.done(starter);

    client.run("gate.countDown(); Thread.sleep(50); int other = 1;");

    assertThat(printedLater(starter)).isEqualTo("late\n");
  }

  @Test
  void a_pools_thread_speaks_under_the_cell_that_handed_in_the_work() {
    // The pool's one thread is made by the first cell and serves all three.
    client.done(
        client.execute(
            "var pool = java.util.concurrent.Executors.newFixedThreadPool(1);"
                + " pool.submit(() -> 0).get();"
                + " var latch = new java.util.concurrent.CountDownLatch(1);"));
    String second =
        client.execute(
            "pool.submit(() -> { latch.await(); System.out.println(\"2\"); return 0; });");
    client.done(second);

    client.run("latch.countDown(); int third = 3;");

    assertThat(printedLater(second)).isEqualTo("2\n");
    client.run("pool.shutdown();");
  }

  @Test
  void the_machines_shared_pool_speaks_under_the_right_cell_too() {
    String text =
        "java.util.concurrent.CompletableFuture.runAsync(() -> { try { go%d.await(); }"
            + " catch (InterruptedException e) { } System.out.println(\"%d\"); });";
    client.run(
        "var go1 = new java.util.concurrent.CountDownLatch(1);"
            + " var go2 = new java.util.concurrent.CountDownLatch(1);");
    String one = client.execute(String.format(text, 1, 1));
    client.done(one);
    String two = client.execute(String.format(text, 2, 2));
    client.done(two);

    client.run("go1.countDown(); go2.countDown();");

    assertThat(printedLater(one)).isEqualTo("1\n");
    assertThat(printedLater(two)).isEqualTo("2\n");
  }

  @Test
  void a_parallel_stream_prints_under_its_cell() {
    client.run("int warm = 1;");
    Ran ran =
        client.run("IntStream.range(0, 64).parallel().forEach(i -> System.out.println(\"p\"));");

    assertThat(ran.printed("stdout").lines()).hasSize(64);
    Ran plain = client.run("IntStream.range(0, 64).parallel().forEach(System.out::println);");
    assertThat(plain.printed("stdout").lines()).hasSize(64);
  }

  @Test
  void a_flood_of_text_is_cut_with_a_note_and_the_kernel_goes_on() {
    Ran ran =
        client.run(
            "String line = \"x\".repeat(999);"
                + " for (int i = 0; i < 100_000; i++) { System.out.println(line); }");

    assertThat(ran.status()).isEqualTo("ok");
    assertThat(ran.printed("stdout").length()).isEqualTo(Printed.MOST);
    assertThat(ran.printed("stderr").strip())
        .isEqualTo(
            "This cell has printed more than 2 MB; the rest is not shown. Write so much to a file,"
                + " or show less.");
    assertThat(client.run("System.out.print(3)").printed("stdout")).isEqualTo("3");
  }

  @Test
  void one_text_larger_than_all_that_is_shown_is_cut_too() {
    Ran ran = client.run("System.out.print(\"y\".repeat(30_000_000));");

    assertThat(ran.printed("stdout").length()).isEqualTo(Printed.MOST);
    assertThat(ran.told("stream").size()).isLessThan(50);
  }

  @Test
  void a_value_shown_on_the_way_can_be_replaced_in_its_place() {
    Ran ran = client.run("var place = display(1); place.update(2); place.update(3)");

    assertThat(ran.kinds())
        .containsExactly(
            "execute_input", "display_data", "update_display_data", "update_display_data");
    String first = place(ran.told().get(2));
    assertThat(first).isNotEmpty();
    assertThat(ran.told("update_display_data")).extracting(OutputsTest::place).containsOnly(first);
    Ran later = client.run("place.update(4); display(5)");
    assertThat(place(later.told("update_display_data").get(0))).isEqualTo(first);
    assertThat(place(later.told("display_data").get(0))).isNotEqualTo(first);
  }

  private static String place(Heard told) {
    return told.content().path("transient").path("display_id").asText();
  }

  @Test
  void a_table_comes_as_a_table_and_a_picture_as_drawing_and_image() {
    client.run(
        "var pull = hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(140))).start();");

    JsonNode table = data(client.run("pull.moments()").told("execute_result").get(0));
    JsonNode picture = data(client.run("pull.picture()").told("execute_result").get(0));

    assertThat(table.path("text/html").asText()).startsWith("<table>").contains("N·m");
    assertThat(table.path("text/plain").asText()).contains("N·m");
    assertThat(picture.path("image/svg+xml").asText()).startsWith("<svg");
    assertThat(picture.path("text/html").asText())
        .startsWith("<img ")
        .contains("alt=\"")
        .contains("src=\"data:image/svg+xml;base64,");
    byte[] png = Base64.getDecoder().decode(picture.path("image/png").asText());
    assertThat(List.of(png[1], png[2], png[3])).containsExactly((byte) 'P', (byte) 'N', (byte) 'G');
    assertThat(picture.path("text/plain").asText()).startsWith("picture: ");
  }

  @Test
  void a_value_that_is_refused_when_it_is_shown_is_an_error_with_its_sentence() {
    Ran ran =
        client.run(
            "int before = 1;\n"
                + "new org.leverbook.display.Shown() { public String text() {"
                + " throw new org.leverbook.quantity.Refused(\"The pad is too high by 4 cm.\"); } }");

    assertThat(ran.kinds()).containsExactly("execute_input", "error");
    assertThat(ran.reply().path("ename").asText()).isEqualTo("Refused");
    assertThat(ran.reply().path("evalue").asText()).isEqualTo("The pad is too high by 4 cm.");
    assertThat(ran.reply().path("traceback").get(0).asText()).contains("2:1: The pad is too high");
    assertThat(client.run("before").result()).isEqualTo("1");
  }

  @Test
  void a_huge_value_is_cut() {
    Ran ran =
        client.run(
            "new org.leverbook.display.Shown() { public String text() {"
                + " return \"z\".repeat(5_000_000); } }");

    assertThat(ran.result().length()).isLessThan(600_000);
    assertThat(ran.result()).endsWith(" … (5,000,000 characters in all)");
  }

  @Test
  void long_work_tells_its_progress_in_one_place() {
    assertThat(Meter.of("x", 1)).isNotNull();
    Ran ran =
        client.run(
            "try (var meter = org.leverbook.display.Meter.of(\"sweep over hip height\", 20)) {"
                + " for (int i = 0; i < 20; i++) { Thread.sleep(100); meter.step(); } }");

    assertThat(ran.told("display_data")).hasSize(1);
    assertThat(ran.told("update_display_data")).isNotEmpty();
    assertThat(data(ran.told("display_data").get(0)).path("text/html").asText())
        .contains("<progress max=\"100\"");
    List<Heard> updates = ran.told("update_display_data");
    assertThat(data(updates.get(updates.size() - 1)).path("text/plain").asText())
        .matches("sweep over hip height: over after \\d+\\.\\d s");
    assertThat(updates)
        .extracting(OutputsTest::place)
        .containsOnly(place(ran.told("display_data").get(0)));
  }

  @Test
  void what_the_user_should_know_is_told_beside_a_good_result() {
    client.run("double scale() { return 2; }");
    client.run("var scaled = scale();");
    Ran ran = client.run("int scale() { return 3; }");

    assertThat(ran.status()).isEqualTo("ok");
    assertThat(ran.printed("stderr")).contains("scale");
  }
}
