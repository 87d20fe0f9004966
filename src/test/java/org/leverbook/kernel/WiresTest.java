package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.kernel.Client.Heard;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

class WiresTest {

  private static final long SEED = 20_260_101;

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

  private static void stillAnswers() {
    // Some of it was a cell, and failed: what is asked next must not wait behind it.
    client.answer("kernel_info_request", Client.object());
    assertThat(client.run("3 * 3").result()).isEqualTo("9");
    String id = client.ask("control", "kernel_info_request", Client.object());
    assertThat(client.reply("control", id).content().path("status").asText()).isEqualTo("ok");
  }

  /**
   * What the heartbeat gives back. As a notebook does, a beat that is lost is tried again with a
   * new socket: the client's library may sleep through the very start of a connection of its own (a
   * few in 3,000 on a busy machine), until something else wakes it.
   */
  private static List<byte[]> beaten(String address, List<byte[]> frames) {
    for (int left = 10; left > 0; left--) {
      try (ZContext context = new ZContext()) {
        ZMQ.Socket socket = context.createSocket(SocketType.REQ);
        socket.setReceiveTimeOut(5_000);
        socket.connect(address);
        for (int i = 0; i < frames.size(); i++) {
          socket.send(frames.get(i), i < frames.size() - 1 ? ZMQ.SNDMORE : 0);
        }
        byte[] first = socket.recv();
        if (first != null) {
          List<byte[]> back = new ArrayList<>(List.of(first));
          while (socket.hasReceiveMore()) {
            back.add(socket.recv());
          }
          return back;
        }
      }
    }
    throw new AssertionError("no heartbeat");
  }

  @Test
  void the_heartbeat_gives_back_whatever_it_gets_also_while_a_cell_runs() {
    String id = client.execute("Thread.sleep(1500);");
    byte[] large = new byte[1 << 20];
    new Random(SEED).nextBytes(large);
    String address = open.connection().address(open.connection().heartbeat());
    for (List<byte[]> frames :
        List.of(
            List.of(Client.bytes("ping")),
            List.of(new byte[0]),
            List.of(large),
            List.of(new byte[] {1}, new byte[0], new byte[] {2, 3}))) {
      List<byte[]> back = beaten(address, frames);
      assertThat(back).hasSameSizeAs(frames);
      for (int i = 0; i < frames.size(); i++) {
        assertThat(back.get(i)).isEqualTo(frames.get(i));
      }
    }
    assertThat(client.done(id).status()).isEqualTo("ok");
  }

  @Test
  void a_message_with_a_wrong_signature_has_no_effect_and_no_answer() {
    List<byte[]> body =
        client.body("bad", "execute_request", Client.object(), Client.cell("int forged = 1;"));
    for (String signature :
        List.of("", "00", Client.signature("another key", body), "ü", "A".repeat(64))) {
      List<byte[]> frames = new ArrayList<>(client.frames(body));
      frames.set(1, Client.bytes(signature));
      client.send("shell", frames);
    }

    assertThat(client.run("forged").status()).isEqualTo("error");
    assertThat(client.within(100, each -> each.answers("bad"))).isNull();
  }

  @Test
  void a_message_sent_again_does_not_run_twice() {
    client.run("int times = 0;");
    List<byte[]> frames =
        client.frames(
            client.body("twice", "execute_request", Client.object(), Client.cell("times++;")));
    client.send("shell", frames);
    client.send("shell", frames);
    client.done("twice");
    // Not before: the lines are read by threads of their own, and the first to come counts.
    client.send("control", frames);

    assertThat(client.run("times").result()).isEqualTo("1");
  }

  @Test
  void buffers_behind_a_message_are_allowed() {
    List<byte[]> frames =
        new ArrayList<>(
            client.frames(
                client.body("buffers", "execute_request", Client.object(), Client.cell("4"))));
    for (int i = 0; i < 50; i++) {
      frames.add(new byte[i]);
    }
    client.send("shell", frames);

    assertThat(client.done("buffers").result()).isEqualTo("4");
  }

  @ParameterizedTest
  @ValueSource(strings = {"shell", "control", "stdin"})
  void frames_of_any_kind_end_nothing(String line) {
    Random random = new Random(SEED);
    List<byte[]> good =
        client.frames(client.body("x", "kernel_info_request", Client.object(), Client.object()));
    for (int i = 0; i < 300; i++) {
      List<byte[]> frames = new ArrayList<>(good);
      for (int k = 0; k <= random.nextInt(3); k++) {
        int at = random.nextInt(frames.size());
        switch (random.nextInt(4)) {
          case 0 -> frames.remove(at);
          case 1 -> frames.add(at, noise(random));
          case 2 -> frames.set(at, noise(random));
          default -> frames.set(at, frames.get(random.nextInt(frames.size())));
        }
        if (frames.isEmpty()) {
          frames.add(new byte[0]);
        }
      }
      client.send(line, frames);
    }

    stillAnswers();
  }

  private static byte[] noise(Random random) {
    byte[] bytes = new byte[random.nextInt(80)];
    random.nextBytes(bytes);
    return bytes;
  }

  @ParameterizedTest
  @ValueSource(strings = {"shell", "control", "stdin"})
  void signed_nonsense_ends_nothing(String line) {
    List<String> parts =
        List.of(
            "",
            "null",
            "3",
            "[]",
            "\"text\"",
            "{",
            "{}{}",
            "NaN",
            "{\"a\":NaN}",
            "{\"n\":" + "9".repeat(3000) + "}",
            "{\"msg_type\":\"\\ud83d\",\"msg_id\":\"\\ud800\",\"session\":\"\\udc00\"}",
            "{\"msg_type\":7,\"msg_id\":[]}",
            "[".repeat(20_000),
            "{\"a\":".repeat(20_000) + "1" + "}".repeat(20_000),
            "{\"msg_type\":\"execute_request\",\"msg_id\":\"deep\"}",
            "{\"code\":{\"code\":{}},\"user_expressions\":5,\"silent\":\"yes\"}");
    for (String each : parts) {
      List<byte[]> usual =
          client.body("n", "execute_request", Client.object(), Client.cell("int odd = 1;"));
      for (int i = 0; i < 4; i++) {
        List<byte[]> body = new ArrayList<>(usual);
        body.set(i, Client.bytes(each));
        client.send(line, client.frames(body));
      }
      List<byte[]> body = new ArrayList<>(usual);
      body.set(3, new byte[] {(byte) 0xC3, (byte) 0x28, (byte) 0xFF});
      client.send(line, client.frames(body));
    }

    stillAnswers();
  }

  @Test
  void everyone_hears_what_happens_and_only_the_asker_gets_the_answer() {
    try (Client other = new Client(open.connection())) {
      String id = client.execute("\"shared\"");
      assertThat(client.done(id).result()).isEqualTo("shared");

      Heard heard = other.next(e -> e.answers(id) && e.type().equals("execute_result"));
      assertThat(heard.content().path("data").path("text/plain").asText()).isEqualTo("shared");
      assertThat(other.run("1").status()).isEqualTo("ok");
    }
  }

  @Test
  void a_client_that_dies_in_the_middle_of_its_cell_changes_nothing_for_the_others() {
    String id;
    try (Client dying = new Client(open.connection())) {
      id = dying.execute("Thread.sleep(400); int afterDeath = 11;");
      dying.next(each -> each.answers(id) && each.type().equals("execute_input"));
    }

    client.told(id);
    assertThat(client.run("afterDeath").result()).isEqualTo("11");
  }

  @Test
  void thousands_of_values_in_a_row_all_arrive() {
    Client.Ran ran = client.run("for (int i = 0; i < 5000; i++) { display(i); }");

    assertThat(ran.told("display_data")).hasSize(5000);
  }

  @Test
  void a_reader_that_takes_nothing_does_not_stop_the_others() {
    try (ZContext context = new ZContext()) {
      ZMQ.Socket lazy = null;
      byte[] heard = null;
      // Each try is a new connection: one may sleep through its start, as above.
      for (int left = 30; heard == null && left > 0; left--) {
        lazy = context.createSocket(SocketType.SUB);
        lazy.setRcvHWM(1);
        lazy.setReceiveBufferSize(4096);
        lazy.subscribe(new byte[0]);
        lazy.connect(open.connection().address(open.connection().iopub()));
        lazy.setReceiveTimeOut(1_000);
        client.run("1");
        heard = lazy.recv();
        // What is told before it has joined is not meant for it.
        if (heard == null) {
          client.run("1");
          heard = lazy.recv();
        }
      }
      assertThat(heard).isNotNull();

      String text =
          "String big = \"z\".repeat(20_000); for (int i = 0; i < 3000; i++) display(big);";
      Client.Ran ran = client.run(text);

      assertThat(ran.status()).isEqualTo("ok");
      assertThat(ran.told("display_data")).hasSizeGreaterThan(1000);
      assertThat(client.run("2 + 2").result()).isEqualTo("4");
    }
  }

  @Test
  void without_a_key_nothing_is_checked() throws Exception {
    // One kernel in a process: this one steps aside.
    open.close();
    try (Open keyless = new Open(folder, "")) {
      assertThat(keyless.client().run("8").result()).isEqualTo("8");
    } finally {
      opens();
    }
  }
}
