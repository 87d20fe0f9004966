package org.leverbook.figure;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;

/**
 * A row of colours with the numbers between them.
 *
 * @param title what the colours tell, with its unit
 * @param colours from the lowest, as #rrggbb
 * @param marks numbers at the edges of the colours, one more than colours
 */
record Legend(String title, List<String> colours, List<String> marks) {

  /** What a row needs, page units. */
  static final double HEIGHT = 36;

  private static final double SWATCH = 46;

  Group at(double left, double top, FigureStyle style) {
    List<Ink> ink = new ArrayList<>();
    double size = style.caption();
    ink.add(new Words(title, left, top + 11, size, false, style.ink(), false));
    double from = left + TextWidths.of(title, size, false) + 14;
    for (int i = 0; i < colours.size(); i++) {
      ink.add(
          new Form(
              new Rectangle2D.Double(from + i * SWATCH, top, SWATCH, 12),
              colours.get(i),
              1,
              Pen.solid(style.edge(), 0.6)));
    }
    for (int i = 0; i < marks.size(); i++) {
      double width = TextWidths.of(marks.get(i), size - 1, false);
      double x = from + i * SWATCH - width / 2;
      ink.add(new Words(marks.get(i), x, top + 25, size - 1, false, style.quiet(), false));
    }
    return new Group(Map.of("class", "legend"), ink);
  }
}
