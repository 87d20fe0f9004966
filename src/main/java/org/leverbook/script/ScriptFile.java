package org.leverbook.script;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
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
      throw new Refused(name + " is a folder; name one .jsh script in it.");
    }
    if (!Files.exists(path)) {
      throw new Refused("There is no file " + name + " (looked in " + folder(path) + ").");
    }
    String lower = name.toLowerCase(Locale.ROOT);
    if (lower.endsWith(".ipynb")) {
      throw new Refused(name + " is a notebook; notebooks cannot be run yet, only .jsh scripts.");
    }
    if (!lower.endsWith(".jsh")) {
      throw new Refused(name + " is no script: a script's name ends in .jsh.");
    }
    return new ScriptFile(name, decoded(name, bytes(path)));
  }

  private static Path folder(Path path) {
    Path parent = path.toAbsolutePath().normalize().getParent();
    return parent == null ? path.toAbsolutePath() : parent;
  }

  private static byte[] bytes(Path path) {
    try {
      return Files.readAllBytes(path);
    } catch (IOException e) {
      throw new Refused(path + " cannot be read: " + e + ".", e);
    }
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
