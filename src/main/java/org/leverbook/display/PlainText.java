package org.leverbook.display;

import java.util.Arrays;

/** Values of plain Java as text: arrays by their elements, everything else by {@code toString}. */
final class PlainText {

  private PlainText() {}

  static String of(Object value) {
    if (value == null || !value.getClass().isArray()) {
      return String.valueOf(value);
    }
    // deepToString handles arrays of every element type when they are wrapped in one more.
    String wrapped = Arrays.deepToString(new Object[] {value});
    return wrapped.substring(1, wrapped.length() - 1);
  }
}
