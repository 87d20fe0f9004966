package org.leverbook.terminal;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.lang.model.SourceVersion;

/**
 * Cuts Java text, finished or not, into what an eye tells apart: words, numbers, quoted texts,
 * comments, brackets. Goes once over the text; nothing is compiled.
 */
final class JavaTokens {

  /** What a token is. */
  enum Kind {
    KEYWORD,
    NAME,
    NUMBER,
    TEXT,
    COMMENT,
    BRACKET,
    OTHER
  }

  /**
   * A token.
   *
   * @param kind what it is
   * @param from where it begins
   * @param to where it ends
   */
  record Token(Kind kind, int from, int to) {}

  /**
   * A call whose brackets are open at some place.
   *
   * @param open where its bracket is
   * @param parameter how many of its commas come before the place
   * @param since where the last of those commas is, or else the bracket
   */
  record Call(int open, int parameter, int since) {}

  private static final String OPENERS = "([{";
  private static final String CLOSERS = ")]}";
  private static final String TEXT_BLOCK = "\"\"\"";

  private final String text;
  private final List<Token> tokens = new ArrayList<>();
  private boolean unfinished;
  private Map<Integer, Integer> mates;

  private JavaTokens(String text) {
    this.text = text;
  }

  /** Cuts a text. */
  static JavaTokens of(String text) {
    JavaTokens cut = new JavaTokens(text);
    int at = 0;
    while (at < text.length()) {
      at = cut.next(at);
    }
    return cut;
  }

  List<Token> tokens() {
    return tokens;
  }

  /** Whether the text ends inside a bracket, a comment or a text block. */
  boolean isOpen() {
    int depth = 0;
    for (Token token : tokens) {
      if (token.kind() == Kind.BRACKET) {
        depth += OPENERS.indexOf(text.charAt(token.from())) >= 0 ? 1 : -1;
      }
    }
    return unfinished || depth > 0;
  }

  /** Where the bracket is that belongs to the one at a place; empty where it has none. */
  Optional<Integer> mate(int place) {
    return Optional.ofNullable(mates().get(place));
  }

  /** Whether a closing bracket closes nothing. */
  boolean isLonely(Token bracket) {
    return CLOSERS.indexOf(text.charAt(bracket.from())) >= 0
        && !mates().containsKey(bracket.from());
  }

  private Map<Integer, Integer> mates() {
    if (mates == null) {
      mates = new HashMap<>();
      Deque<Integer> open = new ArrayDeque<>();
      for (Token token : tokens) {
        if (token.kind() == Kind.BRACKET) {
          pair(token.from(), open);
        }
      }
    }
    return mates;
  }

  private void pair(int place, Deque<Integer> open) {
    char bracket = text.charAt(place);
    if (OPENERS.indexOf(bracket) >= 0) {
      open.push(place);
    } else if (!open.isEmpty()
        && OPENERS.indexOf(text.charAt(open.peek())) == CLOSERS.indexOf(bracket)) {
      int opener = open.pop();
      mates.put(place, opener);
      mates.put(opener, place);
    }
  }

  /** Whether a bracket, and nothing else, is at a place. */
  boolean isBracket(int place) {
    return tokens.stream().anyMatch(t -> t.kind() == Kind.BRACKET && t.from() == place);
  }

  /** The innermost call around the end of the text; empty inside quotes and comments. */
  Optional<Call> callAtEnd() {
    Token last = tokens.isEmpty() ? null : tokens.get(tokens.size() - 1);
    boolean quoted =
        last != null
            && last.to() == text.length()
            && (last.kind() == Kind.COMMENT || last.kind() == Kind.TEXT && !isClosedText(last));
    if (quoted) {
      return Optional.empty();
    }
    Deque<Call> open = new ArrayDeque<>();
    for (Token token : tokens) {
      char c = text.charAt(token.from());
      if (token.kind() == Kind.BRACKET && OPENERS.indexOf(c) >= 0) {
        open.push(new Call(token.from(), 0, token.from()));
      } else if (token.kind() == Kind.BRACKET && !open.isEmpty()) {
        open.pop();
      } else if (token.kind() == Kind.OTHER && c == ',' && !open.isEmpty()) {
        Call call = open.pop();
        open.push(new Call(call.open(), call.parameter() + 1, token.from()));
      }
    }
    return Optional.ofNullable(open.peek()).filter(call -> isCall(call.open()));
  }

  private boolean isClosedText(Token token) {
    String quoted = text.substring(token.from(), token.to());
    String quote = quoted.startsWith(TEXT_BLOCK) ? TEXT_BLOCK : quoted.substring(0, 1);
    return quoted.length() >= 2 * quote.length() && quoted.endsWith(quote);
  }

  private boolean isCall(int open) {
    return text.charAt(open) == '('
        && open > 0
        && Character.isJavaIdentifierPart(text.charAt(open - 1));
  }

  private int next(int at) {
    char c = text.charAt(at);
    if (Character.isWhitespace(c)) {
      return at + 1;
    }
    if (text.startsWith("//", at)) {
      return add(Kind.COMMENT, at, lineEnd(at));
    }
    if (text.startsWith("/*", at)) {
      return addUpTo("*/", Kind.COMMENT, at, at + 2);
    }
    if (text.startsWith(TEXT_BLOCK, at)) {
      return addUpTo(TEXT_BLOCK, Kind.TEXT, at, at + TEXT_BLOCK.length());
    }
    if (c == '"' || c == '\'') {
      return add(Kind.TEXT, at, quoteEnd(at, c));
    }
    if (Character.isDigit(c)) {
      return add(Kind.NUMBER, at, numberEnd(at));
    }
    if (Character.isJavaIdentifierStart(c)) {
      return addName(at);
    }
    boolean bracket = OPENERS.indexOf(c) >= 0 || CLOSERS.indexOf(c) >= 0;
    return add(bracket ? Kind.BRACKET : Kind.OTHER, at, at + 1);
  }

  private int add(Kind kind, int from, int to) {
    tokens.add(new Token(kind, from, to));
    return to;
  }

  private int addUpTo(String closer, Kind kind, int from, int begin) {
    int found = text.indexOf(closer, begin);
    while (found > 0 && kind == Kind.TEXT && text.charAt(found - 1) == '\\') {
      found = text.indexOf(closer, found + 1);
    }
    unfinished |= found < 0;
    return add(kind, from, found < 0 ? text.length() : found + closer.length());
  }

  private int addName(int from) {
    int to = from;
    while (to < text.length() && Character.isJavaIdentifierPart(text.charAt(to))) {
      to++;
    }
    String name = text.substring(from, to);
    boolean keyword = SourceVersion.isKeyword(name) || name.equals("var") || name.equals("record");
    return add(keyword ? Kind.KEYWORD : Kind.NAME, from, to);
  }

  private int lineEnd(int from) {
    int end = text.indexOf('\n', from);
    return end < 0 ? text.length() : end;
  }

  private int quoteEnd(int from, char quote) {
    int end = lineEnd(from);
    for (int at = from + 1; at < end; at++) {
      if (text.charAt(at) == '\\') {
        at++;
      } else if (text.charAt(at) == quote) {
        return at + 1;
      }
    }
    return end;
  }

  private int numberEnd(int from) {
    int to = from;
    while (to < text.length()) {
      char c = text.charAt(to);
      boolean point = c == '.' && to + 1 < text.length() && Character.isDigit(text.charAt(to + 1));
      if (!point && !Character.isLetterOrDigit(c) && c != '_') {
        break;
      }
      to++;
    }
    return to;
  }
}
