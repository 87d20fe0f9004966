package org.leverbook.display;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Files that are being written, under hidden names, until they take the place of the old ones. A
 * process that is killed while it writes leaves one behind; the next that writes there clears it.
 */
public final class Drafts {

  private static final String START = ".writing-";
  private static final String END = ".tmp";

  /** Whoever still writes has written something within this time. */
  private static final Duration LEFT_BEHIND = Duration.ofHours(1);

  private static final Set<Path> CLEARED = ConcurrentHashMap.newKeySet();

  private Drafts() {}

  /**
   * A name for a draft.
   *
   * @return one that nobody has
   */
  public static String name() {
    return START + UUID.randomUUID() + END;
  }

  /**
   * Removes what others left behind in a folder; looks once only in this process.
   *
   * @param folder the folder
   */
  public static void clear(Path folder) {
    if (!CLEARED.add(folder)) {
      return;
    }
    Instant old = Instant.now().minus(LEFT_BEHIND);
    try (DirectoryStream<Path> drafts = Files.newDirectoryStream(folder, START + "*" + END)) {
      for (Path draft : drafts) {
        if (Files.getLastModifiedTime(draft).toInstant().isBefore(old)) {
          Files.deleteIfExists(draft);
        }
      }
    } catch (IOException | RuntimeException e) {
      // What cannot be cleared is harmless, and must not keep anyone from writing.
      return;
    }
  }
}
