package org.leverbook.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.leverbook.quantity.Refused;

/**
 * Where the kernel listens, as the connection file of the messaging protocol says.
 *
 * @param ip the address of this machine to listen on
 * @param shell the port for requests that wait for their turn
 * @param iopub the port where everyone sees what happens
 * @param stdin the port where the kernel asks for input
 * @param control the port for requests that do not wait
 * @param heartbeat the port that gives back what it gets
 * @param key the secret that messages are signed with; empty where they are not
 */
public record Connection(
    String ip, int shell, int iopub, int stdin, int control, int heartbeat, String key) {

  /**
   * Reads a connection file.
   *
   * @param file the file
   * @param beyond whether an address that other machines reach is fine
   * @return what it says
   * @throws Refused if it cannot be read, lacks something, or asks for what the kernel does not do
   */
  public static Connection read(Path file, boolean beyond) {
    JsonNode said;
    try {
      said = Json.read(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new Refused("The connection file " + file + " cannot be read: " + reason(e) + ".", e);
    }
    Connection connection =
        new Connection(
            Json.text(said, "ip"),
            port(file, said, "shell_port"),
            port(file, said, "iopub_port"),
            port(file, said, "stdin_port"),
            port(file, said, "control_port"),
            port(file, said, "hb_port"),
            Json.text(said, "key"));
    String transport = Json.text(said, "transport");
    if (!transport.isEmpty() && !transport.equals("tcp")) {
      throw new Refused(
          "The connection file "
              + file
              + " asks for the transport \""
              + transport
              + "\"; the kernel speaks tcp only.");
    }
    String scheme = Json.text(said, "signature_scheme");
    if (!connection.key().isEmpty() && !scheme.isEmpty() && !scheme.equals("hmac-sha256")) {
      throw new Refused(
          "The connection file "
              + file
              + " asks for signatures of the kind \""
              + scheme
              + "\"; the kernel signs with hmac-sha256 only.");
    }
    connection.checkAddress(file, beyond);
    return connection;
  }

  private static String reason(IOException e) {
    return e instanceof java.nio.file.NoSuchFileException
        ? "there is no such file"
        : e instanceof com.fasterxml.jackson.core.JsonProcessingException
            ? "it is no JSON"
            : String.valueOf(e.getMessage());
  }

  private static int port(Path file, JsonNode said, String name) {
    JsonNode port = said.path(name);
    if (!port.isInt() || port.intValue() < 1 || port.intValue() > 65_535) {
      throw new Refused(
          "The connection file "
              + file
              + " needs "
              + name
              + " between 1 and 65535"
              + (port.isMissingNode() ? "; it has none." : ", got " + port + "."));
    }
    return port.intValue();
  }

  private void checkAddress(Path file, boolean beyond) {
    InetAddress address;
    try {
      address = InetAddress.getByName(ip);
    } catch (UnknownHostException e) {
      throw new Refused(
          "The connection file " + file + " names the address \"" + ip + "\", which is unknown.",
          e);
    }
    if (ip.isBlank() || !address.isLoopbackAddress() && !beyond) {
      throw new Refused(
          "The connection file "
              + file
              + " names the address \""
              + ip
              + "\", which other machines may reach: whoever has the key could run code here."
              + " Use 127.0.0.1, or add --open-to-network if that is what you want.");
    }
  }

  /** A port as the sockets name it. */
  String address(int port) {
    return "tcp://" + (ip.contains(":") ? "[" + ip + "]" : ip) + ":" + port;
  }

  byte[] secret() {
    return key.getBytes(StandardCharsets.UTF_8);
  }

  /** Without the secret. */
  @Override
  public String toString() {
    return "kernel at " + ip + ", ports " + shell + " to " + heartbeat;
  }
}
