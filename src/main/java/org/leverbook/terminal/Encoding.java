package org.leverbook.terminal;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** In which encoding to speak to the terminal. */
public final class Encoding {

  private Encoding() {}

  /**
   * The terminal's encoding; UTF-8 where no locale is set, since plain ASCII would turn every dot
   * of a newton metre into a question mark.
   *
   * @return the encoding for output
   */
  public static Charset ofOutput() {
    Charset set =
        known("stdout.encoding", known("sun.stdout.encoding", known("native.encoding", null)));
    return set == null || set.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : set;
  }

  private static Charset known(String property, Charset otherwise) {
    String name = System.getProperty(property, "");
    return !name.isBlank() && Charset.isSupported(name) ? Charset.forName(name) : otherwise;
  }
}
