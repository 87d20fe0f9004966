package org.leverbook.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the text files beside the words. They are read when first asked for, not at the start. */
final class Entries {

  private Entries() {}

  /** A whole file. */
  static String text(String name) {
    try (InputStream in = Entries.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The lines of a file that are neither blank nor remarks. */
  static List<String> lines(String name) {
    return text(name).lines().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
  }
}
