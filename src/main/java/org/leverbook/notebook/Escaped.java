package org.leverbook.notebook;

import java.util.regex.Pattern;

/** Texts made harmless for where they go. */
final class Escaped {

  /** Colours and other orders to a terminal, and titles for its window. */
  private static final Pattern TERMINAL =
      Pattern.compile(
          "\u001B(?:\\[[0-?]*[ -/]*[@-~]|\\][^\u0007\u001B]*(?:\u0007|\u001B\\\\)?|[@-Z\\\\^_])");

  /** What no page may hold; line ends and tabs may stay. */
  private static final Pattern CONTROL = Pattern.compile("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\x7F]");

  private Escaped() {}

  /** A text for HTML, between tags and in quoted attributes. */
  static String html(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** A text without what only a terminal understands. */
  static String plain(String text) {
    return CONTROL.matcher(TERMINAL.matcher(text).replaceAll("")).replaceAll("");
  }
}
