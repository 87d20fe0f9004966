package org.leverbook.display;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Why a file could not be written, in words that say what to change. */
final class WriteTrouble {

  private WriteTrouble() {}

  /**
   * The reason.
   *
   * @param trouble what the system said
   * @param target the file, with its whole path
   * @return a sentence, sometimes two
   */
  static String of(IOException trouble, Path target) {
    Path folder = target.getParent();
    Path file = aboveThatIsNoFolder(folder);
    if (file != null) {
      return file + " is a file, not a folder; choose another place.";
    }
    if (Files.isDirectory(target)) {
      return "there is a folder of this name; choose another name.";
    }
    if (!Files.isDirectory(folder)) {
      return "the folder "
          + folder
          + " is not there and cannot be made; choose a folder you may write into.";
    }
    if (trouble instanceof AccessDeniedException || !Files.isWritable(folder)) {
      return "you have no right to write into "
          + folder
          + "; choose another folder, or have the right given to you.";
    }
    String reason =
        trouble instanceof FileSystemException system && system.getReason() != null
            ? system.getReason()
            : String.valueOf(trouble.getMessage());
    if (reason.toLowerCase(Locale.ROOT).contains("name too long")) {
      return "the name is too long for this disk; choose a shorter one.";
    }
    return "the disk said \"" + reason + "\".";
  }

  private static Path aboveThatIsNoFolder(Path folder) {
    for (Path path = folder; path != null; path = path.getParent()) {
      if (Files.exists(path)) {
        return Files.isDirectory(path) ? null : path;
      }
    }
    return null;
  }
}
