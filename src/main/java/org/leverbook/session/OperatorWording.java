package org.leverbook.session;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An operator that does not fit its values, in words. */
final class OperatorWording {

  private static final Pattern BOTH =
      Pattern.compile(
          "binary operator '(.*?)'\\s*first type:\\s*(.*?)\\s*second type:\\s*([^\\n]*)",
          Pattern.DOTALL);
  private static final Pattern ONE =
      Pattern.compile("operand type (.*?) for unary operator '(.*?)'");
  private static final Pattern COMPARED =
      Pattern.compile(
          "(?:incomparable types: |types )(.*?) and (.*?)(?: cannot be compared|\\n|$)");

  private final FittingTypes types;

  OperatorWording(FittingTypes types) {
    this.types = types;
  }

  /** The complaint in words; empty where it is another. */
  Optional<Told> of(String message, String code, int at, int start, int end) {
    Matcher both = BOTH.matcher(message);
    if (both.find()) {
      String left = side(code, start, at);
      String right = side(code, at + both.group(1).length(), end);
      String said =
          both(both.group(1), Kinds.plain(both.group(2)), Kinds.plain(both.group(3)), left, right);
      return Optional.of(new Told(said, at));
    }
    Matcher one = ONE.matcher(message);
    if (one.find()) {
      String needs = one.group(2).equals("!") ? "a yes or no (true or false)" : "a number";
      String said = one.group(2) + " works on " + needs + ", not on " + Kinds.a(one.group(1)) + ".";
      return Optional.of(new Told(said, at));
    }
    Matcher compared = COMPARED.matcher(message);
    return compared.find()
        ? Optional.of(new Told(unlike(Kinds.a(compared.group(1)), Kinds.a(compared.group(2))), at))
        : Optional.empty();
  }

  private static String unlike(String first, String second) {
    return first.equals(second)
        ? "These two are never the same."
        : Words.capital(first) + " and " + second + " are never the same: they cannot be compared.";
  }

  private static String side(String code, int from, int to) {
    boolean there = 0 <= from && from < to && to <= code.length();
    return there ? new Call.Argument(code.substring(from, to).strip(), 0).brief() : "";
  }

  private String both(String operator, String first, String second, String left, String right) {
    boolean amounts = first.startsWith("Quantity") || second.startsWith("Quantity");
    if (operator.matches("==|!=")) {
      return unlike(Kinds.a(first), Kinds.a(second));
    }
    if (operator.matches("&&|\\|\\|")) {
      return operator + " joins two conditions, not " + pair(first, second) + ".";
    }
    if (first.equals("boolean") && operator.matches("[<>]=?")) {
      return "Only two values are compared at once: join two comparisons with &&, as in 3 < x && x"
          + " < 5.";
    }
    if (amounts) {
      return amount(operator, first, second, left, right);
    }
    boolean oneNumber = Kinds.isNumber(first) || Kinds.isNumber(second);
    Optional<String> asked =
        oneNumber ? number(first, left).or(() -> number(second, right)) : Optional.empty();
    String said = operator + " works on numbers, not on " + pair(first, second);
    if (first.equals("String") || second.equals("String")) {
      return said + "; texts are only joined, with +.";
    }
    return asked
        .map(way -> said + ": ask for a number first, such as " + way + ".")
        .orElse(said + ".");
  }

  private static String pair(String first, String second) {
    String one = Kinds.a(first);
    String other = Kinds.a(second);
    return one.equals(other) ? "two of the kind " + Kinds.of(first) : one + " and " + other;
  }

  private Optional<String> number(String type, String code) {
    if (Kinds.isNumber(type) || code.isEmpty() || type.matches("[a-z]+|String")) {
      return Optional.empty();
    }
    List<String> ways = types.numbers(type);
    return ways.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Words.choice(ways.stream().limit(3).map(word -> code + "." + word + "()").toList()));
  }

  /** Quantities have words for what numbers do with signs. */
  private static String amount(
      String operator, String first, String second, String left, String right) {
    String word =
        switch (operator) {
          case "+" -> "add";
          case "-" -> "subtract";
          case "*" -> "multiply";
          case "/" -> "divide";
          default -> "";
        };
    String kind = Kinds.of(first.startsWith("Quantity") ? first : second);
    if (word.isEmpty()) {
      String number = ".getValue().doubleValue()";
      return "Amounts with a unit are compared by their numbers, in the same unit: "
          + (first.startsWith("Quantity") ? left + number : left)
          + " "
          + operator
          + " "
          + (second.startsWith("Quantity") ? right + number : right)
          + ".";
    }
    boolean turned = !first.startsWith("Quantity") && word.equals("multiply");
    boolean alike = Kinds.of(first).equals(Kinds.of(second)) || word.matches("multiply|divide");
    if (!first.startsWith("Quantity") && !turned || !alike) {
      return operator + " cannot join " + pair(first, second) + ".";
    }
    String from = turned ? right : left;
    String by = turned ? left : right;
    String such = from.isEmpty() ? word + "(...)" : from + "." + word + "(" + by + ")";
    return Words.article(kind).replaceFirst("^a", "A")
        + " has its unit with it: write "
        + such
        + ".";
  }
}
