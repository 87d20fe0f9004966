package org.leverbook.session;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Reads Java text just far enough to know, at any place, whether it stands inside a bracket, a
 * comment or a text block, and which. Quoted brackets do not count.
 */
final class Brackets {

  /** What a place stands in, when it is not plain code. */
  private enum In {
    CODE,
    LINE_COMMENT,
    COMMENT,
    STRING,
    CHARACTER,
    TEXT_BLOCK
  }

  private final String text;
  private final Deque<Integer> open = new ArrayDeque<>();
  private In in = In.CODE;
  private int at;
  private int openedAt;
  private int firstCode = -1;
  private int lastCode = -1;
  private int wrongCloser = -1;
  private int unseen = -1;
  private int depth;
  private int links;
  private int mostLinks;

  /**
   * A reader.
   *
   * @param text the whole text
   * @param from where to begin, in plain code
   */
  Brackets(String text, int from) {
    this.text = text;
    this.at = from;
  }

  /** Reads on up to a place. */
  void readTo(int end) {
    while (at < end) {
      at += step(text.charAt(at));
    }
  }

  private int step(char c) {
    switch (in) {
      case CODE:
        return stepInCode(c);
      case LINE_COMMENT:
        in = isLineEnd(c) ? In.CODE : in;
        return 1;
      case COMMENT:
        return c == '*' && text.startsWith("*/", at) ? leave(2) : 1;
      case TEXT_BLOCK:
        if (c == '\\') {
          return 2;
        }
        return text.startsWith("\"\"\"", at) ? leave(3) : 1;
      default:
        char quote = in == In.STRING ? '"' : '\'';
        if (c == '\\') {
          return 2;
        }
        return c == quote || isLineEnd(c) ? leave(1) : 1;
    }
  }

  private int stepInCode(char c) {
    if (text.startsWith("//", at)) {
      return enter(In.LINE_COMMENT, 2);
    }
    if (text.startsWith("/*", at)) {
      return enter(In.COMMENT, 2);
    }
    if (unseen < 0 && Characters.isUnseen(text, at)) {
      unseen = at;
    } else if (Character.isWhitespace(c)) {
      return 1;
    }
    link(c, lastCode);
    firstCode = firstCode < 0 ? at : firstCode;
    lastCode = at;
    if (text.startsWith("\"\"\"", at)) {
      return enter(In.TEXT_BLOCK, 3);
    }
    switch (c) {
      case '"':
        return enter(In.STRING, 1);
      case '\'':
        return enter(In.CHARACTER, 1);
      case '(':
      case '[':
      case '{':
        open.push(at);
        depth = Math.max(depth, open.size());
        return 1;
      case ')':
      case ']':
      case '}':
        close(c);
        return 1;
      default:
        return 1;
    }
  }

  /** Counts the signs of one expression: each can be one more level to the compiler. */
  private void link(char c, int before) {
    if (";,{}".indexOf(c) >= 0) {
      links = 0;
    } else if ("+-*/%&|^<>?:!~.=([".indexOf(c) >= 0) {
      char last = before < 0 || before < at - 1 ? ' ' : text.charAt(before);
      boolean doubled = last == c && "&|=".indexOf(c) >= 0 || last == '-' && c == '>';
      boolean decimal =
          c == '.' && at + 1 < text.length() && Character.isDigit(text.charAt(at + 1));
      links += doubled || decimal ? 0 : 1;
      mostLinks = Math.max(mostLinks, links);
    }
  }

  private void close(char closer) {
    boolean fits = !open.isEmpty() && closerOf(text.charAt(open.peek())) == closer;
    if (fits) {
      open.pop();
    } else if (wrongCloser < 0) {
      wrongCloser = at;
    }
  }

  private int enter(In next, int length) {
    openedAt = at;
    in = next;
    return length;
  }

  private int leave(int length) {
    lastCode = in == In.COMMENT ? lastCode : at + length - 1;
    in = In.CODE;
    return length;
  }

  private static boolean isLineEnd(char c) {
    return c == '\n' || c == '\r';
  }

  static char closerOf(char opener) {
    return opener == '(' ? ')' : opener == '[' ? ']' : '}';
  }

  /** Whether no bracket, comment or text block is open here. */
  boolean closed() {
    return open.isEmpty() && in != In.COMMENT && in != In.TEXT_BLOCK;
  }

  /** Whether this place is inside a comment or a quoted text. */
  boolean inWords() {
    return in != In.CODE;
  }

  /** Whether this place is inside a quoted text. */
  boolean inText() {
    return in == In.STRING || in == In.TEXT_BLOCK;
  }

  /** Where the innermost open bracket, comment or text block begins. */
  Optional<Integer> innermostOpen() {
    if (in == In.COMMENT || in == In.TEXT_BLOCK) {
      return Optional.of(openedAt);
    }
    return Optional.ofNullable(open.peek());
  }

  /** The first closing bracket that closes nothing or the wrong thing; -1 where all fit. */
  int wrongCloser() {
    return wrongCloser;
  }

  /** The first character among the code that cannot be seen; -1 where there is none. */
  int unseen() {
    return unseen;
  }

  /** How many brackets were open at once, at most. */
  int depth() {
    return depth;
  }

  /** How many signs the longest expression has, about. */
  int links() {
    return mostLinks;
  }

  /** The first character that is code; -1 where there is none. */
  int firstCode() {
    return firstCode;
  }

  /** The last character that is code; -1 where there is none. */
  int lastCode() {
    return lastCode;
  }
}
