package org.leverbook.session;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A word that is not there, in words: what could be meant, and how to come to it. */
final class UnknownWording {

  private static final Pattern SYMBOL =
      Pattern.compile("symbol:\\s+(?:static )?(\\w+) ([\\p{L}\\p{Sc}_$][^\\s(,]*)(\\(.*\\))?");
  private static final Pattern OWNER =
      Pattern.compile(
          "location:\\s+(variable \\S+ of type |class |interface |record |enum )(\\S.*)");
  private static final Pattern GIVEN_A_VALUE = Pattern.compile("\\s*=(?!=)\\s*");

  private static final int LONGEST = 80;

  /** What other languages call it. */
  private static final Map<String, String> ELSEWHERE =
      Map.ofEntries(
          Map.entry("print", "A value shows itself when it stands alone on its line: %s."),
          Map.entry("println", "A value shows itself when it stands alone on its line: %s."),
          Map.entry("printf", "A value shows itself when it stands alone on its line: %s."),
          Map.entry("echo", "A value shows itself when it stands alone on its line."),
          Map.entry("cat", "A value shows itself when it stands alone on its line: %s."),
          Map.entry("True", "Java writes true with a small letter."),
          Map.entry("TRUE", "Java writes true with small letters."),
          Map.entry("False", "Java writes false with a small letter."),
          Map.entry("FALSE", "Java writes false with small letters."),
          Map.entry("None", "Java calls it null."),
          Map.entry("NULL", "Java writes null with small letters."),
          Map.entry("nil", "Java calls it null."),
          Map.entry("not", "Java writes not as !, as in !(a > b)."),
          Map.entry("len", "A list tells its size with .size(), a text with .length()."),
          Map.entry("range", "Counting goes for (int i = 0; i < 10; i++) { ... }."),
          Map.entry("seq", "Counting goes for (int i = 0; i < 10; i++) { ... }."),
          Map.entry("str", "A value becomes a text with String.valueOf(...)."),
          Map.entry("exit", "quit() leaves."),
          Map.entry("bye", "quit() leaves."),
          Map.entry("let", "A new name begins with var, as in var x = 3."),
          Map.entry("string", "A text's type is String, with a capital."),
          Map.entry("bool", "Java calls this type boolean."),
          Map.entry("c", "A list is made with List.of(...)."));

  private final Makers makers;
  private final FittingTypes types;
  private final Knowledge knowledge;

  UnknownWording(Makers makers, FittingTypes types, Knowledge knowledge) {
    this.makers = makers;
    this.types = types;
    this.knowledge = knowledge;
  }

  /**
   * Says that there is no such word.
   *
   * @param message the compiler's
   * @param code what was typed
   * @param at where the word begins
   * @return a sentence; empty where the message names no word
   */
  Optional<Told> of(String message, String code, int at) {
    Matcher symbol = SYMBOL.matcher(message);
    if (!symbol.find()) {
      return Optional.empty();
    }
    String word = symbol.group(2);
    if (word.length() > LONGEST) {
      return Optional.of(
          new Told("A word of " + word.length() + " letters is not known here.", at));
    }
    boolean called = symbol.group(3) != null;
    boolean isType = symbol.group(1).equals("class");
    Matcher owner = OWNER.matcher(message);
    String type = "";
    if (owner.find()) {
      type = Kinds.plain(owner.group(2).split("\n")[0]);
    }
    boolean member = at > 0 && code.substring(0, at).stripTrailing().endsWith(".");
    String said =
        member && !type.isEmpty()
            ? member(word, called, type, code, at, owner.group(1).startsWith("class"))
            : alone(word, called, isType, code, at);
    return Optional.of(new Told(said, at));
  }

  private String alone(String word, boolean called, boolean isType, String code, int at) {
    String none = "There is no word \"" + word + "\"";
    int end = Math.min(code.length(), at + word.length());
    List<String> known = knowledge.candidates(code, at);
    if (isType && code.substring(0, at).stripTrailing().endsWith("new")) {
      return made(word, none);
    }
    if (!called && !isType && GIVEN_A_VALUE.matcher(code).region(end, code.length()).lookingAt()) {
      return given(word, code, at, known);
    }
    if (ELSEWHERE.containsKey(word)) {
      return String.format(Locale.ROOT, none + ". " + ELSEWHERE.get(word), argument(code, at, end));
    }
    Optional<String> rule = called || isType ? Optional.empty() : unknownInRule(word, code, at);
    if (rule.isPresent()) {
      return rule.get();
    }
    List<String> fitting =
        isType ? known.stream().filter(n -> Character.isUpperCase(n.charAt(0))).toList() : known;
    List<String> near =
        Spelling.nearest(word, fitting).stream()
            .filter(n -> word.length() > 1 || Spelling.bare(n).equalsIgnoreCase(word))
            .toList();
    if (isType) {
      String kind = "There is no kind of value \"" + word + "\"";
      return near.isEmpty() ? kind + "." : offered(kind, word, near);
    }
    if (near.contains(word + "(") || near.contains(word + "()")) {
      if (!called && !isType) {
        return bracketed(word, code.substring(end));
      }
    }
    if (called && near.contains(word)) {
      return withBrackets(word, near);
    }
    Optional<String> math = math(word, called);
    if (math.isPresent() && near.stream().noneMatch(n -> n.equalsIgnoreCase(word))) {
      return none + "; Java has it as " + math.get() + ".";
    }
    boolean capitals = !near.isEmpty() && Spelling.bare(near.get(0)).equalsIgnoreCase(word);
    List<String> holding = capitals ? List.of() : Spelling.holding(word, fitting);
    List<String> meant = holding.isEmpty() ? near : holding;
    return meant.isEmpty() ? none + "." : offered(none, word, meant);
  }

  /** A name that only a rule could bring in, where a rule is asked and none begins. */
  private Optional<String> unknownInRule(String word, String code, int at) {
    Optional<Call> call = Call.around(code, at);
    for (int depth = 0; call.isPresent() && depth < 4; depth++) {
      List<Call.Argument> arguments = call.get().arguments();
      for (int i = 0; i < arguments.size(); i++) {
        Call.Argument argument = arguments.get(i);
        boolean here = argument.at() <= at && at < argument.at() + argument.text().length();
        if (here && !argument.isRule() && takesRule(code, call.get(), i)) {
          return Optional.of(
              "There is no \""
                  + word
                  + "\" here: a rule begins with its name and an arrow, "
                  + word
                  + " -> "
                  + argument.brief()
                  + ".");
        }
      }
      call = Call.around(code, call.get().nameAt());
    }
    return Optional.empty();
  }

  private boolean takesRule(String code, Call call, int index) {
    return knowledge.forms(code, call.open()).stream()
        .filter(form -> form.takes(call.arguments().size()))
        .flatMap(form -> form.at(index).stream())
        .anyMatch(parameter -> Kinds.rule(parameter.type()) == 1);
  }

  private static String offered(String none, String word, List<String> near) {
    String first = near.get(0);
    boolean capitals = Spelling.bare(first).equalsIgnoreCase(word);
    return capitals
        ? none + ", but there is " + Words.choice(List.of(first)) + ": capitals count."
        : none + ": did you mean " + Words.choice(near) + "?";
  }

  /** A type, or a value, that is called like a word. */
  private String withBrackets(String word, List<String> near) {
    String small = Character.toLowerCase(word.charAt(0)) + word.substring(1);
    if (!word.equals(small) && makers.has(small)) {
      return "There is no word \""
          + word
          + "\" to call, but there is "
          + small
          + "(): capitals count.";
    }
    boolean type =
        Character.isUpperCase(word.charAt(0)) && !word.equals(word.toUpperCase(Locale.ROOT));
    List<String> words = makers.of(word);
    if (type && !words.isEmpty()) {
      return word + " is a kind of value; " + Words.choice(words) + " makes one.";
    }
    return "\"" + word + "\" takes no brackets.";
  }

  /** A word that needs brackets; what follows it may be what belongs in them. */
  private String bracketed(String word, String rest) {
    Matcher number = Pattern.compile("\\s+(-?\\d+(?:\\.\\d+)?)").matcher(rest);
    if (number.lookingAt()) {
      return "What "
          + word
          + " is given stands in brackets: "
          + word
          + "("
          + number.group(1)
          + ").";
    }
    String call = makers.call(word);
    return "\""
        + word
        + "\" needs its brackets: "
        + (call.isEmpty() || call.equals(word + "()") ? word + "()" : "write " + call)
        + ".";
  }

  private String made(String word, String none) {
    String small = Character.toLowerCase(word.charAt(0)) + word.substring(1);
    if (makers.has(small)) {
      String call = makers.call(small);
      return "No \"new\" is needed: write " + (call.isEmpty() ? small + "(...)" : call) + ".";
    }
    List<String> words = makers.of(word);
    return words.isEmpty()
        ? none + " that names a kind of value."
        : "No \"new\" is needed: " + Words.choice(words) + " makes one.";
  }

  /** A name that is given a value before it was introduced. */
  private String given(String word, String code, int at, List<String> known) {
    boolean inBrackets = Call.around(code, at).isPresent();
    Matcher equals = GIVEN_A_VALUE.matcher(code).region(at + word.length(), code.length());
    String value = equals.lookingAt() ? code.substring(equals.end()).split("[\n;]", 2)[0] : "...";
    if (inBrackets) {
      return "What stands in brackets is given by its place, not by a name: leave out \""
          + word
          + " =\".";
    }
    List<String> near =
        Spelling.nearest(word, known).stream()
            .filter(n -> !n.contains("(") && Character.isLowerCase(n.charAt(0)))
            .filter(n -> n.length() > 2)
            .toList();
    String brief = new Call.Argument(value.strip(), 0).brief();
    return "There is no \""
        + word
        + "\" yet: a new name begins with var, as in var "
        + word
        + " = "
        + brief
        + (near.isEmpty() ? "." : ". Or did you mean " + Words.choice(near) + "?");
  }

  /** What the word is given, in brackets or behind it. */
  private static String argument(String code, int at, int end) {
    Optional<Call> call = Call.named(code, at);
    String behind = code.substring(end).split("[\n;]", 2)[0].strip();
    String given =
        call.isPresent()
            ? call.get().arguments().size() == 1 ? call.get().arguments().get(0).brief() : ""
            : new Call.Argument(behind, 0).brief();
    return given.isEmpty() ? "..." : given;
  }

  private static Optional<String> math(String word, boolean called) {
    boolean there =
        called
            ? Arrays.stream(Math.class.getMethods())
                .filter(m -> m.getDeclaringClass() == Math.class)
                .anyMatch(m -> m.getName().equals(word))
            : word.equalsIgnoreCase("pi");
    return there ? Optional.of(called ? "Math." + word + "(...)" : "Math.PI") : Optional.empty();
  }

  private String member(
      String word, boolean called, String type, String code, int at, boolean isClass) {
    String kind = Kinds.of(type);
    String none = Words.capital(Words.article(kind)) + " has no \"" + word + "\"";
    int end = Math.min(code.length(), at + word.length());
    List<String> near = Spelling.nearest(word, knowledge.candidates(code, at));
    boolean method = near.contains(word + "(") || near.contains(word + "()");
    if (method && !called) {
      return GIVEN_A_VALUE.matcher(code).region(end, code.length()).lookingAt()
          ? "\"" + word + "\" cannot be set with =: values never change; make a new one instead."
          : "\"" + word + "\" needs its brackets: " + word + "().";
    }
    if (called && near.contains(word)) {
      return "\"" + word + "\" takes no brackets.";
    }
    Optional<String> otherName = called(word, type);
    if (otherName.isPresent()) {
      return none + ": it is called " + otherName.get() + ".";
    }
    if (!near.isEmpty()) {
      return offered(none, word, near);
    }
    Matcher receiver = Pattern.compile("[\\w)(\\s,.\"]*\\.\\s*$").matcher(code.substring(0, at));
    String before = receiver.find() ? receiver.group().strip() : "";
    String value = before.matches("\\w+\\.") ? before.substring(0, before.length() - 1) : "...";
    if (makers.has(word) && makers.takes(word, type, types)) {
      return none + "; it is a word of its own: write " + word + "(" + value + ").";
    }
    List<String> leading = types.leadingTo(type, word);
    if (leading.isEmpty()) {
      List<String> holding = Spelling.holding(word, knowledge.candidates(code, at));
      return holding.isEmpty() ? none + "." : offered(none, word, holding);
    }
    String way = leading.get(0);
    return none
        + ", but its "
        + way.substring(0, way.indexOf('.'))
        + " has: write "
        + value
        + "."
        + way
        + ".";
  }

  /** What the word is called on values of this type. */
  private static Optional<String> called(String word, String type) {
    if (type.startsWith("List")) {
      Map<String, String> words =
          Map.of(
              "length", "size()",
              "len", "size()",
              "append", "add(...)",
              "push", "add(...)",
              "map", "stream().map(...)",
              "filter", "stream().filter(...)",
              "first", "get(0)");
      return Optional.ofNullable(words.get(word));
    }
    if (type.equals("String")) {
      return word.matches("size|len") ? Optional.of("length()") : Optional.empty();
    }
    Map<String, String> words =
        Map.of(
            "plus", "add(...)",
            "minus", "subtract(...)",
            "times", "multiply(...)",
            "over", "divide(...)",
            "value", "getValue()",
            "unit", "getUnit()");
    return type.startsWith("Quantity") ? Optional.ofNullable(words.get(word)) : Optional.empty();
  }
}
