package org.leverbook.figure;

import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/** Ids of what a picture tells, by which it names its own title and description. */
final class Told {

  private Told() {}

  /**
   * A key that other pictures on the same web page do not have, and the same picture always has.
   *
   * @param title of the picture
   * @param description of the picture
   * @return eight letters and digits
   */
  static String key(String title, String description) {
    CRC32 sum = new CRC32();
    sum.update((title + "\n" + description).getBytes(StandardCharsets.UTF_8));
    return String.format("%08x", sum.getValue());
  }
}
