package org.leverbook.session;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A text that ends too early, in words; places are those of the whole text. */
final class Unfinished {

  private static final Pattern HEAD =
      Pattern.compile("(?s)(for|while|if)\\s*\\(.*\\)|(else|do|try)");
  private static final Pattern CLASS =
      Pattern.compile("(?:class|record|interface|enum)(?:\\s+\\w+.*)?", Pattern.DOTALL);

  private Unfinished() {}

  static Told told(SourceText source, Unit unit) {
    String text = source.text();
    Brackets brackets = new Brackets(text, unit.start());
    brackets.readTo(text.length());
    Optional<Integer> open = brackets.innermostOpen();
    if (open.isPresent()) {
      return new Told(unclosed(source, open.get()), open.get());
    }
    int last = brackets.lastCode();
    if (last < unit.start()) {
      return new Told("What begins here is not finished when the text ends.", unit.start());
    }
    Optional<Told> habit = Habits.of(text, last, false);
    return habit.orElseGet(() -> ending(text, unit.start(), last));
  }

  private static Told ending(String text, int start, int last) {
    String code = text.substring(start, last + 1);
    Matcher head = HEAD.matcher(code);
    if (code.length() < 10_000 && head.matches()) {
      String word = head.group(1) == null ? head.group(2) : head.group(1);
      return new Told(
          "What this " + word + " is about is missing: it stands in braces { ... }.", start);
    }
    if (CLASS.matcher(code).matches()) {
      return new Told("What belongs to it is missing: it stands in braces { ... }.", start);
    }
    char end = text.charAt(last);
    if (end == '.') {
      return new Told("After the dot stands what is asked, as in .start().", last);
    }
    if (end == ',') {
      return new Told("After the comma something must follow, or it is one too many.", last);
    }
    return "=+-*/%&|^<>?:!~".indexOf(end) >= 0
        ? new Told("After the " + sign(text, last) + " something must follow.", last)
        : new Told("What begins here is not finished when the text ends.", start);
  }

  private static String sign(String text, int last) {
    int from = last;
    while (from > 0 && "=+-*/%&|^<>?:!~".indexOf(text.charAt(from - 1)) >= 0) {
      from--;
    }
    return text.substring(from, last + 1);
  }

  private static String unclosed(SourceText source, int open) {
    String where = " opened at line " + source.lineAt(open) + ", column " + source.columnAt(open);
    char opener = source.text().charAt(open);
    return switch (opener) {
      case '/' -> "The comment" + where + " is never closed by */.";
      case '"' -> "The text block" + where + " is never closed by \"\"\".";
      default ->
          "The bracket "
              + opener
              + where
              + " is never closed: a "
              + Brackets.closerOf(opener)
              + " is missing.";
    };
  }
}
