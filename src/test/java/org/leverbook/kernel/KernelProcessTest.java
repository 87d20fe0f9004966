package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The kernel as Jupyter starts it: a process of its own. */
class KernelProcessTest {

  @TempDir private Path folder;
  private final List<Process> started = new ArrayList<>();

  @AfterEach
  void endAll() {
    started.forEach(Process::destroyForcibly);
  }

  private Path written(ObjectNode file) throws IOException {
    return Files.writeString(folder.resolve("connection.json"), file.toString());
  }

  private Process start(Path file, Map<String, String> environment) throws IOException {
    Process process = KernelProcess.start(folder, List.of(), file, environment);
    started.add(process);
    return process;
  }

  private String said() throws IOException {
    return KernelProcess.said(folder);
  }

  private static boolean ends(Process process) throws InterruptedException {
    return process.waitFor(60, TimeUnit.SECONDS);
  }

  private void refuses(ObjectNode file, String sentence) throws Exception {
    Path path = written(file);
    Process process = start(path, Map.of());
    assertThat(ends(process)).isTrue();
    assertThat(process.exitValue()).isEqualTo(1);
    assertThat(said()).isEqualTo(sentence.replace("FILE", path.toString()));
  }

  @Test
  void a_kernel_is_shut_down_and_another_takes_the_same_connection_file() throws Exception {
    Connection connection = Open.connection(Open.KEY);
    Path file = written(KernelProcess.file(connection));
    for (int i = 0; i < 3; i++) {
      Process process = start(file, Map.of());
      try (Client client = new Client(connection)) {
        assertThat(client.run("1 + " + i).result()).isEqualTo(String.valueOf(1 + i));
        String id = client.ask("control", "shutdown_request", Client.object().put("restart", true));
        var reply = client.reply("control", id).content();
        assertThat(reply.path("status").asText()).isEqualTo("ok");
        assertThat(reply.path("restart").asBoolean()).isTrue();
        assertThat(client.told(id)).hasSize(2);
        assertThat(ends(process)).isTrue();
        assertThat(process.exitValue()).isZero();
      }
    }
    assertThat(said()).isEmpty();
  }

  @Test
  void a_kernel_with_a_busy_cell_and_stubborn_threads_ends_all_the_same() throws Exception {
    Connection connection = Open.connection(Open.KEY);
    Process process = start(written(KernelProcess.file(connection)), Map.of());
    try (Client client = new Client(connection)) {
      String busy =
          client.execute(
              "new Thread(() -> { while (true) { try { Thread.sleep(1000); }"
                  + " catch (InterruptedException e) { } } }).start();"
                  + " Runtime.getRuntime().addShutdownHook(new Thread(() -> { while (true) { } }));"
                  + " System.out.print(\"on\"); while (true) { }");
      client.next(each -> each.answers(busy) && each.type().equals("stream"));

      long asked = System.nanoTime();
      client.reply("control", client.ask("control", "shutdown_request", Client.object()));

      assertThat(ends(process)).isTrue();
      // Jupyter sends a signal after 2.5 s; a busy machine may take longer than a free one.
      assertThat((System.nanoTime() - asked) / 1e9).isLessThan(15);
    }
  }

  @Test
  void an_interrupt_signal_stops_the_cell_and_keeps_what_was_there() throws Exception {
    assumeFalse(isWindows(), "Windows has no interrupt signal");
    Connection connection = Open.connection(Open.KEY);
    Process process = start(written(KernelProcess.file(connection)), Map.of());
    try (Client client = new Client(connection)) {
      client.run("int kept = 12;");
      String busy = client.execute("System.out.print(\"on\"); while (true) { }");
      client.next(each -> each.answers(busy) && each.type().equals("stream"));

      signal(process, "-INT");

      assertThat(client.done(busy).reply().path("ename").asText()).isEqualTo("Stopped");
      signal(process, "-INT");
      // On a busy machine the signal may be heard as late as in the next cell.
      client.run("kept");
      assertThat(client.run("kept").result()).isEqualTo("12");
    }
  }

  private static void signal(Process process, String signal) throws Exception {
    new ProcessBuilder("kill", signal, String.valueOf(process.pid())).start().waitFor();
  }

  private static boolean isWindows() {
    return System.getProperty("os.name").startsWith("Windows");
  }

  @Test
  void the_kernel_ends_with_the_process_that_started_it() throws Exception {
    assumeFalse(isWindows(), "Windows names its processes otherwise there");
    Process parent = new ProcessBuilder("sleep", "600").start();
    started.add(parent);
    Connection connection = Open.connection(Open.KEY);
    Process process =
        start(
            written(KernelProcess.file(connection)),
            Map.of("JPY_PARENT_PID", String.valueOf(parent.pid())));
    try (Client client = new Client(connection)) {
      assertThat(client.run("1").status()).isEqualTo("ok");
      assertThat(process.isAlive()).isTrue();

      parent.destroyForcibly().waitFor();

      assertThat(ends(process)).isTrue();
    }
  }

  @Test
  void a_taken_port_is_said_in_a_sentence() throws Exception {
    Connection connection = Open.connection(Open.KEY);
    try (ServerSocket taken =
        new ServerSocket(connection.shell(), 1, InetAddress.getByName("127.0.0.1"))) {
      refuses(
          KernelProcess.file(connection),
          "The kernel cannot listen at 127.0.0.1:"
              + taken.getLocalPort()
              + " (its shell port): another program listens there already, or the address is not"
              + " this machine's. Start the kernel again; Jupyter then picks other ports.");
    }
  }

  @Test
  void an_address_that_others_reach_is_refused_unless_it_is_wanted() throws Exception {
    ObjectNode file = KernelProcess.file(Open.connection(Open.KEY)).put("ip", "0.0.0.0");
    refuses(
        file,
        "The connection file FILE names the address \"0.0.0.0\", which other machines may reach:"
            + " whoever has the key could run code here. Use 127.0.0.1, or add --open-to-network"
            + " if that is what you want.");

    assertThat(Connection.read(written(file), true).ip()).isEqualTo("0.0.0.0");
  }

  @Test
  void connection_files_that_cannot_be_used_are_refused_with_the_reason() throws Exception {
    ObjectNode good = KernelProcess.file(Open.connection(Open.KEY));
    refuses(
        good.deepCopy().put("signature_scheme", "hmac-md5"),
        "The connection file FILE asks for signatures of the kind \"hmac-md5\"; the kernel signs"
            + " with hmac-sha256 only.");
    assertRefused(
        good.deepCopy().put("transport", "ipc"),
        "The connection file FILE asks for the transport \"ipc\"; the kernel speaks tcp only.");
    assertRefused(
        good.deepCopy().put("hb_port", 70_000),
        "The connection file FILE needs hb_port between 1 and 65535, got 70000.");
    assertRefused(
        good.deepCopy().<ObjectNode>without("shell_port"),
        "The connection file FILE needs shell_port between 1 and 65535; it has none.");
    assertRefused(
        good.deepCopy().put("ip", "no.such.machine.invalid"),
        "The connection file FILE names the address \"no.such.machine.invalid\", which is unknown.");
    Path none = folder.resolve("none.json");
    assertThatThrownBy(() -> Connection.read(none, false))
        .hasMessage("The connection file " + none + " cannot be read: there is no such file.");
    Path text = Files.writeString(folder.resolve("text.json"), "hello");
    assertThatThrownBy(() -> Connection.read(text, false))
        .hasMessage("The connection file " + text + " cannot be read: it is no JSON.");
  }

  private void assertRefused(ObjectNode file, String sentence) throws IOException {
    Path path = written(file);
    assertThatThrownBy(() -> Connection.read(path, false))
        .hasMessage(sentence.replace("FILE", path.toString()));
  }
}
