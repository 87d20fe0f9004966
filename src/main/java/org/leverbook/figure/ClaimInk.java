package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** Marks that the panels of a claim have in common. */
record ClaimInk(FigureStyle style) {

  /**
   * Where a claim holds, and where it does not: apart in colour and, as light and dark, in grey.
   */
  String holds() {
    return style.tone(Tint.HOLDS);
  }

  String fails() {
    return style.tone(Tint.FAILS);
  }

  Ink bar(double x, double top, double width, double bottom, String colour) {
    return Ink.Form.filled(new Rectangle2D.Double(x, top, width, bottom - top), colour);
  }

  Ink line(double x1, double y1, double x2, double y2, double width) {
    return Ink.Form.line(new Line2D.Double(x1, y1, x2, y2), Ink.Pen.solid(style.quiet(), width));
  }

  /** A text around a place: 0 begins there, 0.5 has its middle there, 1 ends there. */
  Ink words(String text, double x, double y, double anchor, boolean bold, String colour) {
    String said = style.say(text);
    double size = bold ? style.label() : style.caption();
    double left = x - anchor * TextWidths.of(said, size, bold);
    return new Ink.Words(said, left, y, size, bold, colour, true);
  }

  /** The title below a panel, in the middle. */
  Ink title(String text, Rectangle2D box) {
    return words(text, box.getCenterX(), box.getMaxY() + 40, 0.5, false, style.ink());
  }
}
