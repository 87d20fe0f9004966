package org.leverbook.terminal;

import java.awt.image.BufferedImage;
import org.jline.utils.AttributedStyle;

/** The ink of a picture: what differs from the colour of its first corner. */
final class DottedInk {

  /** Differences of a colour channel below this are pale fillings or the rim of a line. */
  private static final int FAINTEST = 60;

  /** How much of a dot's square must be inked: a thin line covers little of it. */
  private static final double ENOUGH = 0.07;

  /** Colours whose channels lie closer together than this are grey. */
  private static final int GREY = 40;

  private final int[] colours;
  private final int width;
  private final int height;
  private int left = Integer.MAX_VALUE;
  private int top = Integer.MAX_VALUE;
  private int right;
  private int bottom;

  DottedInk(BufferedImage image) {
    width = image.getWidth();
    height = image.getHeight();
    colours = image.getRGB(0, 0, width, height, null, 0, width);
    int background = colours[0];
    for (int i = 0; i < colours.length; i++) {
      if (difference(colours[i], background) <= FAINTEST) {
        colours[i] = 0;
        continue;
      }
      colours[i] |= 0xff000000;
      left = Math.min(left, i % width);
      right = Math.max(right, i % width + 1);
      top = Math.min(top, i / width);
      bottom = Math.max(bottom, i / width + 1);
    }
  }

  int left() {
    return left;
  }

  int top() {
    return top;
  }

  int right() {
    return right;
  }

  int bottom() {
    return bottom;
  }

  /** The ink in a square whose corner is so far from the corner of all ink. */
  Dot dot(double fromLeft, double fromTop, double square) {
    int x0 = (int) (left + fromLeft);
    int y0 = (int) (top + fromTop);
    int x1 = Math.min(width, (int) Math.max(x0 + 1, left + fromLeft + square));
    int y1 = Math.min(height, (int) Math.max(y0 + 1, top + fromTop + square));
    long[] sums = new long[3];
    long inked = 0;
    for (int y = y0; y < y1; y++) {
      for (int x = x0; x < x1; x++) {
        int colour = colours[y * width + x];
        if (colour != 0) {
          inked++;
          sums[0] += colour >> 16 & 0xff;
          sums[1] += colour >> 8 & 0xff;
          sums[2] += colour & 0xff;
        }
      }
    }
    return new Dot(sums[0], sums[1], sums[2], inked, (long) (square * square));
  }

  private static int difference(int one, int other) {
    int most = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      most = Math.max(most, Math.abs((one >> shift & 0xff) - (other >> shift & 0xff)));
    }
    return most;
  }

  /**
   * The ink of one place.
   *
   * @param red the sum over its inked pixels
   * @param green the same
   * @param blue the same
   * @param inked how many pixels are inked
   * @param seen how many there are
   */
  record Dot(long red, long green, long blue, long inked, long seen) {

    static final Dot NONE = new Dot(0, 0, 0, 0, 0);

    Dot and(Dot other) {
      return new Dot(
          red + other.red,
          green + other.green,
          blue + other.blue,
          inked + other.inked,
          seen + other.seen);
    }

    boolean stands() {
      return inked > 0 && inked >= ENOUGH * seen;
    }

    /** Grey ink takes the terminal's own colour of letters: that is seen on any background. */
    AttributedStyle style() {
      int r = (int) (red / inked);
      int g = (int) (green / inked);
      int b = (int) (blue / inked);
      boolean grey = Math.max(r, Math.max(g, b)) - Math.min(r, Math.min(g, b)) < GREY;
      return grey ? AttributedStyle.DEFAULT : AttributedStyle.DEFAULT.foreground(r, g, b);
    }
  }
}
