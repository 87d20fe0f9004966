package org.leverbook.terminal;

/** Text from a clipboard. */
final class Pasted {

  private Pasted() {}

  /**
   * The text with line ends of one kind, none of them at its end, and without control characters,
   * which no one sees and the compiler does not know.
   */
  static String cleaned(String text) {
    String lines = text.replace("\r\n", "\n").replace('\r', '\n');
    StringBuilder kept = new StringBuilder(lines.length());
    lines
        .codePoints()
        .filter(c -> c == '\n' || c == '\t' || !isUnseen(c))
        .map(c -> c == '\u00a0' ? ' ' : c)
        .forEach(kept::appendCodePoint);
    int end = kept.length();
    while (end > 0 && kept.charAt(end - 1) == '\n') {
      end--;
    }
    return kept.substring(0, end);
  }

  /** Control characters, and marks that a word processor or a web page leaves. */
  private static boolean isUnseen(int c) {
    return Character.isISOControl(c) || c == 0x200b || c == 0xfeff;
  }
}
