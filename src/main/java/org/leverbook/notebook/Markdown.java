package org.leverbook.notebook;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Texts as parts of a Markdown page. */
final class Markdown {

  private static final Pattern MARKS = Pattern.compile("[\\\\`*_\\[\\]<>#~$]");
  private static final Pattern FENCES = Pattern.compile("`{3,}");

  private Markdown() {}

  /** A text that reads as it is. */
  static String escaped(String text) {
    return MARKS.matcher(text.replace('\n', ' ')).replaceAll("\\\\$0");
  }

  /** A block of code or plain text, in a fence longer than any inside it. */
  static String fenced(String language, String text) {
    int longest = 2;
    Matcher fence = FENCES.matcher(text);
    while (fence.find()) {
      longest = Math.max(longest, fence.end() - fence.start());
    }
    String fenceText = "`".repeat(longest + 1);
    return fenceText + language + "\n" + text.stripTrailing() + "\n" + fenceText;
  }
}
