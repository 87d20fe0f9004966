package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Predicate;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/** A notebook's side of the messaging protocol, written from its specification. */
final class Client implements AutoCloseable {

  static final ObjectMapper JSON = new ObjectMapper();

  /** How long any answer may take on a busy machine, in milliseconds. */
  private static final long PATIENCE = 60_000;

  private static final byte[] DELIMITER = bytes("<IDS|MSG>");

  /** A message that came from the kernel. */
  record Heard(JsonNode header, JsonNode parent, JsonNode content) {
    String type() {
      return header.path("msg_type").asText();
    }

    String state() {
      return content.path("execution_state").asText();
    }

    boolean answers(String id) {
      return parent.path("msg_id").asText().equals(id);
    }
  }

  /** What came of a request: its reply, and everything told meanwhile, from busy to idle. */
  record Ran(JsonNode reply, List<Heard> told) {
    List<Heard> told(String type) {
      return told.stream().filter(each -> each.type().equals(type)).toList();
    }

    /** The kinds of what was told, without the states. */
    List<String> kinds() {
      return told.stream().map(Heard::type).filter(type -> !type.equals("status")).toList();
    }

    String status() {
      return reply.path("status").asText();
    }

    String printed(String stream) {
      StringBuilder text = new StringBuilder();
      told("stream").stream()
          .filter(each -> each.content().path("name").asText().equals(stream))
          .forEach(each -> text.append(each.content().path("text").asText()));
      return text.toString();
    }

    /** The plain text of the result; empty where there is none. */
    String result() {
      return told("execute_result").stream()
          .map(each -> each.content().path("data").path("text/plain").asText())
          .reduce("", String::concat);
    }
  }

  private final Connection connection;
  private final ZContext context = new ZContext();
  private final Map<String, ZMQ.Socket> lines;
  private final Map<String, Deque<Heard>> aside;
  private final ZMQ.Socket iopub;
  private final String session = UUID.randomUUID().toString();

  /** Connects, and waits until it hears what everyone hears. */
  Client(Connection connection) {
    this.connection = connection;
    byte[] identity = bytes(session);
    this.lines =
        Map.of(
            "shell", dealer(connection.shell(), identity),
            "control", dealer(connection.control(), identity),
            "stdin", dealer(connection.stdin(), identity));
    this.iopub = context.createSocket(SocketType.SUB);
    iopub.setHWM(0);
    iopub.subscribe(new byte[0]);
    iopub.connect(connection.address(connection.iopub()));
    this.aside =
        Map.of(
            "shell", new ArrayDeque<>(),
            "control", new ArrayDeque<>(),
            "stdin", new ArrayDeque<>(),
            "iopub", new ArrayDeque<>());
    hearSomething();
  }

  private void hearSomething() {
    long end = System.nanoTime() + PATIENCE * 1_000_000;
    while (System.nanoTime() < end) {
      String id = ask("control", "kernel_info_request", object());
      hear("control", each -> each.answers(id), PATIENCE);
      if (hear("iopub", each -> each.answers(id) && each.state().equals("idle"), 300) != null) {
        aside.get("iopub").clear();
        return;
      }
    }
    throw new AssertionError("the kernel is not heard");
  }

  private ZMQ.Socket dealer(int port, byte[] identity) {
    ZMQ.Socket socket = context.createSocket(SocketType.DEALER);
    socket.setIdentity(identity);
    socket.setHWM(0);
    socket.connect(connection.address(port));
    return socket;
  }

  static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  static ObjectNode object() {
    return JSON.createObjectNode();
  }

  /** The four signed frames of a request. */
  List<byte[]> body(String id, String type, JsonNode parent, JsonNode content) {
    ObjectNode header = object();
    header.put("msg_id", id).put("session", session).put("username", "coach");
    header.put("date", Instant.now().toString()).put("msg_type", type).put("version", "5.3");
    return List.of(
        bytes(header.toString()), bytes(parent.toString()), bytes("{}"), bytes(content.toString()));
  }

  /** The signature of frames by a key, as the specification says. */
  static String signature(String key, List<byte[]> body) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(bytes(key), "HmacSHA256"));
      body.forEach(mac::update);
      return HexFormat.of().formatHex(mac.doFinal());
    } catch (GeneralSecurityException e) {
      throw new AssertionError(e);
    }
  }

  /** All frames of a signed message. */
  List<byte[]> frames(List<byte[]> body) {
    List<byte[]> frames = new ArrayList<>();
    frames.add(DELIMITER);
    frames.add(bytes(connection.key().isEmpty() ? "" : signature(connection.key(), body)));
    frames.addAll(body);
    return frames;
  }

  /** Sends frames as they are. */
  void send(String line, List<byte[]> frames) {
    ZMQ.Socket socket = lines.get(line);
    for (int i = 0; i < frames.size(); i++) {
      socket.send(frames.get(i), i < frames.size() - 1 ? ZMQ.SNDMORE : 0);
    }
  }

  /** Sends a request and gives its id. */
  String ask(String line, String type, JsonNode content) {
    String id = UUID.randomUUID().toString();
    send(line, frames(body(id, type, object(), content)));
    return id;
  }

  /** A cell as a notebook sends it. */
  static ObjectNode cell(String code) {
    ObjectNode content = object();
    content.put("code", code).put("silent", false).put("store_history", true);
    content.putObject("user_expressions");
    return content.put("allow_stdin", false).put("stop_on_error", true);
  }

  String execute(String code) {
    return ask("shell", "execute_request", cell(code));
  }

  Ran run(String code) {
    return done(execute(code));
  }

  Ran run(ObjectNode content) {
    return done(ask("shell", "execute_request", content));
  }

  /** What came of a request on the shell line. */
  Ran done(String id) {
    return new Ran(reply("shell", id).content(), told(id));
  }

  JsonNode answer(String type, ObjectNode content) {
    return done(ask("shell", type, content)).reply();
  }

  Heard reply(String line, String id) {
    Heard reply = hear(line, each -> each.answers(id), PATIENCE);
    assertThat(reply).as("the answer on the " + line + " line").isNotNull();
    return reply;
  }

  /** Everything told about a request, to the end of it. */
  List<Heard> told(String id) {
    List<Heard> told = new ArrayList<>();
    while (told.isEmpty() || !told.get(told.size() - 1).state().equals("idle")) {
      Heard next = hear("iopub", each -> each.answers(id), PATIENCE);
      assertThat(next).as("the end of what is told").isNotNull();
      told.add(next);
    }
    return told;
  }

  /** The next thing told that fits. */
  Heard next(Predicate<Heard> wanted) {
    Heard heard = hear("iopub", wanted, PATIENCE);
    assertThat(heard).as("something told").isNotNull();
    return heard;
  }

  /** What is told within a short time that belongs to a request. */
  Heard within(long milliseconds, Predicate<Heard> wanted) {
    return hear("iopub", wanted, milliseconds);
  }

  /** The kernel asks for input. */
  Heard asked() {
    Heard asked = hear("stdin", each -> each.type().equals("input_request"), PATIENCE);
    assertThat(asked).as("a question for input").isNotNull();
    return asked;
  }

  void type(Heard asked, String value) {
    List<byte[]> body =
        body(
            UUID.randomUUID().toString(),
            "input_reply",
            asked.header(),
            object().put("value", value).put("status", "ok"));
    send("stdin", frames(body));
  }

  private Heard hear(String line, Predicate<Heard> wanted, long patience) {
    Deque<Heard> kept = aside.get(line);
    for (Heard each : List.copyOf(kept)) {
      if (wanted.test(each)) {
        kept.remove(each);
        return each;
      }
    }
    ZMQ.Socket socket = line.equals("iopub") ? iopub : lines.get(line);
    long end = System.nanoTime() + patience * 1_000_000;
    while (true) {
      long left = (end - System.nanoTime()) / 1_000_000;
      socket.setReceiveTimeOut((int) Math.max(0, left));
      byte[] first = socket.recv();
      if (first == null) {
        return null;
      }
      List<byte[]> frames = new ArrayList<>(List.of(first));
      while (socket.hasReceiveMore()) {
        frames.add(socket.recv());
      }
      Heard heard = read(frames);
      if (wanted.test(heard)) {
        return heard;
      }
      kept.add(heard);
    }
  }

  private Heard read(List<byte[]> frames) {
    int at = 0;
    while (!java.util.Arrays.equals(frames.get(at), DELIMITER)) {
      at++;
    }
    List<byte[]> body = frames.subList(at + 2, at + 6);
    String expected = connection.key().isEmpty() ? "" : signature(connection.key(), body);
    assertThat(new String(frames.get(at + 1), StandardCharsets.US_ASCII)).isEqualTo(expected);
    try {
      return new Heard(
          JSON.readTree(body.get(0)), JSON.readTree(body.get(1)), JSON.readTree(body.get(3)));
    } catch (java.io.IOException e) {
      throw new AssertionError(e);
    }
  }

  @Override
  public void close() {
    context.setLinger(0);
    context.close();
  }
}
