package org.leverbook.marks;

import java.util.Locale;
import org.leverbook.body.Side;
import org.leverbook.quantity.Refused;

/**
 * One landmark over time: places at equal steps, with gaps where it was not seen.
 *
 * @param landmark which
 * @param side left, right or midline
 * @param places x, y and, where given, z, each a value a frame; metres
 * @param lines the line of the file that each frame came from; zero in a gap
 */
record Track(Landmark landmark, Side side, double[][] places, int[] lines) {

  String name() {
    return side.of(landmark.word());
  }

  int frames() {
    return lines.length;
  }

  boolean seen(int frame) {
    return lines[frame] > 0;
  }

  /** Only some frames, the last one included. */
  Track between(int first, int last) {
    double[][] some = new double[places.length][];
    for (int k = 0; k < some.length; k++) {
      some[k] = java.util.Arrays.copyOfRange(places[k], first, last + 1);
    }
    return new Track(landmark, side, some, java.util.Arrays.copyOfRange(lines, first, last + 1));
  }

  /**
   * Fills short gaps along a straight line.
   *
   * @param most frames that may be filled at once
   * @param table for the refusal
   * @param clock when the first frame is, and how long a frame lasts, seconds
   */
  Track filled(int most, String table, Clock clock) {
    double[][] whole = new double[places.length][];
    for (int k = 0; k < whole.length; k++) {
      whole[k] = places[k].clone();
    }
    int last = -1;
    for (int i = 0; i <= frames(); i++) {
      boolean here = i < frames() && seen(i);
      if (i < frames() && !here) {
        continue;
      }
      int gap = i - last - 1;
      boolean atEnd = last < 0 || i == frames();
      if (gap > 0 && (atEnd || gap > most)) {
        throw new Refused(gapSentence(last, i, most, table, clock));
      }
      for (int g = last + 1; g < i; g++) {
        double share = (g - last) / (double) (i - last);
        for (double[] row : whole) {
          row[g] = (1 - share) * row[last] + share * row[i];
        }
      }
      last = i;
    }
    return new Track(landmark, side, whole, lines);
  }

  private String gapSentence(int before, int after, int most, String table, Clock clock) {
    String where =
        (before >= 0 ? "after line " + lines[before] : "before line " + lines[after])
            + (before >= 0 && after < frames() ? " up to line " + lines[after] : "");
    boolean inside = before >= 0 && after < frames();
    return String.format(
        Locale.ROOT,
        "%s, columns x and y, %s: the %s is missing from %.2f to %.2f s; %s. Mark it there, or take"
            + " only a part of the time, as in .between(seconds(%.2f), seconds(%.2f)).",
        table,
        where,
        name(),
        clock.at(before + 1),
        clock.at(after - 1),
        inside
            ? String.format(Locale.ROOT, "gaps up to %.2f s are filled in", most * clock.step())
            : "nothing is added before its first or after its last place",
        clock.at(before >= 0 ? 0 : after),
        clock.at(before >= 0 ? before : frames() - 1));
  }

  /**
   * When frames are.
   *
   * @param start of the first, seconds
   * @param step between them, seconds
   */
  record Clock(double start, double step) {

    double at(int frame) {
      return start + frame * step;
    }
  }

  /** Smoothed coordinate by coordinate. */
  Track smoothed(LowPass filter) {
    double[][] smooth = new double[places.length][];
    for (int k = 0; k < smooth.length; k++) {
      smooth[k] = filter.smooth(places[k]);
    }
    return new Track(landmark, side, smooth, lines);
  }

  /** Refuses a step that no body makes. */
  void checkJumps(String table, double step, double fastest) {
    int last = -1;
    for (int i = 0; i < frames(); i++) {
      if (!seen(i)) {
        continue;
      }
      if (last >= 0) {
        double sum = 0;
        for (double[] row : places) {
          sum += (row[i] - row[last]) * (row[i] - row[last]);
        }
        double way = Math.sqrt(sum);
        double time = (i - last) * step;
        if (way > fastest * time + MARKING) {
          throw new Refused(
              String.format(
                  Locale.ROOT,
                  "%s, line %d, columns x and y: the %s jumps %.2f m in %.3f s; no lifter moves"
                      + " faster than %.0f m/s, %.2f m in that time. Correct these cells, or empty"
                      + " them to mark a gap.",
                  table,
                  lines[i],
                  name(),
                  way,
                  time,
                  fastest,
                  fastest * time));
        }
      }
      last = i;
    }
  }

  /** What two marks of the same place may differ by, metres: an assumption. */
  private static final double MARKING = 0.05;
}
