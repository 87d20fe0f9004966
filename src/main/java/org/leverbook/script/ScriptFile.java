package org.leverbook.script;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.leverbook.notebook.TextFile;
import org.leverbook.quantity.Refused;

/**
 * A script read from disk.
 *
 * @param name the file as the user named it
 * @param text its content; Windows line ends stay, a byte order mark does not
 */
record ScriptFile(String name, String text) {

  /**
   * Reads a script.
   *
   * @param path a file that ends in {@code .jsh}
   * @return the script
   * @throws Refused if there is no such file, or it is no UTF-8 text, or of another kind
   */
  static ScriptFile read(Path path) {
    String name = path.toString();
    if (Files.isDirectory(path)) {
      throw new Refused(name + " is a folder; name one .jsh script or .ipynb notebook in it.");
    }
    if (Files.exists(path) && !isScript(path)) {
      throw new Refused(
          name + " is no script and no notebook: their names end in .jsh and in .ipynb.");
    }
    return new ScriptFile(name, TextFile.read(path));
  }

  static boolean isScript(Path path) {
    return path.toString().toLowerCase(Locale.ROOT).endsWith(".jsh");
  }

  static boolean isNotebook(Path path) {
    return path.toString().toLowerCase(Locale.ROOT).endsWith(".ipynb");
  }
}
