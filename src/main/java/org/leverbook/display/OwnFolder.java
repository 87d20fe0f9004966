package org.leverbook.display;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;

/** Where the program keeps what outlives a start. */
public enum OwnFolder {

  /** What is remembered from one start to the next: history and preferences. */
  STATE("XDG_STATE_HOME", ".local/state", "Library/Application Support"),

  /** What can be made again. */
  CACHE("XDG_CACHE_HOME", ".cache", "Library/Caches");

  private final String variable;
  private final String below;
  private final String belowOnMac;

  OwnFolder(String variable, String below, String belowOnMac) {
    this.variable = variable;
    this.below = below;
    this.belowOnMac = belowOnMac;
  }

  /**
   * The folder: that of the system property {@code leverbook.home} where it is set, else where the
   * operating system keeps such things.
   *
   * @param environment the environment variables
   * @param properties the system properties
   * @return the folder, whether it is there or not
   */
  public Path of(Map<String, String> environment, Properties properties) {
    String chosen = properties.getProperty("leverbook.home", "");
    return chosen.isBlank() ? usual(environment, properties) : Path.of(chosen);
  }

  private Path usual(Map<String, String> environment, Properties properties) {
    Path home = Path.of(properties.getProperty("user.home", "."));
    String system = properties.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (system.startsWith("windows")) {
      String local = environment.getOrDefault("LOCALAPPDATA", "");
      return (local.isBlank() ? home.resolve("AppData").resolve("Local") : Path.of(local))
          .resolve("Leverbook");
    }
    if (system.startsWith("mac")) {
      return home.resolve(belowOnMac).resolve("Leverbook");
    }
    String told = environment.getOrDefault(variable, "");
    // The standard says that a relative path there is to be ignored.
    boolean usable = !told.isBlank() && Path.of(told).isAbsolute();
    return (usable ? Path.of(told) : home.resolve(below)).resolve("leverbook");
  }
}
