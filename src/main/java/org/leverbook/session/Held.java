package org.leverbook.session;

import java.lang.reflect.Field;
import jdk.jshell.Snippet;

/**
 * A declaration of the user that is in force.
 *
 * @param kind what it is
 * @param name its name
 * @param type as {@link Belonging} tells it
 * @param source the code that declared it
 * @param snippet what the compiler knows it by
 * @param field where a variable's value is; null for anything else, or where it has none yet
 */
record Held(
    Belonging.Kind kind, String name, String type, String source, Snippet snippet, Field field) {

  /** Its name as a sentence tells it. */
  String label() {
    return kind == Belonging.Kind.METHOD ? name + "()" : name;
  }

  /** What a variable holds now; null where it holds nothing. */
  Object value() {
    try {
      return field == null ? null : field.get(null);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }

  Belonging told() {
    return new Belonging(kind, name, Words.cleaned(type), source, value());
  }
}
