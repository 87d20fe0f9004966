package org.leverbook.checks;

import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** The largest of what should be nought, over many positions; values in newtons and N·m. */
final class Worst {

  /** What is left over in a kind of check. */
  enum Of {
    FORCE("forces on the whole body add up to nothing", "N"),
    MOMENT("so do their moments about any point", "N·m"),
    WHOLE("weights of the segments are the weight of the body", "N"),
    PARTS("parts by source add up to a joint's moment", "N·m"),
    PIECES("a joint carries what everything beyond it adds up to, piece by piece", "N·m"),
    MIRROR("a mirrored scene has mirrored moments", "N·m"),
    TURN("a turned scene has turned moments", "N·m");

    private final String words;
    private final String unit;

    Of(String words, String unit) {
      this.words = words;
      this.unit = unit;
    }
  }

  private final double[] worst = new double[Of.values().length];
  private final long[] compared = new long[worst.length];
  private long positions;

  void position() {
    positions++;
  }

  long positions() {
    return positions;
  }

  void left(Of what, double left) {
    // A value that is no number must not slip through a comparison.
    worst[what.ordinal()] =
        Double.isNaN(left) ? Double.POSITIVE_INFINITY : Math.max(worst[what.ordinal()], left);
    compared[what.ordinal()]++;
  }

  void apart(Of what, Vector3D one, Vector3D other) {
    left(what, one.distance(other));
  }

  double of(Of what) {
    return worst[what.ordinal()];
  }

  long compared(Of what) {
    return compared[what.ordinal()];
  }

  Worst and(Worst other) {
    Worst both = new Worst();
    both.positions = positions + other.positions;
    for (int i = 0; i < worst.length; i++) {
      both.worst[i] = Math.max(worst[i], other.worst[i]);
      both.compared[i] = compared[i] + other.compared[i];
    }
    return both;
  }

  /** A line for each check. */
  String table(String kind) {
    StringBuilder text = new StringBuilder();
    for (Of what : Of.values()) {
      if (compared(what) > 0) {
        text.append(
            String.format(
                Locale.ROOT,
                "%s,%d,\"%s\",%d,%.1e,%s%n",
                kind,
                positions,
                what.words,
                compared(what),
                of(what),
                what.unit));
      }
    }
    return text.toString();
  }
}
