package org.leverbook.notebook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.leverbook.data.ReadTrouble;
import org.leverbook.quantity.Refused;

/** Text files from disk, in UTF-8. */
public final class TextFile {

  /** Read whole, a larger one would leave little room to work with it. */
  private static final long LARGEST = 256_000_000;

  private TextFile() {}

  /**
   * Reads a file whole.
   *
   * @param path the file
   * @return its text; Windows line ends stay, a byte order mark does not
   * @throws Refused if there is no such file, it is a folder, too large (256 MB) or no UTF-8 text,
   *     or the disk says no
   */
  public static String read(Path path) {
    if (Files.isDirectory(path)) {
      throw new Refused(path + " is a folder; name one file in it.");
    }
    if (!Files.exists(path)) {
      throw new Refused("There is no file " + path + " (looked in " + folder(path) + ").");
    }
    try {
      long size = Files.size(path);
      if (size > LARGEST) {
        throw new Refused(
            String.format(
                Locale.ROOT,
                "%s is too large: %,d MB, where %,d MB can be read.",
                path,
                size / 1_000_000,
                LARGEST / 1_000_000));
      }
      return decoded(path.toString(), Files.readAllBytes(path));
    } catch (IOException e) {
      throw new Refused(path + " cannot be read: " + ReadTrouble.of(e) + ".", e);
    }
  }

  private static Path folder(Path path) {
    Path parent = path.toAbsolutePath().normalize().getParent();
    return parent == null ? path.toAbsolutePath() : parent;
  }

  private static String decoded(String name, byte[] bytes) {
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    var decoder = StandardCharsets.UTF_8.newDecoder();
    try {
      String text = decoder.decode(buffer).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      int at = buffer.position();
      long line = 1;
      for (int i = 0; i < at; i++) {
        line += bytes[i] == '\n' ? 1 : 0;
      }
      throw new Refused(
          name + " is not UTF-8 text (line " + line + " is not); save it as UTF-8 in your editor.",
          e);
    }
  }
}
