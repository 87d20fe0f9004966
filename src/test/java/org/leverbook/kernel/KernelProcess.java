package org.leverbook.kernel;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.leverbook.HearingCtrlC;

/** A kernel as Jupyter starts it: a process of its own with a connection file. */
final class KernelProcess {

  private KernelProcess() {}

  /** What Jupyter writes into a connection file. */
  static ObjectNode file(Connection connection) {
    ObjectNode file = Client.object();
    file.put("transport", "tcp").put("ip", connection.ip()).put("key", connection.key());
    file.put("shell_port", connection.shell()).put("iopub_port", connection.iopub());
    file.put("stdin_port", connection.stdin()).put("control_port", connection.control());
    file.put("hb_port", connection.heartbeat()).put("signature_scheme", "hmac-sha256");
    return file.put("kernel_name", "leverbook").put("something_new", true);
  }

  /**
   * Starts one; what it says goes to {@code out.txt} and {@code err.txt} in the folder.
   *
   * @param folder where its history and what it says are kept
   * @param java options of its Java
   * @param file its connection file
   * @param environment more environment variables
   */
  static Process start(Path folder, List<String> java, Path file, Map<String, String> environment)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(java);
    command.add("-Dleverbook.home=" + folder.resolve("home"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), "org.leverbook.Main"));
    command.addAll(List.of("kernel", "start", "--connection", file.toString()));
    ProcessBuilder builder = new ProcessBuilder(hearing(command));
    builder.environment().remove("JPY_PARENT_PID");
    builder.environment().putAll(environment);
    builder.redirectOutput(folder.resolve("out.txt").toFile());
    builder.redirectError(folder.resolve("err.txt").toFile());
    return builder.start();
  }

  private static List<String> hearing(List<String> command) throws IOException {
    try {
      return HearingCtrlC.of(command);
    } catch (InterruptedException e) {
      throw new IOException(e);
    }
  }

  /** What it said about itself. */
  static String said(Path folder) throws IOException {
    return Files.readString(folder.resolve("err.txt")).strip();
  }
}
