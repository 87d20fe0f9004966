package org.leverbook.session;

import java.util.ArrayList;
import java.util.List;

/**
 * A text up to a place, cut into its pieces. Comments are left out; line ends are kept only where
 * they close a unit, by the same rules by which {@link Splitter} reads, but without the compiler:
 * this is asked at every key.
 */
final class Tokens {

  private static final String[] LONG_SIGNS = {
    ">>>=", "<<=", ">>=", "...", "->", "::", "++", "--", "&&", "||", "==", "!=", "<=", ">=", "+=",
    "-=", "*=", "/=", "%=", "&=", "|=", "^="
  };

  /** What the place itself stands in. */
  enum In {
    CODE,
    /** A quoted text that is not closed yet. */
    STRING,
    /** A comment, a text block or a single character: nothing to say there. */
    WORDS
  }

  private final String text;
  private final int end;
  private final List<Token> found = new ArrayList<>();
  private In in = In.CODE;
  private int quote = -1;
  private int depth;
  private int at;

  private Tokens(String text, int end) {
    this.text = text;
    this.end = end;
  }

  /**
   * Reads a text up to a place.
   *
   * @param text the text
   * @param end the place
   */
  static Tokens of(String text, int end) {
    Tokens tokens = new Tokens(text, end);
    tokens.read();
    return tokens;
  }

  List<Token> list() {
    return found;
  }

  In in() {
    return in;
  }

  /** Where the quoted text begins that the place stands in: its opening quote. */
  int quote() {
    return quote;
  }

  private void read() {
    while (at < end) {
      char c = text.charAt(at);
      if (c == '\n') {
        lineEnd();
        at++;
      } else if (Character.isWhitespace(c)) {
        at++;
      } else if (starts("//")) {
        skipTo("\n", at + 2, 0);
      } else if (starts("/*")) {
        skipTo("*/", at + 2, 2);
      } else if (starts("\"\"\"")) {
        block();
      } else if (c == '"' || c == '\'') {
        quoted(c);
      } else if (Character.isJavaIdentifierStart(c)) {
        add(Token.Kind.NAME, wordEnd());
      } else if (Character.isDigit(c) || c == '.' && at + 1 < end && digit(at + 1)) {
        add(Token.Kind.NUMBER, numberEnd());
      } else {
        sign(c);
      }
    }
  }

  private boolean starts(String sign) {
    return at + sign.length() <= end && text.startsWith(sign, at);
  }

  private boolean digit(int place) {
    return Character.isDigit(text.charAt(place));
  }

  private void add(Token.Kind kind, int to) {
    found.add(new Token(kind, text.substring(at, to), at));
    at = to;
  }

  private int wordEnd() {
    int to = at;
    while (to < end && Character.isJavaIdentifierPart(text.charAt(to))) {
      to++;
    }
    return to;
  }

  private int numberEnd() {
    int to = at;
    while (to < end) {
      char c = text.charAt(to);
      boolean exponent =
          (c == '-' || c == '+') && to > at && "eE".indexOf(text.charAt(to - 1)) >= 0 && !isHex();
      boolean point = c == '.' && to + 1 < end && digit(to + 1);
      boolean lastPoint = c == '.' && (to + 1 >= end || !isNameStart(to + 1));
      if (!Character.isLetterOrDigit(c) && c != '_' && !exponent && !point && !lastPoint) {
        break;
      }
      to++;
    }
    return to;
  }

  private boolean isHex() {
    return starts("0x") || starts("0X");
  }

  private boolean isNameStart(int place) {
    return Character.isJavaIdentifierStart(text.charAt(place));
  }

  private void skipTo(String closer, int from, int length) {
    int close = text.indexOf(closer, from);
    if (close < 0 || close + length > end) {
      in = In.WORDS;
      at = end;
    } else {
      at = close + length;
    }
  }

  private void block() {
    int close = at + 3;
    while (close < end && !text.startsWith("\"\"\"", close)) {
      close += text.charAt(close) == '\\' ? 2 : 1;
    }
    if (close + 3 > end) {
      in = In.WORDS;
      at = end;
    } else {
      add(Token.Kind.STRING, close + 3);
    }
  }

  private void quoted(char mark) {
    int close = at + 1;
    while (close < end && text.charAt(close) != mark && text.charAt(close) != '\n') {
      close += text.charAt(close) == '\\' ? 2 : 1;
    }
    if (close >= end) {
      in = mark == '"' ? In.STRING : In.WORDS;
      quote = at;
      at = end;
    } else {
      int to = text.charAt(close) == mark ? close + 1 : close;
      add(mark == '"' ? Token.Kind.STRING : Token.Kind.CHARACTER, to);
    }
  }

  private void sign(char c) {
    for (String each : LONG_SIGNS) {
      // ">>" is left as two: it may close type arguments.
      if (starts(each) && !each.startsWith(">>")) {
        add(Token.Kind.SIGN, at + each.length());
        return;
      }
    }
    depth += "([{".indexOf(c) >= 0 ? 1 : ")]}".indexOf(c) >= 0 && depth > 0 ? -1 : 0;
    add(Token.Kind.SIGN, at + 1);
  }

  private void lineEnd() {
    if (depth > 0 || found.isEmpty() || goesOn()) {
      return;
    }
    Token last = found.get(found.size() - 1);
    boolean waits =
        last.kind() == Token.Kind.SIGN
            && !List.of(")", "]", "}", ";", "++", "--", ">").contains(last.text());
    if (!waits && last.kind() != Token.Kind.BREAK) {
      found.add(new Token(Token.Kind.BREAK, "", at));
    }
  }

  /** Whether the next line goes on with this one. */
  private boolean goesOn() {
    int next = at + 1;
    while (next < end && text.charAt(next) != '\n' && Character.isWhitespace(text.charAt(next))) {
      next++;
    }
    if (next >= end || text.charAt(next) == '\n') {
      return false;
    }
    char c = text.charAt(next);
    boolean comment = text.startsWith("//", next) || text.startsWith("/*", next);
    boolean number = c == '.' && next + 1 < end && digit(next + 1);
    boolean spacedSign =
        (c == '+' || c == '-') && next + 1 < end && Character.isWhitespace(text.charAt(next + 1));
    return text.startsWith("else", next)
        || text.startsWith("instanceof", next)
        || text.startsWith("->", next)
        || text.startsWith("!=", next)
        || spacedSign
        || !comment && !number && ".?:%^&|=<>*/".indexOf(c) >= 0;
  }
}
