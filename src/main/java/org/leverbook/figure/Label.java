package org.leverbook.figure;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * A label that waits for its place.
 *
 * @param lines what it says; the first is bold
 * @param size of the font
 * @param colour of its stripe, as #rrggbb
 * @param anchors points it may be tied to, the best first
 */
record Label(List<String> lines, double size, String colour, List<Point2D> anchors) {

  /** Free edge around the text. */
  static final double EDGE = 4;

  private static final double LEADING = 1.25;

  /** The same in the style's words; sentences of small print only where they are known. */
  Label in(FigureStyle style) {
    return new Label(lines.stream().map(style::say).toList(), size, colour, anchors);
  }

  double width() {
    double widest = 0;
    for (int i = 0; i < lines.size(); i++) {
      widest = Math.max(widest, TextWidths.of(lines.get(i), sizeOf(i), i == 0));
    }
    return widest + 3 * EDGE;
  }

  double height() {
    double sum = 2 * EDGE;
    for (int i = 0; i < lines.size(); i++) {
      sum += LEADING * sizeOf(i);
    }
    return sum;
  }

  /** Lines from the third on are small print. */
  double sizeOf(int line) {
    return line < 2 ? size : 0.85 * size;
  }

  double baseline(int line) {
    double y = EDGE;
    for (int i = 0; i < line; i++) {
      y += LEADING * sizeOf(i);
    }
    return y + 0.95 * sizeOf(line);
  }

  /**
   * A label in its place.
   *
   * @param label which
   * @param box where, page units
   * @param from the point it is tied to
   * @param to the nearest point of the box
   */
  record Placed(Label label, Rectangle2D box, Point2D from, Point2D to) {

    /** Close labels need no leader line. */
    private static final double CLOSE = 10;

    boolean needsLeader() {
      return from.distance(to) > CLOSE;
    }
  }
}
