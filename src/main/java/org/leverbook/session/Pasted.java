package org.leverbook.session;

/**
 * Text as it comes from web pages and word processors, made plain outside quotes and comments:
 * curly quotation marks, long dashes, signs of multiplication and hard blanks become what the
 * compiler reads. One character becomes one, so that every place stays where it was.
 */
final class Pasted {

  private enum In {
    CODE,
    LINE_COMMENT,
    COMMENT,
    STRAIGHT,
    CURLY,
    CHARACTER,
    BLOCK
  }

  private Pasted() {}

  /** The text with its typographic characters made plain. */
  static String plain(String text) {
    if (text.chars().allMatch(c -> c < 0x80)) {
      return text;
    }
    StringBuilder plain = new StringBuilder(text);
    In in = In.CODE;
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      if (in == In.CODE) {
        char made = plain(c, at);
        plain.setCharAt(at, made);
        in = opened(text, at, c, made);
        at += in == In.BLOCK ? 2 : in == In.COMMENT ? 1 : 0;
      } else if (c == '\\' && in != In.LINE_COMMENT && in != In.COMMENT) {
        at++;
      } else if (closes(in, text, at)) {
        plain.setCharAt(at, in == In.CURLY && c != '\n' && c != '\r' ? '"' : c);
        at += in == In.BLOCK ? 2 : in == In.COMMENT ? 1 : 0;
        in = In.CODE;
      }
    }
    return plain.toString();
  }

  private static In opened(String text, int at, char c, char made) {
    if (text.startsWith("//", at)) {
      return In.LINE_COMMENT;
    }
    if (text.startsWith("/*", at)) {
      return In.COMMENT;
    }
    if (text.startsWith("\"\"\"", at)) {
      return In.BLOCK;
    }
    return made == '"' ? c == '"' ? In.STRAIGHT : In.CURLY : made == '\'' ? In.CHARACTER : In.CODE;
  }

  private static boolean closes(In in, String text, int at) {
    char c = text.charAt(at);
    boolean lineEnd = c == '\n' || c == '\r';
    return switch (in) {
      case LINE_COMMENT -> lineEnd;
      case COMMENT -> text.startsWith("*/", at);
      case BLOCK -> text.startsWith("\"\"\"", at);
      case CHARACTER -> c == '\'' || c == '\u2019' || lineEnd;
      case CURLY -> lineEnd || isDoubleQuote(c);
      default -> lineEnd || c == '"';
    };
  }

  /** Whether a character is a quotation mark of some kind, straight or not. */
  static boolean isDoubleQuote(char c) {
    return c == '"' || c >= '\u201C' && c <= '\u201F' || c == '\u2033' || c == '\uFF02';
  }

  private static char plain(char c, int at) {
    if (c < 0x80) {
      return c;
    }
    if (Character.getType(c) == Character.SPACE_SEPARATOR || c == '\uFEFF' && at == 0) {
      return ' ';
    }
    if (c == '\u2028' || c == '\u2029' || c == '\u0085') {
      return '\n';
    }
    if (isDoubleQuote(c)) {
      return '"';
    }
    if (c >= '\uFF01' && c <= '\uFF5E') {
      char narrow = (char) (c - 0xFEE0);
      return Character.isLetter(narrow) ? c : narrow;
    }
    return switch (c) {
      case '\u2018', '\u2019', '\u201A', '\u201B', '\u2032' -> '\'';
      case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212' -> '-';
      case '\u00D7', '\u22C5', '\u2217' -> '*';
      case '\u00F7', '\u2215', '\u2044' -> '/';
      default -> c;
    };
  }
}
