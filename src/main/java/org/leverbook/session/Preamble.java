package org.leverbook.session;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a session knows before the first text.
 *
 * @param source imports; the compiler takes them all as one under the name of the first, which
 *     therefore should be one that no user gives again
 * @param vocabulary the classes whose static members are its words; asked for words that make what
 *     is missing
 * @param suggestions what may stand inside quoted texts
 */
public record Preamble(String source, List<Class<?>> vocabulary, List<Suggestions> suggestions) {

  private static final Pattern OF_A_TYPE =
      Pattern.compile("\\bimport\\s+(?!static\\b)([\\w.]+\\*?)");

  /** Nothing but plain Java. */
  public static final Preamble NONE = new Preamble("", List.of());

  /** Keeps its own copies of the lists. */
  public Preamble {
    vocabulary = List.copyOf(vocabulary);
    suggestions = List.copyOf(suggestions);
  }

  /**
   * Words, but nothing for quoted texts.
   *
   * @param source imports
   * @param vocabulary the classes whose static members are its words
   */
  public Preamble(String source, List<Class<?>> vocabulary) {
    this(source, vocabulary, List.of());
  }

  /** All imports in one line: each line of its own would cost the compiler a turn. */
  String asOne() {
    return source.lines().map(String::strip).collect(Collectors.joining(" "));
  }

  /** The types, or packages of types, that imports make known, as in {@code java.util.*}. */
  static Stream<String> importsOfTypes(String imports) {
    return OF_A_TYPE.matcher(imports).results().map(found -> found.group(1));
  }
}
