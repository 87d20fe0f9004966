package org.leverbook.kernel;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.zeromq.SocketType;
import org.zeromq.ZContext;
import org.zeromq.ZMQ;

/**
 * A short notebook session that nobody sees, which loads what the first minutes of a real one load.
 * Played when the archive of loaded classes is made.
 */
public final class KernelPractice {

  private static final String LIFT =
      "hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(140))).start()";

  private static final List<String> CELLS =
      List.of("1 + 1", "var start = " + LIFT, "start.moments()", "start.picture()", "hing()");

  private static final int PATIENCE = 30_000;

  private final Wire wire;
  private final ZMQ.Socket shell;

  private KernelPractice(Connection connection, ZContext context) {
    this.wire = new Wire(new Seal(connection.secret()), new Log(nowhere()));
    this.shell = context.createSocket(SocketType.DEALER);
    shell.setReceiveTimeOut(PATIENCE);
    shell.connect(connection.address(connection.shell()));
  }

  /**
   * Plays the session and returns when it is over.
   *
   * @throws IOException if there is no free port
   */
  public static void run() throws IOException {
    Connection connection = connection();
    try (Kernel kernel = Kernel.start(connection);
        ZContext context = new ZContext()) {
      new KernelPractice(connection, context).play();
      kernel.closeSession();
    }
  }

  private void play() {
    ask("kernel_info_request", Json.object());
    for (String cell : CELLS) {
      ObjectNode content = Json.object();
      content.put("code", cell).put("silent", false).put("store_history", true);
      ask("execute_request", content);
    }
    for (String help : List.of("complete_request", "inspect_request")) {
      ask(help, Json.object().put("code", "barb").put("cursor_pos", 4).put("detail_level", 0));
    }
    ask("is_complete_request", Json.object().put("code", "barbell("));
  }

  /** Sends a request and waits for its reply, or no longer than is worth it. */
  private void ask(String type, ObjectNode content) {
    List<byte[]> frames = wire.write(List.of(), type, Json.object(), content);
    for (int i = 0; i < frames.size(); i++) {
      shell.send(frames.get(i), i < frames.size() - 1 ? ZMQ.SNDMORE : 0);
    }
    while (shell.recv() != null && shell.hasReceiveMore()) {
      continue;
    }
  }

  private static Connection connection() throws IOException {
    List<ServerSocket> held = new ArrayList<>();
    try {
      for (int i = 0; i < 5; i++) {
        held.add(new ServerSocket(0, 1, InetAddress.getLoopbackAddress()));
      }
      int[] ports = held.stream().mapToInt(ServerSocket::getLocalPort).toArray();
      String key = UUID.randomUUID().toString();
      return new Connection("127.0.0.1", ports[0], ports[1], ports[2], ports[3], ports[4], key);
    } finally {
      for (ServerSocket each : held) {
        each.close();
      }
    }
  }

  private static PrintStream nowhere() {
    return new PrintStream(PrintStream.nullOutputStream(), false, StandardCharsets.UTF_8);
  }
}
