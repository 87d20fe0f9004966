package org.leverbook.desk;

/** A text in one short line. */
final class OneLine {

  private OneLine() {}

  /** The first line that says something, cut to a width; a sign stands for what is left out. */
  static String of(String text, int width) {
    String[] lines = text.strip().split("\\R", 2);
    String first = lines[0].strip();
    boolean more = lines.length > 1 && !lines[1].isBlank();
    if (first.length() > width || more) {
      int end = Math.min(first.length(), width - 2);
      // Half of a sign outside the first plane would be no sign.
      end -= end > 0 && Character.isHighSurrogate(first.charAt(end - 1)) ? 1 : 0;
      return first.substring(0, end) + " …";
    }
    return first;
  }
}
