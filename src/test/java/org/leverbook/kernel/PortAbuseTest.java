package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.abuse.Campaign;
import org.leverbook.abuse.Mangled;
import org.leverbook.kernel.Client.Heard;

/** Mangled messages on every line of a kernel, most of them well signed: it goes on. */
class PortAbuseTest {

  private static final double SHARE = 0.02;

  /** After so many the kernel must answer. */
  private static final int A_ROUND = 40;

  private static final List<String> TYPES =
      List.of(
          "execute_request",
          "complete_request",
          "inspect_request",
          "is_complete_request",
          "history_request",
          "kernel_info_request",
          "comm_info_request",
          "comm_open",
          "comm_msg",
          "comm_close",
          "interrupt_request",
          "input_reply",
          "debug_request",
          "usage_request",
          "no_such",
          "");

  @TempDir private Path folder;

  static List<Long> seeds() {
    return Campaign.seeds(SHARE);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void mangled_messages_leave_the_kernel_answering_and_its_variables_there(long seed)
      throws Exception {
    Campaign campaign = new Campaign("messages");
    Random random = new Random(seed);
    Mangled mangled = new Mangled(random);
    PrintStream before = System.err;
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    System.setErr(new PrintStream(said, true, StandardCharsets.UTF_8));
    try (Open open = new Open(folder)) {
      Client client = open.client();
      client.run("int kept = 41;");
      int size = Campaign.perSeed(SHARE);
      for (int i = 0; i < size; i++) {
        switch (random.nextInt(20)) {
          case 0 -> raw(open.connection(), random);
          case 1 -> client.send(line(random), frames(random));
          default -> client.send(line(random), signed(client, mangled, random, campaign));
        }
        campaign.count("sent");
        if (i % A_ROUND == A_ROUND - 1 || i == size - 1) {
          answers(client, campaign);
        }
      }
      assertThat(client.run("kept + 1").result()).isEqualTo("42");
    } finally {
      System.setErr(before);
    }
    String log = said.toString(StandardCharsets.UTF_8);
    log.lines()
        .filter(line -> line.contains(" failed: ") || line.contains("\tat "))
        .forEach(line -> campaign.complain(line.replaceAll("\\d+", "N"), line));
    campaign.tell(seed);
    assertThat(campaign.complaints()).isEmpty();
  }

  private static void answers(Client client, Campaign campaign) {
    String id = client.ask("control", "kernel_info_request", Client.object());
    client.reply("control", id);
    Client.Ran ran = client.run("6 * 7");
    // An interrupt that came before may have been meant for this very cell.
    if (!ran.result().equals("42") && !client.run("6 * 7").result().equals("42")) {
      campaign.complain("a round later the kernel does not answer", ran.reply().toString());
    }
    // Whatever was told of the others has been heard by now: no stack trace among it.
    Heard heard;
    while ((heard = client.within(1, each -> true)) != null) {
      String told = heard.content().toString();
      if (told.contains("\\tat ") || told.contains("java.lang.")) {
        campaign.complain("a stack trace is told", told.substring(0, Math.min(300, told.length())));
      }
    }
  }

  private static String line(Random random) {
    return List.of("shell", "shell", "shell", "control", "stdin").get(random.nextInt(5));
  }

  private static List<byte[]> frames(Random random) {
    List<byte[]> frames = new ArrayList<>();
    for (int i = random.nextInt(9); i >= 0; i--) {
      byte[] frame = new byte[random.nextInt(200)];
      random.nextBytes(frame);
      frames.add(random.nextInt(4) == 0 ? Client.bytes("<IDS|MSG>") : frame);
    }
    return frames;
  }

  private static List<byte[]> signed(
      Client client, Mangled mangled, Random random, Campaign campaign) {
    String type = TYPES.get(random.nextInt(TYPES.size()));
    String id = "abuse-" + random.nextLong();
    List<byte[]> body = new ArrayList<>(client.body(id, type, Client.object(), content(random)));
    int part = random.nextInt(6);
    if (part < 4) {
      body.set(part, mangled.bytes(body.get(part)));
    } else {
      // The form stays whole; a value is of another kind.
      body.set(3, Client.bytes(swapped(content(random), random).toString()));
    }
    campaign.count(type.isEmpty() ? "no type" : type);
    return client.frames(body);
  }

  private static ObjectNode content(Random random) {
    ObjectNode content = Client.cell("int x" + random.nextInt(9) + " = 1 + 1");
    content.put("cursor_pos", random.nextInt(20)).put("detail_level", random.nextInt(2));
    content.put("hist_access_type", List.of("tail", "range", "search").get(random.nextInt(3)));
    content.put("n", random.nextInt(9)).put("start", 1).put("stop", 3).put("session", 0);
    content.put("pattern", "*1*").put("unique", true).put("output", true).put("raw", true);
    content.put("comm_id", "c").put("target_name", "t").putObject("data");
    content.putObject("user_expressions").put("a", "1 + 1");
    return content;
  }

  private static ObjectNode swapped(ObjectNode content, Random random) {
    List<String> names = new ArrayList<>();
    content.fieldNames().forEachRemaining(names::add);
    String name = names.get(random.nextInt(names.size()));
    switch (random.nextInt(8)) {
      case 0 -> content.putNull(name);
      case 1 -> content.put(name, Integer.MIN_VALUE);
      case 2 -> content.put(name, 1e300);
      case 3 -> content.put(name, "((((*?[\\");
      case 4 -> content.putArray(name).addNull().add(7);
      case 5 -> content.putObject(name).putNull("x");
      case 6 -> content.remove(name);
      default -> content.put(name, Long.MAX_VALUE);
    }
    return content;
  }

  /** Bytes on a port that are no messages at all, and a door slammed. */
  private static void raw(Connection connection, Random random) throws Exception {
    int[] ports = {
      connection.shell(),
      connection.control(),
      connection.stdin(),
      connection.iopub(),
      connection.heartbeat()
    };
    byte[] junk = new byte[1 + random.nextInt(500)];
    random.nextBytes(junk);
    if (random.nextBoolean()) {
      // The greeting of the transport, then nonsense.
      byte[] greeting = {(byte) 0xff, 0, 0, 0, 0, 0, 0, 0, 1, 0x7f, 3};
      System.arraycopy(greeting, 0, junk, 0, Math.min(junk.length, greeting.length));
    }
    try (Socket socket =
        new Socket(InetAddress.getByName("127.0.0.1"), ports[random.nextInt(ports.length)])) {
      OutputStream out = socket.getOutputStream();
      out.write(junk);
      out.flush();
    }
  }
}
