package org.leverbook.display;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Objects;
import org.leverbook.quantity.Refused;

/**
 * Where a file that is to be read lies: in the working folder, or else beside the script or
 * notebook that runs, so that a lesson finds its photos and tables wherever it is started from.
 */
public final class InputFile {

  private static volatile Path besides;

  private InputFile() {}

  /**
   * Says which script or notebook runs from here on.
   *
   * @param file the script or notebook; null for none
   * @return the folder that files were looked for in besides, to be put back by {@link #lookIn};
   *     null where there was none
   */
  public static Path runs(Path file) {
    return lookIn(file == null ? null : file.toAbsolutePath().normalize().getParent());
  }

  /**
   * Looks in another folder besides the working folder from here on.
   *
   * @param folder takes the place of the one before; null for none
   * @return the one before; null where there was none
   */
  public static synchronized Path lookIn(Path folder) {
    Path before = besides;
    besides = folder;
    return before;
  }

  /**
   * The place of a file, whether it is there or not.
   *
   * @param name as the user says it
   * @return where it is; where it is nowhere, its place in the working folder
   * @throws Refused if the name is no file name on this system
   */
  public static Path place(String name) {
    try {
      Path here = Path.of(name);
      Path folder = besides;
      if (folder == null || Files.exists(here) || !Files.exists(folder.resolve(here))) {
        return here;
      }
      return folder.resolve(here);
    } catch (InvalidPathException e) {
      throw new Refused("\"" + name + "\" cannot be a file name here: " + e.getReason() + ".", e);
    }
  }

  /**
   * Finds a file.
   *
   * @param kind what it is to be, as in "photo"
   * @param name as the user says it
   * @return where it is
   * @throws Refused if there is none; says where it was looked for
   */
  public static Path find(String kind, String name) {
    Path path = place(name);
    if (Files.isRegularFile(path)) {
      return path;
    }
    Path folder = besides;
    Path working = folderOf(Path.of(name));
    Path beside = folder == null ? working : folderOf(folder.resolve(name));
    throw new Refused(
        "There is no "
            + kind
            + " \""
            + name
            + "\" in "
            + working
            + (beside.normalize().equals(working.normalize()) ? "" : ", nor in " + beside)
            + ". Check the name, or give the whole path.");
  }

  private static Path folderOf(Path file) {
    Path whole = file.toAbsolutePath();
    return Objects.requireNonNullElse(whole.getParent(), whole);
  }
}
