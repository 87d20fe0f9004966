package org.leverbook.terminal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

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
    String chosen = properties.getProperty("leverbook.home", "");
    return (chosen.isBlank() ? usual(environment, properties) : Path.of(chosen)).resolve("history");
  }

  private static Path usual(Map<String, String> environment, Properties properties) {
    Path home = Path.of(properties.getProperty("user.home", "."));
    String system = properties.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (system.startsWith("windows")) {
      String local = environment.getOrDefault("LOCALAPPDATA", "");
      return (local.isBlank() ? home.resolve("AppData").resolve("Local") : Path.of(local))
          .resolve("Leverbook");
    }
    if (system.startsWith("mac")) {
      return home.resolve("Library").resolve("Application Support").resolve("Leverbook");
    }
    String state = environment.getOrDefault("XDG_STATE_HOME", "");
    // The standard says that a relative path there is to be ignored.
    boolean usable = !state.isBlank() && Path.of(state).isAbsolute();
    return (usable ? Path.of(state) : home.resolve(".local").resolve("state")).resolve("leverbook");
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
