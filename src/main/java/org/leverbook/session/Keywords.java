package org.leverbook.session;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The words of Java itself: where each can stand, and what it is for. */
final class Keywords {

  /** Behind these a name or a value follows. */
  static final Set<String> LEADS_ON =
      Set.of(
          "return",
          "new",
          "else",
          "case",
          "throw",
          "instanceof",
          "assert",
          "yield",
          "do",
          "final",
          "static",
          "public",
          "private",
          "abstract",
          "extends",
          "implements",
          "import",
          "throws");

  private static final Map<String, String> STATEMENTS =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("var", "names a value, as in var pull = hinge(lifter)"),
              Map.entry("for", "repeats for each of several values: for (var one : all) { … }"),
              Map.entry("if", "goes on only where something is true: if (…) { … } else { … }"),
              Map.entry("while", "repeats as long as something is true: while (…) { … }"),
              Map.entry("do", "repeats at least once: do { … } while (…);"),
              Map.entry("switch", "chooses among several cases"),
              Map.entry("try", "goes on where something is refused: try { … } catch (…) { … }"),
              Map.entry("throw", "ends with an error of one's own"),
              Map.entry("record", "names several values as one: record Lap(int reps) {}"),
              Map.entry("class", "declares a class"),
              Map.entry("interface", "declares an interface"),
              Map.entry("enum", "declares a fixed list of names"),
              Map.entry("import", "makes classes known by their short names"),
              Map.entry("final", "what is named so cannot be changed"),
              Map.entry("void", "a method that gives nothing back"),
              Map.entry("int", "a whole number"),
              Map.entry("long", "a large whole number"),
              Map.entry("double", "a number with decimals"),
              Map.entry("boolean", "true or false")));

  private static final Map<String, String> VALUES =
      new TreeMap<>(
          Map.of(
              "new", "makes a value of a class",
              "true", "it is so",
              "false", "it is not so",
              "null", "no value at all",
              "switch", "chooses among several values"));

  private static final Map<String, String> IN_METHODS =
      new TreeMap<>(
          Map.of(
              "return", "gives a value back and ends the method",
              "break", "leaves the loop",
              "continue", "goes on with the next turn of the loop"));

  private static final Map<String, String> BEHIND_BLOCKS =
      new TreeMap<>(
          Map.of(
              "else", "what is done otherwise",
              "catch", "what is done where something was refused",
              "finally", "what is done in any case"));

  private Keywords() {}

  /** From each word that can stand at a place to what it is for. */
  static Map<String, String> at(Place place) {
    Map<String, String> found = new TreeMap<>();
    if (place.followsValue()) {
      found.put("instanceof", "whether a value is of a class");
      return found;
    }
    found.putAll(VALUES);
    if (place.isStatement()) {
      found.putAll(STATEMENTS);
      if (place.returns()) {
        found.putAll(IN_METHODS);
      } else if (place.inBlock()) {
        found.putAll(Map.copyOf(IN_METHODS));
        found.remove("return");
      }
      if (place.back(1).filter(token -> token.is("}")).isPresent()) {
        found.putAll(BEHIND_BLOCKS);
      }
    }
    return found;
  }

  /** What a word of Java is for; empty where it is none of these. */
  static String about(String word) {
    return List.of(STATEMENTS, VALUES, IN_METHODS, BEHIND_BLOCKS).stream()
        .filter(words -> words.containsKey(word))
        .map(words -> words.get(word))
        .findFirst()
        .orElse("");
  }
}
