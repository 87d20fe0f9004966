package org.leverbook.display;

import java.util.Locale;
import java.util.Objects;
import java.util.function.Consumer;
import org.leverbook.quantity.Refused;

/**
 * How answers are shown to a reader at a screen. One choice for the process, as the style of
 * pictures; it changes no value, no saved file and no picture, so that a script gives the same
 * wherever it runs.
 *
 * @param measure in which units masses and lengths are shown
 * @param furtherDigits how many places more than usual stand behind the point in tables; negative
 *     for fewer
 * @param theme for which background the terminal's colours are chosen
 * @param pictures whether the terminal shows pictures
 */
public record Preferences(Measure measure, int furtherDigits, Theme theme, boolean pictures) {

  /** Units of masses and lengths. */
  public enum Measure {
    /** Kilograms and centimetres. */
    KILOGRAMS,
    /** Pounds and inches. */
    POUNDS
  }

  /** What the terminal's colours must be read on. */
  public enum Theme {
    /** Light letters on a dark background. */
    DARK,
    /** Dark letters on a light background. */
    LIGHT,
    /** No colours. */
    NONE
  }

  /** What holds until something else is chosen. */
  public static final Preferences USUAL = new Preferences(Measure.KILOGRAMS, 0, Theme.DARK, true);

  private static final int MOST_DIGITS = 6;

  private static volatile Preferences current = USUAL;
  private static volatile Consumer<Preferences> listener = chosen -> {};

  /** Checks that all is there and the digits are sensible. */
  public Preferences {
    Objects.requireNonNull(measure);
    Objects.requireNonNull(theme);
    if (Math.abs(furtherDigits) > MOST_DIGITS) {
      throw new Refused(
          "Tables can show up to 6 places more or fewer than usual, not " + furtherDigits + ".");
    }
  }

  /**
   * What holds now.
   *
   * @return the choice
   */
  public static Preferences current() {
    return current;
  }

  /**
   * Chooses for all that is shown from now on.
   *
   * @param chosen what
   * @return the same
   */
  public static Preferences choose(Preferences chosen) {
    current = Objects.requireNonNull(chosen);
    listener.accept(chosen);
    return chosen;
  }

  /**
   * Hears of each later choice, in place of whoever did before.
   *
   * @param next hears of it; null for nobody
   */
  public static void onChoice(Consumer<Preferences> next) {
    listener = Objects.requireNonNullElse(next, chosen -> {});
  }

  /**
   * The same in other units.
   *
   * @param other which
   * @return the choice with them
   */
  public Preferences with(Measure other) {
    return new Preferences(other, furtherDigits, theme, pictures);
  }

  /**
   * The same with another number of digits.
   *
   * @param further how many places more than usual
   * @return the choice with them
   * @throws Refused beyond six more or fewer
   */
  public Preferences withFurtherDigits(int further) {
    return new Preferences(measure, further, theme, pictures);
  }

  /**
   * The same for another background.
   *
   * @param other which
   * @return the choice with it
   */
  public Preferences with(Theme other) {
    return new Preferences(measure, furtherDigits, other, pictures);
  }

  /**
   * The same with or without pictures in the terminal.
   *
   * @param shown whether there are any
   * @return the choice with that
   */
  public Preferences withPictures(boolean shown) {
    return new Preferences(measure, furtherDigits, theme, shown);
  }

  /** The number of places for a column that usually has so many. */
  int decimals(int usual) {
    return Math.max(0, Math.min(12, usual + furtherDigits));
  }

  /**
   * The choice as lines of a file.
   *
   * @return a line for each part: name, equals sign, value
   */
  public String lines() {
    return "measure = "
        + word(measure)
        + "\ndigits = "
        + furtherDigits
        + "\ntheme = "
        + word(theme)
        + "\npictures = "
        + (pictures ? "on" : "off")
        + "\n";
  }

  /**
   * A choice out of lines of a file. What is missing or cannot be read stays as usual.
   *
   * @param lines the file's text
   * @return the choice
   */
  public static Preferences ofLines(String lines) {
    Preferences found = USUAL;
    for (String line : lines.lines().toList()) {
      String[] parts = line.split("=", 2);
      if (parts.length == 2) {
        found = found.with(parts[0].strip(), parts[1].strip());
      }
    }
    return found;
  }

  private Preferences with(String name, String value) {
    try {
      return switch (name) {
        case "measure" -> with(Measure.valueOf(value.toUpperCase(Locale.ROOT)));
        case "digits" -> withFurtherDigits(Integer.parseInt(value));
        case "theme" -> with(Theme.valueOf(value.toUpperCase(Locale.ROOT)));
        case "pictures" -> withPictures(!value.equals("off"));
        default -> this;
      };
    } catch (IllegalArgumentException | Refused e) {
      return this;
    }
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
