package org.leverbook.display;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/** Where what is remembered from one start to the next lies, for the shell and for notebooks. */
public final class StateFolder {

  private StateFolder() {}

  /**
   * The folder: that of the system property {@code leverbook.home} where it is set, else where the
   * operating system keeps such things.
   *
   * @param environment the environment variables
   * @param properties the system properties
   * @return the folder, whether it is there or not
   */
  public static Path of(Map<String, String> environment, Properties properties) {
    String chosen = properties.getProperty("leverbook.home", "");
    return chosen.isBlank() ? usual(environment, properties) : Path.of(chosen);
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
}
