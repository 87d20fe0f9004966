package org.leverbook.session;

import java.lang.reflect.Type;

/**
 * What a piece of code stands for.
 *
 * @param type the type of its value, or the type that it names
 * @param namesType whether it names a type, as the {@code Map} of {@code Map.of()} does
 */
record Meaning(Type type, boolean namesType) {

  static Meaning value(Type type) {
    return new Meaning(type, false);
  }
}
