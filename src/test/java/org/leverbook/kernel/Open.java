package org.leverbook.kernel;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A kernel inside the test's own process, and a client of it. */
final class Open implements AutoCloseable {

  static final String KEY = "a-secret-of-the-test";

  private final Connection connection;
  private final Kernel kernel;
  private final Client client;

  Open(Path folder) {
    this(folder, KEY);
  }

  Open(Path folder, String key) {
    this.connection = connection(key);
    this.kernel = Kernel.start(connection, folder);
    this.client = new Client(connection);
  }

  /** Five ports that are free now. */
  static Connection connection(String key) {
    List<ServerSocket> sockets = new ArrayList<>();
    try {
      for (int i = 0; i < 5; i++) {
        sockets.add(new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1")));
      }
      int[] ports = sockets.stream().mapToInt(ServerSocket::getLocalPort).toArray();
      for (ServerSocket socket : sockets) {
        socket.close();
      }
      return new Connection("127.0.0.1", ports[0], ports[1], ports[2], ports[3], ports[4], key);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Connection connection() {
    return connection;
  }

  Client client() {
    return client;
  }

  Kernel kernel() {
    return kernel;
  }

  @Override
  public void close() {
    client.close();
    kernel.close();
    kernel.closeSession();
  }
}
