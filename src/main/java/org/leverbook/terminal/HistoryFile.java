package org.leverbook.terminal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.leverbook.display.OwnFolder;

/** Where the typed lines are remembered. */
final class HistoryFile {

  private HistoryFile() {}

  /**
   * The file's place: in the folder of the system property {@code leverbook.home} where that is
   * set, else where the operating system keeps such things.
   *
   * @param environment the environment variables
   * @param properties the system properties
   */
  static Path place(Map<String, String> environment, Properties properties) {
    return OwnFolder.STATE.of(environment, properties).resolve("history");
  }

  /** The file, with its folder made; empty where it cannot be written: then nothing is kept. */
  static Optional<Path> ready(Path place) {
    try {
      Files.createDirectories(place.toAbsolutePath().getParent());
      boolean writable =
          Files.exists(place)
              ? Files.isRegularFile(place) && Files.isWritable(place)
              : Files.isWritable(place.toAbsolutePath().getParent());
      return writable ? Optional.of(place) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
