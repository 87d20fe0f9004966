package org.leverbook.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Types as a coach would name what they hold: an int is a whole number, a mass is a mass. */
final class Kinds {

  /** A quantity of any sort. */
  static final String ANY_AMOUNT = "amount with its unit";

  private static final Map<String, String> PLAIN =
      Map.ofEntries(
          Map.entry("int", "whole number"),
          Map.entry("long", "whole number"),
          Map.entry("short", "whole number"),
          Map.entry("byte", "whole number"),
          Map.entry("Integer", "whole number"),
          Map.entry("Long", "whole number"),
          Map.entry("double", "number"),
          Map.entry("float", "number"),
          Map.entry("Double", "number"),
          Map.entry("Float", "number"),
          Map.entry("Number", "number"),
          Map.entry("String", "text"),
          Map.entry("CharSequence", "text"),
          Map.entry("char", "single letter"),
          Map.entry("Character", "single letter"),
          Map.entry("boolean", "yes or no (true or false)"),
          Map.entry("Boolean", "yes or no (true or false)"),
          Map.entry("Object", "value"),
          Map.entry("Dimensionless", "share"));

  private static final Set<String> LISTS = Set.of("List", "Collection", "Iterable", "ArrayList");

  /** How many values a rule of each type takes. */
  private static final Map<String, Integer> RULES =
      Map.ofEntries(
          Map.entry("Function", 1),
          Map.entry("Predicate", 1),
          Map.entry("Consumer", 1),
          Map.entry("UnaryOperator", 1),
          Map.entry("ToDoubleFunction", 1),
          Map.entry("ToIntFunction", 1),
          Map.entry("DoubleFunction", 1),
          Map.entry("IntFunction", 1),
          Map.entry("DoubleUnaryOperator", 1),
          Map.entry("IntUnaryOperator", 1),
          Map.entry("BiFunction", 2),
          Map.entry("BiPredicate", 2),
          Map.entry("BinaryOperator", 2),
          Map.entry("BiConsumer", 2),
          Map.entry("ToDoubleBiFunction", 2),
          Map.entry("DoubleBinaryOperator", 2),
          Map.entry("Comparator", 2),
          Map.entry("Supplier", 0),
          Map.entry("Callable", 0),
          Map.entry("Runnable", 0));

  private Kinds() {}

  /** A type with its article, as in "a mass". */
  static String a(String type) {
    String name = of(type);
    return name.equals("nothing") ? name : Words.article(name);
  }

  /**
   * A type in a coach's words.
   *
   * @param type as the compiler names it, with or without packages
   * @return a noun without article
   */
  static String of(String type) {
    String name = plain(type);
    if (name.equals("void")) {
      return "nothing";
    }
    if (name.endsWith("[]")) {
      return "array of " + several(name.substring(0, name.length() - 2));
    }
    String bare = bare(name);
    List<String> inside = inside(name);
    if (rule(name) >= 0) {
      return "rule such as " + shape(name);
    }
    if (bare.equals("Quantity")) {
      return inside.isEmpty() || isOpen(inside.get(0)) ? ANY_AMOUNT : of(inside.get(0));
    }
    if (LISTS.contains(bare)) {
      boolean open = inside.isEmpty() || isOpen(inside.get(0));
      return open ? "list" : "list of " + several(inside.get(0));
    }
    if (isOpen(bare)) {
      return "value";
    }
    String known = PLAIN.get(bare);
    return known != null ? known : noun(bare);
  }

  private static String noun(String bare) {
    String last = bare.substring(bare.lastIndexOf('.') + 1);
    last = last.length() > 2 && last.endsWith("Id") ? last.substring(0, last.length() - 2) : last;
    return last.isEmpty() ? "value" : Words.spaced(last);
  }

  private static String several(String type) {
    String one = of(type);
    return one.matches(".*[ (].*") && !one.matches("[a-z]+( [a-z]+)?")
        ? "values"
        : one.endsWith("s") || one.endsWith("x")
            ? one + "es"
            : one.matches(".*[^aeiou]y") ? one.substring(0, one.length() - 1) + "ies" : one + "s";
  }

  /** How many values a rule takes; -1 for a type that is no rule. */
  static int rule(String type) {
    return RULES.getOrDefault(bare(plain(type)), -1);
  }

  /** How a rule is written: the values it takes, an arrow, what it gives. */
  static String shape(String type) {
    String name = plain(type);
    List<String> inside = inside(name);
    int count = rule(name);
    String takes = count == 0 ? "()" : count == 1 ? "x" : "(x, y)";
    String bare = bare(name);
    String gives =
        bare.endsWith("Predicate")
            ? "true or false"
            : bare.startsWith("ToDouble") || bare.startsWith("Double")
                ? "number"
                : bare.equals("Consumer") || bare.equals("Runnable") || bare.equals("BiConsumer")
                    ? "..."
                    : inside.isEmpty() ? "value" : of(inside.get(inside.size() - 1));
    return takes + " -> " + gives;
  }

  static boolean isNumber(String type) {
    return of(type).endsWith("number");
  }

  /** A name that stands for any type, as in {@code Quantity<Q>}. */
  static boolean isOpen(String type) {
    return type.matches("[A-Z]\\d?|\\?|CAP#\\d+");
  }

  /** A type without packages, captures, wildcards' bounds and marks of variable count. */
  static String plain(String type) {
    return Words.cleaned(type)
        .replaceAll("capture#\\d+ of ", "")
        .replaceAll("\\? (?:extends|super) ", "")
        .replaceAll("INT#\\d+|CAP#\\d+", "?")
        .replace("...", "")
        .replace('$', '.')
        .strip();
  }

  /** A type without what stands in its angle brackets. */
  static String bare(String type) {
    int open = type.indexOf('<');
    return open < 0 ? type : type.substring(0, open);
  }

  /** What stands in a type's angle brackets, cut at the outer commas. */
  static List<String> inside(String type) {
    int open = type.indexOf('<');
    int close = type.lastIndexOf('>');
    return open < 0 || close < open ? List.of() : cut(type.substring(open + 1, close));
  }

  /** Cuts at the commas that stand in no bracket. */
  static List<String> cut(String text) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      depth += c == '<' || c == '(' || c == '{' ? 1 : 0;
      depth -= (c == '>' && (i == 0 || text.charAt(i - 1) != '-')) || c == ')' || c == '}' ? 1 : 0;
      if (c == ',' && depth == 0) {
        parts.add(text.substring(from, i).strip());
        from = i + 1;
      }
    }
    if (!text.substring(from).isBlank()) {
      parts.add(text.substring(from).strip());
    }
    return parts;
  }

  /** A name in camel case as words in small letters. */
  static String words(String name) {
    return Words.spaced(name).toLowerCase(Locale.ROOT);
  }
}
