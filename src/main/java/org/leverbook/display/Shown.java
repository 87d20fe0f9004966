package org.leverbook.display;

import java.util.Optional;

/** A value that can show itself to a reader. */
public interface Shown {

  /**
   * The value as plain text, for a terminal or a log.
   *
   * @return lines without a final line break, never null
   */
  String text();

  /**
   * The value as an HTML fragment.
   *
   * @return the fragment, or empty where text says it all
   */
  default Optional<String> html() {
    return Optional.empty();
  }

  /**
   * The value as a whole SVG document.
   *
   * @return the document, or empty where the value is no picture
   */
  default Optional<String> svg() {
    return Optional.empty();
  }

  /**
   * The value as a PNG image.
   *
   * @return the bytes of the file, or empty where the value is no picture
   */
  default Optional<byte[]> png() {
    return Optional.empty();
  }
}
