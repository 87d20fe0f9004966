package org.leverbook.abuse;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import org.leverbook.display.Display;
import org.leverbook.display.Shown;
import tech.tablesaw.api.Table;

/** What must not reach a user: numbers that are none, names of Java's inside, broken sentences. */
final class Judge {

  private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|Infinity)\\b|∞");
  private static final Pattern NULL = Pattern.compile("(?<![(\\w\"=])(?<!\" ?: ?)null\\b");
  private static final Pattern INSIDE =
      Pattern.compile(
          "\\b(?:org\\.leverbook|org\\.hipparchus|java\\.(?:lang|util|nio|io)|javax\\.|tech\\.)"
              + "|\\w(?:Exception|Error)\\b|\\$\\$|\\$Proxy|\\$Lambda|@[0-9a-f]{6,8}\\b|\\bat .*\\.java:");
  private static final Pattern WHOLE = Pattern.compile("(?s).*[.?!)\":]\\s*");

  private Judge() {}

  /** What is wrong with a sentence that refuses; empty where nothing is. */
  static String sentence(String sentence, boolean oddGiven) {
    if (sentence == null || sentence.isBlank()) {
      return "an empty refusal";
    }
    Matcher inside = INSIDE.matcher(sentence);
    if (inside.find()) {
      return "a name of the inside: " + sentence;
    }
    if (!oddGiven && NO_NUMBER.matcher(sentence).find()) {
      return "no number: " + sentence;
    }
    if (NULL.matcher(sentence).find()) {
      return "null: " + sentence;
    }
    return WHOLE.matcher(sentence).matches() ? "" : "no whole sentence: " + sentence;
  }

  /** What is wrong with a result; empty where nothing is. */
  static String value(Object value, boolean pictures) {
    return value(value, pictures, 0);
  }

  private static String value(Object value, boolean pictures, int depth) {
    if (value == null || depth > 3) {
      return depth == 0 && value == null ? "null comes back" : "";
    }
    if (value instanceof Double number) {
      return Double.isFinite(number) ? "" : "a result that is " + number;
    }
    if (value instanceof OptionalDouble number) {
      return number.isEmpty() ? "" : value(number.getAsDouble(), pictures, depth + 1);
    }
    if (value instanceof Optional<?> inner) {
      return inner.isEmpty() ? "" : value(inner.get(), pictures, depth + 1);
    }
    if (value instanceof Quantity<?> quantity) {
      return value(quantity.getValue().doubleValue(), pictures, depth + 1);
    }
    if (value instanceof double[] numbers) {
      for (double number : numbers) {
        if (!Double.isFinite(number)) {
          return "a result that holds " + number;
        }
      }
      return "";
    }
    if (value instanceof Collection<?> all) {
      return all.stream()
          .limit(5)
          .map(each -> value(each, pictures, depth + 1))
          .filter(complaint -> !complaint.isEmpty())
          .findFirst()
          .orElse("");
    }
    if (value instanceof Map<?, ?> map) {
      return value(map.values(), pictures, depth + 1);
    }
    boolean ours = value.getClass().getName().startsWith("org.leverbook.");
    return ours || value instanceof Table || value instanceof CharSequence
        ? shown(value, pictures)
        : "";
  }

  private static String shown(Object value, boolean pictures) {
    Shown shown = Display.of(value);
    String complaint = text("text", shown.text());
    if (complaint.isEmpty()) {
      complaint = text("html", shown.html().orElse(""));
    }
    if (complaint.isEmpty() && pictures) {
      complaint = text("svg", shown.svg().orElse(""));
    }
    return complaint;
  }

  private static String text(String form, String text) {
    Matcher number = NO_NUMBER.matcher(text);
    Matcher none = NULL.matcher(text);
    Matcher inside = INSIDE.matcher(text);
    Matcher found = number.find() ? number : none.find() ? none : inside.find() ? inside : null;
    return found == null
        ? ""
        : form
            + " shows "
            + text.substring(
                    Math.max(0, found.start() - 60), Math.min(text.length(), found.end() + 60))
                .replace('\n', '|');
  }
}
