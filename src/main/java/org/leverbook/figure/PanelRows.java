package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.leverbook.body.JointId;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;

/**
 * Moments and arms of one position below it, a line and a bar for each joint of the page; the
 * joints' names stand once on the page.
 *
 * @param key what the page's positions share
 */
record PanelRows(PageKey key) {

  private static final double THICK = 7;

  /** One joint's share of the height, page units. */
  private static final double ROW = 29;

  private static final double CHIP = 16;

  double height() {
    return ROW * key.joints().size();
  }

  Group of(PositionPart part, double left, double top, double width) {
    List<Ink> ink = new ArrayList<>();
    double y = top;
    for (JointId joint : key.joints()) {
      ink.add(one(part.told(joint), joint, left, y, width));
      y += ROW;
    }
    return new Group(Map.of("class", "moments"), ink);
  }

  private Group one(
      Optional<MomentBars.Told> told, JointId joint, double left, double top, double width) {
    FigureStyle style = key.style();
    FigureStyle.Accent accent = key.accents().get(joint);
    double line = top + style.caption();
    List<Ink> ink = new ArrayList<>();
    ink.add(
        Form.line(
            new Line2D.Double(left, line - 4, left + CHIP, line - 4),
            new Pen(accent.colour(), 2.6, accent.dash())));
    double x = left + CHIP + 5;
    String words = fitting(told, width - CHIP - 5);
    ink.add(new Words(words, x, line, style.caption(), false, style.ink(), false));
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", "moment");
    attributes.put("data-joint", joint.word());
    told.ifPresent(
        known -> {
          double signed = known.newtonMetres();
          double length = key.most() == 0 ? 0 : key.longest() * Math.abs(signed) / key.most();
          Rectangle2D bar = new Rectangle2D.Double(left, line + 4, Math.max(0.5, length), THICK);
          Pen edge = Pen.solid(accent.colour(), 1);
          // Hollow where the resistance extends.
          ink.add(new Form(bar, signed < 0 ? style.paper() : accent.colour(), 1, edge));
          attributes.put("data-moment-nm", String.format(Locale.ROOT, "%.3f", signed));
          attributes.put("data-length", SvgWriter.number(length));
        });
    return new Group(attributes, ink);
  }

  /** Moment and arm; the moment alone where both have no room at full size. */
  private String fitting(Optional<MomentBars.Told> told, double room) {
    if (told.isEmpty()) {
      return "not known";
    }
    String words = told.get().text();
    boolean fits = TextWidths.of(words, key.style().caption(), false) <= room;
    return fits ? words : words.split(", ")[0];
  }
}
