package org.leverbook.display;

import java.util.Arrays;
import java.util.regex.Pattern;

/** Values of plain Java as text: arrays by their elements, everything else by {@code toString}. */
final class PlainText {

  /** How Java names a thing that has no text of its own: package, class and a number. */
  private static final Pattern NAMELESS =
      Pattern.compile("\\b(?:[a-z]\\w*\\.)*(?:\\w+\\$)*([A-Z]\\w*)@[0-9a-f]{1,8}\\b");

  private static final Pattern LAMBDA =
      Pattern.compile("\\b(?:[a-z]\\w*\\.)*[\\w$]+\\$\\$Lambda[\\w$/.]*@[0-9a-f]{1,8}\\b");

  private PlainText() {}

  static String of(Object value) {
    if (value == null || !value.getClass().isArray()) {
      return named(value);
    }
    // deepToString handles arrays of every element type when they are wrapped in one more.
    String wrapped = Arrays.deepToString(new Object[] {value});
    return wrapped.substring(1, wrapped.length() - 1);
  }

  /** Things of this program that have no text are told by their kind; other code is left as is. */
  private static String named(Object value) {
    String text = String.valueOf(value);
    return value != null && value.getClass().getName().startsWith("org.leverbook.")
        ? NAMELESS.matcher(LAMBDA.matcher(text).replaceAll("a lambda")).replaceAll("$1")
        : text;
  }
}
