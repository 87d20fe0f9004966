package org.leverbook.session;

import java.lang.reflect.Array;
import java.util.Collection;
import java.util.Iterator;
import java.util.Map;
import java.util.Optional;

/**
 * The variable that holds most of the memory.
 *
 * @param name what it is called
 * @param bytes about how much it holds
 */
record Hoard(String name, long bytes) {

  /** Less than such a part of all memory is no hoard. */
  private static final int PART = 8;

  private static final int LOOKED_AT = 16;
  private static final int DEPTH = 4;
  private static final long OBJECT = 24;
  private static final long REFERENCE = 4;

  /**
   * The largest of some variables, where one holds much.
   *
   * @param variables their values by name
   */
  static Optional<Hoard> in(Map<String, Object> variables) {
    Hoard most = new Hoard("", Runtime.getRuntime().maxMemory() / PART);
    for (Map.Entry<String, Object> each : variables.entrySet()) {
      long bytes = guess(each.getValue(), DEPTH);
      most = bytes > most.bytes() ? new Hoard(each.getKey(), bytes) : most;
    }
    return most.name().isEmpty() ? Optional.empty() : Optional.of(most);
  }

  /** A guess from a few of the elements: they mostly are alike. */
  private static long guess(Object value, int depth) {
    if (value == null || depth == 0) {
      return 0;
    }
    try {
      if (value.getClass().isArray()) {
        return array(value, depth);
      }
      if (value instanceof CharSequence text) {
        return OBJECT + text.length();
      }
      if (value instanceof Collection<?> many && isJava(value)) {
        return OBJECT + elements(many.iterator(), many.size(), depth);
      }
      if (value instanceof Map<?, ?> many && isJava(value)) {
        return elements(many.keySet().iterator(), many.size(), depth)
            + elements(many.values().iterator(), many.size(), depth)
            + OBJECT * many.size();
      }
    } catch (RuntimeException e) {
      // Changed by another thread meanwhile: what was seen is not known.
      return 0;
    }
    return OBJECT;
  }

  private static long array(Object value, int depth) {
    int length = Array.getLength(value);
    Class<?> type = value.getClass().getComponentType();
    if (type.isPrimitive()) {
      long one = type == long.class || type == double.class ? 8 : type == byte.class ? 1 : 4;
      return OBJECT + one * length;
    }
    long seen = 0;
    int looked = Math.min(length, LOOKED_AT);
    for (int i = 0; i < looked; i++) {
      seen += guess(Array.get(value, (int) ((long) i * length / looked)), depth - 1);
    }
    return OBJECT + REFERENCE * length + (looked == 0 ? 0 : seen / looked * length);
  }

  private static long elements(Iterator<?> each, long size, int depth) {
    long seen = 0;
    int looked = 0;
    while (each.hasNext() && looked < LOOKED_AT) {
      seen += guess(each.next(), depth - 1);
      looked++;
    }
    return REFERENCE * size + (looked == 0 ? 0 : seen / looked * size);
  }

  /** A user's own collection could do anything when it is asked. */
  private static boolean isJava(Object value) {
    return value.getClass().getClassLoader() == null;
  }
}
