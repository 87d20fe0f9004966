package org.leverbook.display;

import java.util.Collection;
import java.util.Locale;
import java.util.Set;

/** What sort of value it is, in a coach's words: for refusals that met another than they need. */
public final class Kind {

  private static final Set<Class<?>> WHOLE =
      Set.of(Integer.class, Long.class, Short.class, Byte.class);

  private Kind() {}

  /**
   * Names a value's kind.
   *
   * @param value any, not null
   * @return with its article, as in "a hinge", "a whole number", "an animation"
   */
  public static String of(Object value) {
    if (value instanceof Number) {
      return WHOLE.contains(value.getClass()) ? "a whole number" : "a number";
    }
    if (value instanceof CharSequence) {
      return "a text";
    }
    if (value instanceof Collection || value.getClass().isArray()) {
      return "a list";
    }
    String name = value.getClass().getSimpleName();
    if (name.isEmpty() || value.getClass().isHidden()) {
      // A lambda or a nameless class: what Java calls it says nothing.
      return "a value of this kind";
    }
    String spaced = name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    return ("aeiou".indexOf(spaced.charAt(0)) < 0 ? "a " : "an ") + spaced;
  }
}
