package org.leverbook.data;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Which Leverbook this is. */
public final class Version {

  private static final String NUMBER = read();

  private Version() {}

  /**
   * The version, as the build wrote it.
   *
   * @return as in "0.1.0"
   */
  public static String number() {
    return NUMBER;
  }

  private static String read() {
    try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
