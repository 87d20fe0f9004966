package org.leverbook.language;

import org.leverbook.display.Preferences;
import org.leverbook.display.Preferences.Measure;
import org.leverbook.display.Preferences.Theme;
import org.leverbook.display.Shown;

/**
 * What is chosen about how answers are shown, and the ways to choose anew, as in {@code
 * preferences().pounds()}. Each takes effect at once and gives the new choice.
 *
 * @param chosen what holds
 */
public record Choices(Preferences chosen) implements Shown {

  /** What holds now. */
  static Choices current() {
    return new Choices(Preferences.current());
  }

  private static Choices of(Preferences next) {
    return new Choices(Preferences.choose(next));
  }

  /**
   * Masses in pounds and lengths in inches, in sentences, tables and their headings.
   *
   * @return the new choice
   */
  public Choices pounds() {
    return of(Preferences.current().with(Measure.POUNDS));
  }

  /**
   * Masses in kilograms and lengths in centimetres, as usual.
   *
   * @return the new choice
   */
  public Choices kilograms() {
    return of(Preferences.current().with(Measure.KILOGRAMS));
  }

  /**
   * More or fewer places behind the point in tables, as in {@code preferences().digits(2)}.
   *
   * @param more how many more than usual, -6 to 6; 0 is as usual
   * @return the new choice
   * @throws org.leverbook.quantity.Refused beyond that
   */
  public Choices digits(int more) {
    return of(Preferences.current().withFurtherDigits(more));
  }

  /**
   * Colours for a dark terminal.
   *
   * @return the new choice
   */
  public Choices dark() {
    return of(Preferences.current().with(Theme.DARK));
  }

  /**
   * Colours for a light terminal.
   *
   * @return the new choice
   */
  public Choices light() {
    return of(Preferences.current().with(Theme.LIGHT));
  }

  /**
   * No colours in the terminal.
   *
   * @return the new choice
   */
  public Choices plain() {
    return of(Preferences.current().with(Theme.NONE));
  }

  /**
   * Pictures in the terminal, where it can show them.
   *
   * @return the new choice
   */
  public Choices withPictures() {
    return of(Preferences.current().withPictures(true));
  }

  /**
   * No pictures in the terminal; they are saved all the same.
   *
   * @return the new choice
   */
  public Choices withoutPictures() {
    return of(Preferences.current().withPictures(false));
  }

  /**
   * All as it was at the very first start.
   *
   * @return the new choice
   */
  public Choices usual() {
    return of(Preferences.USUAL);
  }

  @Override
  public String text() {
    boolean pounds = chosen.measure() == Measure.POUNDS;
    String digits =
        chosen.furtherDigits() == 0
            ? "as usual"
            : Math.abs(chosen.furtherDigits())
                + (chosen.furtherDigits() > 0 ? " more" : " fewer")
                + " behind the point";
    String theme =
        switch (chosen.theme()) {
          case DARK -> "for a dark background";
          case LIGHT -> "for a light background";
          case NONE -> "none";
        };
    return String.join(
        "\n",
        "masses and lengths: "
            + (pounds ? "pounds and inches" : "kilograms and centimetres")
            + "   .pounds() .kilograms()",
        "digits in tables:   " + digits + "   .digits(2)",
        "terminal colours:   " + theme + "   .dark() .light() .plain()",
        "terminal pictures:  "
            + (chosen.pictures() ? "shown" : "not shown")
            + "   .withPictures() .withoutPictures()",
        "Only what is shown changes: values, saved files and pictures stay in SI units. Forces and"
            + " moments are shown in N and N·m always.");
  }

  @Override
  public String toString() {
    return text();
  }
}
