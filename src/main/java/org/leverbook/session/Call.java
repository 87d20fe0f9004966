package org.leverbook.session;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * A call in a text: its name and what stands in its brackets.
 *
 * @param name the word that is called
 * @param nameAt where it begins
 * @param open where its bracket opens
 * @param end behind its closing bracket
 * @param arguments what it is given
 */
record Call(String name, int nameAt, int open, int end, List<Argument> arguments) {

  /**
   * One argument.
   *
   * @param text as written, without blanks around it
   * @param at where it begins
   */
  record Argument(String text, int at) {

    /** As written, on one line and cut where it is long. */
    String brief() {
      String line = text.replaceAll("\\s+", " ");
      return line.length() <= 40 ? line : line.substring(0, 37) + "...";
    }

    boolean isRule() {
      return text.matches("(?s)(?:\\w+|\\([^()]*\\))\\s*->.*") || text.matches("[^()\"]*::\\w+");
    }

    /** How many values a rule written with an arrow takes; -1 where it has no arrow. */
    int ruleTakes() {
      if (!text.matches("(?s)(?:\\w+|\\([^()]*\\))\\s*->.*")) {
        return -1;
      }
      String head = text.substring(0, text.indexOf("->")).strip();
      return head.startsWith("(") ? Kinds.cut(head.substring(1, head.length() - 1)).size() : 1;
    }
  }

  /** The innermost call in whose brackets a place stands. */
  static Optional<Call> around(String code, int place) {
    int at = Math.max(0, Math.min(place, code.length()));
    Brackets brackets = new Brackets(code, 0);
    brackets.readTo(at);
    return brackets
        .innermostOpen()
        .filter(open -> code.charAt(open) == '(')
        .flatMap(open -> opening(code, open));
  }

  /** The call whose name stands at a place. */
  static Optional<Call> named(String code, int place) {
    int end = place;
    while (end < code.length() && Character.isJavaIdentifierPart(code.charAt(end))) {
      end++;
    }
    int open = end;
    while (open < code.length() && Character.isWhitespace(code.charAt(open))) {
      open++;
    }
    return end > place && open < code.length() && code.charAt(open) == '('
        ? opening(code, open)
        : Optional.empty();
  }

  private static Optional<Call> opening(String code, int open) {
    int nameEnd = open;
    while (nameEnd > 0 && Character.isWhitespace(code.charAt(nameEnd - 1))) {
      nameEnd--;
    }
    int nameAt = nameEnd;
    while (nameAt > 0 && Character.isJavaIdentifierPart(code.charAt(nameAt - 1))) {
      nameAt--;
    }
    String name = code.substring(nameAt, nameEnd);
    if (name.isEmpty() || name.matches("if|while|for|switch|return|catch")) {
      return Optional.empty();
    }
    List<Argument> arguments = new ArrayList<>();
    int end = arguments(code, open, arguments);
    return Optional.of(new Call(name, nameAt, open, end, List.copyOf(arguments)));
  }

  /** Reads what stands in the brackets; returns where they have closed. */
  private static int arguments(String code, int open, List<Argument> into) {
    Deque<Character> inner = new ArrayDeque<>();
    Brackets reader = new Brackets(code, open + 1);
    int from = open + 1;
    for (int at = open + 1; at < code.length(); at++) {
      reader.readTo(at);
      if (reader.inWords()) {
        continue;
      }
      char c = code.charAt(at);
      if ("([{".indexOf(c) >= 0) {
        inner.push(c);
      } else if (")]}".indexOf(c) >= 0) {
        if (inner.isEmpty()) {
          add(code, from, at, into);
          return at + 1;
        }
        inner.pop();
      } else if (c == ',' && inner.isEmpty()) {
        add(code, from, at, into);
        from = at + 1;
      }
    }
    add(code, from, code.length(), into);
    return code.length();
  }

  private static void add(String code, int from, int to, List<Argument> into) {
    String raw = code.substring(from, to);
    if (!raw.isBlank()) {
      int lead = raw.length() - raw.stripLeading().length();
      into.add(new Argument(raw.strip(), from + lead));
    }
  }
}
