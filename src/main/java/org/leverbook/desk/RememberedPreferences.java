package org.leverbook.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Preferences;
import org.leverbook.quantity.Refused;

/**
 * Keeps a person's preferences from one shell to the next. Only the shell does: a script or a
 * notebook shows the same whoever runs it.
 */
public final class RememberedPreferences {

  private RememberedPreferences() {}

  /**
   * Takes the preferences out of a file, and writes each later choice into it. A file that is not
   * there or cannot be read leaves them as usual; where it cannot be written nothing is kept.
   *
   * @param file where they are kept
   */
  public static void in(Path file) {
    try {
      if (Files.isRegularFile(file)) {
        Preferences.choose(
            Preferences.ofLines(new String(Files.readAllBytes(file), StandardCharsets.UTF_8)));
      }
    } catch (IOException e) {
      // As usual, then: a shell must start whatever lies in its folder.
      Preferences.choose(Preferences.USUAL);
    }
    Preferences.onChoice(chosen -> keep(file, chosen));
  }

  private static void keep(Path file, Preferences chosen) {
    try {
      OutputFolder.write(file.toAbsolutePath().toString(), chosen.lines());
    } catch (Refused e) {
      // The choice holds for this shell all the same.
      return;
    }
  }
}
