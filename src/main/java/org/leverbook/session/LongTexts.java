package org.leverbook.session;

import java.nio.charset.StandardCharsets;

/**
 * Finds quoted texts that are longer than a class file can hold, alone or joined by +. The compiler
 * says so too, but then, on Java 17 to 25, cannot compile anything any more: its table of constants
 * keeps the text. So it must never see one.
 */
final class LongTexts {

  private static final int MOST_BYTES = 65_534;

  private LongTexts() {}

  /** Where a text begins that is too long; -1 where there is none. */
  static int in(String text, int from, int to) {
    if (to - from < MOST_BYTES / 3) {
      return -1;
    }
    Brackets reader = new Brackets(text, from);
    int start = -1;
    int first = -1;
    int behind = -1;
    int bytes = 0;
    for (int at = from; at <= to; at++) {
      reader.readTo(at);
      boolean inText = at < to && reader.inText();
      if (inText && start < 0) {
        start = at;
      } else if (!inText && start >= 0) {
        boolean joined = behind >= 0 && text.substring(behind, start).matches("\"*\\s*\\+\\s*\"*");
        first = joined ? first : start;
        String quoted = text.substring(start, at).replaceFirst("(?:\"\"\"|\")$", "");
        int here = quoted.getBytes(StandardCharsets.UTF_8).length;
        bytes = joined ? bytes + here : here;
        if (bytes > MOST_BYTES) {
          return Math.max(from, first - 1);
        }
        behind = at;
        start = -1;
      }
    }
    return -1;
  }
}
