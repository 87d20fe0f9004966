package org.leverbook.figure;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * At most 255 colours for all frames of a GIF, and one for "unchanged".
 *
 * <p>Our pictures have some twenty flat colours, and mixtures of two of them along edges. Taken are
 * the most frequent, flat ones by far the first, each only if it differs from those taken by more
 * than an eye sees beside an edge; the others become the nearest of them.
 */
final class GifPalette {

  /** The index of "unchanged". */
  static final int CLEAR = 255;

  /** Sum of squares over red, green and blue, of 255 each. */
  private static final int ALIKE = 3 * 6 * 6;

  private final List<Integer> taken = new ArrayList<>();
  private final Map<Integer, Integer> nearest = new HashMap<>();

  GifPalette(List<BufferedImage> frames) {
    Map<Integer, int[]> counts = new HashMap<>();
    for (BufferedImage frame : frames) {
      int[] line = new int[frame.getWidth()];
      for (int y = 0; y < frame.getHeight(); y++) {
        frame.getRGB(0, y, line.length, 1, line, 0, line.length);
        int run = 0;
        for (int x = 0; x < line.length; x++) {
          run++;
          // Flat colours come in long runs.
          if (x + 1 == line.length || line[x + 1] != line[x]) {
            counts.computeIfAbsent(line[x] & 0xffffff, c -> new int[1])[0] += run;
            run = 0;
          }
        }
      }
    }
    List<Integer> frequent = new ArrayList<>(counts.keySet());
    frequent.sort(
        Comparator.<Integer>comparingInt(c -> -counts.get(c)[0]).thenComparingInt(c -> c));
    for (int colour : frequent) {
      if (taken.size() == CLEAR) {
        break;
      }
      if (taken.stream().noneMatch(t -> distance(t, colour) < ALIKE)) {
        taken.add(colour);
      }
    }
  }

  private static int distance(int one, int other) {
    int red = (one >> 16 & 255) - (other >> 16 & 255);
    int green = (one >> 8 & 255) - (other >> 8 & 255);
    int blue = (one & 255) - (other & 255);
    return red * red + green * green + blue * blue;
  }

  /** The index of the nearest colour that was taken. */
  int index(int colour) {
    return nearest.computeIfAbsent(
        colour & 0xffffff,
        c -> {
          int best = 0;
          for (int i = 1; i < taken.size(); i++) {
            best = distance(taken.get(i), c) < distance(taken.get(best), c) ? i : best;
          }
          return best;
        });
  }

  /** All 256 as Java's images want them. */
  IndexColorModel model() {
    byte[] red = new byte[256];
    byte[] green = new byte[256];
    byte[] blue = new byte[256];
    for (int i = 0; i < taken.size(); i++) {
      red[i] = (byte) (taken.get(i) >> 16);
      green[i] = (byte) (taken.get(i) >> 8);
      blue[i] = (byte) (int) taken.get(i);
    }
    return new IndexColorModel(8, 256, red, green, blue, CLEAR);
  }
}
