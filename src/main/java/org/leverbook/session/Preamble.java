package org.leverbook.session;

import java.util.List;

/**
 * What a session knows before the first text.
 *
 * @param source imports and declarations
 * @param vocabulary the classes whose static members are its words; asked for words that make what
 *     is missing
 */
public record Preamble(String source, List<Class<?>> vocabulary) {

  /** Nothing but plain Java. */
  public static final Preamble NONE = new Preamble("", List.of());

  /** Keeps its own copy of the list. */
  public Preamble {
    vocabulary = List.copyOf(vocabulary);
  }
}
