package org.leverbook.figure;

import java.awt.Color;
import java.util.Locale;

/**
 * The colour that a colour of the page has on a dark screen: light and dark change places, the hue
 * stays, and what is coloured stays bright enough to be told from the dark paper.
 */
public final class Night {

  /** The dark paper's own lightness: not black, which glares beside white letters. */
  private static final double DARKEST = 0.09;

  private static final double LIGHTEST = 0.94;

  /** What the international guidelines for web content ask of text (WCAG 2.1, 1.4.3). */
  private static final double READABLE = 4.5;

  /** Greys are less saturated than this. */
  private static final double COLOURED = 0.3;

  private Night() {}

  /**
   * The colour by night.
   *
   * @param day as #rrggbb
   * @return as #rrggbb
   */
  public static String of(String day) {
    Color colour = Color.decode(day);
    double[] hsl = hsl(colour);
    double light = LIGHTEST - hsl[2] * (LIGHTEST - DARKEST);
    boolean coloured = hsl[1] > COLOURED && hsl[2] < 0.8;
    double paper = luminance(rgb(0, 0, DARKEST));
    Color night = rgb(hsl[0], hsl[1], light);
    while (coloured && contrast(luminance(night), paper) < READABLE && light < LIGHTEST) {
      light += 0.01;
      night = rgb(hsl[0], hsl[1], light);
    }
    return String.format(
        Locale.ROOT, "#%02x%02x%02x", night.getRed(), night.getGreen(), night.getBlue());
  }

  /** The ratio of two luminances, 1 to 21 (WCAG 2.1). */
  static double contrast(double one, double other) {
    return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
  }

  /** The relative luminance of a colour, 0 to 1 (WCAG 2.1). */
  static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed())
        + 0.7152 * linear(colour.getGreen())
        + 0.0722 * linear(colour.getBlue());
  }

  private static double linear(int part) {
    double share = part / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  /** Hue in turns, saturation, lightness. */
  private static double[] hsl(Color c) {
    float hue = Color.RGBtoHSB(c.getRed(), c.getGreen(), c.getBlue(), null)[0];
    double most = Math.max(c.getRed(), Math.max(c.getGreen(), c.getBlue())) / 255.0;
    double least = Math.min(c.getRed(), Math.min(c.getGreen(), c.getBlue())) / 255.0;
    double light = (most + least) / 2;
    double span = most - least;
    double saturation = span == 0 ? 0 : span / (1 - Math.abs(2 * light - 1));
    return new double[] {hue, saturation, light};
  }

  private static Color rgb(double hue, double saturation, double light) {
    double chroma = saturation * Math.min(light, 1 - light);
    double value = light + chroma;
    double s = value == 0 ? 0 : 2 * (1 - light / value);
    return new Color(Color.HSBtoRGB((float) hue, (float) s, (float) value));
  }
}
