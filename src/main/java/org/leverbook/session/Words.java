package org.leverbook.session;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Takes the names that only the compiler needs out of its messages. */
final class Words {

  private static final Pattern WRAPPER = Pattern.compile("(?:REPL\\.)?\\$JShell\\$\\w+(?:\\.|\\b)");
  private static final Pattern PACKAGE =
      Pattern.compile("\\b(?:[a-z][a-z0-9_]*\\.)+(?=[A-Z][A-Za-z0-9_]*)");

  private Words() {}

  /** A message without wrapper and package names. */
  static String cleaned(String message) {
    return PACKAGE.matcher(unwrapped(message)).replaceAll("");
  }

  /** A message without wrapper names. */
  static String unwrapped(String message) {
    // What stood "in" a wrapper stands in nothing that the user knows.
    return WRAPPER.matcher(message).replaceAll("").replaceAll(" in (?:class )?(?= |$)", "");
  }

  /** Words as a sentence reads them: a, b or c; methods with both brackets. */
  static String choice(List<String> words) {
    List<String> shown = words.stream().map(w -> w.endsWith("(") ? w + ")" : w).toList();
    int last = shown.size() - 1;
    return last <= 0
        ? String.join("", shown)
        : String.join(", ", shown.subList(0, last)) + " or " + shown.get(last);
  }

  /** A class name as words: {@code ArrayIndexOutOfBounds} is "array index out of bounds". */
  static String spaced(String camelCase) {
    String[] words = camelCase.split("(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])");
    return Arrays.stream(words)
        .map(w -> w.matches("[A-Z]{2,}") ? w : w.toLowerCase(Locale.ROOT))
        .collect(Collectors.joining(" "));
  }

  static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /** "a" or "an". */
  static String article(String noun) {
    if (noun.startsWith("no ")) {
      return noun;
    }
    return "aeiouAEIOU".indexOf(noun.charAt(0)) >= 0 ? "an " + noun : "a " + noun;
  }
}
