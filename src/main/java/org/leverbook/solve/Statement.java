package org.leverbook.solve;

import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Something said of a pose, as rows that shall be zero.
 *
 * @param what it is about, as in "right hand"
 * @param where it shall be, as in "the bar"
 * @param turning whether it misses by an angle rather than a length
 * @param weight of a wish; zero for a condition that must be met
 * @param slack index of the unknown that may stand above zero where "at least" was said, or -1
 * @param rows its numbers
 */
record Statement(
    String what, String where, boolean turning, double weight, int slack, List<Row> rows) {

  /** Below this a part of a miss is not worth a word, metres. */
  private static final double WORTH_A_WORD = 0.001;

  boolean mustHold() {
    return weight == 0;
  }

  /** By how much it misses: metres or radians. */
  double miss(double[] residuals, int first) {
    double sum = 0;
    for (int i = 0; i < rows.size(); i++) {
      sum += residuals[first + i] * residuals[first + i];
    }
    return Math.sqrt(sum);
  }

  /** The miss in words, as in "the right hand ends 6.0 cm below the bar". */
  String sentence(double[] residuals, int first) {
    double miss = miss(residuals, first);
    if (turning) {
      return String.format(Locale.ROOT, "%s misses %s by %.1f°", what, where, Math.toDegrees(miss));
    }
    Vector3D off = Vector3D.ZERO;
    for (int i = 0; i < rows.size(); i++) {
      for (Row.Along along : rows.get(i).along) {
        if (along.feature() instanceof Feature.Point) {
          off = off.add(along.direction().scalarMultiply(residuals[first + i]));
          break;
        }
      }
    }
    StringJoiner parts = new StringJoiner(" and ");
    part(parts, off.getY(), "above", "below");
    part(parts, off.getX(), "ahead of", "behind");
    part(parts, off.getZ(), "to the right of", "to the left of");
    return parts.length() == 0
        ? String.format(Locale.ROOT, "%s misses %s by %.1f cm", what, where, 100 * miss)
        : what + " ends " + parts + " " + where;
  }

  private static void part(StringJoiner into, double metres, String positive, String negative) {
    if (Math.abs(metres) >= WORTH_A_WORD) {
      into.add(
          String.format(
              Locale.ROOT, "%.1f cm %s", 100 * Math.abs(metres), metres > 0 ? positive : negative));
    }
  }
}
