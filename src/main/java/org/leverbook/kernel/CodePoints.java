package org.leverbook.kernel;

import com.fasterxml.jackson.databind.JsonNode;

/** Places in a text: the protocol counts code points, Java counts UTF-16 units. */
final class CodePoints {

  private CodePoints() {}

  /**
   * A place that a message tells.
   *
   * @param text the text
   * @param cursor a number of code points; one outside is moved to the nearest end, and what is no
   *     number means the end
   * @return the place in UTF-16 units
   */
  static int place(String text, JsonNode cursor) {
    int all = text.codePointCount(0, text.length());
    if (!cursor.isNumber()) {
      return text.length();
    }
    int points = (int) Math.max(0, Math.min(all, cursor.doubleValue()));
    return text.offsetByCodePoints(0, points);
  }

  /** A place in UTF-16 units, in code points. */
  static int count(String text, int place) {
    return text.codePointCount(0, Math.max(0, Math.min(place, text.length())));
  }
}
