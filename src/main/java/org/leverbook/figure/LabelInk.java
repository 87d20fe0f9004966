package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;

/** Draws a label in its place: plain on a page, or on a ground of its own on a photo. */
final class LabelInk {

  private static final double GROUND = 0.82;

  private LabelInk() {}

  /** On the page itself, its text outlined in paper where lines run below. */
  static Group onPage(Label.Placed placed, FigureStyle style) {
    List<Ink> content = new ArrayList<>();
    if (placed.needsLeader()) {
      Line2D leader = new Line2D.Double(placed.from(), placed.to());
      content.add(Form.line(leader, Pen.solid(placed.label().colour(), 0.9)));
    }
    content.add(new Form(placed.box(), style.paper(), GROUND, null));
    return words(placed, style, content, true);
  }

  /** On a paper-coloured ground, so that it reads on any photo. */
  static Group onPhoto(Label.Placed placed, FigureStyle style) {
    List<Ink> content = new ArrayList<>();
    if (placed.needsLeader()) {
      Line2D leader = new Line2D.Double(placed.from(), placed.to());
      content.add(Form.line(leader, Pen.solid(style.paper(), 2.6)));
      content.add(Form.line(leader, Pen.solid(placed.label().colour(), 1)));
    }
    content.add(new Form(placed.box(), style.paper(), GROUND, null));
    return words(placed, style, content, false);
  }

  private static Group words(
      Label.Placed placed, FigureStyle style, List<Ink> content, boolean outlined) {
    Rectangle2D box = placed.box();
    content.add(
        Form.filled(
            new Rectangle2D.Double(box.getX(), box.getY() + 2, 3, box.getHeight() - 4),
            placed.label().colour()));
    for (int i = 0; i < placed.label().lines().size(); i++) {
      content.add(
          new Words(
              placed.label().lines().get(i),
              box.getX() + 2 * Label.EDGE,
              box.getY() + placed.label().baseline(i),
              placed.label().sizeOf(i),
              i == 0,
              i < 2 ? style.ink() : style.quiet(),
              outlined));
    }
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", "label");
    attributes.put(
        "data-box",
        String.join(
            " ",
            SvgWriter.number(box.getX()),
            SvgWriter.number(box.getY()),
            SvgWriter.number(box.getWidth()),
            SvgWriter.number(box.getHeight())));
    return new Group(attributes, content);
  }
}
