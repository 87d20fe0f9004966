package org.leverbook.display;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leverbook.quantity.Refused;

/** What a picture's file name asks for. */
final class PictureName {

  /** An ending begins with a letter: "squat 97.5kg" has none. */
  private static final Pattern ENDING = Pattern.compile(".*\\.([A-Za-z][A-Za-z0-9]{0,4})");

  /** Below this the smallest letters are under 5 pixels high. */
  private static final int LEAST = 400;

  private static final int MOST = 10_000;

  private PictureName() {}

  /**
   * The format that a name asks for.
   *
   * @param name of a file
   * @return "svg", "png", "pdf", or "" where it has no ending
   * @throws Refused if it asks for something else
   */
  static String ending(String name) {
    if (name.strip().replaceFirst("\\.[A-Za-z0-9]*$", "").isEmpty() || name.endsWith("/")) {
      throw new Refused("A picture needs a file name, such as save(\"start.svg\").");
    }
    Matcher found = ENDING.matcher(name);
    if (!found.matches()) {
      return "";
    }
    String ending = found.group(1).toLowerCase(Locale.ROOT);
    return switch (ending) {
      case "svg", "png", "pdf" -> ending;
      default ->
          throw new Refused(
              "A picture is saved as .svg, .png or .pdf, not as \""
                  + name
                  + "\"; a name without an ending saves .svg and .png.");
    };
  }

  /**
   * The name of a PNG of some width.
   *
   * @param name as asked
   * @param pixels as asked
   * @return the name, with its ending
   * @throws Refused if the width makes no picture, or the name is that of another format
   */
  static String png(String name, int pixels) {
    String ending = ending(name);
    if (!ending.isEmpty() && !ending.equals("png")) {
      throw new Refused(
          "Only a .png has a width in pixels; ."
              + ending
              + " is sharp at any size: save(\""
              + name
              + "\").");
    }
    if (pixels < LEAST || pixels > MOST) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A picture can be %,d to %,d pixels wide, not %,d: %s",
              LEAST,
              MOST,
              pixels,
              pixels < LEAST
                  ? "below that its letters cannot be read."
                  : "beyond that no screen shows it; take a .pdf or an .svg, sharp at any size."));
    }
    return ending.isEmpty() ? name + ".png" : name;
  }
}
