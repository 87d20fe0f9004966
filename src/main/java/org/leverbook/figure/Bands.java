package org.leverbook.figure;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;

/**
 * A colour scale in steps of round numbers: what flexes in blues, what extends in oranges, both
 * from pale to strong with size, equal steps for equal moments. Blue and orange are told apart in
 * every common colour vision, and in grey print the size still shows (after the palette of Okabe
 * and Ito 2008, "Color Universal Design", from memory).
 *
 * @param low lower end of the first band
 * @param step width of each band, one, two or five times a power of ten
 * @param colours one for each band, upwards
 */
record Bands(double low, double step, List<Color> colours) {

  /** About so many bands can be told apart in a legend. */
  private static final int MOST = 9;

  /** How much of a tone the palest band has; the rest is paper. */
  private static final double PALEST = 0.13;

  /** How much darker tones may be where no numbers are written on them. */
  private static final double DEEP = 0.45;

  Bands {
    colours = List.copyOf(colours);
  }

  /**
   * Bands that hold all values.
   *
   * @param least the smallest value
   * @param greatest the greatest value
   * @param numbered whether numbers are written on the colours
   * @param style whose tones
   */
  static Bands over(double least, double greatest, boolean numbered, FigureStyle style) {
    double step = step(greatest - least);
    long from = (long) Math.floor(least / step);
    long to = Math.max(from + 1, (long) Math.ceil(greatest / step));
    // Counted from zero, so that no band mixes what flexes with what extends.
    long strongest = Math.max(Math.abs(from), Math.abs(to));
    List<Color> colours = new ArrayList<>();
    for (long band = from; band < to; band++) {
      boolean flexes = band >= 0;
      double share = strongest == 1 ? 0 : (flexes ? band : -band - 1) / (strongest - 1.0);
      colours.add(toned(style, style.tone(flexes ? Tint.FLEXES : Tint.EXTENDS), share, numbered));
    }
    return new Bands(from * step, step, colours);
  }

  private static Color toned(FigureStyle style, String tone, double share, boolean numbered) {
    Color strong = Color.decode(tone);
    Color pale = mixed(Color.decode(style.paper()), strong, PALEST);
    return mixed(pale, numbered ? strong : mixed(strong, Color.decode(style.ink()), DEEP), share);
  }

  private static double step(double range) {
    double rough = Math.max(range, 1) / MOST;
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double times : new double[] {1, 2, 5}) {
      if (rough <= times * power * (1 + 1e-9)) {
        return times * power;
      }
    }
    return 10 * power;
  }

  private static Color mixed(Color from, Color to, double share) {
    return new Color(
        mixed(from.getRed(), to.getRed(), share),
        mixed(from.getGreen(), to.getGreen(), share),
        mixed(from.getBlue(), to.getBlue(), share));
  }

  private static int mixed(int from, int to, double share) {
    return (int) Math.round(from + share * (to - from));
  }

  double high() {
    return low + step * colours.size();
  }

  /** The colour of a value. */
  Color of(double value) {
    int band = (int) Math.floor((value - low) / step);
    return colours.get(Math.max(0, Math.min(colours.size() - 1, band)));
  }
}
