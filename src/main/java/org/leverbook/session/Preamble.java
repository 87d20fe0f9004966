package org.leverbook.session;

import java.util.List;

/**
 * What a session knows before the first text.
 *
 * @param source imports and declarations
 * @param vocabulary the classes whose static members are its words; asked for words that make what
 *     is missing
 * @param suggestions what may stand inside quoted texts
 */
public record Preamble(String source, List<Class<?>> vocabulary, List<Suggestions> suggestions) {

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
   * @param source imports and declarations
   * @param vocabulary the classes whose static members are its words
   */
  public Preamble(String source, List<Class<?>> vocabulary) {
    this(source, vocabulary, List.of());
  }
}
