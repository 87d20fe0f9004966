package org.leverbook.session;

/**
 * A piece of Java text.
 *
 * @param kind what it is
 * @param text as it stands there; empty for the end of a unit
 * @param start where it begins, in UTF-16 units
 */
record Token(Kind kind, String text, int start) {

  /** What a piece can be. */
  enum Kind {
    /** A word: a name or a keyword. */
    NAME,
    NUMBER,
    /** A quoted text, closed. */
    STRING,
    /** A single character in quotes. */
    CHARACTER,
    /** A bracket, an operator, a comma. */
    SIGN,
    /** A line end that closes a statement, expression or declaration. */
    BREAK
  }

  boolean is(String sign) {
    return kind == Kind.SIGN && text.equals(sign);
  }

  boolean isWord(String word) {
    return kind == Kind.NAME && text.equals(word);
  }

  boolean isName() {
    return kind == Kind.NAME;
  }

  /** Behind its last character. */
  int end() {
    return start + text.length();
  }
}
