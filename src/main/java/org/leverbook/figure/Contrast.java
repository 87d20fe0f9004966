package org.leverbook.figure;

import java.awt.Color;
import java.util.Locale;
import org.leverbook.quantity.Refused;

/**
 * How well a colour stands out from its ground: (L1 + 0.05) / (L2 + 0.05), with L the relative
 * luminance of the lighter and the darker one. Web Content Accessibility Guidelines 2.1, W3C 2018,
 * which ask 4.5 of text and 3 of lines and marks (from memory).
 */
final class Contrast {

  /** What text needs. */
  static final double OF_TEXT = 4.5;

  /** What lines and marks need. */
  static final double OF_LINES = 3;

  private Contrast() {}

  static double between(String one, String other) {
    double a = luminance(Color.decode(one));
    double b = luminance(Color.decode(other));
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** Of linear light, 0 black to 1 white. */
  static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed())
        + 0.7152 * linear(colour.getGreen())
        + 0.0722 * linear(colour.getBlue());
  }

  /** The light of one channel, 0 to 255, on a scale from 0 to 1. */
  static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  /**
   * A colour that the user gave.
   *
   * @param what it is for, in words
   * @param colour as he wrote it
   * @return as #rrggbb
   * @throws Refused if it is none
   */
  static String colour(String what, String colour) {
    if (colour == null || !colour.matches("#[0-9a-fA-F]{6}")) {
      throw new Refused(
          "The colour of "
              + what
              + " is written as # and six digits, such as \"#00529c\", not as "
              + (colour == null ? "nothing" : "\"" + colour + "\"")
              + ".");
    }
    return colour.toLowerCase(Locale.ROOT);
  }

  /** Refuses what cannot be read on the paper. */
  static void enough(String what, String colour, String paper, double least) {
    double contrast = between(colour, paper);
    if (contrast < least) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "%s in %s on %s has a contrast of %.1f to 1, too little to be read: it needs %s to 1."
                  + " Take a %s tone.",
              Caption.capital(what),
              colour,
              paper,
              contrast,
              SvgWriter.number(least),
              luminance(Color.decode(paper)) > 0.2 ? "darker" : "lighter"));
    }
  }
}
