package org.leverbook.display;

import java.util.List;
import java.util.ServiceLoader;

/** Finds how any value shows itself. */
public final class Display {

  /** Longer texts of foreign values are cut here, so that a huge list does not flood a terminal. */
  private static final int LONGEST_FOREIGN_TEXT = 20_000;

  private static final List<ShownAdapter> ADAPTERS =
      ServiceLoader.load(ShownAdapter.class, Display.class.getClassLoader()).stream()
          .map(ServiceLoader.Provider::get)
          .toList();

  private Display() {}

  /**
   * Shows a value: by itself, by an adapter, or else by its {@code toString}.
   *
   * @param value any value, or null
   * @return how it shows itself; never throws, whatever {@code toString} does
   */
  public static Shown of(Object value) {
    if (value instanceof Shown shown) {
      return shown;
    }
    if (value != null) {
      for (ShownAdapter adapter : ADAPTERS) {
        var shown = adapter.show(value);
        if (shown.isPresent()) {
          return shown.get();
        }
      }
    }
    return () -> plain(value);
  }

  private static String plain(Object value) {
    String text;
    try {
      text = PlainText.of(value);
    } catch (RuntimeException | StackOverflowError e) {
      return "a " + value.getClass().getSimpleName() + " that cannot show itself (" + e + ")";
    }
    return text.length() <= LONGEST_FOREIGN_TEXT
        ? text
        : text.substring(0, LONGEST_FOREIGN_TEXT) + " … (" + text.length() + " characters in all)";
  }
}
