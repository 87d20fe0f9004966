package org.leverbook.launch;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.UUID;

/**
 * The archive of loaded classes of one Java and one jar, in the folder for what can be made again.
 *
 * @param file where it lies, or will
 */
record Archive(Path file) {

  /** From this Java on one file also keeps linked classes, which starts faster still. */
  private static final int LINKED = 25;

  /** The archive that fits. */
  static Archive of(Installed installed) {
    UUID name = UUID.nameUUIDFromBytes(installed.print().getBytes(StandardCharsets.UTF_8));
    return new Archive(folder().resolve("start-" + name + (linked() ? ".aot" : ".jsa")));
  }

  boolean isThere() {
    return Files.isRegularFile(file);
  }

  /** The options of a Java that reads it; where it does not fit after all, that is not told. */
  List<String> use() {
    return linked()
        ? List.of("-XX:AOTCache=" + file, "-XX:AOTMode=auto", "-Xlog:disable")
        : List.of("-XX:SharedArchiveFile=" + file, "-Xshare:auto", "-Xlog:disable");
  }

  /** The options of a Java that writes it when it ends. */
  List<String> make(Path draft) {
    return linked()
        ? List.of("-XX:AOTCacheOutput=" + draft, "-Xlog:disable")
        : List.of("-XX:ArchiveClassesAtExit=" + draft, "-Xlog:disable");
  }

  private static boolean linked() {
    return Runtime.version().feature() >= LINKED;
  }

  private static Path folder() {
    String chosen = System.getProperty("leverbook.home", "");
    if (!chosen.isBlank()) {
      return Path.of(chosen).toAbsolutePath();
    }
    Path home = Path.of(System.getProperty("user.home", "."));
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (system.startsWith("windows")) {
      String local = System.getenv().getOrDefault("LOCALAPPDATA", "");
      return (local.isBlank() ? home.resolve("AppData").resolve("Local") : Path.of(local))
          .resolve("Leverbook");
    }
    if (system.startsWith("mac")) {
      return home.resolve("Library").resolve("Caches").resolve("Leverbook");
    }
    String cache = System.getenv().getOrDefault("XDG_CACHE_HOME", "");
    boolean usable = !cache.isBlank() && Path.of(cache).isAbsolute();
    return (usable ? Path.of(cache) : home.resolve(".cache")).resolve("leverbook");
  }
}
