package org.leverbook.display;

import java.util.List;
import java.util.Optional;
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
    Shown shown = asMade(value);
    boolean pounds = Preferences.current().measure() == Preferences.Measure.POUNDS;
    // A picture is drawn in its own units; what it says beside itself must not differ from it.
    return pounds && !(shown instanceof Picture) ? new ShownInPounds(shown) : shown;
  }

  /**
   * A sentence in the units that its reader prefers.
   *
   * @param sentence with masses in kilograms and lengths in centimetres or metres
   * @return the same, or in pounds and inches
   */
  public static String sentence(String sentence) {
    return Preferences.current().measure() == Preferences.Measure.POUNDS
        ? InPounds.text(sentence)
        : sentence;
  }

  private record ShownInPounds(Shown made) implements Shown {
    @Override
    public String text() {
      return InPounds.text(made.text());
    }

    @Override
    public Optional<String> html() {
      return made.html();
    }

    @Override
    public Optional<String> svg() {
      return made.svg();
    }

    @Override
    public Optional<byte[]> png() {
      return made.png();
    }
  }

  private static Shown asMade(Object value) {
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
