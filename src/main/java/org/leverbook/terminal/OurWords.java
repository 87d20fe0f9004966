package org.leverbook.terminal;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.HashSet;
import java.util.Set;
import org.leverbook.language.Vocabulary;

/** The names of the words that every session knows. */
final class OurWords {

  private volatile Set<String> names = Set.of();

  /** The names; none before they were read. */
  Set<String> names() {
    return names;
  }

  /** Reads them; this loads many classes, so not on a thread that someone waits for. */
  void read() {
    Set<String> found = new HashSet<>();
    for (Method method : Vocabulary.class.getMethods()) {
      if (Modifier.isStatic(method.getModifiers())) {
        found.add(method.getName());
      }
    }
    for (Field field : Vocabulary.class.getFields()) {
      found.add(field.getName());
    }
    names = Set.copyOf(found);
  }
}
